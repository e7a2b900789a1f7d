package org.proofcut.core.setup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.junit.jupiter.api.Test;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.measure.Length;

/** Published figures of speed, each with how it is known. */
class SpeedsPublishedTest {

  /** 1 ft/min is 0.3048 m in 60 s, exactly. */
  private static final BigDecimal METRES_IN_A_FOOT = new BigDecimal("0.3048");

  /**
   * Rim speed = π · D · n ÷ 12 in ft/min: 3 in at 10,000 /min is 7,854 ft/min (39.9 m/s). Found in
   * a secondary copy of a router cutter guide.
   */
  @Test
  void rimSpeed_ofThreeInchesAtTenThousand() {
    assertRim("39.9", "3 in", 10_000);
    assertEquals(inMetresPerSecond(7_854), rim("3 in", 10_000));
  }

  /**
   * A table in print gives 143 mph for a 1 in cutter at 16,000 /min; π · D · n gives 47.6 mph. A
   * page in print gives 942 ft/s for 3 in at 20,000 /min; it is 261.8 ft/s. Both are wrong and must
   * not come out here.
   */
  @Test
  void wrongFiguresInPrint_areNotReproduced() {
    // 47.6 mph × 0.44704 = 21.28 m/s; 143 mph would be 63.93
    assertRim("21.3", "1 in", 16_000);
    assertNotEquals(new BigDecimal("63.9"), rim("1 in", 16_000));
    // 261.8 ft/s × 0.3048 = 79.80 m/s; 942 ft/s would be 287.12
    assertRim("79.8", "3 in", 20_000);
    assertNotEquals(new BigDecimal("287.1"), rim("3 in", 20_000));
  }

  /**
   * Feed = chip load · teeth · revolutions ÷ 12: 0.016 in, 3 teeth and 5,000 /min are 20 ft/min.
   * Formula found in a secondary copy of a feed guide, the figure is its inverse of 20 ft/min.
   */
  @Test
  void feed_ofSixteenThousandthsAtFiveThousand() {
    var chip = Worked.entered("chip", Length.of("0.016 in"));
    var exact = METRES_IN_A_FOOT.multiply(BigDecimal.valueOf(20));
    assertEquals(
        exact.setScale(1, RoundingMode.FLOOR),
        FeedBand.feed("feed", chip, 3, 5_000, RoundingMode.FLOOR).value().value());
    assertEquals(
        exact.setScale(1, RoundingMode.CEILING),
        FeedBand.feed("feed", chip, 3, 5_000, RoundingMode.CEILING).value().value());
  }

  private static void assertRim(String metresPerSecond, String diameter, int perMinute) {
    assertEquals(new BigDecimal(metresPerSecond), rim(diameter, perMinute));
  }

  private static BigDecimal rim(String diameter, int perMinute) {
    return Speeds.rimSpeed(Length.of(diameter), perMinute).value().value();
  }

  static BigDecimal inMetresPerSecond(int feetPerMinute) {
    return BigDecimal.valueOf(feetPerMinute)
        .multiply(METRES_IN_A_FOOT)
        .divide(BigDecimal.valueOf(60), 1, RoundingMode.CEILING);
  }
}
