package org.proofcut.web.api;

import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import java.util.List;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.eclipse.microprofile.openapi.annotations.parameters.RequestBody;
import org.proofcut.bench.DustDesk;
import org.proofcut.core.intake.DustForm;

/** What dust does, and what keeps it out. */
@Path("/api/dust")
@Produces(MediaType.APPLICATION_JSON)
@Faults.Told
class DustResource {

  private final DustDesk desk;

  DustResource(DustDesk desk) {
    this.desk = desk;
  }

  @GET
  @Operation(summary = "The fields that are asked for to work out dust")
  public List<ShopJson.Input> form() {
    return ShopJson.inputs(DustForm.fields(desk.book(), false));
  }

  @GET
  @Path("/woods")
  @Operation(summary = "Every wood and board that is known, with what its dust does")
  public List<DustJson.OneWood> woods() {
    return desk.book().woods().values().stream().map(DustJson::wood).toList();
  }

  @POST
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(summary = "What the dust of some work comes to; nothing is kept")
  @RequestBody(
      required = true,
      content = @Content(schema = @Schema(implementation = DustJson.Typed.class)))
  public DustJson.Answer answer(byte[] sent) {
    var typed = Body.form(sent, DustForm.fields(desk.book(), false), DustDesk.JOB);
    return DustJson.answer(desk.draft(typed), desk.book());
  }
}
