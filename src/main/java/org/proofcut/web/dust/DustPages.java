package org.proofcut.web.dust;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import org.proofcut.bench.DustDesk;
import org.proofcut.web.part.LiveForm;

/** What the dust of some work does, what draws it off, and which mask is left to wear. */
@Path("/dust")
@Produces(MediaType.TEXT_HTML)
public class DustPages {

  private final DustDesk desk;

  DustPages(DustDesk desk) {
    this.desk = desk;
  }

  @CheckedTemplate(basePath = "dust")
  static class Templates {
    private Templates() {}

    static native TemplateInstance page(DustPage page);

    static native TemplateInstance live(DustPage page);
  }

  @GET
  public TemplateInstance page(@Context UriInfo address) {
    return Templates.page(read(address));
  }

  /** What the form comes to, while it is typed; the page's address follows. */
  @GET
  @Path("answer")
  public Response answer(@Context UriInfo address) {
    return LiveForm.answer(Templates.live(read(address)), "/dust", address);
  }

  private DustPage read(UriInfo address) {
    return DustPage.of(desk.draft(LiveForm.typed(address)), desk.book(), desk.jobs());
  }
}
