package org.proofcut.web.api;

import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import java.util.Map;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.eclipse.microprofile.openapi.annotations.parameters.RequestBody;
import org.proofcut.bench.NoiseDesk;
import org.proofcut.bench.NoiseDraft;
import org.proofcut.core.intake.NoiseForm;

/** The noise of a day's work. */
@Path("/api")
@Produces(MediaType.APPLICATION_JSON)
@Faults.Told
class NoiseResource {

  private final NoiseDesk desk;

  NoiseResource(NoiseDesk desk) {
    this.desk = desk;
  }

  @POST
  @Path("/noise")
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(summary = "What a day's noise comes to, without a job; nothing is kept")
  @RequestBody(
      required = true,
      content = @Content(schema = @Schema(implementation = NoiseJson.Typed.class)))
  public NoiseJson.Day day(byte[] sent) {
    return answer(desk.draft(typed(sent, 0)));
  }

  @POST
  @Path("/jobs/{id}/noise")
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(summary = "What a day on the sheets of a job comes to; nothing is kept")
  @RequestBody(
      required = true,
      content = @Content(schema = @Schema(implementation = NoiseJson.Typed.class)))
  public NoiseJson.Day day(@PathParam("id") String id, byte[] sent) {
    int sheets = draft(id, Map.of()).sheets();
    return answer(draft(id, typed(sent, sheets)));
  }

  private NoiseDraft draft(String id, Map<String, String> typed) {
    return desk.draft(id, typed)
        .orElseThrow(
            () -> ProblemDetail.notThere("There is no such job", "Look at the list of jobs"));
  }

  private static NoiseJson.Day answer(NoiseDraft draft) {
    return NoiseJson.day(draft, ShopJson.inputs(NoiseForm.fields(draft.sheets())));
  }

  private static Map<String, String> typed(byte[] sent, int sheets) {
    return Body.form(sent, NoiseForm.fields(sheets));
  }
}
