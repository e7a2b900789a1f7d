package org.proofcut.web.api;

import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import java.util.List;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.eclipse.microprofile.openapi.annotations.parameters.RequestBody;
import org.proofcut.bench.HandDesk;
import org.proofcut.bench.House;
import org.proofcut.bench.ShopFloor;
import org.proofcut.core.intake.HandForm;

/** Work without a cutter that belongs to no job. */
@Path("/api/hand-work")
@Produces(MediaType.APPLICATION_JSON)
@Faults.Told
class HandWorkResource {

  private final HandDesk desk;
  private final ShopFloor floor;
  private final House house;

  HandWorkResource(HandDesk desk, ShopFloor floor, House house) {
    this.desk = desk;
    this.floor = floor;
    this.house = house;
  }

  @GET
  @Operation(summary = "Every kind of work by hand, with the fields that it asks for")
  public List<HandWorkJson.Kind> kinds() {
    var shop = floor.shop();
    return desk.forms().stream().map(form -> HandWorkJson.kind(form, shop)).toList();
  }

  @POST
  @Path("/{task}")
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(summary = "What can hurt in a task and what to do about it; nothing is kept")
  @RequestBody(
      required = true,
      content = @Content(schema = @Schema(implementation = HandWorkJson.Typed.class)))
  public HandWorkJson.Answer answer(@PathParam("task") String task, byte[] sent) {
    var form = known(task);
    var typed = Body.form(sent, form.fields(floor.shop()));
    return HandWorkJson.answer(desk.draft(form, typed), house.content().wording());
  }

  private HandForm known(String task) {
    return desk.form(task)
        .orElseThrow(
            () ->
                ProblemDetail.notThere(
                    "There is no such kind of work by hand", "Look at the list of work by hand"));
  }
}
