package org.proofcut.web.api;

import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.DELETE;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.PUT;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.eclipse.microprofile.openapi.annotations.parameters.RequestBody;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.proofcut.bench.JobDesk;
import org.proofcut.bench.WorkBench;
import org.proofcut.core.evidence.Problem;
import org.proofcut.core.intake.JobForm;
import org.proofcut.logbook.JobRecord;

/** Jobs as entered. */
@Path("/api")
@Produces(MediaType.APPLICATION_JSON)
@Faults.Told
class JobsResource {

  private final JobDesk desk;
  private final WorkBench bench;

  JobsResource(JobDesk desk, WorkBench bench) {
    this.desk = desk;
    this.bench = bench;
  }

  @GET
  @Path("/jobs")
  @Operation(summary = "All jobs, the newest change first")
  public List<JobJson.Listed> jobs() {
    return desk.jobs().stream().map(JobJson::listed).toList();
  }

  @GET
  @Path("/jobs/form")
  @Operation(summary = "The fields of a job")
  public List<ShopJson.Input> form() {
    return ShopJson.inputs(JobForm.fields());
  }

  @POST
  @Path("/answer")
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(summary = "What typed fields come to; nothing is kept")
  @RequestBody(
      required = true,
      content = @Content(schema = @Schema(implementation = JobJson.JobTyped.class)))
  public JobJson.Answer answer(byte[] sent) {
    return JobJson.answer(desk.draft(read(sent)));
  }

  @POST
  @Path("/jobs")
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(summary = "Keeps a new job, if all of it can be read")
  @RequestBody(
      required = true,
      content = @Content(schema = @Schema(implementation = JobJson.JobTyped.class)))
  @APIResponse(
      responseCode = "201",
      description = "It is kept",
      content = @Content(schema = @Schema(implementation = JobJson.Kept.class)))
  public Response add(byte[] sent) {
    var job = keep(Optional.empty(), read(sent));
    return Response.created(URI.create("/api/jobs/" + job.id())).entity(kept(job)).build();
  }

  @GET
  @Path("/jobs/{id}")
  @Operation(summary = "A job as typed, with what it comes to")
  public JobJson.Kept job(@PathParam("id") String id) {
    return kept(require(desk, id));
  }

  @PUT
  @Path("/jobs/{id}")
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(summary = "Changes a job; one in work is planned again")
  @RequestBody(
      required = true,
      content = @Content(schema = @Schema(implementation = JobJson.JobTyped.class)))
  public JobJson.Kept change(@PathParam("id") String id, byte[] sent) {
    require(desk, id);
    var job = keep(Optional.of(id), read(sent));
    bench.planAgain(id);
    return kept(job);
  }

  @DELETE
  @Path("/jobs/{id}")
  @Operation(summary = "Throws a job away with its plans and its record")
  public void discard(@PathParam("id") String id) {
    bench.discard(require(desk, id).id());
  }

  static JobRecord require(JobDesk desk, String id) {
    return desk.job(id)
        .orElseThrow(
            () -> ProblemDetail.notThere("There is no such job", "Look at the list of jobs"));
  }

  /** What follows from the design of a job; ends the request where it can't be put together. */
  static <T> T sound(Optional<T> made) {
    return made.orElseThrow(
        () ->
            ProblemDetail.refusal(
                ProblemKind.NOT_NOW,
                Problem.stops(
                    "design",
                    "The design of this job can't be put together",
                    "a design with nothing to mend",
                    "Mend the design first")));
  }

  private JobJson.Kept kept(JobRecord job) {
    return JobJson.kept(job, bench.work(job.id()).isPresent(), desk.draft(job.typed()));
  }

  private JobRecord keep(Optional<String> id, Map<String, String> typed) {
    var read = desk.keep(id, typed);
    return read.value()
        .orElseThrow(() -> ProblemDetail.refusal(ProblemKind.FIELDS, read.problems()));
  }

  private static Map<String, String> read(byte[] sent) {
    return Body.form(sent, JobForm.fields());
  }
}
