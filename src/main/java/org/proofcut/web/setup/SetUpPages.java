package org.proofcut.web.setup;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import java.net.URI;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.proofcut.bench.House;
import org.proofcut.bench.OutOfPlace;
import org.proofcut.bench.SetUpDesk;
import org.proofcut.bench.StorageDesk;
import org.proofcut.bench.WorkBench;
import org.proofcut.core.intake.CutForm;
import org.proofcut.core.intake.CutForms;
import org.proofcut.web.part.LiveForm;
import org.proofcut.web.part.Sent;
import org.proofcut.web.reading.Today;

/**
 * One page for each kind of cut. What was typed stands in the address: it outlives a reload and a
 * restart, and can be kept as a bookmark; nothing is stored.
 */
@Path("/setups")
@Produces(MediaType.TEXT_HTML)
public class SetUpPages {

  private static final int NOT_ACCEPTED = 422;

  /** Hidden field: the same proof sent twice is one proof. */
  private static final String PROOF = "proof";

  /** Hidden field: the figures that the person saw. */
  private static final String FINGERPRINT = "fingerprint";

  private final SetUpDesk desk;
  private final House house;
  private final StorageDesk storage;

  SetUpPages(SetUpDesk desk, House house, StorageDesk storage) {
    this.desk = desk;
    this.house = house;
    this.storage = storage;
  }

  @CheckedTemplate(basePath = "setup")
  static class Templates {
    private Templates() {}

    static native TemplateInstance list(List<CutForms.Family> families);

    static native TemplateInstance page(SetUpPage page);

    static native TemplateInstance live(SetUpPage page);
  }

  @GET
  public TemplateInstance list() {
    return Templates.list(desk.families());
  }

  @GET
  @Path("{cut}")
  public TemplateInstance page(@PathParam("cut") String cut, @Context UriInfo address) {
    return Templates.page(page(known(cut), LiveForm.typed(address)));
  }

  /** What the form comes to, while it is typed; the page's address follows. */
  @GET
  @Path("{cut}/answer")
  public Response answer(@PathParam("cut") String cut, @Context UriInfo address) {
    var page = page(known(cut), LiveForm.typed(address));
    return LiveForm.answer(Templates.live(page), page.action(), address);
  }

  /** Keeps what the proof cut teaches; the page then asks for the next one. */
  @POST
  @Path("{cut}/proofs")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response learn(@PathParam("cut") String cut, String form) {
    var known = known(cut);
    var typed = Sent.typed(form);
    var refused =
        desk.learn(
            known,
            typed,
            typed.getOrDefault(PROOF, WorkBench.newEntryId()),
            typed.getOrDefault(FINGERPRINT, ""));
    if (refused.isPresent()) {
      return Response.status(NOT_ACCEPTED)
          .entity(Templates.page(page(known, typed).refused(refused.get())))
          .build();
    }
    var next = new LinkedHashMap<>(typed);
    next.keySet().removeIf(name -> name.startsWith(CutForm.FOUND));
    next.keySet().removeAll(List.of(PROOF, FINGERPRINT));
    next.put("kept", "yes");
    return Response.seeOther(URI.create(LiveForm.address("/setups/" + cut, next))).build();
  }

  private CutForm known(String cut) {
    return desk.form(cut).orElseThrow(NotFoundException::new);
  }

  private SetUpPage page(CutForm form, Map<String, String> typed) {
    return SetUpPage.of(
        form,
        desk.draft(form, typed),
        house.content(),
        typed.containsKey("kept"),
        new Today(storage.today(), OutOfPlace.inWords(storage.out())));
  }
}
