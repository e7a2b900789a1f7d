package org.proofcut.core.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class AngleTest {

  private static final Angle TENTH = Angle.parse("0.1");

  @Nested
  class Parse {

    @ParameterizedTest
    @CsvSource(
        delimiter = '|',
        quoteCharacter = '`',
        value = {
          "45 | 45°",
          "45° | 45°",
          " 45 ° | 45°",
          "45 deg. | 45°",
          "45 Degrees | 45°",
          "22.5° | 22.5°",
          "22,5 | 22.5°",
          "22 1/2 | 22.5°",
          "22-1/2° | 22.5°",
          "22½ | 22.5°",
          "22° 30' | 22.5°",
          "22°30′ | 22.5°",
          "31° 37' | 31° 37' 0\"",
          "31° 37’ 12” | 31.62°",
          "31º37'12\" | 31.62°",
          "1/3 | 0° 20' 0\"",
          "1,500 | 1.5°",
          "-2.5° | -2.5°",
          "−0° 30' | -0.5°",
          "+7 | 7°",
          "0 | 0°",
          "360 | 360°"
        })
    void parse_asPeopleWriteIt_isUnderstood(String text, String exact) {
      assertEquals(exact, Angle.parse(text).toString());
    }

    @ParameterizedTest
    @CsvSource(
        delimiter = '|',
        quoteCharacter = '`',
        value = {
          "45 mm | 3 | \"mm\" is no unit of angle. Use degrees, as 22.5°",
          "31° 60' | 4 | There are at most 59 minutes",
          "31° 37' 60\" | 8 | There are at most 59 seconds",
          "31° 37 | 6 | The mark of the minutes is missing. Write for example 31° 37' 12\"",
          "31.5° 10' | 6 | Minutes stand only behind whole degrees",
          "31 37' | 3 | Two numbers stand side by side. Write for example 1 1/2 or 18.25",
          "361 | 0 | That is more than once round. Write an angle up to 360°",
          "1/7 | 0 | That cannot be kept exactly. Use up to four decimals, or halves, thirds … 64ths",
          "45° x | 4 | A number was expected here",
          "half | 0 | A number was expected here",
          "1.234.5 | 0 | Two marks in one number. Write it without a thousands mark, as 1234.5"
        })
    void parse_otherText_saysWhatIsWrongAndWhere(String text, int position, String reason) {
      var fault = assertThrows(AngleFormatException.class, () -> Angle.parse(text));
      assertEquals(reason, fault.reason());
      assertEquals(position, fault.position());
      assertEquals(text, fault.text());
    }

    @Test
    void parse_nothingOrFarTooMuch_isRefused() {
      var nothing = assertThrows(AngleFormatException.class, () -> Angle.parse(" "));
      assertEquals("Nothing was entered. Write an angle in degrees", nothing.reason());
      assertThrows(AngleFormatException.class, () -> Angle.parse(null));
      assertThrows(AngleFormatException.class, () -> Angle.parse("1".repeat(41)));
    }

    @Test
    void examples_areAllUnderstood() {
      for (var example : AngleFormatException.EXAMPLES.split(", ")) {
        assertTrue(Angle.parse(example).isPositive(), example);
      }
    }
  }

  @Nested
  class Ratios {

    @Test
    void sineCosineTangent_ofWellKnownAngles_areExact() {
      assertRatio("0.5", Angle.ofDegrees(30).sine());
      assertRatio("0.5", Angle.ofDegrees(60).cosine());
      assertRatio("1", Angle.ofDegrees(45).tangent());
      assertRatio("0", Angle.RIGHT.cosine());
      assertRatio("1", Angle.RIGHT.sine());
      assertRatio("0", Angle.STRAIGHT.sine());
      assertRatio("-1", Angle.STRAIGHT.cosine());
      assertRatio("-1", Angle.ofDegrees(135).tangent());
      assertRatio("-0.5", Angle.ofDegrees(-30).sine());
      assertRatio("-1", Angle.ofDegrees(270).sine());
    }

    @Test
    void tangent_ofARightAngle_isRefused() {
      assertThrows(ArithmeticException.class, Angle.RIGHT::tangent);
      assertThrows(ArithmeticException.class, Angle.RIGHT.negated()::tangent);
    }

    @Test
    void ofSineAndOfTangent_refuseWhatHasNoAngleThere() {
      var justOver = new BigDecimal("1.0000001");
      assertThrows(
          IllegalArgumentException.class, () -> Angle.ofSine(justOver, TENTH, Rounding.UP));
      assertThrows(
          IllegalArgumentException.class,
          () -> Angle.ofTangent(BigDecimal.ONE.negate(), TENTH, Rounding.UP));
    }

    @Test
    void ofSineAndOfTangent_ofWellKnownRatios_areExactWhicheverWayTheyAreRounded() {
      var degrees = Angle.ofDegrees(1);
      for (var rounding : Rounding.values()) {
        assertEquals("30°", Angle.ofSine(new BigDecimal("0.5"), degrees, rounding).toString());
        assertEquals("90°", Angle.ofSine(BigDecimal.ONE, degrees, rounding).toString());
        assertEquals("45°", Angle.ofTangent(BigDecimal.ONE, degrees, rounding).toString());
        assertEquals("0°", Angle.ofTangent(BigDecimal.ZERO, degrees, rounding).toString());
      }
    }

    private void assertRatio(String expected, BigDecimal ratio) {
      assertEquals(0, new BigDecimal(expected).compareTo(ratio), ratio::toPlainString);
    }
  }

  @Nested
  class Arithmetic {

    @Test
    void roundedTo_aScale_goesTheWayThatIsSaid() {
      var angle = Angle.parse("31.62");
      assertEquals("31.6°", angle.roundedTo(TENTH, Rounding.DOWN).toString());
      assertEquals("31.7°", angle.roundedTo(TENTH, Rounding.UP).toString());
      assertEquals("31.6°", angle.roundedTo(TENTH, Rounding.NEAREST).toString());
      assertEquals("-31.7°", angle.negated().roundedTo(TENTH, Rounding.DOWN).toString());
    }

    @Test
    void dividedBy_sevenSides_isRoundedOnce() {
      var seventh = Angle.STRAIGHT.dividedBy(7, Angle.THOUSANDTH, Rounding.NEAREST);
      assertEquals("25.714°", seventh.toString());
      assertThrows(
          IllegalArgumentException.class,
          () -> Angle.STRAIGHT.dividedBy(0, TENTH, Rounding.NEAREST));
      assertThrows(
          IllegalArgumentException.class,
          () -> Angle.STRAIGHT.roundedTo(Angle.ZERO, Rounding.NEAREST));
    }

    @Test
    void order_isBySize() {
      assertTrue(Angle.parse("31° 37'").isLessThan(Angle.parse("31.62")));
      assertTrue(Angle.RIGHT.isGreaterThan(TENTH));
      assertFalse(Angle.RIGHT.isLessThan(Angle.RIGHT));
      assertEquals(0, Angle.parse("22 1/2").compareTo(Angle.parse("22.5")));
    }

    @ParameterizedTest
    @ValueSource(longs = {Long.MAX_VALUE, Long.MIN_VALUE})
    void arithmetic_beyondRange_neverWrapsRound(long far) {
      assertThrows(ArithmeticException.class, () -> new Angle(far).times(2));
      assertThrows(ArithmeticException.class, () -> new Angle(Long.MIN_VALUE).negated());
    }
  }
}
