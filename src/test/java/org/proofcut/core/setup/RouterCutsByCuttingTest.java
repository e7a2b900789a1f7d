package org.proofcut.core.setup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.proofcut.core.setup.ShopsForTests.CONDITIONS;
import static org.proofcut.core.setup.ShopsForTests.mm;

import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.statistics.Statistics;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.measure.Band;
import org.proofcut.core.measure.Length;
import org.proofcut.core.setup.CutSimulation.Motion;
import org.proofcut.core.setup.CutSimulation.Truth;
import org.proofcut.core.shop.RouterTable;

/** Every set-up for a router is cut in simulated wood, as its sheet says. */
class RouterCutsByCuttingTest {

  private static final SetupLimits LIMITS = ShopsForTests.LIMITS;

  @Provide
  Arbitrary<RandomCuts.Trial> trials() {
    return RandomCuts.trials();
  }

  @Property(tries = 3_000, edgeCases = EdgeCasesMode.NONE)
  void anySetup_cutsWhatWasAsked_withoutAClimbCut(@ForAll("trials") RandomCuts.Trial trial) {
    var answer = trial.answer();
    Statistics.label("machine, cut, passes").collect(describe(trial, answer));
    Statistics.label("answer")
        .collect(answer instanceof Setup)
        .coverage(coverage -> coverage.check(true).percentage(p -> p > 15));
    Assume.that(answer instanceof Setup);
    var setup = (Setup) answer;
    var cut = CutSimulation.cut(setup, trial.across(), Truth.asMarked(setup));
    assertSlotAsAsked(setup, cut.wood());
    var bites = Length.ZERO;
    for (int i = 0; i < setup.passes().size(); i++) {
      var met = cut.passes().get(i);
      assertFalse(met.isClimb(), () -> "climb cut in " + setup.settings() + setup.passes());
      assertTrue(met.pressesOn(), () -> "pulled off its guide in " + setup.settings());
      assertEquals(met.covers(), setup.passes().get(i).takes());
      assertSideAsSaid(setup.passes().get(i), met, setup.cutter().diameter());
      var most =
          setup
              .cutter()
              .diameter()
              .half()
              .min(LIMITS.router().deepestPass().value())
              .min(trial.cutter().cuttingLength());
      assertTrue(met.bite().isAtMost(most), () -> met + " bites more than " + most);
      if (setup.passes().get(i).stripOn() == setup.passes().get(0).stripOn()) {
        bites = bites.plus(met.bite());
      }
    }
    assertEquals(cut.wood().deepest(), bites, "the passes at the first offset reach the depth");
  }

  private static void assertSlotAsAsked(Setup setup, CutSimulation wood) {
    for (var measure : setup.measures()) {
      var found =
          switch (measure.dimension()) {
            case WIDTH -> wood.width();
            case DEPTH -> wood.deepest();
            case DISTANCE -> wood.nearWall();
            case SIZE, RUN_ACROSS, RUN_THROUGH, RUN_ALONG, DIAMETER, FROM_END ->
                throw new AssertionError("no router parts the stock");
          };
      assertTrue(measure.accepted().contains(found), () -> measure + " found " + found);
    }
    assertEquals(wood.deepest(), wood.shallowest(), "the floor is level and no fin stands");
    if (setup.asked() instanceof CutAsked.Rabbet) {
      assertEquals(Length.ZERO, wood.nearWall(), "a rabbet is open at the edge");
    }
  }

  /** What the sheet says about the side that meets wood, against what was met. */
  private static void assertSideAsSaid(Pass pass, CutSimulation.Met met, Length diameter) {
    var edge = diameter.half();
    var atGuideSide = met.nearest().equals(edge.negated());
    var atFarSide = met.farthest().equals(edge);
    switch (pass.engages()) {
      case BOTH_SIDES -> assertTrue(atGuideSide && atFarSide, () -> pass + " met " + met);
      case AWAY_FROM_GUIDE -> assertTrue(!atGuideSide && atFarSide, () -> pass + " met " + met);
      case TOWARD_GUIDE -> assertTrue(atGuideSide && !atFarSide, () -> pass + " met " + met);
    }
  }

  private static String describe(RandomCuts.Trial trial, Answer answer) {
    if (answer instanceof Refusal refusal) {
      return "refused " + refusal.reason();
    }
    var setup = (Setup) answer;
    return setup.machine().kind()
        + " "
        + setup.asked().getClass().getSimpleName()
        + (setup.usesStrip() ? " with strip" : " at once")
        + (setup.settings().get(0).from().contains("beyond") ? " beyond" : "");
  }

  /** The simulation has to see a wrong direction, or its silence says nothing. */
  @Nested
  class SeededFaults {

    private final CutAsked.Slot slot =
        new CutAsked.Slot(
            Worked.entered("width", Length.of("17.87 mm")),
            new Band(Length.of("17.83 mm"), Length.of("17.91 mm")),
            Worked.entered("depth", mm(6)),
            Worked.entered("distance", mm(100)),
            new Work(
                RandomCuts.at(mm(400)),
                RandomCuts.at(mm(900)),
                RandomCuts.at(Length.of("17.7 mm"))));

    @Test
    void tableSlot_asSetUp_isGood() {
      assertFalse(anyClimb(tableSlot()));
    }

    @Test
    void stripOnInTheWrongPass_isAClimbCutOnTheTable() {
      assertTrue(anyClimb(stripsSwapped(tableSlot())));
    }

    @Test
    void stripOnInTheWrongPass_isAClimbCutByHand() {
      assertFalse(anyClimb(handSlot(100)));
      assertTrue(anyClimb(stripsSwapped(handSlot(100))));
    }

    @Test
    void stripOnInTheWrongPass_isAClimbCutByHand_withTheStraightedgeBeyond() {
      assertFalse(anyClimb(handSlot(50)));
      assertTrue(anyClimb(stripsSwapped(handSlot(50))));
    }

    @Test
    void fenceMovedAwayFromTheCutter_isGood_towardIt_isAClimbCut() {
      // Away: the second pass lies farther from the fence than the first.
      var away = new CutSimulation(mm(900));
      away.pass(Motion.TABLE, true, mm(100), mm(16), mm(6));
      assertFalse(away.pass(Motion.TABLE, true, mm(102), mm(16), mm(6)).isClimb());
      var toward = new CutSimulation(mm(900));
      toward.pass(Motion.TABLE, true, mm(102), mm(16), mm(6));
      assertTrue(toward.pass(Motion.TABLE, true, mm(100), mm(16), mm(6)).isClimb());
    }

    @Test
    void handRouterWidenedTheTablesWay_isAClimbCut() {
      var wood = new CutSimulation(mm(900));
      wood.pass(Motion.BY_HAND, true, mm(100), mm(16), mm(6));
      assertTrue(wood.pass(Motion.BY_HAND, true, mm(102), mm(16), mm(6)).isClimb());
    }

    @Test
    void centredGroove_flippedPassOnTheFenceSide_isAClimbCut() {
      // 18 mm thick, groove 8 wide, cutter 6: near side at 13 − 6 = 7, flipped it lies at 5.
      var good = new CutSimulation(mm(18));
      good.pass(Motion.TABLE, true, mm(7), mm(6), mm(6));
      // Seen from the other face the slot 7…13 is 5…11, and the cutter again covers 7…13.
      var flipped = new CutSimulation(mm(18));
      flipped.pass(Motion.TABLE, true, mm(5), mm(6), mm(6));
      assertFalse(flipped.pass(Motion.TABLE, true, mm(7), mm(6), mm(6)).isClimb());
      // Near side at 5: seen from the other face the slot is 7…13, and the cutter covers 5…11.
      assertTrue(good.pass(Motion.TABLE, true, mm(5), mm(6), mm(6)).isClimb());
    }

    @Test
    void fullWidth_dragsNeitherWay() {
      var wood = new CutSimulation(mm(900));
      var met = wood.pass(Motion.TABLE, true, mm(100), mm(16), mm(6));
      assertEquals(0, met.drag().signum());
      assertTrue(met.pressesOn());
    }

    @Test
    void rabbetWithTheWorkBetweenFenceAndCutter_isAClimbCut() {
      // The far edge of a piece 90 mm across, cut by a cutter that stands beyond it.
      var wood = new CutSimulation(mm(90));
      assertTrue(wood.pass(Motion.TABLE, true, mm(80), mm(30), mm(6)).isClimb());
    }

    @Test
    void shallowPass_leavesAFloorThatIsNotLevel() {
      var wood = new CutSimulation(mm(900));
      wood.pass(Motion.TABLE, true, mm(100), mm(16), mm(6));
      wood.pass(Motion.TABLE, true, mm(102), mm(16), mm(5));
      assertEquals(mm(5), wood.shallowest());
      assertEquals(mm(6), wood.deepest());
    }

    @Test
    void gapBetweenPasses_leavesAFin() {
      var wood = new CutSimulation(mm(900));
      wood.pass(Motion.TABLE, true, mm(100), mm(6), mm(6));
      wood.pass(Motion.TABLE, true, mm(107), mm(6), mm(6));
      assertEquals(Length.ZERO, wood.shallowest());
    }

    private Setup tableSlot() {
      return (Setup)
          RouterTableSetup.slot(slot, tableOf("0.1 mm"), ShopsForTests.SIXTEEN, CONDITIONS);
    }

    private RouterTable tableOf(String step) {
      var t = ShopsForTests.TABLE;
      return new RouterTable(
          t.id(),
          t.name(),
          t.speeds(),
          t.fenceReach(),
          Length.of(step),
          Length.of(step),
          t.largestCutter(),
          true,
          true);
    }

    private Setup handSlot(long distance) {
      var asked =
          new CutAsked.Slot(
              slot.width(),
              slot.accepted(),
              slot.depth(),
              Worked.entered("distance", mm(distance)),
              slot.work());
      return (Setup)
          HandRouterSetup.slot(asked, ShopsForTests.HAND, ShopsForTests.SIXTEEN, CONDITIONS);
    }

    private boolean anyClimb(Setup setup) {
      return CutSimulation.cut(setup, mm(900), Truth.asMarked(setup)).passes().stream()
          .anyMatch(CutSimulation.Met::isClimb);
    }

    private Setup stripsSwapped(Setup s) {
      return s.with(
          s.passes().stream()
              .map(p -> new Pass(p.number(), !p.stripOn(), p.depth(), p.takes(), p.engages()))
              .toList());
    }
  }
}
