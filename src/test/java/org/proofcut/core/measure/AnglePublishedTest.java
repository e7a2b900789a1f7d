package org.proofcut.core.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Ratios of angles against tables in print. */
class AnglePublishedTest {

  /** Four-place tables of school mathematics, from memory. */
  @ParameterizedTest
  @CsvSource({
    "15, .2588, .9659, .2679",
    "22.5, .3827, .9239, .4142",
    "30, .5000, .8660, .5774",
    "60, .8660, .5000, 1.7321",
    "75, .9659, .2588, 3.7321"
  })
  void ratios_areThoseOfFourPlaceTables(String angle, String sine, String cosine, String tangent) {
    assertEquals(printed(sine), places(Angle.parse(angle).sine()));
    assertEquals(printed(cosine), places(Angle.parse(angle).cosine()));
    assertEquals(printed(tangent), places(Angle.parse(angle).tangent()));
  }

  private static BigDecimal printed(String number) {
    return new BigDecimal(number).setScale(4);
  }

  private static BigDecimal places(BigDecimal ratio) {
    return ratio.setScale(4, RoundingMode.HALF_UP);
  }
}
