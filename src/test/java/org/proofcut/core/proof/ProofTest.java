package org.proofcut.core.proof;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.measure.Band;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.Rounding;
import org.proofcut.core.proof.Verdict.Correction;
import org.proofcut.core.proof.Verdict.Outcome;
import org.proofcut.core.setup.CutAsked;
import org.proofcut.core.setup.Measure;
import org.proofcut.core.setup.Measure.Dimension;
import org.proofcut.core.setup.RouterTableSetup;
import org.proofcut.core.setup.SawSetup;
import org.proofcut.core.setup.Setting.Role;
import org.proofcut.core.setup.Setup;
import org.proofcut.core.setup.ShopsForTests;
import org.proofcut.core.setup.Work;

/**
 * A slot of 17.87 mm (17.83 to 17.91), 6 mm deep (± 0.2), 100 mm from the edge (± 0.3), with a 16
 * mm cutter: strip 1.88 on steps of 0.02; fence 101.9 and height 6 on steps of 0.1.
 */
class ProofTest {

  private static final Setup SETUP = setup("16 mm");

  @Test
  void readings_atBothEndsOfTheBand_areProven() {
    var verdict = judge(Dimension.WIDTH, "17.83 mm", "17.91 mm", "17.87 mm");
    assertTrue(verdict.isProven());
    assertEquals(Optional.empty(), verdict.correction());
  }

  @Test
  void oneReadingOut_isNotProven() {
    assertFalse(judge(Dimension.WIDTH, "17.87 mm", "17.911 mm", "17.87 mm").isProven());
    assertFalse(judge(Dimension.WIDTH, "17.829 mm", "17.87 mm", "17.87 mm").isProven());
  }

  @Test
  void missingReading_isAskedFor() {
    assertEquals(Outcome.MORE_READINGS, judge(Dimension.WIDTH, "17.87 mm", "17.87 mm").outcome());
    assertTrue(judge(Dimension.DISTANCE, "100 mm", "100 mm").isProven());
  }

  @Test
  void slotTooNarrow_wantsAThickerStrip() {
    // 17.87 − 17.71 = 0.16
    assertChange(Role.STRIP, "0.16 mm", judge(Dimension.WIDTH, "17.71 mm", "17.71 mm", "17.71 mm"));
  }

  @Test
  void slotTooWide_wantsAThinnerStrip() {
    assertChange(Role.STRIP, "-0.2 mm", judge(Dimension.WIDTH, "18.07 mm", "18.07 mm", "18.07 mm"));
  }

  @Test
  void slotTooDeep_wantsLessHeight() {
    // 6 − (6.3 + 6.4) ÷ 2 = −0.35, which goes to −0.3
    assertChange(Role.HEIGHT, "-0.3 mm", judge(Dimension.DEPTH, "6.3 mm", "6.4 mm", "6.35 mm"));
  }

  @Test
  void slotTooNearTheEdge_wantsTheFenceFartherAway() {
    assertChange(Role.FENCE, "0.4 mm", judge(Dimension.DISTANCE, "99.6 mm", "99.6 mm"));
  }

  @Test
  void correction_liesOnTheStepsOfWhatIsSet() {
    // 17.87 − 17.82 = 0.05, half way between 0.04 and 0.06: upward
    assertChange(Role.STRIP, "0.06 mm", judge(Dimension.WIDTH, "17.79 mm", "17.85 mm", "17.82 mm"));
  }

  @Test
  void readingsFartherApartThanTheBand_areUneven() {
    assertEquals(
        Outcome.UNEVEN, judge(Dimension.WIDTH, "17.80 mm", "17.881 mm", "17.84 mm").outcome());
  }

  @Test
  void readingsThatNoStepBringsIn_thoughEvenOnesWouldCome_areUneven() {
    // As wide as the band, 0.08, and 0.01 off: no step of 0.02 moves them by 0.01.
    assertEquals(
        Outcome.UNEVEN, judge(Dimension.WIDTH, "17.82 mm", "17.90 mm", "17.86 mm").outcome());
  }

  @Test
  void evenReadings_thatNothingMoves_wantAnotherCutter() {
    var atOnce = setup("17.87 mm");
    var found = readings("17.95 mm", "17.95 mm", "17.95 mm");
    var verdict = Proof.judge(atOnce.measures().get(0), found, atOnce);
    assertEquals(Outcome.OTHER_CUTTER, verdict.outcome());
  }

  @Test
  void cutTooWideEvenWithoutAStrip_wantsAnotherCutter() {
    // 17.87 − 19.81: the strip of 1.88 would have to be less than nothing.
    assertEquals(
        Outcome.OTHER_CUTTER, judge(Dimension.WIDTH, "19.81 mm", "19.81 mm", "19.81 mm").outcome());
  }

  @Test
  void targetAtTheEdgeOfTheBand_stillFindsTheStepThatServes() {
    // Accepted 17.85 to 18.05, aimed at 17.85. The middle of the readings is on the target, but
    // they lie as far apart as the band: only 0.1 more brings both in.
    var lopsided =
        new Measure(
            Dimension.WIDTH,
            "across",
            Worked.entered("width", Length.of("17.85 mm")),
            new Band(Length.of("17.85 mm"), Length.of("18.05 mm")),
            2,
            Optional.of(Role.STRIP),
            Optional.empty());
    var verdict = Proof.judge(lopsided, readings("17.75 mm", "17.95 mm"), SETUP);
    assertChange(Role.STRIP, "0.1 mm", verdict);
  }

  @Test
  void correctedSetup_isSetAndCutAtTheNewFigures() {
    var moved = SETUP.movedBy(Role.HEIGHT, Length.of("-0.3 mm"));
    assertEquals(Length.of("5.7 mm"), moved.setting(Role.HEIGHT).orElseThrow().set().value());
    for (var pass : moved.passes()) {
      assertEquals(Length.of("5.7 mm"), pass.depth().value());
    }
    assertEquals(SETUP.setting(Role.FENCE), moved.setting(Role.FENCE));
    var wider = SETUP.movedBy(Role.STRIP, Length.of("0.02 mm"));
    assertEquals(Length.of("1.9 mm"), wider.setting(Role.STRIP).orElseThrow().set().value());
    assertEquals(SETUP.passes(), wider.passes());
  }

  /** A saw whose fence, stop or mark reads 0.7 too little makes every piece 0.7 too large. */
  @Test
  void saws_areProvenAfterOneCorrection() {
    for (var setup : List.of(rip(), crosscut(), alongTheTrack())) {
      var off = Length.of("0.7 mm");
      var size = setup.measures().get(0);
      var verdict = Proof.judge(size, sawn(setup, off), setup);
      var correction = verdict.correction().orElseThrow();
      assertEquals(setup.settings().get(0).role(), correction.role());
      var again = setup.movedBy(correction.role(), correction.by());
      assertTrue(Proof.judge(size, sawn(again, off), again).isProven());
    }
  }

  private static List<Length> sawn(Setup setup, Length off) {
    var piece = setup.settings().get(0).set().value().plus(off);
    return List.of(piece, piece);
  }

  private static Setup rip() {
    return (Setup)
        SawSetup.table(
            parting(true), ShopsForTests.SAW, ShopsForTests.RIP_BLADE, ShopsForTests.CONDITIONS);
  }

  private static Setup crosscut() {
    return (Setup)
        SawSetup.table(
            parting(false), ShopsForTests.SAW, ShopsForTests.RIP_BLADE, ShopsForTests.CONDITIONS);
  }

  private static Setup alongTheTrack() {
    return (Setup)
        SawSetup.track(
            parting(true),
            ShopsForTests.TRACK,
            ShopsForTests.TRACK_BLADE,
            ShopsForTests.CONDITIONS);
  }

  private static CutAsked.Parting parting(boolean along) {
    var size = Worked.entered("size", Length.of("394.34 mm"));
    return new CutAsked.Parting(
        size, true, along, new Work(at("900 mm"), at("400 mm"), at("17.7 mm")));
  }

  /** In hundredths of a millimetre, by plain whole numbers. */
  @Property(edgeCases = EdgeCasesMode.NONE)
  void change_bringsEveryReadingIn_andIsFoundWhereThereIsOne(
      @ForAll @Size(3) List<@IntRange(min = 1_760, max = 1_810) Integer> hundredths) {
    var found = hundredths.stream().map(n -> Length.ofMicrometres(n * 10L)).toList();
    var verdict = Proof.judge(measure(Dimension.WIDTH), found, SETUP);
    boolean in = hundredths.stream().allMatch(n -> 1_783 <= n && n <= 1_791);
    boolean someStep = false;
    // The strip is 188 and stays at least one step of 2.
    for (int by = -186; by <= 186; by += 2) {
      int step = by;
      someStep |= hundredths.stream().map(n -> n + step).allMatch(n -> 1_783 <= n && n <= 1_791);
    }
    assertEquals(in, verdict.isProven());
    assertEquals(!in && someStep, verdict.outcome() == Outcome.CHANGE);
    if (verdict.correction().isPresent()) {
      long by = verdict.correction().get().by().dividedBy(Length.ofMicrometres(10), Rounding.DOWN);
      assertTrue(hundredths.stream().map(n -> n + by).allMatch(n -> 1_783 <= n && n <= 1_791));
    }
  }

  @Test
  void thinnerStrip_carriesTheSlotAway_andTheFenceFollows() {
    // Accepted: 17.83 to 17.91 wide, 99.7 to 100.3 away. The strip goes 0.2 thinner and with it the
    // slot 0.2 farther: from 100.2 to 100.4, 0.4 too far.
    var verdicts = judgeAll("18.07 mm", "100.2 mm");
    assertChange(Role.STRIP, "-0.2 mm", verdicts.get(0));
    assertChange(Role.FENCE, "-0.4 mm", verdicts.get(2));
  }

  @Test
  void thinnerStrip_thatCarriesTheSlotWhereItShouldBe_mendsBoth() {
    // 99.6 is too near; 0.4 farther it is right, and the fence stays.
    var verdicts = judgeAll("18.27 mm", "99.6 mm");
    assertChange(Role.STRIP, "-0.4 mm", verdicts.get(0));
    assertEquals(Outcome.CHANGE, verdicts.get(2).outcome());
    assertEquals(Optional.empty(), verdicts.get(2).correction());
  }

  @Test
  void thinnerStrip_whoseDriftIsAccepted_leavesTheFenceAlone() {
    assertTrue(judgeAll("18.07 mm", "100 mm").get(2).isProven());
  }

  /** Every reading of the width, and of the distance, the same; the depth as it should be. */
  private static List<Verdict> judgeAll(String width, String distance) {
    return Proof.judge(
        SETUP,
        measure ->
            switch (measure.dimension()) {
              case WIDTH -> readings(width, width, width);
              case DEPTH -> readings("6 mm", "6 mm", "6 mm");
              case DISTANCE -> readings(distance, distance);
              case SIZE, RUN_ACROSS, RUN_THROUGH, RUN_ALONG, DIAMETER, FROM_END ->
                  throw new AssertionError("nothing is parted");
            });
  }

  private static void assertChange(Role role, String by, Verdict verdict) {
    assertEquals(Outcome.CHANGE, verdict.outcome());
    assertEquals(Optional.of(new Correction(role, Length.of(by))), verdict.correction());
  }

  private static Verdict judge(Dimension dimension, String... found) {
    return Proof.judge(measure(dimension), readings(found), SETUP);
  }

  private static Measure measure(Dimension dimension) {
    return SETUP.measures().stream()
        .filter(one -> one.dimension() == dimension)
        .findFirst()
        .orElseThrow();
  }

  private static List<Length> readings(String... found) {
    return Stream.of(found).map(Length::of).toList();
  }

  private static Setup setup(String cutter) {
    var asked =
        new CutAsked.Slot(
            Worked.entered("width", Length.of("17.87 mm")),
            new Band(Length.of("17.83 mm"), Length.of("17.91 mm")),
            Worked.entered("depth", Length.of("6 mm")),
            Worked.entered("distance", Length.of("100 mm")),
            new Work(at("400 mm"), at("900 mm"), at("17.7 mm")));
    return (Setup)
        RouterTableSetup.slot(
            asked,
            ShopsForTests.TABLE,
            ShopsForTests.straight("cutter", cutter),
            ShopsForTests.CONDITIONS);
  }

  private static Band at(String length) {
    return new Band(Length.of(length), Length.of(length));
  }
}
