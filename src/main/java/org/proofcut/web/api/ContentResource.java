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
import org.proofcut.content.Faulty;

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

  /** The shop's own content. */
  @Schema(name = "OwnContent")
  record Own(
      @Schema(description = "where it lies, or would") String folder,
      @Schema(description = "whether there is such a folder") boolean there,
      @Schema(description = "the files in force, by their paths below the folder")
          List<String> files,
      List<Changed> changes,
      @Schema(description = "why what lies there now is not used; what was in force stays so")
          List<ProblemDetail.One> faults,
      @Schema(description = "how many faults there are besides") int more) {}

  /** What the shop has of its own. */
  @Schema(name = "OwnChange")
  record Changed(
      String file,
      @Schema(description = "of the rule, limit or entry") String id,
      String words,
      @Schema(description = "whether ours rests on law and stays in force beside it")
          boolean oursStays) {}

  @GET
  @Path("/content/own")
  @Operation(summary = "What of the content is the shop's own, and what is wrong with it")
  public Own own() {
    var own = house.own();
    return new Own(
        own.folder().toString(),
        own.there(),
        own.files(),
        own.changes().stream()
            .map(one -> new Changed(one.file(), one.id(), one.words(), one.oursStays()))
            .toList(),
        own.refused().stream()
            .flatMap(faulty -> ProblemDetail.One.all(faulty.problems()).stream())
            .toList(),
        own.refused().map(Faulty::more).orElse(0));
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
