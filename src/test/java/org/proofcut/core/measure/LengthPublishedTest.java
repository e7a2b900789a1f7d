package org.proofcut.core.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Lengths against figures printed elsewhere. */
class LengthPublishedTest {

  /** NIST SP 811, from memory: 1 in = 25.4 mm exactly. */
  @Test
  void inch_inMillimetres_isExactly25point4() {
    assertEquals("25.4 mm", Length.of("1 in").toString());
    assertEquals("1", Length.of("25.4 mm").inInches().toString());
    assertEquals("304.8 mm", Length.of("1 ft").toString());
  }

  /**
   * Decimal equivalents of fractions of an inch, as trade tables print them to three places (found
   * in part in a secondary copy).
   */
  @ParameterizedTest
  @CsvSource({
    "1/32, .031",
    "1/16, .063",
    "3/32, .094",
    "1/8, .125",
    "5/32, .156",
    "3/16, .188",
    "7/32, .219",
    "1/4, .250",
    "11/32, .344",
    "15/32, .469",
    "23/32, .719"
  })
  void fraction_asDecimalInch_isThePrintedOneWithinItsLastPlace(String fraction, String printed) {
    var difference = Length.of(fraction + " in").minus(Length.of(printed + " in")).abs();
    assertTrue(difference.isAtMost(Length.of(".0005 in")), fraction + " is off by " + difference);
  }

  /**
   * Thickness limits of US plywood under PS 1 (unsanded, touch-sanded, overlaid), printed in inch
   * and in mm to two places by the producers' association: <a
   * href="http://apawood-europe.org/products-trademarks/plywood/trademarks/performance-category/">performance
   * categories</a>.
   */
  @ParameterizedTest
  @CsvSource({
    "1/4, .219, 5.56",
    "1/4, .281, 7.14",
    "23/32, .688, 17.46",
    "23/32, .750, 19.05",
    "3/4, .719, 18.26",
    "3/4, .781, 19.84"
  })
  void thicknessLimit_thirtySecondEitherSide_isThePrintedInchAndMillimetre(
      String category, String printedInch, String printedMillimetre) {
    var nominal = Length.of(category + " in");
    var tolerance = Length.ofInches(1, 32);
    var inch = Length.of(printedInch + " in");
    var limit = inch.isLessThan(nominal) ? nominal.minus(tolerance) : nominal.plus(tolerance);
    assertNear(limit, inch, ".0005 in");
    assertNear(limit, Length.of(printedMillimetre + " mm"), "0.005 mm");
  }

  /** PS 1, same page: limits printed in inch only. */
  @ParameterizedTest
  @CsvSource({"15/32, .438, .500", "1/2, .469, .531", "19/32, .563, .625", "5/8, .594, .656"})
  void thicknessLimits_thirtySecondEitherSide_areThePrintedInches(
      String category, String least, String most) {
    var nominal = Length.of(category + " in");
    var tolerance = Length.ofInches(1, 32);
    assertNear(nominal.minus(tolerance), Length.of(least + " in"), ".0005 in");
    assertNear(nominal.plus(tolerance), Length.of(most + " in"), ".0005 in");
  }

  private static void assertNear(Length found, Length printed, String within) {
    var difference = found.minus(printed).abs();
    assertTrue(difference.isAtMost(Length.of(within)), found + ", printed " + printed);
  }
}
