package org.proofcut.core.feeding;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.proofcut.core.geometry.Sizes.entered;
import static org.proofcut.core.geometry.Sizes.mm;

import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.geometry.Sizes;
import org.proofcut.core.measure.Length;

class TurningTest {

  @Test
  void twoKnives_inMetric() {
    var planer = new Turning(8_000, 2);
    var feed = entered("8 m");
    assertEquals(Length.of("0.5 mm"), planer.markSpacing(feed).value());
    assertEquals("20.0 to the centimetre", planer.marksPerCentimetre(feed).value().text());
    assertEquals("50.8 to the inch", planer.marksPerInch(feed).value().text());
  }

  @Test
  void marks_areNeverToldFinerThanTheyAre() {
    // 160,000 ÷ 8,100 = 19.753
    var marks = new Turning(8_000, 2).marksPerCentimetre(entered("8.1 m")).value();
    assertEquals("19.7 to the centimetre", marks.text());
  }

  @Test
  void speedsAndFeedsThatAreNone_areRefused() {
    assertThrows(IllegalArgumentException.class, () -> new Turning(0, 2));
    assertThrows(IllegalArgumentException.class, () -> new Turning(8_000, 0));
    var planer = new Turning(8_000, 2);
    assertThrows(IllegalArgumentException.class, () -> planer.chip(entered("0 mm")));
    assertThrows(IllegalArgumentException.class, () -> planer.feed(entered("-1 mm")));
    assertThrows(IllegalArgumentException.class, () -> planer.marksPerInch(entered("0 mm")));
    assertThrows(
        IllegalArgumentException.class, () -> planer.fastestFeed(Worked.entered("marks", 0)));
  }

  /** Lets the edges cut one after another for a minute, and looks how far the wood has come. */
  @Property
  void wood_movedOnByAChipForEachEdge_hasComeAsFarAsItsFeed(
      @ForAll("feeds") Worked<Length> feed,
      @ForAll @IntRange(min = 300, max = 24_000) int perMinute,
      @ForAll @IntRange(min = 1, max = 6) int edges) {
    var turning = new Turning(perMinute, edges);
    double chip = mm(turning.chip(feed));
    double come = 0;
    int cuts = 0;
    for (int turn = 0; turn < perMinute; turn++) {
      for (int edge = 0; edge < edges; edge++) {
        come += chip;
        cuts++;
      }
    }
    assertTrue(come >= mm(feed) - 1e-6, "a chip is never told too thin");
    assertTrue(come - mm(feed) <= 0.001 * cuts + 1e-6);
    double marks = turning.marksPerInch(feed).value().value().doubleValue();
    assertEquals(cuts * 25.4 / mm(feed), marks, 0.1001);
  }

  /** At the fastest feed there are enough marks, a millimetre a minute faster there are not. */
  @Property
  void fastestFeed_isTheLastThatLeavesEnoughMarks(
      @ForAll @IntRange(min = 300, max = 12_000) int perMinute,
      @ForAll @IntRange(min = 1, max = 6) int edges,
      @ForAll @IntRange(min = 1, max = 60) int marks) {
    var turning = new Turning(perMinute, edges);
    double fastest = mm(turning.fastestFeed(Worked.entered("marks", marks)));
    double all = (double) perMinute * edges * 25.4;
    assertTrue(all / fastest >= marks - 1e-9);
    assertTrue(all / (fastest + 1) < marks + 1e-9);
  }

  @Provide
  Arbitrary<Worked<Length>> feeds() {
    return Sizes.hundredths(20_000, 2_000_000);
  }
}
