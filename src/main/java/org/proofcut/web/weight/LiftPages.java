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
import java.util.List;
import java.util.Map;
import org.proofcut.bench.LoadDesk;
import org.proofcut.web.part.Asked;
import org.proofcut.web.part.Sent;

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

    static native TemplateInstance liftLive(LiftView page, List<Asked> echoes);
  }

  @GET
  public TemplateInstance page(@Context UriInfo address) {
    return Templates.lift(view(address));
  }

  /** What it comes to while it is typed; the page's address follows. */
  @GET
  @Path("answer")
  public Response answer(@Context UriInfo address) {
    var page = view(address);
    return live(Templates.liftLive(page, page.form().echoes()), "/lifting", address);
  }

  static Response live(TemplateInstance page, String action, UriInfo address) {
    var query = address.getRequestUri().getRawQuery();
    return Response.ok(page)
        .header("HX-Replace-Url", action + (query == null ? "" : "?" + query))
        .build();
  }

  static Map<String, String> typed(UriInfo address) {
    var query = address.getRequestUri().getRawQuery();
    return Sent.typed(query == null ? "" : query);
  }

  private LiftView view(UriInfo address) {
    return LiftView.of(desk.lift(typed(address)), desk.liftLimits());
  }
}
