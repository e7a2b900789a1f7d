package org.proofcut.web.api;

import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import java.util.List;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.proofcut.bench.House;
import org.proofcut.bench.ShopFloor;

/** What the content of the house says. */
@Path("/api")
@Produces(MediaType.APPLICATION_JSON)
@Faults.Told
class ContentResource {

  private final House house;
  private final ShopFloor floor;

  ContentResource(House house, ShopFloor floor) {
    this.house = house;
    this.floor = floor;
  }

  /** A kind of problem, explained. */
  @Schema(name = "ProblemKind")
  record Kind(String type, String title, int status, String meaning) {}

  @GET
  @Path("/rules")
  @Operation(summary = "Every rule, with harm, hazard, controls, condition and all it stands on")
  public List<RuleJson.Entry> rules() {
    var content = house.content();
    return content.rulebook().rules().stream()
        .map(rule -> RuleJson.entry(rule, content, floor.unit()))
        .toList();
  }

  @GET
  @Path("/rules/by-harm")
  @Operation(summary = "Which rules speak of each harm of each cut, or why none does")
  public RuleJson.Matrix rulesByHarm() {
    return RuleJson.matrix(house.content());
  }

  @GET
  @Path("/content/trouble")
  @Operation(summary = "What to do when something has gone wrong")
  public List<RuleJson.Help> trouble() {
    return house.content().trouble().values().stream().map(RuleJson::help).toList();
  }

  @GET
  @Path("/problems/{id}")
  @Operation(summary = "What a kind of problem means; its address is the type of a problem detail")
  public Kind problem(@PathParam("id") String id) {
    return ProblemKind.withId(id)
        .map(kind -> new Kind(kind.type(), kind.title(), kind.status(), kind.meaning()))
        .orElseThrow(
            () ->
                ProblemDetail.notThere(
                    "There is no such kind of problem", "Take the type of a problem detail"));
  }
}
