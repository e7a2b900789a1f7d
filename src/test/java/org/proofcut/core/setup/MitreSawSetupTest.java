package org.proofcut.core.setup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.proofcut.core.setup.CutsForTests.assertRefused;
import static org.proofcut.core.setup.CutsForTests.assertSet;
import static org.proofcut.core.setup.CutsForTests.entered;
import static org.proofcut.core.setup.CutsForTests.setup;
import static org.proofcut.core.setup.CutsForTests.withAids;
import static org.proofcut.core.setup.CutsForTests.work;
import static org.proofcut.core.setup.ShopsForTests.CONDITIONS;
import static org.proofcut.core.setup.ShopsForTests.MITRE;
import static org.proofcut.core.setup.ShopsForTests.MITRE_BLADE;
import static org.proofcut.core.setup.ShopsForTests.RIP_BLADE;

import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.geometry.Corner;
import org.proofcut.core.measure.Angle;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.Rounding;
import org.proofcut.core.setup.CutAsked.Mitre;
import org.proofcut.core.setup.CutAsked.Parting;
import org.proofcut.core.setup.Measure.Dimension;
import org.proofcut.core.shop.MitreSaw;
import org.proofcut.core.shop.Side;
import org.proofcut.core.shop.Tilt;

class MitreSawSetupTest {

  private static final Angle TENTH = Angle.parse("0.1");

  private static Parting parting(String size, String across, String thickness) {
    return new Parting(entered(size), true, false, work(size, across, thickness));
  }

  private static Mitre frame(String size, int sides, String width, String thickness) {
    return new Mitre(
        entered(size),
        Corner.ofSides(sides),
        Optional.empty(),
        entered(width),
        work(size, width, thickness));
  }

  private static Mitre leaning(String corner, String lean, String width, String thickness) {
    return new Mitre(
        entered("900 mm"),
        Corner.of(Worked.entered("corner", Angle.parse(corner))),
        Optional.of(Worked.entered("lean", Angle.parse(lean))),
        entered(width),
        work("900 mm", width, thickness));
  }

  /** The saw of the tests with other angles, or another stop. */
  private static MitreSaw saw(
      String greatestMitre, Angle mitreStep, Optional<Tilt> tilt, String stopReach) {
    return new MitreSaw(
        MITRE.id(),
        MITRE.name(),
        MITRE.speeds(),
        Angle.parse(greatestMitre),
        mitreStep,
        tilt,
        MITRE.cutWidth(),
        MITRE.cutHeight(),
        MITRE.tiltedHeight(),
        Length.of(stopReach),
        MITRE.stopStep(),
        MITRE.blades(),
        true,
        true);
  }

  private static Answer length(Parting asked) {
    return MitreSawSetup.length(asked, MITRE, MITRE_BLADE, CONDITIONS);
  }

  private static Answer flat(Mitre asked) {
    return MitreSawSetup.flat(asked, MITRE, MITRE_BLADE, CONDITIONS);
  }

  private static void assertAngle(
      String expected, Optional<Side> toward, AngleSetting.Role role, Setup setup) {
    var angle = setup.angle(role).orElseThrow();
    assertEquals(Angle.parse(expected), angle.set().value());
    assertEquals(toward, angle.toward());
  }

  private static Measure measure(Dimension dimension, Setup setup) {
    return setup.measures().stream()
        .filter(one -> one.dimension() == dimension)
        .findFirst()
        .orElseThrow();
  }

  @Nested
  class ToLength {

    @Test
    void crosscut_isSetByItsStop_squareAndUpright() {
      var setup = setup(length(parting("700 mm", "300 mm", "18 mm")));
      assertSet("700 mm", Setting.Role.STOP, setup);
      assertAngle("0", Optional.empty(), AngleSetting.Role.MITRE, setup);
      assertAngle("0", Optional.empty(), AngleSetting.Role.BEVEL, setup);
      assertEquals(
          List.of(Dimension.SIZE), setup.measures().stream().map(Measure::dimension).toList());
      assertEquals(Feed.DOWN_ON_THE_WORK, setup.feed());
    }

    @Test
    void roughCut_provesNothing() {
      var rough = new Parting(entered("700 mm"), false, false, work("700 mm", "300 mm", "18 mm"));
      assertEquals(List.of(), setup(length(rough)).measures());
    }

    @Test
    void limitsOfTheSaw_areReachedExactly_andNoFarther() {
      setup(length(parting("1800 mm", "305 mm", "70 mm")));
      assertRefused(Refusal.Reason.OUT_OF_REACH, length(parting("1800.1 mm", "305 mm", "70 mm")));
      assertRefused(Refusal.Reason.OUT_OF_REACH, length(parting("1800 mm", "305.1 mm", "70 mm")));
      assertRefused(Refusal.Reason.OUT_OF_REACH, length(parting("1800 mm", "305 mm", "70.1 mm")));
    }

    @Test
    void withoutAStop_isRefused() {
      var bare = saw("50", TENTH, MITRE.tilt(), "0 mm");
      assertRefused(
          Refusal.Reason.AID_MISSING,
          MitreSawSetup.length(
              parting("700 mm", "300 mm", "18 mm"), bare, MITRE_BLADE, CONDITIONS));
    }

    @Test
    void bladeThatDoesNotFit_isRefused() {
      assertRefused(
          Refusal.Reason.CUTTER_DOES_NOT_FIT_MACHINE,
          MitreSawSetup.length(parting("700 mm", "300 mm", "18 mm"), MITRE, RIP_BLADE, CONDITIONS));
    }

    @Test
    void shortPiece_isHeldByTheClampOrNotCut() {
      setup(length(parting("300 mm", "60 mm", "18 mm")));
      var shorter = parting("299.9 mm", "60 mm", "18 mm");
      assertRefused(Refusal.Reason.WORK_TOO_SMALL, length(shorter));
      setup(MitreSawSetup.length(shorter, MITRE, MITRE_BLADE, withAids("hold-down-clamp")));
    }
  }

  @Nested
  class FlatFrames {

    @Test
    void squareFrame_isTurnedByHalfTheCorner_keptOnTheStopsSide() {
      var setup = setup(flat(frame("400 mm", 4, "60 mm", "18 mm")));
      assertSet("400 mm", Setting.Role.STOP, setup);
      assertAngle("45", Optional.of(Side.LEFT), AngleSetting.Role.MITRE, setup);
      assertAngle("0", Optional.empty(), AngleSetting.Role.BEVEL, setup);
      var run = measure(Dimension.RUN_ACROSS, setup);
      assertEquals(Length.of("60 mm"), run.target().value());
      // 0.5 mm ÷ 8 cuts: each may be off by 0.0625 mm over its slope, 0.125 mm along the piece.
      assertTrue(run.accepted().least().isAtLeast(Length.of("59.875 mm")));
      assertTrue(run.accepted().least().isAtMost(Length.of("59.876 mm")));
      // Kerf 2.2 mm at 45° takes 3.12 mm of the fence.
      assertEquals(Length.of("3.12 mm"), setup.passes().get(0).takes().extent());
    }

    @Test
    void mitre_takesMoreOfTheBladesTravel() {
      // 215.66 ÷ cos 45° = 304.99; 215.68 ÷ cos 45° = 305.02.
      setup(flat(frame("900 mm", 4, "215.66 mm", "18 mm")));
      assertRefused(Refusal.Reason.OUT_OF_REACH, flat(frame("900 mm", 4, "215.68 mm", "18 mm")));
    }

    @Test
    void sharperCornerThanTheSawTurns_isRefused() {
      assertRefused(Refusal.Reason.OUT_OF_REACH, flat(frame("900 mm", 3, "40 mm", "18 mm")));
    }

    @Test
    void stepTooCoarseForTheRing_isRefused_andExactMarkIsNot() {
      var coarse = saw("50", Angle.parse("0.5"), MITRE.tilt(), "1800 mm");
      // 180° ÷ 7 = 25.714°, set as 25.5°; 180° ÷ 8 is a mark.
      assertRefused(
          Refusal.Reason.STEP_TOO_COARSE,
          MitreSawSetup.flat(
              frame("400 mm", 7, "60 mm", "18 mm"), coarse, MITRE_BLADE, CONDITIONS));
      setup(
          MitreSawSetup.flat(
              frame("400 mm", 8, "60 mm", "18 mm"), coarse, MITRE_BLADE, CONDITIONS));
    }
  }

  @Nested
  class LeaningFrames {

    @Test
    void sawThatTiltsLeft_keepsThePieceOnTheRight() {
      var setup = setup(flat(leaning("90", "38", "80 mm", "18 mm")));
      assertSet("900 mm", Setting.Role.MARK, setup);
      assertAngle("31.6", Optional.of(Side.RIGHT), AngleSetting.Role.MITRE, setup);
      assertAngle("33.9", Optional.of(Side.LEFT), AngleSetting.Role.BEVEL, setup);
      var mitre = setup.angle(AngleSetting.Role.MITRE).orElseThrow();
      assertEquals(
          Angle.parse("31.62").minus(Angle.parse("31.6")),
          mitre.leftOver().roundedTo(Angle.parse("0.01"), Rounding.NEAREST));
    }

    @Test
    void sawThatTiltsRight_keepsItOnTheLeft() {
      var right =
          saw(
              "50",
              TENTH,
              Optional.of(new Tilt(List.of(Side.RIGHT), Angle.ofDegrees(46), TENTH)),
              "1800 mm");
      var setup =
          setup(
              MitreSawSetup.flat(
                  leaning("90", "38", "80 mm", "18 mm"), right, MITRE_BLADE, CONDITIONS));
      assertAngle("31.6", Optional.of(Side.LEFT), AngleSetting.Role.MITRE, setup);
      assertAngle("33.9", Optional.of(Side.RIGHT), AngleSetting.Role.BEVEL, setup);
    }

    @Test
    void sawThatDoesNotTilt_orNotSoFar_isRefused() {
      var asked = leaning("90", "38", "80 mm", "18 mm");
      for (var tilt :
          List.of(
              Optional.<Tilt>empty(),
              Optional.of(new Tilt(List.of(Side.LEFT), Angle.ofDegrees(30), TENTH)))) {
        assertRefused(
            Refusal.Reason.OUT_OF_REACH,
            MitreSawSetup.flat(asked, saw("50", TENTH, tilt, "1800 mm"), MITRE_BLADE, CONDITIONS));
      }
    }

    @Test
    void tiltedBlade_cutsLessHigh() {
      setup(flat(leaning("90", "38", "80 mm", "36 mm")));
      assertRefused(Refusal.Reason.OUT_OF_REACH, flat(leaning("90", "38", "80 mm", "36.1 mm")));
    }
  }

  /** The ring is closed by turning from piece to piece, and the gap at the end measured. */
  @Property(tries = 300)
  void endsAsFarOffAsAccepted_leaveTheLastJointNoWiderThanItMayBe(
      @ForAll @IntRange(min = 4, max = 16) int sides,
      @ForAll @IntRange(min = 20, max = 120) int width) {
    var answer = flat(frame("600 mm", sides, width + " mm", "18 mm"));
    if (answer instanceof Refusal) {
      return;
    }
    var setup = setup(answer);
    var run = measure(Dimension.RUN_ACROSS, setup);
    for (var end : List.of(run.accepted().least(), run.accepted().most())) {
      double cut = Math.atan2(end.picometres(), Length.ofMillimetres(width).picometres());
      double turned = 0;
      for (int side = 0; side < sides; side++) {
        turned += 2 * cut;
      }
      double open = Math.abs(turned - 2 * Math.PI) * width;
      // Where the ring asks for less than a caliper shows, 0.02 mm at each of its cuts.
      assertTrue(open <= Math.max(0.5, 2 * sides * 0.02) + 1e-6, sides + " open " + open);
    }
  }

  /**
   * The blade's plane is turned and tilted by rotating vectors, and met with three edges of the
   * piece; what the proof is told to measure has to be what is found there.
   */
  @Property(tries = 500)
  void runs_areThoseOfABladeTurnedAndTilted(
      @ForAll @IntRange(min = 80, max = 150) int corner,
      @ForAll @IntRange(min = 15, max = 80) int lean,
      @ForAll @IntRange(min = 40, max = 120) int width,
      @ForAll @IntRange(min = 6, max = 36) int thickness) {
    var answer = flat(leaning("" + corner, "" + lean, width + " mm", thickness + " mm"));
    if (answer instanceof Refusal) {
      return;
    }
    var setup = setup(answer);
    double mitre = radians(setup, AngleSetting.Role.MITRE);
    double bevel = radians(setup, AngleSetting.Role.BEVEL);
    // x along the fence, y toward the person, z up; the kept piece lies at smaller x.
    double[] line = {-Math.sin(mitre), Math.cos(mitre), 0};
    double[] blade = {
      Math.sin(bevel) * Math.cos(mitre), Math.sin(bevel) * Math.sin(mitre), Math.cos(bevel)
    };
    double atFenceAbove = meets(line, blade, 0, thickness);
    double atFenceBelow = meets(line, blade, 0, 0);
    double inFrontAbove = meets(line, blade, width, thickness);
    assertEquals(
        atFenceAbove - inFrontAbove,
        millimetres(measure(Dimension.RUN_ACROSS, setup).target().value()),
        0.005);
    assertEquals(
        atFenceAbove - atFenceBelow,
        millimetres(measure(Dimension.RUN_THROUGH, setup).target().value()),
        0.005);
  }

  /** Where the plane of two directions through the origin is at this y and z. */
  private static double meets(double[] one, double[] other, double y, double z) {
    double nx = one[1] * other[2] - one[2] * other[1];
    double ny = one[2] * other[0] - one[0] * other[2];
    double nz = one[0] * other[1] - one[1] * other[0];
    return -(ny * y + nz * z) / nx;
  }

  private static double radians(Setup setup, AngleSetting.Role role) {
    long hundredths = setup.angle(role).orElseThrow().exact().value().hundredthsOfAnArcSecond();
    return Math.toRadians(hundredths / 360_000.0);
  }

  private static double millimetres(Length length) {
    return length.inMillimetres().doubleValue();
  }
}
