package org.proofcut.core.setup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.proofcut.core.setup.CutsForTests.assertRefused;
import static org.proofcut.core.setup.CutsForTests.assertSet;
import static org.proofcut.core.setup.CutsForTests.entered;
import static org.proofcut.core.setup.CutsForTests.setup;
import static org.proofcut.core.setup.CutsForTests.work;
import static org.proofcut.core.setup.ShopsForTests.CONDITIONS;
import static org.proofcut.core.setup.ShopsForTests.RIP_BLADE;
import static org.proofcut.core.setup.ShopsForTests.SAW;
import static org.proofcut.core.setup.ShopsForTests.TRACK;
import static org.proofcut.core.setup.ShopsForTests.TRACK_BLADE;

import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.measure.Angle;
import org.proofcut.core.measure.Length;
import org.proofcut.core.setup.CutAsked.Bevel;
import org.proofcut.core.setup.Measure.Dimension;
import org.proofcut.core.shop.Side;
import org.proofcut.core.shop.TableSaw;
import org.proofcut.core.shop.Tilt;

class BevelSetupTest {

  private static final Angle TENTH = Angle.parse("0.1");

  private static Bevel bevel(String degrees, String goodFace, boolean wide, String thickness) {
    return new Bevel(
        Worked.entered("bevel", Angle.parse(degrees)),
        entered(goodFace),
        wide,
        work("700 mm", goodFace, thickness));
  }

  private static TableSaw tilting(Optional<Tilt> tilt, Optional<Length> leftReach) {
    return new SawForTests().tilt(tilt).leftReach(leftReach).made();
  }

  private static Tilt to(Side side, Angle step) {
    return new Tilt(List.of(side), Angle.ofDegrees(46), step);
  }

  private static Answer table(Bevel asked) {
    return BevelSetup.table(asked, SAW, RIP_BLADE, CONDITIONS);
  }

  private static Answer table(Bevel asked, TableSaw saw) {
    return BevelSetup.table(asked, saw, RIP_BLADE, CONDITIONS);
  }

  private static Answer track(Bevel asked) {
    return BevelSetup.track(asked, TRACK, TRACK_BLADE, CONDITIONS);
  }

  private static Side leans(Setup setup) {
    return setup.angle(AngleSetting.Role.BEVEL).orElseThrow().toward().orElseThrow();
  }

  /** 18 mm at 45° run in by 18 mm: the face on the table is 120 − 18 wide. */
  @Test
  void atTheTable_theFenceIsSetToTheNarrowFace() {
    var wide = setup(table(bevel("45", "120 mm", true, "18 mm")));
    assertSet("102 mm", Setting.Role.FENCE, wide);
    var narrow = setup(table(bevel("45", "120 mm", false, "18 mm")));
    assertSet("120 mm", Setting.Role.FENCE, narrow);
    // 18 ÷ cos 45° + 5 = 30.46 along the blade, to half a millimetre.
    assertSet("30.5 mm", Setting.Role.HEIGHT, wide);
    assertEquals(Side.LEFT, leans(wide));
  }

  @Test
  void alongTheTrack_theMarkIsAtTheWideFace() {
    assertSet("120 mm", Setting.Role.MARK, setup(track(bevel("45", "120 mm", true, "18 mm"))));
    var narrow = setup(track(bevel("45", "120 mm", false, "18 mm")));
    assertSet("138 mm", Setting.Role.MARK, narrow);
    // 18 ÷ cos 45° + 3 = 28.46.
    assertSet("28.5 mm", Setting.Role.DEPTH, narrow);
  }

  @Test
  void bladeThatLeansRight_hasTheFenceOnTheLeft_orIsRefused() {
    var asked = bevel("30", "120 mm", true, "18 mm");
    var right = Optional.of(to(Side.RIGHT, TENTH));
    assertRefused(Refusal.Reason.OUT_OF_REACH, table(asked, tilting(right, Optional.empty())));
    assertRefused(
        Refusal.Reason.OUT_OF_REACH,
        table(asked, tilting(right, Optional.of(Length.of("100 mm")))));
    var left = setup(table(asked, tilting(right, Optional.of(Length.of("300 mm")))));
    assertTrue(left.setting(Setting.Role.FENCE).orElseThrow().from().startsWith("on the left"));
    assertEquals(Side.RIGHT, leans(left));
  }

  @Test
  void sawWhoseTiltIsNotKnown_isRefused() {
    var asked = bevel("30", "120 mm", true, "18 mm");
    assertRefused(
        Refusal.Reason.OUT_OF_REACH, table(asked, tilting(Optional.empty(), Optional.empty())));
  }

  @Test
  void limits_areReachedExactly_andNoFarther() {
    setup(table(bevel("46", "120 mm", true, "18 mm")));
    assertRefused(Refusal.Reason.OUT_OF_REACH, table(bevel("46.1", "120 mm", true, "18 mm")));
    // 53 ÷ cos 45° + 5 = 79.95, which is set as 80; 53.4 comes to 80.52.
    setup(table(bevel("45", "120 mm", true, "53 mm")));
    assertRefused(Refusal.Reason.OUT_OF_REACH, table(bevel("45", "120 mm", true, "53.4 mm")));
    // Nothing is left of the narrow face.
    assertRefused(Refusal.Reason.WORK_TOO_SMALL, table(bevel("45", "18 mm", true, "18 mm")));
  }

  @Test
  void stepTooCoarse_isRefused() {
    var coarse = tilting(Optional.of(to(Side.LEFT, Angle.ofDegrees(1))), Optional.empty());
    // 18 · (tan 22.5° − tan 23°) is 0.18 mm, 22.4° would be 0.15 the other way; 30 mm come to 0.30.
    setup(table(bevel("22.5", "120 mm", true, "18 mm"), coarse));
    assertRefused(
        Refusal.Reason.STEP_TOO_COARSE, table(bevel("22.5", "120 mm", true, "30 mm"), coarse));
  }

  @Test
  void shortPiece_isRefusedAsInAnUprightRip() {
    var asked =
        new Bevel(
            Worked.entered("bevel", Angle.parse("30")),
            entered("120 mm"),
            true,
            work("299 mm", "120 mm", "18 mm"));
    assertRefused(Refusal.Reason.WORK_TOO_SMALL, table(asked));
  }

  /**
   * The tooth line is walked through the stock from the table up in a thousand small steps, and the
   * two faces measured where it enters and leaves.
   */
  @Property(tries = 300)
  void faces_areAsWideAsAskedAndAsMeasured(
      @ForAll @IntRange(min = 2, max = 45) int degrees,
      @ForAll @IntRange(min = 80, max = 400) int goodFace,
      @ForAll @IntRange(min = 6, max = 40) int thickness,
      @ForAll boolean wide) {
    var asked = bevel("" + degrees, goodFace + " mm", wide, thickness + " mm");
    var answer = table(asked);
    if (answer instanceof Refusal) {
      return;
    }
    var setup = setup(answer);
    double onTheTable = set(setup, Setting.Role.FENCE);
    double tooth = onTheTable;
    for (int i = 0; i < 1000; i++) {
      double up = thickness / 1000.0;
      tooth += up * Math.sin(Math.toRadians(degrees)) / Math.cos(Math.toRadians(degrees));
    }
    // The fence is set to a tenth.
    assertEquals(goodFace, wide ? tooth : onTheTable, 0.07);
    var run =
        setup.measures().stream()
            .filter(one -> one.dimension() == Dimension.RUN_THROUGH)
            .findFirst()
            .orElseThrow();
    assertEquals(tooth - onTheTable, run.target().value().inMillimetres().doubleValue(), 0.001);
    // The blade comes out above the stock, and no farther than the limit and a step.
    double top = set(setup, Setting.Role.HEIGHT) * Math.cos(Math.toRadians(degrees));
    assertTrue(top > thickness && top <= thickness + 5.3, "top tooth at " + top);
  }

  private static double set(Setup setup, Setting.Role role) {
    return setup.setting(role).orElseThrow().set().value().inMillimetres().doubleValue();
  }
}
