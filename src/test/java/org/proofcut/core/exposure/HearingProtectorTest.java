package org.proofcut.core.exposure;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.proofcut.core.evidence.Amount;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.exposure.HearingProtector.Weighting;

class HearingProtectorTest {

  /** 98 dBA less half of 25 − 7, and 5 dB more; 95 dBC less half of 20, and 5 dB more. */
  @Test
  void asWornWithSecond_addsFiveToTheHalvedRating() {
    assertEquals("84.0 dBA", worn(25, 19, level("98", "dBA"), Weighting.A));
    assertEquals("80.0 dBA", worn(11, 20, level("95", "dBC"), Weighting.C));
  }

  /** 5 − 7 is less than nothing: it takes from what the second one adds. */
  @Test
  void withSecond_whereTheBetterRatingIsBelowSeven_isNotTakenForSeven() {
    var dba = level("95", "dBA");
    assertEquals("92 dBA", protector(5).withSecond(protector(3), dba, Weighting.A).value().text());
    assertEquals("91.0 dBA", worn(5, 3, dba, Weighting.A));
  }

  @Test
  void alone_belowSeven_makesNothingLouder() {
    var dba = level("95", "dBA");
    assertEquals("95 dBA", protector(5).asRated(dba, Weighting.A).value().text());
    assertEquals("95.0 dBA", protector(5).asWorn(dba, Weighting.A).value().text());
  }

  private static String worn(int one, int other, Worked<Amount> level, Weighting weighting) {
    return protector(one).asWornWithSecond(protector(other), level, weighting).value().text();
  }

  private static HearingProtector protector(int rating) {
    return new HearingProtector(Worked.entered("rating", rating));
  }

  private static Worked<Amount> level(String level, String unit) {
    return Worked.entered("level", new Amount(new BigDecimal(level), unit));
  }
}
