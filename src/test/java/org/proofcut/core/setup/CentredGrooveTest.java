package org.proofcut.core.setup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.proofcut.core.setup.CutsForTests.assertRefused;
import static org.proofcut.core.setup.CutsForTests.assertSet;
import static org.proofcut.core.setup.CutsForTests.at;
import static org.proofcut.core.setup.CutsForTests.band;
import static org.proofcut.core.setup.CutsForTests.cutter;
import static org.proofcut.core.setup.CutsForTests.entered;
import static org.proofcut.core.setup.CutsForTests.setup;
import static org.proofcut.core.setup.CutsForTests.withAids;
import static org.proofcut.core.setup.ShopsForTests.CONDITIONS;
import static org.proofcut.core.setup.ShopsForTests.LIMITS;
import static org.proofcut.core.setup.ShopsForTests.SAW;
import static org.proofcut.core.setup.ShopsForTests.TABLE;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.Combinators;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.statistics.Statistics;
import org.junit.jupiter.api.Test;
import org.proofcut.core.measure.Band;
import org.proofcut.core.measure.Length;
import org.proofcut.core.proof.Proof;
import org.proofcut.core.proof.Verdict;
import org.proofcut.core.setup.CutAsked.CentredGroove;
import org.proofcut.core.setup.CutSimulation.Truth;
import org.proofcut.core.setup.Measure.Dimension;
import org.proofcut.core.setup.Pass.Engages;
import org.proofcut.core.setup.Pass.Lies;
import org.proofcut.core.setup.Refusal.Reason;
import org.proofcut.core.shop.SawBlade;
import org.proofcut.core.shop.TableSaw.BlindCuts;

/** A groove of 6 mm in the middle of a piece 18 mm thick, unless a test says otherwise. */
class CentredGrooveTest {

  private static final CentredGroove GROOVE = groove("6 mm", "5.9 mm", "6.1 mm", "10 mm", "18 mm");

  private static CentredGroove groove(
      String width, String least, String most, String depth, String thickness) {
    return new CentredGroove(
        entered(width),
        band(least, most),
        entered(depth),
        at("60 mm"),
        new Work(at("500 mm"), at(thickness), at(thickness)));
  }

  @Test
  void fence_standsFarEnoughThatTheSecondFaceIsCutAwayFromIt() {
    // (18 + 6) ÷ 2 − 4 = 8: cut from 8 to 12; from the other face from 6 to 10.
    var setup = setup(onTable(GROOVE, "4 mm"));
    assertSet("8 mm", Setting.Role.FENCE, setup);
    var first = setup.passes().get(0);
    var second = setup.passes().get(1);
    assertEquals(band("8 mm", "12 mm"), first.takes());
    assertEquals(band("6 mm", "10 mm"), second.takes());
    assertEquals(Optional.of(Lies.MARKED_FACE_AT_FENCE), first.lies());
    assertEquals(Optional.of(Lies.OTHER_FACE_AT_FENCE), second.lies());
    assertEquals(Engages.BOTH_SIDES, first.engages());
    assertEquals(Engages.AWAY_FROM_GUIDE, second.engages());
  }

  @Test
  void bothFacesAreCut_beforeTheCutterIsRaised() {
    // A cutter of 4 takes 2 a pass; 0.5 stays for the last: 9.5 in five of 1.9.
    var depths =
        setup(onTable(GROOVE, "4 mm")).passes().stream()
            .map(pass -> pass.depth().value().toString())
            .toList();
    assertEquals(12, depths.size());
    assertEquals(List.of("1.9 mm", "1.9 mm", "3.8 mm", "3.8 mm"), depths.subList(0, 4));
    assertEquals(List.of("10 mm", "10 mm"), depths.subList(10, 12));
  }

  @Test
  void cutter_isAsWideAsBothCutsNeedToMeet_andNoNearerToTheGrooveThanAFenceMayBeOff() {
    // (6 + 1) ÷ 2 = 3.5; 6 − 2 · 0.3 = 5.4
    assertRefused(Reason.CUTTER_TOO_NARROW, onTable(GROOVE, "3.49 mm"));
    setup(onTable(GROOVE, "3.5 mm"));
    setup(onTable(GROOVE, "5.4 mm"));
    assertRefused(Reason.CUTTER_TOO_WIDE, onTable(GROOVE, "5.41 mm"));
    assertRefused(Reason.CUTTER_TOO_WIDE, onTable(GROOVE, "6 mm"));
  }

  @Test
  void fenceMovedByD_movesTheWidthByTwice_andTheProofCorrectsByHalf() {
    var setup = setup(onTable(GROOVE, "4 mm"));
    var width = measure(setup, Dimension.WIDTH);
    assertEquals(Optional.of(2), width.timesMoved());
    // Found 0.24 too wide: the fence goes 0.12 nearer.
    var verdicts =
        Proof.judge(
            setup,
            found(
                setup,
                List.of("6.24 mm", "6.24 mm", "6.24 mm"),
                List.of("5.88 mm", "5.88 mm", "5.88 mm", "5.88 mm")));
    var correction = verdicts.get(0).correction().orElseThrow();
    assertEquals(Length.of("0.12 mm").negated(), correction.by());
    assertEquals(Setting.Role.FENCE, correction.role());
  }

  @Test
  void sidesThatDiffer_areNoMatterOfTheFence() {
    var setup = setup(onTable(GROOVE, "4 mm"));
    var verdicts =
        Proof.judge(
            setup,
            found(
                setup,
                List.of("6 mm", "6 mm", "6 mm"),
                List.of("5.6 mm", "5.6 mm", "6.4 mm", "6.4 mm")));
    assertEquals(Verdict.Outcome.PROVEN, verdicts.get(0).outcome());
    assertEquals(Verdict.Outcome.UNEVEN, verdicts.get(1).outcome());
  }

  @Test
  void piecesOfUnevenThickness_areSorted_whereTheWidthWouldRunOutOfItsBand() {
    // Width 2 · 12 − T: 18.00 … 18.20 gives 6.1 … 5.9 about the middle of 18.1.
    assertEquals(
        Length.of("8.06 mm"), // (18.1 + 6) ÷ 2 − 4 = 8.05, to the nearest step of 0.02 upward
        setup(onTable(uneven("18 mm", "18.1 mm"), "4 mm"))
            .settings()
            .get(0)
            .set()
            .value()
            .plus(Length.of("0.04 mm")));
    assertRefused(Reason.STEP_TOO_COARSE, onTable(uneven("18 mm", "18.3 mm"), "4 mm"));
  }

  @Test
  void sidesThinnerThanTheLimit_areRefused_atTheLimitTheyAreNot() {
    // (T − 6) ÷ 2 = 4 at 14
    setup(onTable(groove("6 mm", "5.9 mm", "6.1 mm", "10 mm", "14 mm"), "4 mm"));
    assertRefused(
        Reason.WORK_TOO_SMALL,
        onTable(groove("6 mm", "5.9 mm", "6.1 mm", "10 mm", "13.98 mm"), "4 mm"));
  }

  @Test
  void deeperThanHalfOfWhatStands_isRefused_exactlyHalfIsNot() {
    var long30 = groove("6 mm", "5.9 mm", "6.1 mm", "30 mm", "18 mm");
    assertRefused(Reason.CUTTER_TOO_SHORT, onTable(long30, "4 mm"));
    var deeper = groove("6 mm", "5.9 mm", "6.1 mm", "30.1 mm", "18 mm");
    assertRefused(Reason.TOO_DEEP, onTable(deeper, "4 mm"));
  }

  @Test
  void atTheSaw_theKnifeHasToStay_andAFeatherboardPresses() {
    var stays = ShopsForTests.sawWith(new BlindCuts(true, Optional.empty()));
    var blade = blade("3.6 mm");
    var aids = withAids("featherboard");
    assertRefused(Reason.NOT_ALLOWED, CentredGrooveSetup.saw(GROOVE, SAW, blade, aids));
    assertRefused(Reason.AID_MISSING, CentredGrooveSetup.saw(GROOVE, stays, blade, CONDITIONS));
    var setup = setup(CentredGrooveSetup.saw(GROOVE, stays, blade, aids));
    // (18 + 6) ÷ 2 − 3.6 = 8.4; one pass for each face, whatever the depth.
    assertSet("8.4 mm", Setting.Role.FENCE, setup);
    assertEquals(2, setup.passes().size());
    assertRefused(
        Reason.CUTTER_TOO_NARROW, CentredGrooveSetup.saw(GROOVE, stays, blade("2.8 mm"), aids));
  }

  @Test
  void fenceOnTheOtherFigure_thatGivesTheSameGroove_isAClimbCut() {
    // (18 − 6) ÷ 2 = 6: from the other face the cutter takes 6 … 10, and 8 … 12 is gone.
    var setup = setup(onTable(GROOVE, "4 mm"));
    var wrong = setup.movedBy(Setting.Role.FENCE, Length.of("2 mm").negated());
    var cut = CutSimulation.cut(wrong, Length.of("18 mm"), Truth.asMarked(wrong));
    assertEquals(Length.of("6 mm"), cut.wood().width(), "the same groove");
    assertTrue(cut.passes().stream().anyMatch(CutSimulation.Met::isClimb));
    var right = CutSimulation.cut(setup, Length.of("18 mm"), Truth.asMarked(setup));
    assertFalse(right.passes().stream().anyMatch(CutSimulation.Met::isClimb));
  }

  @Provide
  Arbitrary<Setup> setups() {
    return Combinators.combine(
            RandomCuts.micrometres(3_000, 12_000),
            RandomCuts.micrometres(2_000, 12_000),
            RandomCuts.micrometres(12_000, 40_000),
            Arbitraries.integers().between(2_000, 10_500),
            Arbitraries.of(true, false))
        .as(
            (width, depth, thickness, cuts, table) -> {
              var asked =
                  new CentredGroove(
                      CutsForTests.entered(width.toString()),
                      Band.around(width, Length.of("0.05 mm")),
                      CutsForTests.entered(depth.toString()),
                      at("60 mm"),
                      new Work(at("500 mm"), RandomCuts.at(thickness), RandomCuts.at(thickness)));
              var one = Length.ofMicrometres(cuts);
              return table
                  ? onTable(asked, one.toString())
                  : CentredGrooveSetup.saw(
                      asked,
                      ShopsForTests.sawWith(new BlindCuts(true, Optional.empty())),
                      blade(one.toString()),
                      withAids("featherboard"));
            })
        .filter(100_000, Setup.class::isInstance)
        .map(Setup.class::cast);
  }

  /** Whatever the fence is off by within its tolerance: centred, in two meeting cuts, no climb. */
  @Property(tries = 1_500, edgeCases = EdgeCasesMode.NONE)
  void anySetup_cutsInTheMiddle_withoutAClimbCut(
      @ForAll("setups") Setup setup, @ForAll("off") Length off) {
    Assume.that(setup.asked() instanceof CentredGroove);
    Statistics.label("machine").collect(setup.machine().kind());
    var thickness = setup.asked().work().thickness().least();
    var exact = CutSimulation.cut(setup, thickness, Truth.asMarked(setup));
    assertTrue(
        measure(setup, Dimension.WIDTH).accepted().contains(exact.wood().width()),
        () -> exact.wood().width() + " for " + setup.asked());
    var marked = Truth.asMarked(setup);
    var cut = CutSimulation.cut(setup, thickness, new Truth(marked.cuts(), off, Length.ZERO));
    var wood = cut.wood();
    assertEquals(
        wood.nearWall(), thickness.minus(wood.farWall()), "both sides alike, off by " + off);
    assertEquals(wood.deepest(), wood.shallowest(), "no fin stands");
    assertEquals(exact.wood().width().plus(off.times(2)), wood.width());
    for (int i = 0; i < setup.passes().size(); i++) {
      var met = cut.passes().get(i);
      assertFalse(met.isClimb(), () -> "climb cut, off by " + off + " in " + setup.settings());
      assertTrue(met.pressesOn(), () -> "pulled off its guide in " + setup.settings());
      var most = setup.cutter().diameter().half().min(LIMITS.router().deepestPass().value());
      if (setup.machine().kind().equals("router-table")) {
        assertTrue(met.bite().isAtMost(most), () -> met + " bites more than " + most);
      }
    }
  }

  @Provide
  Arbitrary<Length> off() {
    return Arbitraries.integers().between(-290, 290).map(Length::ofMicrometres);
  }

  private static CentredGroove uneven(String thinnest, String thickest) {
    return new CentredGroove(
        GROOVE.width(),
        GROOVE.accepted(),
        GROOVE.depth(),
        GROOVE.standing(),
        new Work(at("500 mm"), band(thinnest, thickest), band(thinnest, thickest)));
  }

  private static Answer onTable(CentredGroove asked, String diameter) {
    return CentredGrooveSetup.table(asked, TABLE, cutter(diameter), CONDITIONS);
  }

  private static SawBlade blade(String kerf) {
    return new SawBlade(
        "blade", "blade", Length.of("250 mm"), Length.of(kerf), 24, Optional.of(7_000));
  }

  private static Measure measure(Setup setup, Dimension dimension) {
    return setup.measures().stream()
        .filter(one -> one.dimension() == dimension)
        .findFirst()
        .orElseThrow();
  }

  /** Width and sides as said; the depth as asked. */
  private static Function<Measure, List<Length>> found(
      Setup setup, List<String> width, List<String> sides) {
    return measure ->
        switch (measure.dimension()) {
          case WIDTH -> width.stream().map(Length::of).toList();
          case DISTANCE -> sides.stream().map(Length::of).toList();
          case DEPTH ->
              List.of(measure.target().value(), measure.target().value(), measure.target().value());
          case SIZE, RUN_ACROSS, RUN_THROUGH, RUN_ALONG, DIAMETER, FROM_END ->
              throw new AssertionError(setup.toString());
        };
  }
}
