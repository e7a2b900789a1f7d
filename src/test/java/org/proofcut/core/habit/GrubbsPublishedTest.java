package org.proofcut.core.habit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.proofcut.core.measure.Length;
import org.proofcut.statistics.CommonsStudentT;

/**
 * The worked example of the NIST/SEMATECH e-Handbook of Statistical Methods, section 1.3.5.17:
 * eight readings of a mass spectrometer, here as millimetres. Data, G and the critical value of
 * 2.032 found in secondary copies; that 2.032 is the one-sided figure, and 2.1266 the two-sided one
 * for the same eight readings, follows from the formula and was found so in two of them. The
 * section number is from memory.
 */
class GrubbsPublishedTest {

  private static final List<Length> READINGS =
      Stream.of("199.31", "199.53", "200.19", "200.82", "201.92", "201.95", "202.18", "245.57")
          .map(number -> Length.of(number + " mm"))
          .toList();

  private static final StudentT T = new CommonsStudentT();

  @Test
  void statistic_ofTheLargest_isAsPrinted() {
    assertRounded("2.4687", Grubbs.statistic(READINGS, READINGS.get(7)), RoundingMode.DOWN);
    // 2.468765 by the copy that prints more digits.
    assertRounded("2.468765", Grubbs.statistic(READINGS, READINGS.get(7)), RoundingMode.HALF_UP);
  }

  @Test
  void critical_oneSided_isTheTwoSidedAtTwiceTheAlpha() {
    assertRounded("2.032", Grubbs.critical(8, new BigDecimal("0.10"), T), RoundingMode.HALF_UP);
  }

  @Test
  void critical_twoSided_isAsPrinted() {
    assertRounded("2.1266", Grubbs.critical(8, new BigDecimal("0.05"), T), RoundingMode.HALF_UP);
  }

  @Test
  void theLargest_isAnOutlierEitherWay() {
    var statistic = Grubbs.statistic(READINGS, READINGS.get(7));
    assertTrue(statistic.compareTo(Grubbs.critical(8, new BigDecimal("0.05"), T)) > 0);
  }

  private static void assertRounded(String printed, BigDecimal computed, RoundingMode rounding) {
    var expected = new BigDecimal(printed);
    assertEquals(expected, computed.setScale(expected.scale(), rounding), computed::toString);
  }
}
