package org.proofcut.web.handwork;

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
import org.proofcut.bench.HandDesk;
import org.proofcut.bench.House;
import org.proofcut.bench.OutOfPlace;
import org.proofcut.bench.StorageDesk;
import org.proofcut.core.intake.HandForm;
import org.proofcut.web.part.LiveForm;
import org.proofcut.web.reading.Today;

/**
 * One page for each kind of work by hand. What was typed stands in the address: it outlives a
 * reload and a restart, and can be kept as a bookmark; nothing is stored.
 */
@Path("/hand-work")
@Produces(MediaType.TEXT_HTML)
public class HandPages {

  private final HandDesk desk;
  private final House house;
  private final StorageDesk storage;

  HandPages(HandDesk desk, House house, StorageDesk storage) {
    this.storage = storage;
    this.desk = desk;
    this.house = house;
  }

  @CheckedTemplate(basePath = "handwork")
  static class Templates {
    private Templates() {}

    static native TemplateInstance list(List<HandForm> forms);

    static native TemplateInstance page(HandPage page);

    static native TemplateInstance live(HandPage page);
  }

  @GET
  public TemplateInstance list() {
    return Templates.list(desk.forms());
  }

  @GET
  @Path("{task}")
  public TemplateInstance page(@PathParam("task") String task, @Context UriInfo address) {
    return Templates.page(page(known(task), LiveForm.typed(address)));
  }

  /** What the form comes to, while it is typed; the page's address follows. */
  @GET
  @Path("{task}/answer")
  public Response answer(@PathParam("task") String task, @Context UriInfo address) {
    var page = page(known(task), LiveForm.typed(address));
    return LiveForm.answer(Templates.live(page), page.action(), address);
  }

  private HandForm known(String task) {
    return desk.form(task).orElseThrow(NotFoundException::new);
  }

  private HandPage page(HandForm form, Map<String, String> typed) {
    return HandPage.of(
        form,
        desk.draft(form, typed),
        house.content().wording(),
        new Today(storage.today(), OutOfPlace.inWords(storage.out())));
  }
}
