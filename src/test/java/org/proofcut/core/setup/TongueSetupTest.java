package org.proofcut.core.setup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.proofcut.core.setup.CutsForTests.assertSet;
import static org.proofcut.core.setup.CutsForTests.band;
import static org.proofcut.core.setup.CutsForTests.cutter;
import static org.proofcut.core.setup.CutsForTests.entered;
import static org.proofcut.core.setup.CutsForTests.setup;
import static org.proofcut.core.setup.ShopsForTests.CONDITIONS;
import static org.proofcut.core.setup.ShopsForTests.LIMITS;
import static org.proofcut.core.setup.ShopsForTests.TABLE;
import static org.proofcut.core.setup.ShopsForTests.mm;
import static org.proofcut.core.setup.ShopsForTests.tenths;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import net.jqwik.api.Assume;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.statistics.Statistics;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.proofcut.core.habit.Observations;
import org.proofcut.core.habit.Trait;
import org.proofcut.core.measure.Band;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.Rounding;
import org.proofcut.core.proof.Proof;
import org.proofcut.core.proof.Verdict.Outcome;
import org.proofcut.core.setup.CutAsked.Tongue;
import org.proofcut.core.setup.CutSimulation.Direction;
import org.proofcut.core.setup.CutSimulation.Met;
import org.proofcut.core.setup.CutSimulation.Motion;
import org.proofcut.core.setup.CutSimulation.Truth;
import org.proofcut.core.setup.Measure.Dimension;
import org.proofcut.core.setup.Pass.Lies;

/** A tongue of 6.05 for a slot of 6.2, 9 long, in stock of 18 mm, unless a test says otherwise. */
class TongueSetupTest {

  private static Tongue tongue(
      String length, String thickness, String thinnest, String thickest, String across) {
    var aimed = Length.of(thickness);
    return new Tongue(
        entered(length),
        entered(thickness),
        new Band(aimed.minus(tenths(1)), aimed.plus(tenths(1))),
        KnifeSetupTest.board("700 mm", across, thinnest, thickest));
  }

  private static final Tongue USUAL = tongue("9 mm", "6.05 mm", "18 mm", "18.06 mm", "120 mm");

  private static Answer cut(Tongue asked, String diameter) {
    return TongueSetup.table(asked, TABLE, cutter(diameter), CONDITIONS);
  }

  /** (18.03 − 6.05) ÷ 2 = 5.99, in steps of a tenth 6. */
  @Test
  void height_sharesWhatIsBesideTheTongue_andTheFenceStandsAtItsLength() {
    var setup = setup(cut(USUAL, "16 mm"));
    assertSet("6 mm", Setting.Role.HEIGHT, setup);
    assertSet("9 mm", Setting.Role.FENCE, setup);
    assertEquals(Setting.Role.HEIGHT, setup.settings().get(0).role());
    assertEquals(Feed.RIGHT_TO_LEFT, setup.feed());
    assertEquals(2, setup.passes().size());
    assertEquals(
        band("-7 mm", "9 mm"), setup.passes().get(0).takes(), "partly buried in the fence");
  }

  /** 32 − 6.05 leaves 12.98, 13 as set: in passes of 6 at most 12.5, then the light last. */
  @Test
  void deepCheeks_areCutFromBothFacesAtEachHeight_theLastPassIsLight() {
    var setup = setup(cut(tongue("9 mm", "6.05 mm", "32 mm", "32.02 mm", "120 mm"), "16 mm"));
    var passes = setup.passes();
    assertEquals(
        List.of("4.1 mm", "4.1 mm", "8.3 mm", "8.3 mm", "12.5 mm", "12.5 mm", "13 mm", "13 mm"),
        passes.stream().map(pass -> pass.depth().value().toString()).toList());
    for (int i = 0; i < passes.size(); i++) {
      var lies = i % 2 == 0 ? Lies.MARKED_FACE_DOWN : Lies.OTHER_FACE_DOWN;
      assertEquals(Optional.of(lies), passes.get(i).lies());
    }
  }

  @ParameterizedTest
  @CsvSource({
    "9 mm, 6.05 mm, 18 mm, 18.21 mm, 120 mm, 16 mm, STEP_TOO_COARSE, Sort the pieces",
    // 5.99 − 5.9 would be 6.13 to 6.27; nothing between 6 and 6.1 can be set.
    "9 mm, 6.05 mm, 18.1 mm, 18.25 mm, 120 mm, 16 mm, STEP_TOO_COARSE, set more finely",
    "9 mm, 3.99 mm, 18 mm, 18 mm, 120 mm, 16 mm, WORK_TOO_SMALL, loose strip",
    "9 mm, 6.05 mm, 6.2 mm, 6.2 mm, 120 mm, 16 mm, WORK_TOO_SMALL, thicker stock",
    "15.1 mm, 6.05 mm, 18 mm, 18 mm, 120 mm, 16 mm, CUTTER_TOO_NARROW, at the saw",
    "9 mm, 6.05 mm, 18 mm, 18 mm, 59.9 mm, 16 mm, WORK_TOO_SMALL, wider board",
    "9 mm, 6.05 mm, 18 mm, 18 mm, 120 mm, 61 mm, CUTTER_DOES_NOT_FIT_MACHINE, smaller"
  })
  void whatCannotBeCut_isRefusedWithAnotherWay(
      String length,
      String thickness,
      String thinnest,
      String thickest,
      String across,
      String diameter,
      Refusal.Reason why,
      String instead) {
    var refusal =
        assertInstanceOf(
            Refusal.class, cut(tongue(length, thickness, thinnest, thickest, across), diameter));
    assertEquals(why, refusal.reason(), refusal.what());
    assertTrue(refusal.instead().contains(instead), refusal.instead());
  }

  @ParameterizedTest
  @CsvSource({
    "9 mm, 6.05 mm, 18 mm, 18.1 mm, 120 mm, 16 mm",
    "9 mm, 4 mm, 18 mm, 18 mm, 120 mm, 16 mm",
    "15 mm, 6 mm, 18 mm, 18 mm, 120 mm, 16 mm",
    "9 mm, 6 mm, 18 mm, 18 mm, 60 mm, 10 mm"
  })
  void whatJustServes_isCut(
      String length,
      String thickness,
      String thinnest,
      String thickest,
      String across,
      String diameter) {
    setup(cut(tongue(length, thickness, thinnest, thickest, across), diameter));
  }

  // ---- the proof -----------------------------------------------------------------------------

  private static Function<Measure, List<Length>> found(String thickness, String length) {
    return measure ->
        Collections.nCopies(
            measure.readings(),
            Length.of(measure.dimension() == Dimension.SIZE ? thickness : length));
  }

  @Test
  void tongueTooThick_raisesTheCutterByHalf_tooThin_lowersIt() {
    var setup = setup(cut(USUAL, "16 mm"));
    var thick = Proof.judge(setup, found("6.25 mm", "9 mm")).get(0);
    assertEquals(Setting.Role.HEIGHT, thick.correction().orElseThrow().role());
    assertEquals(tenths(1), thick.correction().orElseThrow().by());
    var thin = Proof.judge(setup, found("5.85 mm", "9 mm")).get(0);
    assertEquals(tenths(1).negated(), thin.correction().orElseThrow().by());
    assertEquals(Outcome.PROVEN, Proof.judge(setup, found("6.15 mm", "9.2 mm")).get(0).outcome());
  }

  @Test
  void tongueTooThick_neverAsksForACutterBelowTheTable() {
    var shallow = setup(cut(tongue("9 mm", "17.6 mm", "18 mm", "18 mm", "120 mm"), "16 mm"));
    assertSet("0.2 mm", Setting.Role.HEIGHT, shallow);
    // Only a cutter 0.3 lower would mend it: below the table.
    var verdict = Proof.judge(shallow, found("17 mm", "9 mm")).get(0);
    assertEquals(Outcome.OTHER_CUTTER, verdict.outcome());
    assertTrue(verdict.correction().isEmpty());
  }

  @Test
  void tongueTooLong_movesTheFence() {
    var setup = setup(cut(USUAL, "16 mm"));
    var verdict = Proof.judge(setup, found("6.05 mm", "9.3 mm")).get(1);
    assertEquals(Setting.Role.FENCE, verdict.correction().orElseThrow().role());
    assertEquals(Length.of("-0.3 mm"), verdict.correction().orElseThrow().by());
  }

  /** Its length tells of the fence as a rabbet's width does; of the height nothing is known. */
  @Test
  void proof_tellsOfTheFenceAlone() {
    var told =
        Observations.of(
            "p1",
            setup(cut(USUAL, "16 mm")),
            found("6.25 mm", "9.04 mm"),
            Instant.parse("2026-03-02T08:00:00Z"));
    assertEquals(1, told.size());
    assertEquals(
        new Trait.ScaleOffset("table", "test", Trait.Datum.FENCE_TO_FARTHEST_EDGE),
        told.get(0).trait());
    assertEquals(Length.of("0.04 mm"), told.get(0).value());
  }

  // ---- cut as the sheet says -----------------------------------------------------------------

  /** Both faces of a board, each cut by itself: the edge rides the fence in either. */
  private record Board(CutSimulation marked, CutSimulation other, List<Met> met) {

    Length tongue(Length thickness) {
      return thickness.minus(marked.deepest()).minus(other.deepest());
    }
  }

  private static Board board(Setup setup, Truth truth, Motion motion) {
    var across = setup.asked().work().acrossGuide().least();
    var board = new Board(new CutSimulation(across), new CutSimulation(across), new ArrayList<>());
    var fence = setup.setting(Setting.Role.FENCE).orElseThrow();
    assertTrue(fence.from().startsWith("to the farthest cutting edge"), fence.from());
    var far = fence.read().value().plus(truth.guideReadsTooLittleBy());
    for (var pass : setup.passes()) {
      var face =
          pass.lies().orElseThrow() == Lies.MARKED_FACE_DOWN ? board.marked() : board.other();
      board
          .met()
          .add(
              face.pass(
                  motion,
                  true,
                  far.minus(truth.cuts()),
                  truth.cuts(),
                  setup.read(pass).plus(truth.heightReadsTooLittleBy())));
    }
    return board;
  }

  @Property(tries = 2_000, edgeCases = EdgeCasesMode.NONE)
  void anyTongue_cutAsSet_fitsInThinnestAndThickest_andNoPassIsAClimbCut(
      @ForAll @IntRange(min = 20, max = 200) int lengthTenths,
      @ForAll @IntRange(min = 380, max = 1600) int tongueHundredths,
      @ForAll @IntRange(min = 1000, max = 4500) int stockHundredths,
      @ForAll @IntRange(min = 0, max = 14) int variesHundredths,
      @ForAll @IntRange(min = 6, max = 25) int diameter,
      @ForAll @IntRange(min = -20, max = 20) int cutsWiderHundredths) {
    var thinnest = hundredths(stockHundredths);
    var thickest = hundredths(stockHundredths + variesHundredths);
    var answer =
        cut(
            tongue(
                tenths(lengthTenths).toString(),
                hundredths(tongueHundredths).toString(),
                thinnest.toString(),
                thickest.toString(),
                "120 mm"),
            diameter + " mm");
    Statistics.label("set up")
        .collect(answer instanceof Setup)
        .coverage(coverage -> coverage.check(true).percentage(p -> p > 15));
    Assume.that(answer instanceof Setup);
    var setup = (Setup) answer;
    var asked = (Tongue) setup.asked();
    var truth =
        new Truth(mm(diameter).plus(hundredths(cutsWiderHundredths)), Length.ZERO, Length.ZERO);
    var board = board(setup, truth, Motion.TABLE);
    for (var thickness : List.of(thinnest, thickest)) {
      assertTrue(asked.accepted().contains(board.tongue(thickness)));
    }
    assertEquals(board.marked().deepest(), board.other().deepest(), "in the middle");
    assertEquals(
        tenths(lengthTenths).roundedTo(LIMITS.settings().fineStep().value(), Rounding.NEAREST),
        board.marked().farWall());
    for (var face : List.of(board.marked(), board.other())) {
      assertEquals(Length.ZERO, face.nearWall(), "open at the edge");
      assertEquals(face.deepest(), face.shallowest(), "no fin");
    }
    var most = mm(diameter).half().min(LIMITS.router().deepestPass().value());
    for (var met : board.met()) {
      assertFalse(met.isClimb(), () -> "climb cut in " + setup.passes());
      assertTrue(met.pressesOn(), () -> "pulled off the fence in " + setup.passes());
      assertTrue(met.bite().isAtMost(most), () -> met + " bites more than " + most);
    }
  }

  private static Length hundredths(int hundredths) {
    return Length.HUNDREDTH.times(hundredths);
  }

  @Nested
  class SeededFaults {

    private final Setup good = setup(cut(USUAL, "16 mm"));

    @Test
    void asSetUp_isGood() {
      var met = board(good, Truth.asMarked(good), Motion.TABLE).met();
      assertTrue(met.stream().noneMatch(Met::isClimb));
      assertTrue(met.stream().allMatch(Met::pressesOn));
    }

    @Test
    void fedFromLeftToRight_everyPassIsAClimbCut() {
      var wrong = new Motion(1, new Direction(1, 0), new Direction(0, -1), 1);
      assertTrue(board(good, Truth.asMarked(good), wrong).met().stream().allMatch(Met::isClimb));
    }

    @Test
    void cutterTurningTheOtherWay_everyPassIsAClimbCut() {
      var wrong = new Motion(-1, new Direction(-1, 0), new Direction(0, -1), 1);
      assertTrue(board(good, Truth.asMarked(good), wrong).met().stream().allMatch(Met::isClimb));
    }

    /** On edge, one face on the fence, the tongue between cutter and fence. */
    @Test
    void tongueBetweenCutterAndFence_isAClimbCut() {
      var onEdge = new CutSimulation(mm(18));
      assertTrue(onEdge.pass(Motion.TABLE, true, mm(12), mm(16), mm(9)).isClimb());
    }
  }
}
