package org.proofcut.web.api;

import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.DELETE;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.PUT;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.WebApplicationException;
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
import org.proofcut.bench.GearCabinet;
import org.proofcut.bench.JobDesk;
import org.proofcut.bench.PlannedCabinet;
import org.proofcut.bench.StorageDesk;
import org.proofcut.core.evidence.Problem;
import org.proofcut.core.intake.CabinetForm;

/** Cabinets for gear, and their plans. */
@Path("/api/storage")
@Produces(MediaType.APPLICATION_JSON)
@Faults.Told
class StorageResource {

  private static final int LONGEST = 100;

  private final StorageDesk desk;
  private final JobDesk jobs;

  StorageResource(StorageDesk desk, JobDesk jobs) {
    this.desk = desk;
    this.jobs = jobs;
  }

  @GET
  @Path("/cabinets")
  @Operation(summary = "All cabinets for gear, in the order entered")
  public List<StorageJson.Cabinet> cabinets() {
    return desk.cabinets().stream().map(StorageJson::cabinet).toList();
  }

  @GET
  @Path("/cabinets/form")
  @Operation(summary = "Every field that a cabinet can have")
  public List<ShopJson.Input> form() {
    return ShopJson.inputs(CabinetForm.fields());
  }

  @GET
  @Path("/cabinets/new")
  @Operation(summary = "Something to begin a new cabinet with")
  public StorageJson.Typed begin() {
    return new StorageJson.Typed(desk.newCabinet());
  }

  @GET
  @Path("/cabinets/of-job/{id}")
  @Operation(summary = "What to begin a cabinet with that is the case of a job")
  public StorageJson.Typed ofJob(@PathParam("id") String id) {
    return new StorageJson.Typed(JobsResource.sound(desk.ofJob(JobsResource.require(jobs, id))));
  }

  @POST
  @Path("/answer")
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(summary = "What typed fields of a cabinet come to; nothing is kept")
  @RequestBody(
      required = true,
      content = @Content(schema = @Schema(implementation = StorageJson.Typed.class)))
  public StorageJson.Draft answer(byte[] sent) {
    return StorageJson.draft(desk.draft(read(sent)));
  }

  @POST
  @Path("/cabinets")
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(summary = "Keeps a new cabinet, if all of it can be read")
  @RequestBody(
      required = true,
      content = @Content(schema = @Schema(implementation = StorageJson.Typed.class)))
  @APIResponse(
      responseCode = "201",
      description = "It is kept",
      content = @Content(schema = @Schema(implementation = StorageJson.Cabinet.class)))
  public Response add(byte[] sent) {
    var kept = StorageJson.cabinet(keep(Optional.empty(), read(sent)));
    return Response.created(URI.create("/api/storage/cabinets/" + kept.id())).entity(kept).build();
  }

  @GET
  @Path("/cabinets/{id}")
  @Operation(summary = "One cabinet, as typed")
  public StorageJson.Cabinet cabinet(@PathParam("id") String id) {
    return StorageJson.cabinet(require(id));
  }

  @PUT
  @Path("/cabinets/{id}")
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(summary = "Changes a cabinet; what lives in places that go lives nowhere then")
  @RequestBody(
      required = true,
      content = @Content(schema = @Schema(implementation = StorageJson.Typed.class)))
  public StorageJson.Cabinet change(@PathParam("id") String id, byte[] sent) {
    return StorageJson.cabinet(keep(Optional.of(require(id).id()), read(sent)));
  }

  @DELETE
  @Path("/cabinets/{id}")
  @Operation(summary = "Takes a cabinet out; what lives there lives nowhere then")
  public void discard(@PathParam("id") String id) {
    desk.discard(require(id).id());
  }

  @GET
  @Path("/cabinets/{id}/plan")
  @Operation(summary = "Where everything goes in a cabinet, and what has no place")
  public StorageJson.Plan plan(@PathParam("id") String id) {
    return StorageJson.plan(planned(id));
  }

  @POST
  @Path("/cabinets/{id}/plan")
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(summary = "Has everything live by the plan; jobs in work are planned again")
  @RequestBody(
      required = true,
      content = @Content(schema = @Schema(implementation = StorageJson.Taken.class)))
  public StorageJson.Plan take(@PathParam("id") String id, byte[] sent) {
    requireSound(id);
    var body = Body.of(sent).only("mark");
    var mark = body.text("mark", LONGEST);
    body.check();
    refuse(desk.take(id, mark), ProblemKind.NOT_NOW);
    return StorageJson.plan(planned(id));
  }

  @GET
  @Path("/cabinets/{id}/changed")
  @Operation(summary = "The smallest change that gives all a place, and the cabinet with it")
  public StorageJson.Changed changed(@PathParam("id") String id) {
    requireSound(id);
    return StorageJson.Changed.of(desk.change(id), desk.changed(id));
  }

  @GET
  @Path("/cabinets/{id}/shelf-heights")
  @Operation(summary = "Shelf heights of a job's case that suit the gear best")
  public StorageJson.Heights heights(@PathParam("id") String id) {
    requireCase(id);
    return desk.shelfHeights(id).map(StorageJson::heights).orElseThrow(StorageResource::notThere);
  }

  @PUT
  @Path("/cabinets/{id}/shelf-heights")
  @Operation(summary = "Takes those heights over into the job")
  public StorageJson.Heights takeHeights(@PathParam("id") String id) {
    requireCase(id);
    refuse(desk.takeHeights(id).stream().findFirst(), ProblemKind.NOT_NOW);
    return heights(id);
  }

  @PUT
  @Path("/pins")
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(summary = "Has a thing stay in a place, whatever is planned")
  @RequestBody(
      required = true,
      content = @Content(schema = @Schema(implementation = StorageJson.Pin.class)))
  public StorageJson.Plan pin(byte[] sent) {
    var body = Body.of(sent).only("thing", "cabinet", "place");
    var thing = body.text("thing", LONGEST);
    var cabinet = body.text("cabinet", LONGEST);
    var place = body.text("place", LONGEST);
    body.check();
    refuse(desk.pin(thing, cabinet, place), ProblemKind.FIELDS);
    return StorageJson.plan(planned(cabinet));
  }

  @DELETE
  @Path("/pins/{thing}")
  @Operation(summary = "Lets a thing go wherever is best")
  public void unpin(@PathParam("thing") String thing) {
    desk.unpin(ThingsResource.require(desk, thing).thing().id());
  }

  static void refuse(Optional<Problem> problem, ProblemKind kind) {
    problem.ifPresent(
        one -> {
          throw ProblemDetail.refusal(kind, one);
        });
  }

  private PlannedCabinet planned(String id) {
    requireSound(id);
    return desk.plan(id).orElseThrow(StorageResource::notThere);
  }

  /** One that can be read; else the problems say what is to be mended in it. */
  private GearCabinet requireSound(String id) {
    var kept = require(id);
    if (kept.cabinet().isEmpty()) {
      throw ProblemDetail.refusal(ProblemKind.NOT_NOW, kept.problems());
    }
    return kept;
  }

  private void requireCase(String id) {
    if (requireSound(id).job().isEmpty()) {
      throw ProblemDetail.notThere(
          "This cabinet is not the case of a job", "Move its shelves in its own fields");
    }
  }

  private GearCabinet require(String id) {
    return desk.cabinet(id).orElseThrow(StorageResource::notThere);
  }

  private static WebApplicationException notThere() {
    return ProblemDetail.notThere("There is no such cabinet", "Look at the list of cabinets");
  }

  private GearCabinet keep(Optional<String> id, Map<String, String> typed) {
    var read = desk.keep(id, typed);
    return read.value()
        .orElseThrow(() -> ProblemDetail.refusal(ProblemKind.FIELDS, read.problems()));
  }

  private static Map<String, String> read(byte[] sent) {
    return Body.form(sent, CabinetForm.fields(), CabinetForm.JOB);
  }
}
