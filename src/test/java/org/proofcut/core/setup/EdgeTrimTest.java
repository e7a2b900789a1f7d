package org.proofcut.core.setup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.proofcut.core.setup.CutsForTests.assertRefused;
import static org.proofcut.core.setup.CutsForTests.assertSet;
import static org.proofcut.core.setup.CutsForTests.entered;
import static org.proofcut.core.setup.CutsForTests.setup;
import static org.proofcut.core.setup.CutsForTests.work;
import static org.proofcut.core.setup.ShopsForTests.CONDITIONS;
import static org.proofcut.core.setup.ShopsForTests.LIMITS;
import static org.proofcut.core.setup.ShopsForTests.SIXTEEN;
import static org.proofcut.core.setup.ShopsForTests.TABLE;
import static org.proofcut.core.setup.ShopsForTests.mm;

import java.util.Optional;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.proofcut.core.measure.Length;
import org.proofcut.core.setup.CutAsked.EdgeTrim;
import org.proofcut.core.setup.CutSimulation.Motion;
import org.proofcut.core.setup.CutSimulation.Truth;
import org.proofcut.core.setup.Pass.Engages;
import org.proofcut.core.setup.Refusal.Reason;

/** A piece 18 mm thick that is to be 300 mm wide; at most 1.5 mm a pass. */
class EdgeTrimTest {

  private static EdgeTrim trim(String now, String along, String thickness) {
    return new EdgeTrim(entered(now), entered("300 mm"), work(along, now, thickness));
  }

  private static Answer onTable(EdgeTrim asked) {
    return EdgeTrimSetup.table(asked, TABLE, SIXTEEN, CONDITIONS);
  }

  @Test
  void shimAndFence_areWhatAPassTakes_andTheCutterReachesAboveTheEdge() {
    var setup = setup(onTable(trim("301 mm", "600 mm", "18 mm")));
    assertSet("1 mm", Setting.Role.SHIM, setup);
    assertSet("1 mm", Setting.Role.FENCE, setup);
    assertSet("19 mm", Setting.Role.HEIGHT, setup);
    assertEquals(1, setup.passes().size());
    assertEquals(Engages.AWAY_FROM_GUIDE, setup.passes().get(0).engages());
    assertEquals(Feed.RIGHT_TO_LEFT, setup.feed());
    assertEquals(Optional.of(Setting.Role.FENCE), setup.measures().get(0).correctedBy());
  }

  @Test
  void whatComesOff_isSharedEvenly_onceItIsMoreThanAPassTakes() {
    assertEquals(1, setup(onTable(trim("301.5 mm", "600 mm", "18 mm"))).passes().size());
    // 1.51 in two: 0.755, to 0.74 downward
    var two = setup(onTable(trim("301.51 mm", "600 mm", "18 mm")));
    assertEquals(2, two.passes().size());
    assertSet("0.74 mm", Setting.Role.SHIM, two);
  }

  @Test
  void lessThanAShimCanBe_isRefused_atTheLimitItIsNot() {
    assertRefused(Reason.STRIP_TOO_THIN, onTable(trim("300.09 mm", "600 mm", "18 mm")));
    setup(onTable(trim("300.1 mm", "600 mm", "18 mm")));
  }

  @Test
  void edgeThatDoesNotGuideThePiece_isRefused() {
    assertRefused(Reason.WORK_TOO_SMALL, onTable(trim("301 mm", "149 mm", "18 mm")));
    var long1 =
        new EdgeTrim(entered("901 mm"), entered("900 mm"), work("200 mm", "901 mm", "18 mm"));
    assertRefused(Reason.END_TOO_SHORT_ON_FENCE, onTable(long1));
    var narrow = new EdgeTrim(entered("59 mm"), entered("58 mm"), work("600 mm", "59 mm", "18 mm"));
    assertRefused(Reason.WORK_TOO_SMALL, onTable(narrow));
  }

  @Test
  void edgesShorterThanThePieceIsThick_areRefused_longEnoughTheyAreNot() {
    // The edges of 25 mm reach 1 mm above it.
    setup(onTable(trim("301 mm", "600 mm", "24 mm")));
    assertRefused(Reason.CUTTER_TOO_SHORT, onTable(trim("301 mm", "600 mm", "24.2 mm")));
  }

  @Property(tries = 800, edgeCases = EdgeCasesMode.NONE)
  void anyTrim_leavesTheSizeOrAHairMore_withoutAClimbCut(
      @ForAll @IntRange(min = 300_120, max = 309_900) int micrometres) {
    var now = Length.ofMicrometres(micrometres);
    var setup = setup(onTable(trim(now.toString(), "600 mm", "18 mm")));
    var cut = CutSimulation.cut(setup, now, Truth.asMarked(setup));
    var left = cut.wood().reaches();
    assertTrue(left.isAtLeast(mm(300)), () -> left + " is under its size");
    // A step of the shim a pass.
    var most = LIMITS.settings().fineStep().value().times(setup.passes().size());
    assertTrue(left.minus(mm(300)).isAtMost(most), () -> left + " is left");
    for (var met : cut.passes()) {
      assertFalse(met.isClimb());
      assertTrue(met.pressesOn());
      assertTrue(met.farthest().minus(met.nearest()).isAtMost(LIMITS.router().mostTrim().value()));
    }
  }

  @Test
  void pieceBetweenCutterAndFence_isAClimbCut() {
    // Its far edge, 301 from the fence, cut by 1 mm.
    var wood = new CutSimulation(mm(301));
    assertTrue(wood.pass(Motion.TABLE, true, mm(300), mm(16), mm(19)).isClimb());
  }

  @Test
  void fedFromTheLeft_isAClimbCut() {
    var wood = new CutSimulation(mm(301));
    var wrong =
        new Motion(1, new CutSimulation.Direction(1, 0), new CutSimulation.Direction(0, -1), 1);
    assertTrue(wood.pass(wrong, true, mm(-15), mm(16), mm(19)).isClimb());
  }
}
