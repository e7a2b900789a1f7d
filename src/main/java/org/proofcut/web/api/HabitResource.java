package org.proofcut.web.api;

import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import java.time.Instant;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.eclipse.microprofile.openapi.annotations.parameters.RequestBody;
import org.proofcut.bench.HabitDesk;
import org.proofcut.bench.ShopFloor;
import org.proofcut.core.habit.Habit;
import org.proofcut.core.habit.Ruling;
import org.proofcut.core.habit.Trait;
import org.proofcut.core.intake.Read;
import org.proofcut.core.intake.RulingForms;

/** What proof cuts have taught of machines and cutters. */
@Path("/api/habits")
@Produces(MediaType.APPLICATION_JSON)
@Faults.Told
class HabitResource {

  private static final int LONGEST_ID = 400;

  /** As long as a form takes it; longer is told there in its own words. */
  private static final int LONGEST_WORDS = 4_000;

  private static final Set<String> SAYS =
      Arrays.stream(Says.values()).map(ShopJson::word).collect(Collectors.toUnmodifiableSet());

  private final HabitDesk desk;
  private final ShopFloor floor;

  HabitResource(HabitDesk desk, ShopFloor floor) {
    this.desk = desk;
    this.floor = floor;
  }

  /** What a ruling may say. */
  private enum Says {
    COUNT,
    LEAVE_OUT,
    SET_ASIDE,
    TAKE_UP,
    START_AFRESH
  }

  @GET
  @Operation(summary = "All that proof cuts have taught, with each proof")
  public List<HabitJson.One> habits() {
    return HabitJson.all(desk, floor.unit());
  }

  @POST
  @Path("/rulings")
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(summary = "Rules on what was taught; gives all as it stands then")
  @RequestBody(
      required = true,
      content = @Content(schema = @Schema(implementation = HabitJson.Sent.class)))
  public List<HabitJson.One> rule(byte[] sent) {
    var body = Body.of(sent).only("ruling", "trait", "proof", "changed", "because");
    var word = body.word("ruling", SAYS);
    var trait = body.text("trait", LONGEST_ID);
    body.check();
    var says = Says.valueOf(word.toUpperCase(Locale.ROOT).replace('-', '_'));
    var habit = known(trait, body);
    var proof = isOfAProof(says) ? proof(habit, body) : "";
    var typed = new LinkedHashMap<String, String>();
    for (var field : List.of("changed", "because")) {
      if (body.has(field)) {
        typed.put(field, body.text(field, LONGEST_WORDS));
      }
    }
    body.check();
    var said = desk.rule(at -> read(says, habit.trait(), proof, typed, at));
    if (said.value().isEmpty()) {
      throw ProblemDetail.refusal(ProblemKind.FIELDS, said.problems());
    }
    return habits();
  }

  private static Read<Ruling> read(
      Says says, Trait trait, String proof, Map<String, String> typed, Instant at) {
    return switch (says) {
      case COUNT -> RulingForms.accepted(trait, proof, at);
      case LEAVE_OUT -> RulingForms.leftOut(trait, proof, typed, at);
      case SET_ASIDE -> RulingForms.setAside(trait, typed, at);
      case TAKE_UP -> RulingForms.takenUp(trait, at);
      case START_AFRESH -> RulingForms.startedAfresh(trait, typed, at);
    };
  }

  private static boolean isOfAProof(Says says) {
    return says == Says.COUNT || says == Says.LEAVE_OUT;
  }

  private Habit known(String trait, Body body) {
    var habit = desk.habit(trait);
    if (habit.isEmpty()) {
      body.wrong(
          "trait",
          "No proof cut has shown any such thing",
          "a trait that /api/habits lists",
          "Look at the list and send one of it");
      body.check();
    }
    return habit.orElseThrow();
  }

  private static String proof(Habit habit, Body body) {
    var proof = body.text("proof", LONGEST_ID);
    if (!proof.isEmpty()
        && habit.lessons().stream().noneMatch(one -> one.observation().proof().equals(proof))) {
      body.wrong(
          "proof",
          "No such proof has shown it",
          "the proof of an observation that /api/habits lists there",
          "Look at the list and send one of it");
    }
    return proof;
  }
}
