package org.proofcut.web.storage;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.util.List;
import java.util.Map;
import org.proofcut.bench.ShopFloor;
import org.proofcut.bench.StorageDesk;
import org.proofcut.bench.StoredThing;
import org.proofcut.bench.WorkBench;
import org.proofcut.core.evidence.Problem;
import org.proofcut.core.storage.GearAct;
import org.proofcut.web.part.Back;
import org.proofcut.web.part.Sent;

/** A thing: where it lives, who has it, and what was done with it. */
@Path("/storage/things/{id}")
@Produces(MediaType.TEXT_HTML)
@Consumes(MediaType.APPLICATION_FORM_URLENCODED)
public class ThingPages {

  private static final int NOT_ACCEPTED = 422;

  /** Hidden field: id of the act, made with the page. */
  private static final String ENTRY = "entry";

  private final StorageDesk desk;
  private final ShopFloor floor;

  ThingPages(StorageDesk desk, ShopFloor floor) {
    this.desk = desk;
    this.floor = floor;
  }

  @CheckedTemplate(basePath = "storage")
  static class Templates {
    private Templates() {}

    static native TemplateInstance thing(ThingView page);
  }

  @GET
  public TemplateInstance page(@PathParam("id") String id) {
    return shown(known(id), ThingView.Typed.NOTHING);
  }

  @POST
  @Path("take-out")
  public Response takeOut(@PathParam("id") String id, String form) {
    return act(id, "take-out", Sent.typed(form), ActTyped::takenOut);
  }

  @POST
  @Path("put-back")
  public Response putBack(@PathParam("id") String id, String form) {
    return act(id, "put-back", Sent.typed(form), ActTyped::putBack);
  }

  @POST
  @Path("look")
  public Response look(@PathParam("id") String id, String form) {
    return act(id, "look", Sent.typed(form), ActTyped::lookedAt);
  }

  @POST
  @Path("mended")
  public Response mended(@PathParam("id") String id, String form) {
    return act(id, "mended", Sent.typed(form), ActTyped::mended);
  }

  @POST
  @Path("replaced")
  public Response replaced(@PathParam("id") String id, String form) {
    return act(id, "replaced", Sent.typed(form), ActTyped::replaced);
  }

  /** How one of the forms is read. */
  private interface Reader {
    GearAct read(ActTyped typed);
  }

  private Response act(String id, String name, Map<String, String> sent, Reader reader) {
    var known = known(id);
    var typed = new ActTyped(sent);
    var act = reader.read(typed);
    var problems = typed.problems();
    if (problems.isEmpty()) {
      var entry = sent.getOrDefault(ENTRY, "");
      problems =
          desk.act(entry.isBlank() ? WorkBench.newEntryId() : entry, id, act).stream()
              .map(wrong -> ActTyped.at(act, wrong))
              .toList();
    }
    return done(known, name, sent, problems);
  }

  /** It stays in a place of the cabinet that it is kept in. */
  @POST
  @Path("pin")
  public Response pin(@PathParam("id") String id, String form) {
    var known = known(id);
    var typed = Sent.typed(form);
    var problems =
        known
            .cabinet()
            .map(
                cabinet ->
                    desk.pin(id, cabinet, typed.getOrDefault(ThingView.PLACE, "")).stream()
                        .map(wrong -> ActTyped.at(ThingView.PLACE, wrong))
                        .toList())
            .orElseGet(() -> List.of(noCabinet()));
    return done(known, "pin", typed, problems);
  }

  @POST
  @Path("unpin")
  public Response unpin(@PathParam("id") String id) {
    desk.unpin(known(id).thing().id());
    return toPage(id);
  }

  private static Problem noCabinet() {
    return Problem.stops(
        "",
        "It is to be kept in no cabinet yet",
        "a cabinet that it is kept in",
        "Say in the shop in which cabinet it is kept");
  }

  private Response done(
      StoredThing known, String form, Map<String, String> typed, List<Problem> problems) {
    return problems.isEmpty()
        ? Back.to(typed.get(Back.FIELD))
            .map(ThingPages::to)
            .orElseGet(() -> toPage(known.thing().id()))
        : Response.status(NOT_ACCEPTED)
            .entity(shown(known, new ThingView.Typed(form, typed, problems)))
            .build();
  }

  private static Response toPage(String id) {
    return to("/storage/things/" + id);
  }

  private static Response to(String page) {
    return Response.seeOther(URI.create(page)).build();
  }

  private TemplateInstance shown(StoredThing known, ThingView.Typed typed) {
    return Templates.thing(ThingView.of(known, desk, floor.unit(), WorkBench.newEntryId(), typed));
  }

  private StoredThing known(String id) {
    return desk.thing(id).orElseThrow(NotFoundException::new);
  }
}
