package org.proofcut.core.proof;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.geometry.Corner;
import org.proofcut.core.measure.Angle;
import org.proofcut.core.measure.Band;
import org.proofcut.core.measure.Length;
import org.proofcut.core.proof.Verdict.Outcome;
import org.proofcut.core.setup.AngleSetting;
import org.proofcut.core.setup.Answer;
import org.proofcut.core.setup.CutAsked;
import org.proofcut.core.setup.Measure;
import org.proofcut.core.setup.Measure.Dimension;
import org.proofcut.core.setup.MitreSawSetup;
import org.proofcut.core.setup.Setup;
import org.proofcut.core.setup.ShopsForTests;
import org.proofcut.core.setup.Work;

/** An angle judged by how far a cut runs in, and what it is changed by. */
class AngleProofTest {

  private static Setup frame(int sides, int width) {
    return (Setup) answer(sides, width);
  }

  private static Answer answer(int sides, int width) {
    var size = Length.ofMillimetres(600);
    var wide = Length.ofMillimetres(width);
    return MitreSawSetup.flat(
        new CutAsked.Mitre(
            Worked.entered("size", size),
            Corner.ofSides(sides),
            Optional.empty(),
            Worked.entered("width", wide),
            new Work(
                new Band(size, size),
                new Band(wide, wide),
                new Band(Length.ofMillimetres(18), Length.ofMillimetres(18)))),
        ShopsForTests.MITRE,
        ShopsForTests.MITRE_BLADE,
        ShopsForTests.CONDITIONS);
  }

  private static Measure run(Setup setup) {
    return setup.measures().stream()
        .filter(one -> one.dimension() == Dimension.RUN_ACROSS)
        .findFirst()
        .orElseThrow();
  }

  private static Verdict judge(Setup setup, String... found) {
    var lengths = List.of(found).stream().map(Length::of).toList();
    return Proof.judge(run(setup), lengths, setup);
  }

  @Test
  void rightRun_isProven_andOneReadingIsNotEnough() {
    var setup = frame(4, 60);
    assertEquals(Outcome.PROVEN, judge(setup, "60 mm", "60.1 mm").outcome());
    assertEquals(Outcome.MORE_READINGS, judge(setup, "60 mm").outcome());
  }

  /** 59.58 over 60 is 44.8°: 0.2° more. 60.42 is 45.2°: 0.2° less. */
  @Test
  void tooLittleRun_turnsMore_andTooMuchTurnsLess() {
    var more = judge(frame(4, 60), "59.58 mm", "59.58 mm").turn().orElseThrow();
    assertEquals(AngleSetting.Role.MITRE, more.role());
    assertEquals(Angle.parse("0.2"), more.by().value());
    assertFalse(more.betweenMarks());
    var less = judge(frame(4, 60), "60.42 mm", "60.42 mm").turn().orElseThrow();
    assertEquals(Angle.parse("-0.2"), less.by().value());
  }

  /** 100 wide, the ring takes 0.036°: half a step of 0.1° is too much. */
  @Test
  void stepThatBringsItNowhere_isLeftBetweenTwoMarks() {
    var turn = judge(frame(4, 100), "99.82 mm", "99.82 mm").turn().orElseThrow();
    assertTrue(turn.betweenMarks());
    assertEquals(Angle.parse("0.05"), turn.by().value());
  }

  @Test
  void endsFartherApartThanAccepted_areUneven() {
    assertEquals(Outcome.UNEVEN, judge(frame(4, 60), "59.5 mm", "60.1 mm").outcome());
  }

  /** The saw is off by an angle that the judge does not know; one correction has to mend it. */
  @Property(tries = 500)
  void sawThatIsOff_isProvenAfterOneCorrection(
      @ForAll @IntRange(min = 4, max = 12) int sides,
      @ForAll @IntRange(min = 30, max = 120) int width,
      @ForAll @IntRange(min = -900, max = 900) int thousandthsOff) {
    if (!(answer(sides, width) instanceof Setup setup)) {
      return;
    }
    double set = degrees(setup.angle(AngleSetting.Role.MITRE).orElseThrow().set().value());
    double off = thousandthsOff / 1000.0;
    var first = Proof.judge(run(setup), cut(set + off, width), setup);
    if (first.isProven()) {
      return;
    }
    assertEquals(Outcome.CHANGE, first.outcome());
    double by = degrees(first.turn().orElseThrow().by().value());
    // Readings and judge both round to 0.001 mm.
    var accepted = run(setup).accepted();
    var again = cut(set + by + off, width).get(0);
    var rounding = Length.ofMicrometres(2);
    assertTrue(
        new Band(accepted.least().minus(rounding), accepted.most().plus(rounding)).contains(again),
        sides + " sides, " + width + " wide, off by " + off + ": " + by);
  }

  /** As a caliper that reads to 0.001 mm would find it. */
  private static List<Length> cut(double degrees, int width) {
    var run = Length.ofMicrometres(Math.round(Math.tan(Math.toRadians(degrees)) * width * 1000));
    return List.of(run, run);
  }

  private static double degrees(Angle angle) {
    return angle.hundredthsOfAnArcSecond() / 360_000.0;
  }
}
