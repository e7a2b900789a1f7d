package org.proofcut.core.boring;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.proofcut.core.geometry.Sizes.entered;
import static org.proofcut.core.geometry.Sizes.mm;

import java.math.BigDecimal;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.proofcut.core.evidence.Amount;
import org.proofcut.core.evidence.Citation;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.geometry.Sizes;
import org.proofcut.core.measure.Length;

class DrillSpeedTest {

  @Test
  void highest_isWhatTheRimMayRunAt() {
    // 60,000 ÷ (π · 35) = 545.67
    assertEquals(545, DrillSpeed.highest(entered("35 mm"), rim(60)).value());
    assertEquals(Citation.COMMON_PRACTICE, DrillSpeed.highest(entered("35 mm"), rim(60)).source());
  }

  @Test
  void otherUnits_andSizesThatAreNone_areRefused() {
    var perSecond = Worked.entered("rim", new Amount(BigDecimal.ONE, "m/s"));
    assertThrows(
        IllegalArgumentException.class, () -> DrillSpeed.highest(entered("35 mm"), perSecond));
    assertThrows(
        IllegalArgumentException.class, () -> DrillSpeed.highest(entered("35 mm"), rim(0)));
    assertThrows(
        IllegalArgumentException.class, () -> DrillSpeed.highest(entered("0 mm"), rim(60)));
  }

  /** Lets the bit turn for a minute: its rim stays within the limit, and one turn more does not. */
  @Property
  void rim_atThatSpeed_goesAsFarAsItMayAndNoFarther(
      @ForAll("bits") Worked<Length> bit, @ForAll @IntRange(min = 5, max = 300) int metres) {
    int turns = DrillSpeed.highest(bit, rim(metres)).value();
    double once = Math.PI * mm(bit) / 1000;
    assertTrue(turns * once <= metres + 1e-9);
    assertTrue((turns + 1) * once > metres - 1e-9);
  }

  private static Worked<Amount> rim(int metresPerMinute) {
    return Worked.given(
        "speed of the rim",
        new Amount(BigDecimal.valueOf(metresPerMinute), "m/min"),
        Citation.COMMON_PRACTICE);
  }

  @Provide
  Arbitrary<Worked<Length>> bits() {
    return Sizes.hundredths(100, 10_000);
  }
}
