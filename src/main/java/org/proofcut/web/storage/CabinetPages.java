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
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.proofcut.bench.GearCabinet;
import org.proofcut.bench.JobDesk;
import org.proofcut.bench.StorageDesk;
import org.proofcut.core.evidence.Problem;
import org.proofcut.web.part.Sent;
import org.proofcut.web.storage.CabinetView.Fresh;

/** A cabinet: its plan, and the form that it is entered and changed with. */
@Path("/storage/cabinets")
@Produces(MediaType.TEXT_HTML)
@Consumes(MediaType.APPLICATION_FORM_URLENCODED)
public class CabinetPages {

  private static final int NOT_ACCEPTED = 422;

  /** Hidden field: the cabinet that the form changes; empty for a new one. */
  private static final String CABINET = "cabinet";

  private static final String NEW = "New cabinet";

  private final StorageDesk desk;
  private final JobDesk jobs;

  CabinetPages(StorageDesk desk, JobDesk jobs) {
    this.desk = desk;
    this.jobs = jobs;
  }

  @CheckedTemplate(basePath = "storage")
  static class Templates {
    private Templates() {}

    static native TemplateInstance plan(PlanView page);

    static native TemplateInstance change(PlanView.More more);

    static native TemplateInstance heights(PlanView.More more);

    static native TemplateInstance unsound(GearCabinet cabinet);

    static native TemplateInstance cabinet(CabinetView page);

    static native TemplateInstance cabinetLive(CabinetView page);

    static native TemplateInstance cabinetFields(CabinetView page);

    static native TemplateInstance removeCabinet(String id, String name);

    static native TemplateInstance jobUnsound(String job);
  }

  @GET
  @Path("new")
  public TemplateInstance blank(@QueryParam("job") String job) {
    if (job == null) {
      return form("", NEW, desk.newCabinet(), Fresh.NOTHING);
    }
    var known = jobs.job(job).orElseThrow(NotFoundException::new);
    return desk.ofJob(known)
        .map(
            typed ->
                form(
                    "",
                    "The case as gear cabinet",
                    typed,
                    Fresh.says(
                        "Frame and shelves follow the design of the job. Enter doors, hooks, boxes"
                            + " and drawers.")))
        .orElseGet(() -> Templates.jobUnsound(job));
  }

  @POST
  public Response keepNew(String form) {
    return keep(Optional.empty(), Sent.typed(form));
  }

  @GET
  @Path("{id}/change")
  public TemplateInstance change(
      @PathParam("id") String id, @QueryParam("smallest") String smallest) {
    var known = known(id);
    return (smallest == null ? Optional.<Map<String, String>>empty() : desk.changed(id))
        .map(changed -> form(id, known.name(), changed, fresh(known, changed)))
        .orElseGet(() -> form(id, known.name(), known.typed(), Fresh.NOTHING));
  }

  private Fresh fresh(GearCabinet known, Map<String, String> changed) {
    return desk.change(known.id())
        .map(change -> Fresh.change(change.words(), desk.draft(known.typed()), desk.draft(changed)))
        .orElse(Fresh.NOTHING);
  }

  @POST
  @Path("{id}/change")
  public Response keepChanged(@PathParam("id") String id, String form) {
    return keep(Optional.of(known(id).id()), Sent.typed(form));
  }

  private Response keep(Optional<String> id, Map<String, String> sent) {
    var typed = CabinetView.without(sent, CABINET);
    var kept = desk.keep(id, typed);
    if (kept.value().isEmpty()) {
      return Response.status(NOT_ACCEPTED)
          .entity(
              Templates.cabinet(
                  view(id.orElse(""), title(id), typed, kept.problems(), Fresh.NOTHING)))
          .build();
    }
    return Response.seeOther(URI.create("/storage/cabinets/" + kept.value().get().id())).build();
  }

  /** The form again with what was typed, nothing kept. */
  @POST
  @Path("form")
  public TemplateInstance again(String form) {
    return Templates.cabinet(view(Sent.typed(form)));
  }

  /** What it comes to, while it is typed. */
  @POST
  @Path("answer")
  public TemplateInstance answer(String form) {
    return Templates.cabinetLive(view(Sent.typed(form)));
  }

  /** The fields that what was chosen asks for. */
  @POST
  @Path("fields")
  public TemplateInstance fields(String form) {
    return Templates.cabinetFields(view(Sent.typed(form)));
  }

  private CabinetView view(Map<String, String> sent) {
    var id = desk.cabinet(sent.getOrDefault(CABINET, "")).map(GearCabinet::id);
    var typed = CabinetView.withoutFitting(CabinetView.without(sent, CABINET));
    return view(id.orElse(""), title(id), typed, List.of(), Fresh.NOTHING);
  }

  private String title(Optional<String> id) {
    return id.flatMap(desk::cabinet).map(GearCabinet::name).orElse(NEW);
  }

  private TemplateInstance form(String id, String title, Map<String, String> typed, Fresh fresh) {
    return Templates.cabinet(view(id, title, typed, List.of(), fresh));
  }

  private CabinetView view(
      String id, String title, Map<String, String> typed, List<Problem> refused, Fresh fresh) {
    var draft = desk.draft(typed);
    var plan =
        draft
            .cabinet()
            .flatMap(any -> desk.glance(Optional.of(id).filter(one -> !one.isEmpty()), typed));
    return CabinetView.of(id, title, draft, plan, refused, fresh);
  }

  @GET
  @Path("{id}")
  public TemplateInstance plan(@PathParam("id") String id, @QueryParam("all") String all) {
    return plan(id, all == null ? null : more(id), List.of());
  }

  private TemplateInstance plan(String id, PlanView.More more, List<Problem> refused) {
    var known = known(id);
    return desk.plan(id)
        .map(plan -> Templates.plan(PlanView.of(plan, more, refused)))
        .orElseGet(() -> Templates.unsound(known));
  }

  private PlanView.More more(String id) {
    return PlanView.More.of(id, desk.change(id), desk.shelfHeights(id));
  }

  /** What would make it fit, for the page that stands there already. */
  @GET
  @Path("{id}/smallest-change")
  public TemplateInstance change(@PathParam("id") String id) {
    return Templates.change(PlanView.More.of(known(id).id(), desk.change(id), Optional.empty()));
  }

  /** Where its shelves had better lie, for the page that stands there already. */
  @GET
  @Path("{id}/heights")
  public TemplateInstance suggestHeights(@PathParam("id") String id) {
    return Templates.heights(
        PlanView.More.of(known(id).id(), Optional.empty(), desk.shelfHeights(id)));
  }

  /** Everything lives by the plan that was seen. */
  @POST
  @Path("{id}/take")
  public Response take(@PathParam("id") String id, String form) {
    known(id);
    return done(id, desk.take(id, Sent.typed(form).getOrDefault("mark", "")).stream().toList(), "");
  }

  @POST
  @Path("{id}/pin")
  public Response pin(@PathParam("id") String id, String form) {
    known(id);
    var typed = Sent.typed(form);
    var thing = typed.getOrDefault("thing", "");
    if (desk.thing(thing).isEmpty()) {
      return done(id, List.of(unknown()), "");
    }
    return done(
        id,
        desk.pin(thing, id, typed.getOrDefault("place", "")).stream().toList(),
        "#place-" + typed.getOrDefault("place", ""));
  }

  @POST
  @Path("{id}/unpin")
  public Response unpin(@PathParam("id") String id, String form) {
    known(id);
    var thing = Sent.typed(form).getOrDefault("thing", "");
    if (desk.thing(thing).isEmpty()) {
      return done(id, List.of(unknown()), "");
    }
    desk.unpin(thing);
    return done(id, List.of(), "#places");
  }

  /** The shelves of a job's case go where its gear asks for them. */
  @POST
  @Path("{id}/heights")
  public Response heights(@PathParam("id") String id) {
    var known = known(id);
    var wrong = desk.takeHeights(id);
    return wrong.isEmpty() && known.job().isPresent()
        ? Response.seeOther(URI.create("/jobs/" + known.job().get() + "?kept=yes")).build()
        : done(id, wrong, "");
  }

  private static Problem unknown() {
    return Problem.stops(
        "",
        "That thing is not in the shop",
        "a thing of this cabinet",
        "Look at the plan again and choose one that stands in it");
  }

  private Response done(String id, List<Problem> wrong, String place) {
    return wrong.isEmpty()
        ? Response.seeOther(URI.create("/storage/cabinets/" + id + place)).build()
        : Response.status(NOT_ACCEPTED).entity(plan(id, null, wrong)).build();
  }

  @GET
  @Path("{id}/remove")
  public TemplateInstance askToRemove(@PathParam("id") String id) {
    return Templates.removeCabinet(id, known(id).name());
  }

  @POST
  @Path("{id}/remove")
  public Response remove(@PathParam("id") String id) {
    desk.discard(known(id).id());
    return Response.seeOther(URI.create("/storage")).build();
  }

  private GearCabinet known(String id) {
    return desk.cabinet(id).orElseThrow(NotFoundException::new);
  }
}
