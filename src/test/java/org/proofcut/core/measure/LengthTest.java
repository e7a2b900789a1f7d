package org.proofcut.core.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class LengthTest {

  private static final Length LONGEST = new Length(Long.MAX_VALUE);
  private static final Length SHORTEST = new Length(Long.MIN_VALUE);
  private static final Length STEP = Length.of("0.02 mm");

  @Nested
  class OfInches {

    @Test
    void ofInches_thirds_areRefused() {
      assertThrows(ArithmeticException.class, () -> Length.ofInches(1, 3));
    }

    @Test
    void ofInches_denominatorBelowOne_isRefused() {
      assertThrows(IllegalArgumentException.class, () -> Length.ofInches(1, 0));
      assertThrows(IllegalArgumentException.class, () -> Length.ofInches(1, -2));
    }

    @Test
    void ofInches_sameValueInAnotherForm_isEqual() {
      assertEquals(Length.ofInches(3, 4), Length.ofInches(96, 128));
      assertEquals(Length.ofInches(3, 4), Length.of("0.75 in"));
      assertEquals(Length.ofInches(3, 4), Length.ofMicrometres(19_050));
    }
  }

  @Nested
  class OfDecimal {

    @Test
    void of_decimal_isExact() {
      assertEquals(
          new Length(18_250_000_000L), Length.of(new BigDecimal("18.2500"), LengthUnit.MILLIMETRE));
    }

    @Test
    void of_partsOfAPicometre_areRefused() {
      assertThrows(
          ArithmeticException.class,
          () -> Length.of(new BigDecimal("0.0000000001"), LengthUnit.MILLIMETRE));
    }

    @Test
    void of_beyondTheRange_isRefused() {
      assertThrows(
          ArithmeticException.class, () -> Length.of(new BigDecimal("1e12"), LengthUnit.INCH));
    }
  }

  @Nested
  class Mean {

    @Test
    void mean_ofNone_isRefused() {
      assertThrows(
          IllegalArgumentException.class, () -> Length.mean(List.of(), STEP, Rounding.NEAREST));
    }

    @Test
    void mean_stepNotAboveZero_isRefused() {
      var one = List.of(STEP);
      assertThrows(
          IllegalArgumentException.class, () -> Length.mean(one, Length.ZERO, Rounding.DOWN));
      assertThrows(
          IllegalArgumentException.class, () -> Length.mean(one, STEP.negated(), Rounding.DOWN));
    }

    @Test
    void mean_notOnAStep_goesTheWayThatIsSaid() {
      var readings = List.of(Length.of("18.00 mm"), Length.of("18.01 mm"), Length.of("18.01 mm"));
      var hundredth = Length.of("0.01 mm");
      assertEquals(Length.of("18 mm"), Length.mean(readings, hundredth, Rounding.DOWN));
      assertEquals(Length.of("18.01 mm"), Length.mean(readings, hundredth, Rounding.UP));
      assertEquals(Length.of("18.01 mm"), Length.mean(readings, hundredth, Rounding.NEAREST));
    }

    @Test
    void mean_sumBeyondTheRange_isStillFound() {
      assertEquals(
          LONGEST, Length.mean(List.of(LONGEST, LONGEST), new Length(1), Rounding.NEAREST));
    }
  }

  @Nested
  class Arithmetic {

    @Test
    void plus_minus_times_negated_pastTheRange_throw() {
      var one = new Length(1);
      assertThrows(ArithmeticException.class, () -> LONGEST.plus(one));
      assertThrows(ArithmeticException.class, () -> SHORTEST.minus(one));
      assertThrows(ArithmeticException.class, () -> LONGEST.times(2));
      assertThrows(ArithmeticException.class, SHORTEST::negated);
      assertThrows(ArithmeticException.class, SHORTEST::abs);
      assertThrows(ArithmeticException.class, () -> Length.ofMillimetres(10_000_000_000L));
    }

    @Test
    void minus_theLongerOne_isNegative() {
      var less = Length.of("18 mm").minus(Length.of("18.25 mm"));
      assertTrue(less.isNegative());
      assertFalse(less.isPositive());
      assertEquals(Length.of("-0.25 mm"), less);
      assertEquals(Length.of("0.25 mm"), less.abs());
    }
  }

  @Nested
  class DividedBy {

    @Test
    void dividedBy_count_isExactOrRefused() {
      assertEquals(Length.of("6.1 mm"), Length.of("18.3 mm").dividedBy(3));
      assertThrows(ArithmeticException.class, () -> Length.of("1 mm").dividedBy(3));
    }

    @Test
    void dividedBy_countBelowOne_isRefused() {
      assertThrows(IllegalArgumentException.class, () -> STEP.dividedBy(0));
      assertThrows(IllegalArgumentException.class, () -> SHORTEST.dividedBy(-1));
    }

    @Test
    void dividedBy_step_countsSteps() {
      var depth = Length.of("9 mm");
      var pass = Length.of("4 mm");
      assertEquals(2, depth.dividedBy(pass, Rounding.DOWN));
      assertEquals(3, depth.dividedBy(pass, Rounding.UP));
      assertEquals(2, depth.dividedBy(pass, Rounding.NEAREST));
      assertThrows(IllegalArgumentException.class, () -> depth.dividedBy(Length.ZERO, Rounding.UP));
    }

    @Test
    void half_oddPicometres_roundsUp() {
      assertEquals(new Length(2), new Length(3).half());
      assertEquals(new Length(-1), new Length(-3).half());
      assertEquals(Length.ofInches(1, 256), Length.ofInches(1, 128).half());
    }
  }

  @Nested
  class RoundedTo {

    @Test
    void roundedTo_offAStep_goesTheWayThatIsSaid() {
      var asked = Length.of("5.903 mm");
      assertEquals(Length.of("5.90 mm"), asked.roundedTo(STEP, Rounding.DOWN));
      assertEquals(Length.of("5.92 mm"), asked.roundedTo(STEP, Rounding.UP));
      assertEquals(Length.of("5.90 mm"), asked.roundedTo(STEP, Rounding.NEAREST));
    }

    @Test
    void roundedTo_onAStep_staysWhateverTheWay() {
      for (var rounding : Rounding.values()) {
        assertEquals(Length.of("5.9 mm"), Length.of("5.9 mm").roundedTo(STEP, rounding));
      }
    }

    @Test
    void roundedTo_halfWay_goesUp() {
      assertEquals(Length.of("0.02 mm"), Length.of("0.01 mm").roundedTo(STEP, Rounding.NEAREST));
      assertEquals(Length.ZERO, Length.of("-0.01 mm").roundedTo(STEP, Rounding.NEAREST));
    }

    @Test
    void roundedTo_negative_keepsDownBelowAndUpAbove() {
      var asked = Length.of("-5.903 mm");
      assertEquals(Length.of("-5.92 mm"), asked.roundedTo(STEP, Rounding.DOWN));
      assertEquals(Length.of("-5.90 mm"), asked.roundedTo(STEP, Rounding.UP));
    }
  }

  @Nested
  class Comparison {

    private final Length thin = Length.of("18 mm");
    private final Length thick = Length.of("18.25 mm");

    @Test
    void min_max_eitherWayRound_agree() {
      assertEquals(thin, thin.min(thick));
      assertEquals(thin, thick.min(thin));
      assertEquals(thick, thin.max(thick));
      assertEquals(thick, thick.max(thin));
    }

    @Test
    void comparisons_ofTwoLengths_agreeWithCompareTo() {
      assertTrue(thin.isLessThan(thick) && thin.isAtMost(thick) && thin.compareTo(thick) < 0);
      assertTrue(thick.isGreaterThan(thin) && thick.isAtLeast(thin));
      assertFalse(thick.isLessThan(thin) || thick.isAtMost(thin));
      assertFalse(thin.isGreaterThan(thick) || thin.isAtLeast(thick));
    }

    @Test
    void comparisons_ofEqualLengths_areAtMostAndAtLeastOnly() {
      var same = Length.ofMicrometres(18_000);
      assertTrue(thin.isAtMost(same) && thin.isAtLeast(same));
      assertFalse(thin.isLessThan(same) || thin.isGreaterThan(same));
      assertEquals(0, thin.compareTo(same));
    }

    @Test
    void zero_isNeitherNegativeNorPositive() {
      assertTrue(Length.ZERO.isZero());
      assertFalse(Length.ZERO.isNegative() || Length.ZERO.isPositive());
    }
  }

  @Nested
  class InUnits {

    @Test
    void inMillimetres_wholeHundreds_haveNoExponent() {
      assertEquals("600", Length.ofMillimetres(600).inMillimetres().toString());
      assertEquals("18.25625", Length.ofInches(23, 32).inMillimetres().toString());
    }

    @Test
    void inInches_wholeTens_haveNoExponent() {
      assertEquals("30", Length.ofInches(30, 1).inInches().toString());
      assertEquals("0.0393700787", Length.ofMillimetres(1).inInches().toString());
    }

    @Test
    void toString_isPlainMillimetres() {
      assertEquals("600 mm", Length.ofMillimetres(600).toString());
      assertEquals("-0.000000001 mm", new Length(-1).toString());
      assertEquals("0 mm", Length.ZERO.toString());
    }
  }
}
