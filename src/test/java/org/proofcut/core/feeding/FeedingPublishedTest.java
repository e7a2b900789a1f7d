package org.proofcut.core.feeding;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.proofcut.core.geometry.Sizes.entered;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.proofcut.core.evidence.Problem;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.LengthUnit;

/** Figures of feed and passes that are printed elsewhere, each with how it is known. */
class FeedingPublishedTest {

  private static final Turning THREE_FLUTES = new Turning(5_000, 3);

  /**
   * Chip load = feed (ft/min) × 12 ÷ (revolutions × teeth): 20 ft/min, 5,000 /min, 3 teeth make
   * .0160 in. Formula found in a secondary copy, the value follows from it.
   */
  @Test
  void chip_ofThreeFlutesAtTwentyFeetAMinute() {
    var chip = THREE_FLUTES.chip(entered("20 ft")).value();
    var off = chip.minus(Length.of("0.0160 in")).abs();
    assertTrue(off.isAtMost(Length.of("0.0001 in")), chip.toString());
  }

  /** Feed = chip load × teeth × revolutions ÷ 12: the same the other way, 20.0 ft/min. */
  @Test
  void feed_forThatChip_isTwentyFeetAMinute() {
    assertEquals(Length.of("20 ft"), THREE_FLUTES.feed(entered("0.0160 in")).value());
  }

  /**
   * Finish planing leaves 20 knife marks to the inch or more: found in a secondary copy of a finish
   * guide. Three knives at 5,000 /min leave just 20 at 62 ft 6 in of feed a minute.
   */
  @Test
  void finishPlaning_leavesTwentyMarksToTheInch() {
    var twenty = Worked.entered("marks", 20);
    // 5000 · 3 ÷ 20 = 750 in
    assertEquals(Length.of("62' 6\""), THREE_FLUTES.fastestFeed(twenty).value());
    assertEquals("20.0 to the inch", THREE_FLUTES.marksPerInch(entered("750 in")).value().text());
    assertEquals(Length.of("1.27 mm"), THREE_FLUTES.markSpacing(entered("750 in")).value());
  }

  /**
   * Jointer rule of teaching cards: 12 in or longer, 1/4 in or thicker, at most 1/16 in a pass.
   * Found in a secondary copy; low authority.
   */
  @Test
  void jointerRuleOfSchools_holdsAsLimits() {
    var limits =
        new ThicknessLimits(
            entered("1/16 in"),
            entered("1/64 in"),
            entered("12 in"),
            entered("1/4 in"),
            entered("0 in"),
            entered("1/64 in"));
    var asked = new Thicknessing(entered("1/2 in"), entered("1/4 in"), entered("12 in"), limits);
    assertEquals(List.of(), asked.problems(LengthUnit.INCH));
    for (var pass : asked.passes()) {
      assertTrue(pass.takes().isAtMost(Length.of("1/16 in")), pass.toString());
    }
    var thin = new Thicknessing(entered("1/2 in"), entered("15/64 in"), entered("12 in"), limits);
    var little = new Thicknessing(entered("1/2 in"), entered("1/4 in"), entered("11 in"), limits);
    assertEquals(
        List.of("target"), thin.problems(LengthUnit.INCH).stream().map(Problem::where).toList());
    assertEquals(
        List.of("finished"),
        little.problems(LengthUnit.INCH).stream().map(Problem::where).toList());
  }
}
