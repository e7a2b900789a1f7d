package org.proofcut.core.plan;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.proofcut.core.casework.CaseDesign;
import org.proofcut.core.casework.CasesForTests;
import org.proofcut.core.casework.ProvenDepths;
import org.proofcut.core.checklist.OperationWording;
import org.proofcut.core.checklist.Wording;
import org.proofcut.core.evidence.Citation;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.measure.Length;
import org.proofcut.core.operation.OperationKind;
import org.proofcut.core.operation.OperationLimits;
import org.proofcut.core.safety.Check;
import org.proofcut.core.safety.Check.Pause;
import org.proofcut.core.safety.Control;
import org.proofcut.core.safety.Fact;
import org.proofcut.core.safety.Finding;
import org.proofcut.core.safety.GearNeed;
import org.proofcut.core.safety.Harm;
import org.proofcut.core.safety.Rulebook;
import org.proofcut.core.safety.SignalWord;
import org.proofcut.core.setup.ShopsForTests;
import org.proofcut.core.shop.GearKind;

/** The test cupboard planned in the test shop, with the smallest rulebook that asks for gear. */
public final class PlansForTests {

  public static final OperationLimits OPERATION =
      new OperationLimits(
          limit("over a strip's width", "6 mm"),
          limit("over a part's length", "5 mm"),
          limit("length of a proof piece", "305 mm"),
          limit("beyond its cut", "50 mm"));

  private static final Rulebook RULES =
      facts ->
          facts.value(Fact.MACHINE).orElseThrow().equals("none") ? List.of() : List.of(turning());

  private PlansForTests() {}

  public static Planner planner() {
    return new Planner(
        new Book(
            CasesForTests.CASE,
            CasesForTests.FIT,
            ShopsForTests.LIMITS,
            OPERATION,
            RULES,
            wording()));
  }

  public static Plan plan() {
    return plan(CasesForTests.cupboard(), ProvenDepths.NONE);
  }

  public static Plan plan(CaseDesign design, ProvenDepths proven) {
    return planner().plan(design, ShopsForTests.shop(), proven);
  }

  private static Finding turning() {
    return new Finding(
        "turning-cutter",
        Finding.Effect.CAUTION,
        SignalWord.WARNING,
        "A turning cutter throws chips and takes gloves in.",
        List.of(new Control(Control.Kind.GEAR, "Wear glasses")),
        List.of(
            new GearNeed("glasses", GearNeed.State.REQUIRED),
            new GearNeed("gloves", GearNeed.State.FORBIDDEN)),
        List.of(
            new Check(Pause.BEFORE_POWER, "What lies on the table?", "Only the work"),
            new Check(Pause.MACHINE, "Try the guard by hand. What does it do?", "It comes back")),
        Citation.COMMON_PRACTICE,
        "",
        List.of(),
        Optional.of(Harm.THROWN),
        Optional.empty(),
        Optional.of(false),
        Optional.empty());
  }

  private static Wording wording() {
    var operations = new LinkedHashMap<String, OperationWording>();
    for (var kind : OperationKind.values()) {
      operations.put(
          kind.id(),
          new OperationWording(
              kind.id(),
              kind.id(),
              "What it is for.",
              List.of(),
              List.of(
                  new Check(Pause.SET, "Where is the plug?", "Out"),
                  new Check(Pause.LEAVE_SAFE, "Does anything still turn?", "It stands still")),
              List.of()));
    }
    return new Wording(operations, byId(gear("glasses", 1), gear("gloves", 2)), Map.of(), Map.of());
  }

  private static Map<String, GearKind> byId(GearKind... kinds) {
    var byId = new LinkedHashMap<String, GearKind>();
    Arrays.stream(kinds).forEach(kind -> byId.put(kind.id(), kind));
    return byId;
  }

  private static GearKind gear(String id, int order) {
    return new GearKind(
        id,
        id,
        true,
        order,
        "M001",
        Optional.empty(),
        Optional.empty(),
        new GearKind.Prompt("Are they on?", "On"),
        new GearKind.Prompt("Are they off?", "Off"));
  }

  private static Worked<Length> limit(String name, String value) {
    return Worked.given(name, Length.of(value), Citation.COMMON_PRACTICE);
  }
}
