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
import org.proofcut.bench.House;
import org.proofcut.bench.SetUpDesk;
import org.proofcut.bench.ShopFloor;
import org.proofcut.core.intake.CutForm;

/** Cuts that belong to no job. */
@Path("/api/setups")
@Produces(MediaType.APPLICATION_JSON)
@Faults.Told
class SetUpResource {

  private static final int LONGEST_ID = 80;

  private final SetUpDesk desk;
  private final ShopFloor floor;
  private final House house;

  SetUpResource(SetUpDesk desk, ShopFloor floor, House house) {
    this.desk = desk;
    this.floor = floor;
    this.house = house;
  }

  @GET
  @Operation(summary = "Every kind of cut, with the fields that it asks for")
  public List<SetUpJson.Kind> kinds() {
    var shop = floor.shop();
    return desk.forms().stream().map(form -> SetUpJson.kind(form, shop)).toList();
  }

  @POST
  @Path("/{cut}")
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(summary = "What a cut comes to; nothing is kept")
  @RequestBody(
      required = true,
      content = @Content(schema = @Schema(implementation = SetUpJson.Typed.class)))
  public SetUpJson.Answer answer(@PathParam("cut") String cut, byte[] sent) {
    var form = known(cut);
    var typed = Body.form(sent, form.fields(floor.shop()));
    return SetUpJson.answer(desk.draft(form, typed), house.content().wording());
  }

  @POST
  @Path("/{cut}/proofs")
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(
      summary = "Keeps what a proof cut teaches; gives the cut as it is worked out from then on")
  @RequestBody(
      required = true,
      content = @Content(schema = @Schema(implementation = SetUpJson.Proven.class)))
  public SetUpJson.Answer learn(@PathParam("cut") String cut, byte[] sent) {
    var form = known(cut);
    var body = Body.of(sent).only("typed", "proof", "fingerprint");
    var typed = body.typed("typed", Body.names(form.fields(floor.shop())));
    var proof = body.text("proof", LONGEST_ID);
    var fingerprint = body.text("fingerprint", LONGEST_ID);
    body.check();
    desk.learn(form, typed, proof, fingerprint)
        .ifPresent(
            problem -> {
              throw ProblemDetail.refusal(ProblemKind.FIELDS, problem);
            });
    return SetUpJson.answer(desk.draft(form, typed), house.content().wording());
  }

  private CutForm known(String cut) {
    return desk.form(cut)
        .orElseThrow(
            () ->
                ProblemDetail.notThere(
                    "There is no such kind of cut", "Look at the list of set-ups"));
  }
}
