package org.proofcut.web.weight;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import org.proofcut.bench.LoadDesk;
import org.proofcut.web.part.LiveForm;

/** One lift: how much is recommended, and what would help. What was typed stands in the address. */
@Path("/lifting")
@Produces(MediaType.TEXT_HTML)
public class LiftPages {

  private final LoadDesk desk;

  LiftPages(LoadDesk desk) {
    this.desk = desk;
  }

  @CheckedTemplate(basePath = "weight")
  static class Templates {
    private Templates() {}

    static native TemplateInstance lift(LiftView page);

    static native TemplateInstance liftLive(LiftView page);
  }

  @GET
  public TemplateInstance page(@Context UriInfo address) {
    return Templates.lift(view(address));
  }

  /** What it comes to while it is typed; the page's address follows. */
  @GET
  @Path("answer")
  public Response answer(@Context UriInfo address) {
    return LiveForm.answer(Templates.liftLive(view(address)), "/lifting", address);
  }

  private LiftView view(UriInfo address) {
    return LiftView.of(desk.lift(LiveForm.typed(address)), desk.liftLimits());
  }
}
