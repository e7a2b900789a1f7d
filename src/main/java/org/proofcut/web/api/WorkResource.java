package org.proofcut.web.api;

import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.WebApplicationException;
import jakarta.ws.rs.core.MediaType;
import java.util.List;
import java.util.Optional;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.eclipse.microprofile.openapi.annotations.parameters.RequestBody;
import org.proofcut.bench.House;
import org.proofcut.bench.JobDesk;
import org.proofcut.bench.Work;
import org.proofcut.bench.WorkBench;
import org.proofcut.core.evidence.Problem;
import org.proofcut.core.intake.JobForm;
import org.proofcut.core.run.Act;
import org.proofcut.core.run.SheetProgress;

/** Jobs in work. */
@Path("/api")
@Produces(MediaType.APPLICATION_JSON)
@Faults.Told
class WorkResource {

  private static final int LONGEST_NAME = 80;

  private final JobDesk desk;
  private final WorkBench bench;
  private final House house;

  WorkResource(JobDesk desk, WorkBench bench, House house) {
    this.desk = desk;
    this.bench = bench;
    this.house = house;
  }

  @GET
  @Path("/jobs/{id}/plan")
  @Operation(summary = "All sheets: as work was begun with, or as they would be")
  public SheetJson.Whole plan(@PathParam("id") String id) {
    var job = JobsResource.require(desk, id);
    var wording = house.content().wording();
    var work = bench.work(id);
    if (work.isPresent()) {
      return SheetJson.whole(
          work.get().plan(),
          Optional.of(work.get().revision()),
          ProblemDetail.One.all(work.get().problems()),
          wording);
    }
    var draft = desk.draft(job.typed());
    var plan =
        draft
            .plan()
            .orElseThrow(() -> ProblemDetail.refusal(ProblemKind.NOT_NOW, draft.problems()));
    return SheetJson.whole(
        plan, Optional.empty(), ProblemDetail.One.all(draft.problems()), wording);
  }

  @POST
  @Path("/jobs/{id}/begin")
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(summary = "Begins work: the plan is kept; does nothing where it has begun")
  public ProgressJson.Whole begin(@PathParam("id") String id) {
    JobsResource.require(desk, id);
    var problems = bench.begin(id);
    if (!problems.isEmpty()) {
      throw ProblemDetail.refusal(ProblemKind.NOT_NOW, problems);
    }
    return progress(id);
  }

  @GET
  @Path("/jobs/{id}/progress")
  @Operation(summary = "How far the job is")
  public ProgressJson.Whole progress(@PathParam("id") String id) {
    JobsResource.require(desk, id);
    return bench.work(id).map(ProgressJson::whole).orElse(ProgressJson.NOT_BEGUN);
  }

  @GET
  @Path("/jobs/{id}/record")
  @Operation(summary = "All that was done, in the order recorded")
  public List<ActJson.Line> record(@PathParam("id") String id) {
    var unit = JobForm.unit(JobsResource.require(desk, id).typed());
    return bench.record(id).stream().map(entry -> ActJson.line(entry, unit)).toList();
  }

  @POST
  @Path("/jobs/{id}/acts")
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(summary = "Adds an act to the record, if it may be taken now")
  @RequestBody(
      required = true,
      content = @Content(schema = @Schema(implementation = ActJson.Sent.class)))
  public ProgressJson.OneSheet act(@PathParam("id") String id, byte[] body) {
    var job = JobsResource.require(desk, id);
    var work =
        bench
            .work(id)
            .orElseThrow(
                () ->
                    ProblemDetail.refusal(
                        ProblemKind.NOT_NOW,
                        Problem.stops(
                            "job", "Work has not begun", "acts on a job in work", "Begin it")));
    var sent = read(body, work);
    var refused = bench.act(job.id(), sent);
    if (refused.isPresent()) {
      throw refusal(refused.get(), work, sent);
    }
    var after = bench.work(id).orElseThrow();
    return ProgressJson.sheet(
        after
            .progress()
            .sheet(sent.operation())
            .orElseThrow(() -> refusal(noSuchSheet(work), work, sent)),
        after.plan().finished().design().unit());
  }

  private static WorkBench.Sent read(byte[] sent, Work work) {
    var body = Body.of(sent).only("entryId", "device", "operation", "fingerprint", "act");
    var entryId = body.text("entryId", LONGEST_NAME);
    var device = body.text("device", LONGEST_NAME);
    var operation = body.text("operation", LONGEST_NAME);
    var fingerprint = body.text("fingerprint", LONGEST_NAME);
    var corrections =
        work.progress()
            .sheet(operation)
            .map(SheetProgress::corrections)
            .orElse(new Act.Corrected(List.of()));
    var act = ActJson.read(body.object("act"), work.plan().finished().design().unit(), corrections);
    body.check();
    return new WorkBench.Sent(entryId, device, operation, fingerprint, act);
  }

  private static WebApplicationException refusal(Problem problem, Work work, WorkBench.Sent sent) {
    var sheet = work.progress().sheet(sent.operation());
    if (sheet.isEmpty()) {
      return ProblemDetail.refusal(ProblemKind.FIELDS, noSuchSheet(work));
    }
    boolean same = sheet.get().sheet().marks().fingerprint().equals(sent.fingerprint());
    return ProblemDetail.refusal(same ? ProblemKind.NOT_NOW : ProblemKind.CHANGED, problem);
  }

  private static Problem noSuchSheet(Work work) {
    var ids = work.plan().sheets().stream().map(sheet -> sheet.id()).toList();
    return Problem.stops(
        "operation",
        "This job has no such sheet",
        String.join(", ", ids),
        "Send the id of a sheet of the plan");
  }
}
