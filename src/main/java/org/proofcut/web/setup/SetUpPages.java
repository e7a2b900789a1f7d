package org.proofcut.web.setup;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import java.util.List;
import java.util.Map;
import org.proofcut.bench.House;
import org.proofcut.bench.SetUpDesk;
import org.proofcut.core.intake.CutForm;
import org.proofcut.web.part.Asked;
import org.proofcut.web.part.Sent;

/**
 * One page for each kind of cut. What was typed stands in the address: it outlives a reload and a
 * restart, and can be kept as a bookmark; nothing is stored.
 */
@Path("/setups")
@Produces(MediaType.TEXT_HTML)
public class SetUpPages {

  private final SetUpDesk desk;
  private final House house;

  SetUpPages(SetUpDesk desk, House house) {
    this.desk = desk;
    this.house = house;
  }

  @CheckedTemplate(basePath = "setup")
  static class Templates {
    private Templates() {}

    static native TemplateInstance list(List<CutForm> cuts);

    static native TemplateInstance page(SetUpPage page);

    static native TemplateInstance live(SetUpPage page, List<Asked> echoes);
  }

  @GET
  public TemplateInstance list() {
    return Templates.list(desk.forms());
  }

  @GET
  @Path("{cut}")
  public TemplateInstance page(@PathParam("cut") String cut, @Context UriInfo address) {
    return Templates.page(page(known(cut), typed(address)));
  }

  /** What the form comes to, while it is typed; the page's address follows. */
  @GET
  @Path("{cut}/answer")
  public Response answer(@PathParam("cut") String cut, @Context UriInfo address) {
    var form = known(cut);
    var page = page(form, typed(address));
    var echoes =
        page.groups().stream()
            .flatMap(group -> group.asked().stream())
            .filter(asked -> asked.echo() != null)
            .toList();
    var query = address.getRequestUri().getRawQuery();
    return Response.ok(Templates.live(page, echoes))
        .header("HX-Replace-Url", page.action() + (query == null ? "" : "?" + query))
        .build();
  }

  private CutForm known(String cut) {
    return desk.form(cut).orElseThrow(NotFoundException::new);
  }

  private SetUpPage page(CutForm form, Map<String, String> typed) {
    return SetUpPage.of(form, desk.draft(form, typed), house.content());
  }

  private static Map<String, String> typed(UriInfo address) {
    var query = address.getRequestUri().getRawQuery();
    return Sent.typed(query == null ? "" : query);
  }
}
