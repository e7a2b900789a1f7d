package org.proofcut.core.exposure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.math.BigDecimal;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.BigRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;

/** Against the platform's own floating point, which the core does without. */
class PowersTest {

  @Property(tries = 2_000)
  void ofTwo_isThePlatforms(@ForAll @BigRange(min = "-40", max = "40") @Scale(4) BigDecimal x) {
    var expected = Math.pow(2, x.doubleValue());
    assertEquals(expected, Powers.ofTwo(x).doubleValue(), expected * 1e-13);
  }

  @Property(tries = 2_000)
  void log10_isThePlatforms(
      @ForAll @BigRange(min = "0.0001", max = "1000000") @Scale(4) BigDecimal x) {
    assertEquals(Math.log10(x.doubleValue()), Powers.log10(x).doubleValue(), 1e-12);
  }

  @Test
  void log10_ofNothing_isRefused() {
    assertThrows(IllegalArgumentException.class, () -> Powers.log10(BigDecimal.ZERO));
  }
}
