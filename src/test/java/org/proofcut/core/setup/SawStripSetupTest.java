package org.proofcut.core.setup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.proofcut.core.setup.ShopsForTests.mm;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Assume;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.measure.Band;
import org.proofcut.core.measure.Length;
import org.proofcut.core.setup.CutAsked.Parting;
import org.proofcut.core.setup.CutAsked.Strips;

class SawStripSetupTest {

  private static Answer strips(String thickness, int count, String along, String across) {
    return SawStripSetup.strips(
        new Strips(
            Worked.entered("strip", Length.of(thickness)),
            count,
            KnifeSetupTest.board(along, across, "18 mm", "18.1 mm")),
        ShopsForTests.SAW,
        ShopsForTests.RIP_BLADE,
        ShopsForTests.CONDITIONS);
  }

  private static List<Length> fences(Setup setup) {
    return setup.passes().stream().map(pass -> pass.guideAt().orElseThrow().value()).toList();
  }

  /** 120 − 6 − 2.8 = 111.2, and 8.8 less for each that follows. */
  @Test
  void fence_movesByStripAndKerf() {
    var setup = (Setup) strips("6 mm", 3, "700 mm", "120 mm");
    assertEquals(
        List.of(Length.of("111.2 mm"), Length.of("102.4 mm"), Length.of("93.6 mm")), fences(setup));
    assertEquals(mm(6), setup.setting(Setting.Role.STOP).orElseThrow().set().value());
    assertEquals(Setting.Role.STOP, setup.settings().get(0).role());
    assertEquals(Setting.Role.STOP, setup.measures().get(0).correctedBy().orElseThrow());
  }

  /** 25 mm have to stay between blade and fence: 33.8 − 6 − 2.8 leave just that. */
  @ParameterizedTest
  @CsvSource({
    "6 mm, 1, 700 mm, 33.7 mm, WORK_TOO_SMALL, fewer strips",
    "6 mm, 20, 700 mm, 120 mm, WORK_TOO_SMALL, fewer strips",
    "6 mm, 1, 299 mm, 120 mm, WORK_TOO_SMALL, longer board",
    "6 mm, 1, 400 mm, 450 mm, END_TOO_SHORT_ON_FENCE, narrower first",
    "6 mm, 1, 900 mm, 660 mm, OUT_OF_REACH, narrower first"
  })
  void board_thatCannotBeHeld_isRefusedWithAnotherWay(
      String strip, int count, String along, String across, Refusal.Reason why, String instead) {
    var refusal = assertInstanceOf(Refusal.class, strips(strip, count, along, across));
    assertEquals(why, refusal.reason());
    assertTrue(refusal.instead().contains(instead), refusal.instead());
  }

  @Test
  void board_thatJustServes_isCut() {
    assertInstanceOf(Setup.class, strips("6 mm", 1, "700 mm", "33.8 mm"));
    assertInstanceOf(Setup.class, strips("6 mm", 1, "300 mm", "120 mm"));
  }

  /** The other way round it would run between blade and fence. */
  @Test
  void ripOfAThinPiece_isRefused_andPointsHere() {
    var thin = ripped("24.9 mm");
    assertEquals(Refusal.Reason.WORK_TOO_SMALL, ((Refusal) thin).reason());
    assertTrue(((Refusal) thin).instead().contains("thin strip"));
    assertInstanceOf(Setup.class, ripped("25 mm"));
  }

  private static Answer ripped(String size) {
    var width = Length.of(size);
    return SawSetup.table(
        new Parting(
            Worked.entered("width wanted", width),
            true,
            true,
            new Work(new Band(mm(700), mm(700)), new Band(width, width), new Band(mm(18), mm(18)))),
        ShopsForTests.SAW,
        ShopsForTests.RIP_BLADE,
        ShopsForTests.CONDITIONS);
  }

  // ---- sawn as the sheet says ----------------------------------------------------------------

  /** What one pass makes of a board that rides the fence with one edge. */
  private record Sawn(Length atFence, Length fallsFree) {

    /** A piece between blade and fence that no push stick gets hold of is thrown. */
    boolean traps(Length narrowest) {
      return atFence.isLessThan(narrowest);
    }
  }

  /** The maker slides the board to the stop, the fence after it, and never reads the fence. */
  private static List<Sawn> saw(Setup setup, Length board, boolean stripAtFence) {
    var stop = setup.setting(Setting.Role.STOP).orElseThrow().read().value();
    var kerf = ShopsForTests.RIP_BLADE.kerf();
    var sawn = new ArrayList<Sawn>();
    var left = board;
    for (int i = 0; i < setup.passes().size(); i++) {
      var atFence = stripAtFence ? stop : left.minus(stop).minus(kerf);
      var free = left.minus(atFence).minus(kerf);
      sawn.add(new Sawn(atFence, free));
      left = stripAtFence ? free : atFence;
    }
    return sawn;
  }

  @Property(tries = 1_000, edgeCases = EdgeCasesMode.NONE)
  void everyStrip_isAsThickAsAsked_andTheFenceStandsWhereTheBoardPutsIt(
      @ForAll @IntRange(min = 10, max = 250) int tenths,
      @ForAll @IntRange(min = 1, max = 20) int count,
      @ForAll @IntRange(min = 300, max = 6000) int boardTenths) {
    var strip = ShopsForTests.tenths(tenths);
    var board = ShopsForTests.tenths(boardTenths);
    var answer = strips(strip.toString(), count, "900 mm", board.toString());
    Assume.that(answer instanceof Setup);
    var setup = (Setup) answer;
    var sawn = saw(setup, board, false);
    for (int i = 0; i < count; i++) {
      assertEquals(strip, sawn.get(i).fallsFree());
      assertFalse(sawn.get(i).traps(mm(25)), "trapped");
      assertEquals(fences(setup).get(i), sawn.get(i).atFence());
    }
  }

  @Nested
  class SeededFaults {

    private final Setup good = (Setup) strips("6 mm", 3, "700 mm", "120 mm");

    /** Cut on the fence's side every strip is as thick, and every one is trapped. */
    @Test
    void stripBetweenBladeAndFence_isTrapped() {
      var sawn = saw(good, mm(120), true);
      assertTrue(sawn.stream().allMatch(one -> one.traps(mm(25))));
    }

    /** With the fence left where it stood, the second pass cuts nothing but air. */
    @Test
    void fenceNotMoved_cutsNoSecondStrip() {
      var fence = fences(good).get(0);
      var left = fence;
      assertTrue(left.minus(fence).minus(ShopsForTests.RIP_BLADE.kerf()).isNegative());
    }

    @Test
    void fedFromBehind_isAClimbCut_andLifts() {
      for (var feed : List.of(CutSimulation.AWAY, CutSimulation.TOWARD_YOU)) {
        var met =
            new CutSimulation(mm(120))
                .passOfBlade(
                    feed,
                    fences(good).get(0),
                    ShopsForTests.RIP_BLADE.kerf(),
                    ShopsForTests.RIP_BLADE.diameter(),
                    good.setting(Setting.Role.HEIGHT).orElseThrow().set().value());
        assertEquals(feed == CutSimulation.TOWARD_YOU, met.isClimb());
        assertEquals(feed == CutSimulation.AWAY, met.pressesOn());
      }
    }
  }
}
