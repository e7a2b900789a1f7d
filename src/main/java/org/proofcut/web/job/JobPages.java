package org.proofcut.web.job;

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
import org.proofcut.bench.ShopFloor;
import org.proofcut.bench.StorageDesk;
import org.proofcut.bench.WorkBench;
import org.proofcut.core.evidence.Problem;
import org.proofcut.core.intake.JobForm;
import org.proofcut.core.measure.LengthUnit;
import org.proofcut.logbook.JobRecord;
import org.proofcut.web.part.Asked;
import org.proofcut.web.part.Sent;

/** The page of a job. */
@Path("/jobs")
@Produces(MediaType.TEXT_HTML)
@Consumes(MediaType.APPLICATION_FORM_URLENCODED)
public class JobPages {

  private static final int NOT_ACCEPTED = 422;

  /** Hidden field: the job that the form changes; empty for a new one. */
  private static final String JOB = "job";

  private final JobDesk desk;
  private final ShopFloor floor;
  private final WorkBench bench;
  private final StorageDesk storage;

  JobPages(JobDesk desk, ShopFloor floor, WorkBench bench, StorageDesk storage) {
    this.desk = desk;
    this.floor = floor;
    this.bench = bench;
    this.storage = storage;
  }

  @CheckedTemplate(basePath = "job")
  static class Templates {
    private Templates() {}

    static native TemplateInstance page(JobPage job);

    static native TemplateInstance answer(JobPage job);

    static native TemplateInstance live(JobPage job, List<Asked> echoes);

    static native TemplateInstance discard(JobRecord record, String name, boolean begun);
  }

  @GET
  @Path("new")
  public TemplateInstance blank() {
    var unit = floor.unit().symbol();
    // The usual back lies flush; everything else is the maker's to say.
    return shown(Optional.empty(), Map.of("unit", unit, "back-set-in", "0"), List.of(), "");
  }

  @GET
  @Path("{id}")
  public TemplateInstance job(@PathParam("id") String id, @QueryParam("kept") String kept) {
    var job = known(id);
    return shown(Optional.of(job), job.typed(), List.of(), kept == null ? "" : "Saved");
  }

  @POST
  public Response keepNew(String form) {
    return keep(Optional.empty(), Sent.typed(form));
  }

  @POST
  @Path("{id}")
  public Response keep(@PathParam("id") String id, String form) {
    return keep(Optional.of(known(id)), Sent.typed(form));
  }

  private Response keep(Optional<JobRecord> job, Map<String, String> typed) {
    var kept = desk.keep(job.map(JobRecord::id), typed);
    if (kept.value().isEmpty()) {
      return Response.status(NOT_ACCEPTED)
          .entity(shown(job, typed, kept.problems(), "Not saved"))
          .build();
    }
    var id = kept.value().get().id();
    // What stops the new plan is told on the page and on the sheets until it is mended.
    bench.planAgain(id);
    return Response.seeOther(URI.create("/jobs/" + id + "?kept=yes")).build();
  }

  /** The form again with what was typed, nothing kept: to work it out, or with one more group. */
  @POST
  @Path("form")
  public TemplateInstance again(String form) {
    var typed = Sent.typed(form);
    var more = JobSections.withOneMore(typed.getOrDefault("add", ""), typed);
    return shown(beingChanged(typed), more, List.of(), "");
  }

  /** What the form comes to, while it is typed. */
  @POST
  @Path("answer")
  public TemplateInstance answer(String form) {
    var typed = Sent.typed(form);
    var page = page(beingChanged(typed), typed, List.of(), "");
    return Templates.live(
        page, page.sections().all().filter(asked -> asked.echo() != null).toList());
  }

  @GET
  @Path("{id}/discard")
  public TemplateInstance askToDiscard(@PathParam("id") String id) {
    var job = known(id);
    return Templates.discard(job, job.typed().getOrDefault("name", ""), bench.work(id).isPresent());
  }

  @POST
  @Path("{id}/discard")
  public Response discard(@PathParam("id") String id) {
    bench.discard(known(id).id());
    return Response.seeOther(URI.create("/")).build();
  }

  private Optional<JobRecord> beingChanged(Map<String, String> typed) {
    return desk.job(typed.getOrDefault(JOB, ""));
  }

  private JobRecord known(String id) {
    return desk.job(id).orElseThrow(NotFoundException::new);
  }

  private TemplateInstance shown(
      Optional<JobRecord> job, Map<String, String> typed, List<Problem> refused, String kept) {
    return Templates.page(page(job, typed, refused, kept));
  }

  private JobPage page(
      Optional<JobRecord> job, Map<String, String> typed, List<Problem> refused, String kept) {
    var draft = desk.draft(typed);
    boolean asKept = job.map(it -> it.typed().equals(JobForm.filledIn(typed))).orElse(false);
    // An empty form is not wrong yet: its fields are told beside it, not one by one.
    var atFields =
        refused.isEmpty()
            ? draft.problems().stream()
                .filter(problem -> !typed.getOrDefault(problem.where(), "").isBlank())
                .toList()
            : refused;
    return new JobPage(
        job.map(JobRecord::id).orElse(""),
        job.map(it -> it.typed().getOrDefault("name", "")).orElse("New job"),
        JobSections.of(typed, atFields),
        CaseAnswer.of(draft),
        refused,
        kept,
        asKept,
        job.map(it -> bench.work(it.id()).isPresent()).orElse(false),
        job.filter(it -> JobForm.unit(it.typed()) != JobForm.unit(typed))
            .map(it -> JobForm.unit(typed) == LengthUnit.INCH ? "inches" : "millimetres")
            .orElse(""),
        job.flatMap(it -> gearCabinet(it.id())).orElse(""));
  }

  private Optional<String> gearCabinet(String job) {
    return storage.cabinets().stream()
        .filter(cabinet -> cabinet.job().filter(job::equals).isPresent())
        .map(GearCabinet::id)
        .findFirst();
  }
}
