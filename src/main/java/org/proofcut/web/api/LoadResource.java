package org.proofcut.web.api;

import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import java.util.List;
import java.util.Map;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.eclipse.microprofile.openapi.annotations.parameters.RequestBody;
import org.proofcut.bench.JobDesk;
import org.proofcut.bench.LoadDesk;
import org.proofcut.bench.StandDraft;
import org.proofcut.core.intake.Field;
import org.proofcut.core.intake.LiftForm;

/** What things weigh, whether they can be lifted, whether a case stands. */
@Path("/api")
@Produces(MediaType.APPLICATION_JSON)
@Faults.Told
class LoadResource {

  private final LoadDesk desk;
  private final JobDesk jobs;

  LoadResource(LoadDesk desk, JobDesk jobs) {
    this.desk = desk;
    this.jobs = jobs;
  }

  @GET
  @Path("/lifting")
  @Operation(summary = "The fields of a lift; job and part may name what is lifted")
  public List<ShopJson.Input> liftForm() {
    return ShopJson.inputs(LiftForm.fields());
  }

  @POST
  @Path("/lifting")
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(summary = "How much of a lift is recommended as most; nothing is kept")
  @RequestBody(
      required = true,
      content = @Content(schema = @Schema(implementation = LoadJson.Typed.class)))
  public LoadJson.Lifted lift(byte[] sent) {
    return LoadJson.lifted(
        desk.lift(Body.form(sent, LiftForm.fields(), LoadDesk.JOB, LoadDesk.PART)));
  }

  @GET
  @Path("/jobs/{id}/weights")
  @Operation(summary = "What the parts, the sheets and the case of a job weigh")
  public LoadJson.Weights weights(@PathParam("id") String id) {
    return LoadJson.weights(JobsResource.sound(desk.weights(JobsResource.require(jobs, id))));
  }

  @GET
  @Path("/jobs/{id}/standing")
  @Operation(summary = "The fields of the finished case of a job on the floor")
  public List<ShopJson.Input> standForm(@PathParam("id") String id) {
    var draft = JobsResource.sound(desk.stand(JobsResource.require(jobs, id), Map.of()));
    return ShopJson.inputs(fields(draft));
  }

  @POST
  @Path("/jobs/{id}/standing")
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(summary = "Whether the finished case of a job tips; nothing is kept")
  @RequestBody(
      required = true,
      content = @Content(schema = @Schema(implementation = LoadJson.Typed.class)))
  public LoadJson.Stood stand(@PathParam("id") String id, byte[] sent) {
    var job = JobsResource.require(jobs, id);
    var form = JobsResource.sound(desk.stand(job, Map.of()));
    return LoadJson.stood(JobsResource.sound(desk.stand(job, Body.form(sent, fields(form)))));
  }

  private static List<Field> fields(StandDraft draft) {
    return draft.groups().stream().flatMap(group -> group.fields().stream()).toList();
  }
}
