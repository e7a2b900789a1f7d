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
import org.proofcut.bench.KeptPerson;
import org.proofcut.bench.ShopFloor;
import org.proofcut.bench.StorageDesk;
import org.proofcut.bench.StoredThing;
import org.proofcut.core.intake.JobForm;
import org.proofcut.core.intake.PersonForm;

/** Things that have a place, who takes them out, and what is done with them. */
@Path("/api/gear")
@Produces(MediaType.APPLICATION_JSON)
@Faults.Told
class ThingsResource {

  private final StorageDesk desk;
  private final ShopFloor floor;

  ThingsResource(StorageDesk desk, ShopFloor floor) {
    this.desk = desk;
    this.floor = floor;
  }

  @GET
  @Path("/things")
  @Operation(summary = "Everything that wants a place, with where it lives and who has it")
  public List<StorageJson.Thing> things() {
    return desk.things().stream().map(one -> StorageJson.thing(one, floor.unit())).toList();
  }

  @GET
  @Path("/things/{id}")
  @Operation(summary = "One thing")
  public StorageJson.Thing thing(@PathParam("id") String id) {
    return StorageJson.thing(require(id), floor.unit());
  }

  @GET
  @Path("/things/{id}/acts")
  @Operation(summary = "What was done with a thing, in the order recorded")
  public List<StorageJson.Done> acts(@PathParam("id") String id) {
    require(id);
    return desk.record(id).stream().map(StorageJson::done).toList();
  }

  @POST
  @Path("/things/{id}/acts")
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(summary = "Records what was done with a thing, if it can be done now")
  @RequestBody(
      required = true,
      content = @Content(schema = @Schema(implementation = StorageJson.ActSent.class)))
  public StorageJson.Thing act(@PathParam("id") String id, byte[] sent) {
    require(id);
    var read = StorageActs.read(sent);
    StorageResource.refuse(desk.act(read.id(), id, read.act()), ProblemKind.NOT_NOW);
    return thing(id);
  }

  @GET
  @Path("/due")
  @Operation(summary = "What is to be looked at or replaced, what is overdue first")
  public List<StorageJson.Falls> due() {
    return desk.due().stream().map(StorageJson::falls).toList();
  }

  @GET
  @Path("/people")
  @Operation(summary = "All who take things out, with the heights that they reach")
  public List<StorageJson.Person> people() {
    return desk.people().stream().map(ThingsResource::json).toList();
  }

  @GET
  @Path("/people/form")
  @Operation(summary = "The fields of a person")
  public List<ShopJson.Input> form() {
    return ShopJson.inputs(PersonForm.fields());
  }

  @POST
  @Path("/people")
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(summary = "Keeps a new person, if all can be read")
  @RequestBody(
      required = true,
      content = @Content(schema = @Schema(implementation = StorageJson.Typed.class)))
  @APIResponse(
      responseCode = "201",
      description = "It is kept",
      content = @Content(schema = @Schema(implementation = StorageJson.Person.class)))
  public Response add(byte[] sent) {
    var kept = json(keep(Optional.empty(), read(sent)));
    return Response.created(URI.create("/api/gear/people/" + kept.id())).entity(kept).build();
  }

  @PUT
  @Path("/people/{id}")
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(summary = "Changes a person")
  @RequestBody(
      required = true,
      content = @Content(schema = @Schema(implementation = StorageJson.Typed.class)))
  public StorageJson.Person change(@PathParam("id") String id, byte[] sent) {
    return json(keep(Optional.of(person(id).id()), read(sent)));
  }

  @DELETE
  @Path("/people/{id}")
  @Operation(summary = "Takes a person out")
  public void discard(@PathParam("id") String id) {
    desk.discardPerson(person(id).id());
  }

  private static StorageJson.Person json(KeptPerson person) {
    return StorageJson.person(person, JobForm.unit(person.typed()));
  }

  private KeptPerson keep(Optional<String> id, Map<String, String> typed) {
    var read = desk.keepPerson(id, typed);
    return read.value()
        .orElseThrow(() -> ProblemDetail.refusal(ProblemKind.FIELDS, read.problems()));
  }

  private static Map<String, String> read(byte[] sent) {
    return Body.form(sent, PersonForm.fields(), JobForm.UNIT.name());
  }

  private StoredThing require(String id) {
    return require(desk, id);
  }

  static StoredThing require(StorageDesk desk, String id) {
    return desk.thing(id)
        .orElseThrow(
            () ->
                ProblemDetail.notThere(
                    "There is no such thing that wants a place", "Look at the list of things"));
  }

  private KeptPerson person(String id) {
    return desk.people().stream()
        .filter(one -> one.id().equals(id))
        .findFirst()
        .orElseThrow(
            () ->
                ProblemDetail.notThere("There is nobody like that", "Look at the list of people"));
  }
}
