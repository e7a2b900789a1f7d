package org.proofcut.core.checklist;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.proofcut.core.shop.GearForTests.GLOVES;
import static org.proofcut.core.shop.GearForTests.MASK;
import static org.proofcut.core.shop.GearForTests.TODAY;
import static org.proofcut.core.shop.GearForTests.piece;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.proofcut.core.evidence.Citation;
import org.proofcut.core.plan.OperationSheet;
import org.proofcut.core.plan.PlansForTests;
import org.proofcut.core.safety.Finding;
import org.proofcut.core.safety.GearNeed;
import org.proofcut.core.safety.GearNeed.State;
import org.proofcut.core.safety.Harm;
import org.proofcut.core.safety.SignalWord;
import org.proofcut.core.shop.OwnedGear;
import org.proofcut.core.shop.Shop;

/** Which gear a sheet asks for, by what the rules say and the shop owns. */
class ChecklistGearTest {

  private static final Citation LAW = new Citation(Citation.Kind.LAW, "Mask law", "§ 3");
  private static final OperationSheet ANY = PlansForTests.plan().sheets().get(0);

  @Test
  void twoRules_askForTheStrongerClass() {
    var gear =
        gear(
            List.of(piece(MASK, "weak", "one", null)),
            finding(Citation.COMMON_PRACTICE, false, required("mask", "two")),
            finding(Citation.COMMON_PRACTICE, false, required("mask", "one")));
    assertEquals("mask, mark two", gear.wanted());
    assertFalse(gear.isAtHand(TODAY));
    assertFalse(gear.atHand());
    assertEquals("mask", gear.name());
  }

  @Test
  void pieceThatMeets_isNamedWithItsPlace() {
    var gear =
        gear(
            List.of(piece(MASK, "weak", "one", null), piece(MASK, "good", "two", TODAY)),
            finding(Citation.COMMON_PRACTICE, false, required("mask", "two")));
    assertEquals("good", gear.name());
    assertEquals("hook", gear.place());
    assertTrue(gear.isAtHand(TODAY));
    assertFalse(gear.isAtHand(TODAY.plusDays(1)), "out of date");
  }

  @Test
  void law_isTakenFromTheFindingThatRestsOnIt() {
    var practice = finding(Citation.COMMON_PRACTICE, false, required("mask", "three"));
    var law = finding(LAW, true, required("mask", "one"));
    assertEquals(Optional.of(LAW), gear(List.of(), practice, law).law());
    assertEquals(Optional.empty(), gear(List.of(), practice).law());
    // A law elsewhere is advice here.
    assertEquals(
        Optional.empty(), gear(List.of(), finding(LAW, false, required("mask", "one"))).law());
    // Law that forbids other gear asks for none.
    var other = finding(LAW, true, new GearNeed("gloves", State.FORBIDDEN));
    assertEquals(Optional.empty(), gear(List.of(), practice, other).law());
  }

  @Test
  void wantedAndForbidden_isOffAndSaysWhyOfBoth() {
    var edges =
        new GearNeed("gloves", State.REQUIRED, Optional.of("handling"), Optional.of("sheet edges"));
    var cutter =
        new GearNeed(
            "gloves", State.FORBIDDEN, Optional.empty(), Optional.of("a cutter pulls them in"));
    var gear =
        gear(
            List.of(piece(GLOVES, "gloves", "handling", null)),
            finding(Citation.COMMON_PRACTICE, false, edges),
            finding(Citation.COMMON_PRACTICE, false, cutter));
    assertFalse(gear.on());
    assertEquals(
        Optional.of("Wanted: sheet edges. Forbidden, and that wins: a cutter pulls them in."),
        gear.why());
    assertEquals(
        Optional.empty(),
        gear(List.of(), finding(Citation.COMMON_PRACTICE, false, cutter)).why(),
        "nobody wants them");
  }

  @Test
  void wantedAndForbidden_withoutWords_saysTheHazards() {
    var gear =
        gear(
            List.of(),
            finding(Citation.COMMON_PRACTICE, false, required("gloves", "handling")),
            finding(Citation.COMMON_PRACTICE, false, new GearNeed("gloves", State.FORBIDDEN)));
    assertEquals(Optional.of("Wanted: It hurts. Forbidden, and that wins: It hurts."), gear.why());
  }

  private static Item.Gear gear(List<OwnedGear> owned, Finding... findings) {
    var wording = wording();
    var items =
        Checklist.of(ANY.operation(), List.of(findings), shop(owned), wording).items().stream()
            .filter(Item.Gear.class::isInstance)
            .map(Item.Gear.class::cast)
            .toList();
    return items.get(0);
  }

  private static Shop shop(List<OwnedGear> owned) {
    return new Shop("shop", List.of(), List.of(), owned, List.of());
  }

  private static Wording wording() {
    var kind = ANY.operation().kind().id();
    return new Wording(
        Map.of(kind, new OperationWording(kind, kind, "", List.of(), List.of(), List.of())),
        Map.of("mask", MASK, "gloves", GLOVES),
        Map.of(),
        Map.of());
  }

  private static GearNeed required(String kind, String least) {
    return new GearNeed(kind, State.REQUIRED, Optional.of(least), Optional.empty());
  }

  private static Finding finding(Citation because, boolean law, GearNeed need) {
    return new Finding(
        "rule",
        Finding.Effect.CAUTION,
        SignalWord.WARNING,
        "It hurts.",
        List.of(),
        List.of(need),
        List.of(),
        because,
        "",
        List.of(),
        Optional.of(Harm.DUST),
        Optional.empty(),
        Optional.of(law),
        law ? Optional.of(because) : Optional.empty());
  }
}
