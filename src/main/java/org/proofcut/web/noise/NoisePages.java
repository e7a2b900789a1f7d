package org.proofcut.web.noise;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import org.proofcut.bench.NoiseDesk;
import org.proofcut.web.part.LiveForm;

/** The noise of a day that belongs to no job. What was typed stands in the address. */
@Path("/noise")
@Produces(MediaType.TEXT_HTML)
public class NoisePages {

  private final NoiseDesk desk;

  NoisePages(NoiseDesk desk) {
    this.desk = desk;
  }

  @CheckedTemplate(basePath = "noise")
  static class Templates {
    private Templates() {}

    static native TemplateInstance page(NoisePage page);

    static native TemplateInstance live(NoisePage page);
  }

  @GET
  public TemplateInstance page(@Context UriInfo address) {
    return Templates.page(NoisePage.of(desk.draft(LiveForm.typed(address))));
  }

  /** What the form comes to, while it is typed; the page's address follows. */
  @GET
  @Path("answer")
  public Response answer(@Context UriInfo address) {
    return live(NoisePage.of(desk.draft(LiveForm.typed(address))), address);
  }

  static Response live(NoisePage page, UriInfo address) {
    return LiveForm.answer(Templates.live(page), page.action(), address);
  }
}
