package org.proofcut.logbook;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.proofcut.core.casework.CaseDesign;
import org.proofcut.core.casework.CasesForTests;
import org.proofcut.core.checklist.OperationWording;
import org.proofcut.core.checklist.Wording;
import org.proofcut.core.evidence.Amount;
import org.proofcut.core.evidence.Citation;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.measure.Length;
import org.proofcut.core.operation.OperationKind;
import org.proofcut.core.operation.OperationLimits;
import org.proofcut.core.plan.Book;
import org.proofcut.core.plan.Plan;
import org.proofcut.core.plan.Planner;
import org.proofcut.core.safety.Check;
import org.proofcut.core.safety.Check.Pause;
import org.proofcut.core.safety.Control;
import org.proofcut.core.safety.Fact;
import org.proofcut.core.safety.Finding;
import org.proofcut.core.safety.Finding.Effect;
import org.proofcut.core.safety.Finding.Seen;
import org.proofcut.core.safety.GearNeed;
import org.proofcut.core.safety.Rulebook;
import org.proofcut.core.safety.SignalWord;
import org.proofcut.core.setup.ShopsForTests;
import org.proofcut.core.shop.GearKind;
import org.proofcut.core.shop.GearKind.Prompt;

/** Whole plans, worked out with one rule and the fewest words. */
final class PlansForTests {

  private static final GearKind SHIELD =
      new GearKind(
          "face-shield",
          "face shield",
          false,
          1,
          "M013",
          Optional.empty(),
          Optional.empty(),
          new Prompt("Face shield down?", "down"),
          new Prompt("Face shield off?", "off"));

  private static final Wording WORDING =
      new Wording(
          Arrays.stream(OperationKind.values())
              .map(OperationKind::id)
              .map(
                  id ->
                      new OperationWording(
                          id,
                          id,
                          "for the test",
                          List.of(),
                          List.of(new Check(Pause.LEAVE_SAFE, "Plug?", "out")),
                          List.of()))
              .collect(Collectors.toMap(OperationWording::id, Function.identity())),
          Map.of(SHIELD.id(), SHIELD),
          Map.of(),
          Map.of());

  private static final OperationLimits OPERATIONS =
      new OperationLimits(limit("6 mm"), limit("5 mm"), limit("300 mm"), limit("60 mm"));

  /** Sees every fact that the step has: each type of fact is then in the plan. */
  private static final Rulebook SEES_ALL =
      facts ->
          List.of(
              new Finding(
                  "sees-all",
                  Effect.CAUTION,
                  SignalWord.WARNING,
                  "Chips fly.",
                  List.of(new Control(Control.Kind.GEAR, "Wear the shield")),
                  List.of(new GearNeed(SHIELD.id(), GearNeed.State.REQUIRED)),
                  List.of(new Check(Pause.BEFORE_POWER, "Table?", "clear")),
                  Citation.COMMON_PRACTICE,
                  "",
                  Arrays.stream(Fact.values())
                      .flatMap(
                          fact ->
                              facts.value(fact).map(value -> new Seen(fact.id(), value)).stream())
                      .toList()),
              new Finding(
                  "sees-a-limit",
                  Effect.CAUTION,
                  SignalWord.NOTICE,
                  "A limit that is no length.",
                  List.of(),
                  List.of(),
                  List.of(),
                  Citation.GEOMETRY,
                  "",
                  List.of(new Seen("limit", new Amount(new BigDecimal("11.30"), "m/s")))));

  private static final Planner PLANNER =
      new Planner(
          new Book(
              CasesForTests.CASE,
              CasesForTests.FIT,
              ShopsForTests.LIMITS,
              OPERATIONS,
              SEES_ALL,
              WORDING));

  private PlansForTests() {}

  static Plan cupboard() {
    return plan(CasesForTests.cupboard());
  }

  static Plan plan(CaseDesign design) {
    return PLANNER.plan(design, ShopsForTests.shop());
  }

  private static Worked<Length> limit(String value) {
    return Worked.given("limit", Length.of(value), Citation.COMMON_PRACTICE);
  }
}
