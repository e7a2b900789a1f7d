package org.proofcut.core.setup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.proofcut.core.setup.CutsForTests.SIDE;
import static org.proofcut.core.setup.CutsForTests.assertPass;
import static org.proofcut.core.setup.CutsForTests.assertRefused;
import static org.proofcut.core.setup.CutsForTests.assertSet;
import static org.proofcut.core.setup.CutsForTests.cutter;
import static org.proofcut.core.setup.CutsForTests.depths;
import static org.proofcut.core.setup.CutsForTests.marked;
import static org.proofcut.core.setup.CutsForTests.setup;
import static org.proofcut.core.setup.CutsForTests.withAids;
import static org.proofcut.core.setup.CutsForTests.work;
import static org.proofcut.core.setup.Pass.Engages.AWAY_FROM_GUIDE;
import static org.proofcut.core.setup.Pass.Engages.BOTH_SIDES;
import static org.proofcut.core.setup.ShopsForTests.CONDITIONS;
import static org.proofcut.core.setup.ShopsForTests.EIGHTEEN;
import static org.proofcut.core.setup.ShopsForTests.SIXTEEN;
import static org.proofcut.core.setup.ShopsForTests.TABLE;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.proofcut.core.measure.Length;
import org.proofcut.core.setup.Refusal.Reason;
import org.proofcut.core.shop.RouterTable;
import org.proofcut.core.shop.StraightCutter;

/** Worked by hand: slots of 17.87 mm and rabbets of 17.82 mm, see {@link CutsForTests}. */
class RouterTableSetupTest {

  @Nested
  class Slots {

    @Test
    void cutterThatFits_cutsInOnePass() {
      var setup = setup(slot("6 mm", "100 mm", cutter("17.87 mm")));
      assertSet("100 mm", Setting.Role.FENCE, setup);
      assertSet("6 mm", Setting.Role.HEIGHT, setup);
      assertFalse(setup.usesStrip());
      assertEquals(1, setup.passes().size());
      assertPass(setup.passes().get(0), false, "6 mm", "100 mm", "117.87 mm", BOTH_SIDES);
      assertEquals(Feed.RIGHT_TO_LEFT, setup.feed());
      assertEquals(Guide.FENCE, setup.guide());
      // Nothing that is set moves the width of a cut made at once.
      assertEquals(Optional.empty(), setup.measures().get(0).correctedBy());
    }

    @Test
    void narrowerCutter_firstWithTheStrip_thenWithoutIt() {
      var setup = setup(slot("6 mm", "100 mm", SIXTEEN));
      // 17.87 − 16 = 1.87, on steps of 0.02: 1.88
      assertSet("1.88 mm", Setting.Role.STRIP, setup);
      // 100 + 1.88, on steps of 0.1
      assertSet("101.9 mm", Setting.Role.FENCE, setup);
      // 101.9 − 1.88; then the wood beyond it, away from the fence
      assertPass(setup.passes().get(0), true, "6 mm", "100.02 mm", "116.02 mm", BOTH_SIDES);
      assertPass(setup.passes().get(1), false, "6 mm", "101.9 mm", "117.9 mm", AWAY_FROM_GUIDE);
      assertEquals(2, setup.passes().size());
      assertEquals(Optional.of(Setting.Role.STRIP), setup.measures().get(0).correctedBy());
    }

    @Test
    void stripThinnerThanCanBeHandled_isRefused_atTheLimitItIsNot() {
      // 17.87 − 17.78 = 0.09, and 17.83 is the least that is accepted.
      assertRefused(Reason.STRIP_TOO_THIN, slot("6 mm", "100 mm", cutter("17.78 mm")));
      assertSet("0.1 mm", Setting.Role.STRIP, setup(slot("6 mm", "100 mm", cutter("17.77 mm"))));
    }

    @Test
    void severalDepths_allAtTheFirstOffset_thenAllAtTheSecond() {
      // At most 6 a pass; 0.5 kept for the last: 8.5 in two, 4.25 down to 4.2
      assertEquals(
          List.of("on 4.2 mm", "on 8.5 mm", "on 9 mm", "off 4.2 mm", "off 8.5 mm", "off 9 mm"),
          depths(setup(slot("9 mm", "100 mm", SIXTEEN))));
    }

    @Test
    void deepestPass_exactlyReached_isOnePass_beyondIt_endsWithALightOne() {
      assertEquals(List.of("off 6 mm"), depths(setup(slot("6 mm", "100 mm", cutter("17.87 mm")))));
      assertEquals(
          List.of("off 5.6 mm", "off 6.1 mm"),
          depths(setup(slot("6.1 mm", "100 mm", cutter("17.87 mm")))));
    }

    @Test
    void narrowCutter_takesAtMostHalfItsDiameter() {
      // Half of 9.6 is 4.8; 5.5 in two: 2.75 down to 2.7, then 2.8 more
      assertEquals(
          List.of("on 2.7 mm", "on 5.5 mm", "on 6 mm", "off 2.7 mm", "off 5.5 mm", "off 6 mm"),
          depths(setup(slot("6 mm", "100 mm", cutter("9.6 mm")))));
    }

    @Test
    void passesLieOnTheMachinesOwnSteps() {
      var half = table(TABLE, "0.1 mm", "0.5 mm");
      // 8.5 in two: 4.25 down to 4
      assertEquals(
          List.of("off 4 mm", "off 8.5 mm", "off 9 mm"),
          depths(setup(slot("9 mm", "100 mm", half, cutter("17.87 mm")))));
    }

    private Answer slot(String depth, String distance, StraightCutter cutter) {
      return slot(depth, distance, TABLE, cutter);
    }

    private Answer slot(String depth, String distance, RouterTable table, StraightCutter cutter) {
      return RouterTableSetup.slot(
          CutsForTests.slot(depth, distance, SIDE), table, cutter, CONDITIONS);
    }
  }

  @Nested
  class Rabbets {

    @Test
    void cutterThatRunsWellOffTheEdge_cutsInOnePass() {
      var setup = setup(rabbet(cutter("20 mm")));
      assertSet("17.82 mm", Setting.Role.FENCE, setup);
      assertTrue(setup.settings().get(0).from().contains("farthest"));
      assertEquals(1, setup.passes().size());
      // 2.18 of the cutter is buried in the fence
      assertPass(setup.passes().get(0), false, "6 mm", "-2.18 mm", "17.82 mm", AWAY_FROM_GUIDE);
      assertEquals(Optional.of(Setting.Role.FENCE), setup.measures().get(0).correctedBy());
    }

    @Test
    void onePass_needsTheOverlapBeyondTheEdge() {
      // 17.82 + 1
      assertFalse(setup(rabbet(cutter("18.82 mm"))).usesStrip());
      assertTrue(setup(rabbet(cutter("18.81 mm"))).usesStrip());
    }

    @Test
    void narrowerCutter_firstRunsOffTheEdge_thenMakesTheWall() {
      var setup = setup(rabbet(EIGHTEEN));
      // 17.82 ÷ 2 = 8.91, by rule 8.9; the fence stays
      assertSet("8.9 mm", Setting.Role.STRIP, setup);
      assertSet("17.82 mm", Setting.Role.FENCE, setup);
      // 17.82 − 8.9 − 18 to 17.82 − 8.9
      assertPass(setup.passes().get(0), true, "6 mm", "-9.08 mm", "8.92 mm", AWAY_FROM_GUIDE);
      assertPass(setup.passes().get(1), false, "6 mm", "-0.18 mm", "17.82 mm", AWAY_FROM_GUIDE);
      // The strip decides nothing, so the fence corrects the width.
      assertEquals(Optional.of(Setting.Role.FENCE), setup.measures().get(0).correctedBy());
    }

    @Test
    void cutterTooNarrowForTwoPasses_isRefused() {
      // 8.91 + 1
      setup(rabbet(cutter("9.91 mm")));
      assertRefused(Reason.CUTTER_TOO_NARROW, rabbet(cutter("9.9 mm")));
    }

    @Test
    void pieceAsWideAsTheRabbet_isRefused() {
      var work = work("400 mm", "17.82 mm", "17.7 mm");
      assertRefused(Reason.WORK_TOO_SMALL, rabbet(work, cutter("20 mm")));
      setup(rabbet(work("400 mm", "17.83 mm", "17.7 mm"), cutter("20 mm")));
    }

    private Answer rabbet(StraightCutter cutter) {
      return rabbet(SIDE, cutter);
    }

    private Answer rabbet(Work work, StraightCutter cutter) {
      return RouterTableSetup.rabbet(CutsForTests.rabbet(work), TABLE, cutter, CONDITIONS);
    }
  }

  /** Each at its limit, where it is still set up, and one step beyond, where it is refused. */
  @Nested
  class Refusals {

    @Test
    void cutterWiderThanAccepted() {
      setup(slot(SIDE, cutter("17.91 mm")));
      assertRefused(Reason.CUTTER_TOO_WIDE, slot(SIDE, cutter("17.92 mm")));
    }

    @Test
    void cutterTooNarrowForTwoOverlappingPasses() {
      // (17.87 + 1) ÷ 2
      setup(slot(SIDE, cutter("9.435 mm")));
      assertRefused(Reason.CUTTER_TOO_NARROW, slot(SIDE, cutter("9.434 mm")));
    }

    @Test
    void edgesShorterThanTheDepth() {
      var thick = work("400 mm", "900 mm", "40 mm");
      setup(slot("25 mm", "100 mm", thick, TABLE, SIXTEEN));
      assertRefused(Reason.CUTTER_TOO_SHORT, slot("25.1 mm", "100 mm", thick, TABLE, SIXTEEN));
    }

    @Test
    void edgesShorterThanTheDepthAsSet() {
      // 25.04 would do, but the height can only be set to 25.0 or 25.1; 25.06 is set to 25.1.
      var thick = work("400 mm", "900 mm", "40 mm");
      setup(slot("25.04 mm", "100 mm", thick, TABLE, SIXTEEN));
      assertRefused(Reason.CUTTER_TOO_SHORT, slot("25.06 mm", "100 mm", thick, TABLE, SIXTEEN));
    }

    @Test
    void depthThroughTheThinnestStock() {
      setup(slot("17.6 mm", "100 mm", SIDE, TABLE, SIXTEEN));
      assertRefused(Reason.TOO_DEEP, slot("17.7 mm", "100 mm", SIDE, TABLE, SIXTEEN));
    }

    @Test
    void passesFinerThanTheMachinesSteps() {
      // At most 6 a pass: less than one step of 7.
      var coarse = table(TABLE, "0.1 mm", "7 mm");
      var thick = work("400 mm", "900 mm", "40 mm");
      assertRefused(Reason.TOO_DEEP, slot("14 mm", "100 mm", thick, coarse, cutter("17.87 mm")));
      setup(slot("12 mm", "100 mm", thick, table(TABLE, "0.1 mm", "6 mm"), cutter("17.87 mm")));
    }

    @Test
    void fenceOutOfReach() {
      // 448.1 + 1.88 = 449.98, set to 450; 448.2 + 1.88 = 450.08, set to 450.1
      setup(slot("6 mm", "448.1 mm", SIDE, TABLE, SIXTEEN));
      assertRefused(Reason.OUT_OF_REACH, slot("6 mm", "448.2 mm", SIDE, TABLE, SIXTEEN));
    }

    @Test
    void edgeTooShortForTheFence() {
      setup(slot(work("150 mm", "450 mm", "17.7 mm"), SIXTEEN));
      assertRefused(Reason.WORK_TOO_SMALL, slot(work("149.9 mm", "400 mm", "17.7 mm"), SIXTEEN));
    }

    @Test
    void slotThatRunsOffThePiece() {
      // 100 + 17.88
      setup(slot(work("400 mm", "117.89 mm", "17.7 mm"), SIXTEEN));
      assertRefused(Reason.WORK_TOO_SMALL, slot(work("400 mm", "117.88 mm", "17.7 mm"), SIXTEEN));
    }

    @Test
    void endTooShortForTheOverhang_needsTheSquareBlock() {
      var atLimit = work("300 mm", "900 mm", "17.7 mm");
      assertEquals(Guide.FENCE, setup(slot(atLimit, SIXTEEN)).guide());
      var beyond = work("300 mm", "900.1 mm", "17.7 mm");
      assertRefused(Reason.END_TOO_SHORT_ON_FENCE, slot(beyond, SIXTEEN));
      var asked = CutsForTests.slot("6 mm", "100 mm", beyond);
      var pushed = RouterTableSetup.slot(asked, TABLE, SIXTEEN, withAids("square-block"));
      assertEquals(Guide.FENCE_WITH_BLOCK, setup(pushed).guide());
    }

    @Test
    void cutterSlowerThanTheSlowestStep() {
      assertEquals("1", setup(slot(SIDE, marked(SIXTEEN, 8_000))).speed().step().mark());
      assertRefused(Reason.TOO_FAST, slot(SIDE, marked(SIXTEEN, 7_999)));
    }

    @Test
    void cutterLargerThanTheOpening() {
      setup(rabbet(cutter("60 mm")));
      assertRefused(Reason.CUTTER_DOES_NOT_FIT_MACHINE, rabbet(cutter("60.1 mm")));
    }

    @Test
    void widthThatTheStripsStepsMiss() {
      // 17.75 − 16 = 1.75, set to 1.76: 17.76, and only 17.75 is accepted
      assertRefused(
          Reason.STEP_TOO_COARSE,
          RouterTableSetup.slot(CutsForTests.slotOfOneWidth(SIDE), TABLE, SIXTEEN, CONDITIONS));
      // 17.75 − 15.99 = 1.76
      setup(
          RouterTableSetup.slot(
              CutsForTests.slotOfOneWidth(SIDE), TABLE, cutter("15.99 mm"), CONDITIONS));
    }

    @Test
    void distanceThatTheFencesStepsMiss() {
      var coarse = table(TABLE, "1 mm", "0.1 mm");
      setup(slot("6 mm", "100.3 mm", SIDE, coarse, cutter("17.87 mm")));
      assertRefused(
          Reason.STEP_TOO_COARSE, slot("6 mm", "100.31 mm", SIDE, coarse, cutter("17.87 mm")));
    }

    @Test
    void depthThatTheHeightsStepsMiss() {
      var coarse = table(TABLE, "0.1 mm", "0.5 mm");
      setup(slot("6.2 mm", "100 mm", SIDE, coarse, SIXTEEN));
      assertRefused(Reason.STEP_TOO_COARSE, slot("6.21 mm", "100 mm", SIDE, coarse, SIXTEEN));
    }

    private Answer slot(Work work, StraightCutter cutter) {
      return slot("6 mm", "100 mm", work, TABLE, cutter);
    }

    private Answer slot(
        String depth, String distance, Work work, RouterTable table, StraightCutter cutter) {
      return RouterTableSetup.slot(
          CutsForTests.slot(depth, distance, work), table, cutter, CONDITIONS);
    }

    private Answer rabbet(StraightCutter cutter) {
      return RouterTableSetup.rabbet(CutsForTests.rabbet(SIDE), TABLE, cutter, CONDITIONS);
    }
  }

  private static RouterTable table(RouterTable like, String fenceStep, String heightStep) {
    return new RouterTable(
        like.id(),
        like.name(),
        like.speeds(),
        like.fenceReach(),
        Length.of(fenceStep),
        Length.of(heightStep),
        like.largestCutter(),
        true,
        true);
  }
}
