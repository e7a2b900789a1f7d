package org.proofcut.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Upper critical values of Student's t: NIST/SEMATECH e-Handbook of Statistical Methods, table
 * 1.3.6.7.2. Found in a secondary copy that names the handbook; the table's number is from memory.
 */
class CommonsStudentTPublishedTest {

  @ParameterizedTest
  @CsvSource({
    "0.900,  1,   3.078",
    "0.950,  1,   6.314",
    "0.975,  1,  12.706",
    "0.995,  1,  63.657",
    "0.975,  2,   4.303",
    "0.950,  5,   2.015",
    "0.975,  5,   2.571",
    "0.999,  5,   5.893",
    "0.975,  9,   2.262",
    "0.990,  9,   2.821",
    "0.975, 30,   2.042",
    "0.999, 30,   3.385",
  })
  void quantile_isAsPrinted(BigDecimal probability, int degreesOfFreedom, BigDecimal printed) {
    var quantile = new CommonsStudentT().quantile(probability, degreesOfFreedom);
    assertEquals(printed, quantile.setScale(3, RoundingMode.HALF_UP));
  }

  @ParameterizedTest
  @CsvSource({"0.025, 5, -2.571", "0.5, 7, 0.000"})
  void quantile_belowTheMiddle_isTheMirrored(BigDecimal probability, int n, BigDecimal expected) {
    var quantile = new CommonsStudentT().quantile(probability, n);
    assertEquals(expected, quantile.setScale(3, RoundingMode.HALF_UP));
  }
}
