package org.proofcut.core.setup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.proofcut.core.setup.CutsForTests.SIDE;
import static org.proofcut.core.setup.CutsForTests.assertPass;
import static org.proofcut.core.setup.CutsForTests.assertRefused;
import static org.proofcut.core.setup.CutsForTests.assertSet;
import static org.proofcut.core.setup.CutsForTests.cutter;
import static org.proofcut.core.setup.CutsForTests.depths;
import static org.proofcut.core.setup.CutsForTests.setup;
import static org.proofcut.core.setup.CutsForTests.withAids;
import static org.proofcut.core.setup.CutsForTests.work;
import static org.proofcut.core.setup.Pass.Engages.BOTH_SIDES;
import static org.proofcut.core.setup.Pass.Engages.TOWARD_GUIDE;
import static org.proofcut.core.setup.ShopsForTests.CONDITIONS;
import static org.proofcut.core.setup.ShopsForTests.EIGHTEEN;
import static org.proofcut.core.setup.ShopsForTests.HAND;
import static org.proofcut.core.setup.ShopsForTests.SIXTEEN;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.proofcut.core.measure.Length;
import org.proofcut.core.setup.Refusal.Reason;
import org.proofcut.core.shop.HandRouter;
import org.proofcut.core.shop.StraightCutter;

/**
 * Worked by hand: slots of 17.87 mm and rabbets of 17.82 mm, see {@link CutsForTests}. From the
 * base edge to the centre are 80 mm, so to the edge of a 16 mm cutter 72.
 */
class HandRouterSetupTest {

  @Nested
  class Slots {

    @Test
    void straightedgeOnTheNearSide_firstTheFarWall_thenTheNearOne() {
      var setup = setup(slot("480 mm", SIXTEEN));
      // 480 − 72
      assertSet("408 mm", Setting.Role.STRAIGHTEDGE, setup);
      assertTrue(setup.settings().get(0).from().contains("between that edge and the cut"));
      assertSet("1.88 mm", Setting.Role.STRIP, setup);
      assertPass(setup.passes().get(0), true, "6 mm", "481.88 mm", "497.88 mm", BOTH_SIDES);
      assertPass(setup.passes().get(1), false, "6 mm", "480 mm", "496 mm", TOWARD_GUIDE);
      assertEquals(Guide.STRAIGHTEDGE, setup.guide());
      assertEquals(Feed.AWAY_FROM_YOU, setup.feed());
    }

    @Test
    void straightedgeBeyondTheCut_firstTheNearWall_thenTheFarOne() {
      var setup = setup(slot("50 mm", SIXTEEN));
      // 50 + 17.88 + 72 = 139.88, by rule 139.9
      assertSet("139.9 mm", Setting.Role.STRAIGHTEDGE, setup);
      assertTrue(setup.settings().get(0).from().contains("beyond the cut"));
      // The far wall at 139.9 − 72 = 67.9; with the strip 1.88 nearer to the reference edge
      assertPass(setup.passes().get(0), true, "6 mm", "50.02 mm", "66.02 mm", BOTH_SIDES);
      assertPass(setup.passes().get(1), false, "6 mm", "51.9 mm", "67.9 mm", TOWARD_GUIDE);
    }

    @Test
    void straightedge_liesBeyondOnlyWhereThereIsNoRoomOnTheNearSide() {
      assertSet("0 mm", Setting.Role.STRAIGHTEDGE, setup(slot("72 mm", SIXTEEN)));
      // 71.9 + 17.88 + 72 = 161.78
      assertSet("161.8 mm", Setting.Role.STRAIGHTEDGE, setup(slot("71.9 mm", SIXTEEN)));
    }

    @Test
    void cutterThatFits_cutsInOnePass() {
      var setup = setup(slot("480 mm", cutter("17.87 mm")));
      // 480 − (80 − 8.935) = 408.935, by rule 408.9; the near wall at 479.965
      assertSet("408.9 mm", Setting.Role.STRAIGHTEDGE, setup);
      assertPass(setup.passes().get(0), false, "6 mm", "479.965 mm", "497.835 mm", BOTH_SIDES);
      assertEquals(1, setup.passes().size());
    }

    @Test
    void severalDepths_allAtTheFirstOffset_thenAllAtTheSecond() {
      assertEquals(
          List.of("on 4.2 mm", "on 8.5 mm", "on 9 mm", "off 4.2 mm", "off 8.5 mm", "off 9 mm"),
          depths(setup(slot("9 mm", "480 mm", SIDE, SIXTEEN))));
    }
  }

  @Nested
  class Rabbets {

    @Test
    void cutterThatRunsWellOffTheEdge_cutsInOnePass() {
      var setup = setup(rabbet(cutter("20 mm")));
      // 0 + 17.82 + 70
      assertSet("87.82 mm", Setting.Role.STRAIGHTEDGE, setup);
      assertEquals(1, setup.passes().size());
      assertPass(setup.passes().get(0), false, "6 mm", "-2.18 mm", "17.82 mm", TOWARD_GUIDE);
      assertEquals(Optional.of(Setting.Role.STRAIGHTEDGE), setup.measures().get(0).correctedBy());
    }

    @Test
    void narrowerCutter_firstRunsOffTheEdge_thenMakesTheWall() {
      var setup = setup(rabbet(EIGHTEEN));
      // 0 + 17.82 + 71; the strip about 17.82 ÷ 2
      assertSet("88.82 mm", Setting.Role.STRAIGHTEDGE, setup);
      assertSet("8.9 mm", Setting.Role.STRIP, setup);
      assertPass(setup.passes().get(0), true, "6 mm", "-9.08 mm", "8.92 mm", TOWARD_GUIDE);
      assertPass(setup.passes().get(1), false, "6 mm", "-0.18 mm", "17.82 mm", TOWARD_GUIDE);
      assertEquals(Optional.of(Setting.Role.STRAIGHTEDGE), setup.measures().get(0).correctedBy());
    }

    private Answer rabbet(StraightCutter cutter) {
      return HandRouterSetup.rabbet(CutsForTests.rabbet(SIDE), HAND, cutter, CONDITIONS);
    }
  }

  /** Each at its limit, where it is still set up, and one step beyond, where it is refused. */
  @Nested
  class Refusals {

    @Test
    void cutterWiderThanAccepted() {
      setup(slot("480 mm", cutter("17.91 mm")));
      assertRefused(Reason.CUTTER_TOO_WIDE, slot("480 mm", cutter("17.92 mm")));
    }

    @Test
    void straightedgeMissing() {
      var asked = CutsForTests.slot("6 mm", "480 mm", SIDE);
      assertRefused(Reason.AID_MISSING, HandRouterSetup.slot(asked, HAND, SIXTEEN, withAids()));
      setup(HandRouterSetup.slot(asked, HAND, SIXTEEN, withAids("straightedge")));
    }

    @Test
    void cutterThatReachesTheBaseEdge() {
      var asked = CutsForTests.slot("6 mm", "480 mm", SIDE);
      setup(HandRouterSetup.slot(asked, base("8.1 mm"), SIXTEEN, CONDITIONS));
      assertRefused(
          Reason.CUTTER_DOES_NOT_FIT_MACHINE,
          HandRouterSetup.slot(asked, base("8 mm"), SIXTEEN, CONDITIONS));
    }

    @Test
    void cutterLargerThanTheBaseTakes() {
      var rabbet = CutsForTests.rabbet(SIDE);
      setup(HandRouterSetup.rabbet(rabbet, HAND, cutter("40 mm"), CONDITIONS));
      assertRefused(
          Reason.CUTTER_DOES_NOT_FIT_MACHINE,
          HandRouterSetup.rabbet(rabbet, HAND, cutter("40.1 mm"), CONDITIONS));
    }

    @Test
    void straightedgeOffThePiece() {
      setup(slot("6 mm", "50 mm", work("400 mm", "139.9 mm", "17.7 mm"), SIXTEEN));
      assertRefused(
          Reason.WORK_TOO_SMALL,
          slot("6 mm", "50 mm", work("400 mm", "139.8 mm", "17.7 mm"), SIXTEEN));
    }

    @Test
    void widthThatTheStripsStepsMiss() {
      var asked = CutsForTests.slotOfOneWidth(SIDE);
      setup(HandRouterSetup.slot(asked, HAND, cutter("15.99 mm"), CONDITIONS));
      assertRefused(Reason.STEP_TOO_COARSE, HandRouterSetup.slot(asked, HAND, SIXTEEN, CONDITIONS));
    }

    @Test
    void depthThroughTheThinnestStock() {
      setup(slot("17.6 mm", "480 mm", SIDE, SIXTEEN));
      assertRefused(Reason.TOO_DEEP, slot("17.7 mm", "480 mm", SIDE, SIXTEEN));
    }

    private HandRouter base(String toCentre) {
      return new HandRouter(
          HAND.id(),
          HAND.name(),
          HAND.speeds(),
          Length.of(toCentre),
          HAND.depthStep(),
          HAND.largestCutter(),
          true,
          true);
    }
  }

  private static Answer slot(String distance, StraightCutter cutter) {
    return slot("6 mm", distance, SIDE, cutter);
  }

  private static Answer slot(String depth, String distance, Work work, StraightCutter cutter) {
    return HandRouterSetup.slot(CutsForTests.slot(depth, distance, work), HAND, cutter, CONDITIONS);
  }
}
