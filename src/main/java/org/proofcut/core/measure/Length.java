package org.proofcut.core.measure;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.Collection;
import java.util.Objects;

/**
 * An exact length, kept as a whole number of picometres.
 *
 * <p>One inch is 25,400,000,000 pm, so 1/128 in, 0.0001 in, 0.001 mm and their halves are all
 * whole: 3/4 in, 0.75 in and 19.05 mm are one value. Range: about ±9,223 km; text is read up to 100
 * m; arithmetic that leaves it throws {@link ArithmeticException}, nothing wraps round.
 *
 * <p>For example, {@code Length.parse("23/32 in", MILLIMETRE)} is exactly 18.25625 mm.
 */
public record Length(long picometres) implements Comparable<Length> {

  /** No length at all. */
  public static final Length ZERO = new Length(0);

  /** 0.01 mm, on which computed lengths are given: as fine as a caliper is read. */
  public static final Length HUNDREDTH = new Length(10_000_000);

  private static final long PER_MICROMETRE = 1_000_000L;

  /** A length of so many whole millimetres. */
  public static Length ofMillimetres(long millimetres) {
    return new Length(Math.multiplyExact(millimetres, LengthUnit.MILLIMETRE.picometres()));
  }

  /** A length of so many micrometres (0.001 mm). */
  public static Length ofMicrometres(long micrometres) {
    return new Length(Math.multiplyExact(micrometres, PER_MICROMETRE));
  }

  /**
   * A fraction of an inch. For example, {@code ofInches(23, 32)} is 23/32 in.
   *
   * @throws ArithmeticException if the fraction is no whole number of picometres (thirds of an
   *     inch)
   * @throws IllegalArgumentException if the denominator is not greater than zero
   */
  public static Length ofInches(long numerator, long denominator) {
    return new Length(Math.multiplyExact(numerator, LengthUnit.INCH.picometres()))
        .dividedBy(denominator);
  }

  /**
   * A decimal number of a unit.
   *
   * @throws ArithmeticException if it is no whole number of picometres, or out of range
   */
  public static Length of(BigDecimal amount, LengthUnit unit) {
    return new Length(amount.multiply(BigDecimal.valueOf(unit.picometres())).longValueExact());
  }

  /**
   * Reads a length as people write it; the grammar stands at {@link LengthText}.
   *
   * <p>For example, {@code 18.25}, {@code 18,25 mm}, {@code 0.705 in}, {@code 1-1/2"}, {@code 3' 6
   * 1/2"}, {@code 59cm}.
   *
   * @param bareUnit the unit of a number written without one
   * @throws LengthFormatException if the text is no length; says what is wrong and how to write it
   */
  public static Length parse(String text, LengthUnit bareUnit) {
    return LengthText.parse(text, bareUnit);
  }

  /** Reads a length that carries its own unit, as content and programs write it. */
  public static Length of(String text) {
    return LengthText.parseWithUnit(text);
  }

  /** The mean of at least one length, moved onto a step. */
  public static Length mean(Collection<Length> lengths, Length step, Rounding rounding) {
    requireStep(step);
    if (lengths.isEmpty()) {
      throw new IllegalArgumentException("the mean of no lengths");
    }
    var sum = BigInteger.ZERO;
    for (var length : lengths) {
      sum = sum.add(BigInteger.valueOf(length.picometres));
    }
    // One division and one rounding: sum / (n · step), so that nothing is rounded twice.
    var divisor = BigInteger.valueOf(step.picometres).multiply(BigInteger.valueOf(lengths.size()));
    return step.times(rounding.divide(sum, divisor));
  }

  /** This and another, end to end. */
  public Length plus(Length other) {
    return new Length(Math.addExact(picometres, other.picometres));
  }

  /** What is left of this when the other is taken away; may be negative. */
  public Length minus(Length other) {
    return new Length(Math.subtractExact(picometres, other.picometres));
  }

  /** So many of this, end to end. */
  public Length times(long count) {
    return new Length(Math.multiplyExact(picometres, count));
  }

  /**
   * So much of this, moved once onto a step. For example, the run of a slope is {@code
   * rise.times(slope.tangent(), step, UP)}.
   */
  public Length times(BigDecimal factor, Length step, Rounding rounding) {
    requireStep(step);
    var whole = factor.setScale(Math.max(factor.scale(), 0));
    return step.times(
        rounding.divide(
            whole.unscaledValue().multiply(BigInteger.valueOf(picometres)),
            BigInteger.TEN.pow(whole.scale()).multiply(BigInteger.valueOf(step.picometres))));
  }

  /**
   * This in the proportion of two lengths, {@code this · over ÷ under}, moved once onto a step.
   *
   * @throws IllegalArgumentException if {@code under} is not greater than zero
   */
  public Length inProportion(Length over, Length under, Length step, Rounding rounding) {
    requireStep(step);
    under.requirePositive("what is divided by");
    return step.times(
        rounding.divide(
            BigInteger.valueOf(picometres).multiply(BigInteger.valueOf(over.picometres)),
            BigInteger.valueOf(under.picometres).multiply(BigInteger.valueOf(step.picometres))));
  }

  /**
   * The side of a square of this area, moved once onto a step.
   *
   * @param area in square picometres, not negative
   */
  public static Length rootOf(BigInteger area, Length step, Rounding rounding) {
    requireStep(step);
    var square = BigInteger.valueOf(step.picometres).pow(2);
    // Whole steps below the root, and below twice the root for the nearest: no rounding before.
    var steps = area.divide(square).sqrt();
    var count =
        switch (rounding) {
          case DOWN -> steps;
          case UP -> steps.pow(2).multiply(square).equals(area) ? steps : steps.add(BigInteger.ONE);
          case NEAREST -> area.shiftLeft(2).divide(square).sqrt().add(BigInteger.ONE).shiftRight(1);
        };
    return step.times(count.longValueExact());
  }

  /**
   * This, for what can only be greater than zero.
   *
   * @throws IllegalArgumentException if it is not
   */
  public Length requirePositive(String what) {
    if (picometres <= 0) {
      throw new IllegalArgumentException(what + " must be greater than zero: " + this);
    }
    return this;
  }

  /** The same length the other way. */
  public Length negated() {
    return new Length(Math.negateExact(picometres));
  }

  /** The size of this without its sign. */
  public Length abs() {
    return picometres < 0 ? negated() : this;
  }

  /**
   * This in so many equal parts, exactly.
   *
   * @throws ArithmeticException if it does not divide into whole picometres
   * @throws IllegalArgumentException if the count is not greater than zero
   */
  public Length dividedBy(long count) {
    if (count <= 0) {
      throw new IllegalArgumentException("a length in " + count + " parts");
    }
    if (picometres % count != 0) {
      throw new ArithmeticException(this + " in " + count + " parts is not exact");
    }
    return new Length(picometres / count);
  }

  /** Half of this; exact for every length that is a whole number of 2 pm, else rounded up. */
  public Length half() {
    return new Length(Rounding.UP.divide(BigInteger.valueOf(picometres), BigInteger.TWO));
  }

  /**
   * How many of the step go into this, so rounded.
   *
   * @throws IllegalArgumentException if the step is not greater than zero
   */
  public long dividedBy(Length step, Rounding rounding) {
    requireStep(step);
    return rounding.divide(BigInteger.valueOf(picometres), BigInteger.valueOf(step.picometres));
  }

  /** This moved onto a whole number of steps. For example, 5.903 mm on 0.02 mm steps is 5.9 mm. */
  public Length roundedTo(Length step, Rounding rounding) {
    return step.times(dividedBy(step, rounding));
  }

  /** The smaller of the two. */
  public Length min(Length other) {
    return picometres <= other.picometres ? this : other;
  }

  /** The larger of the two. */
  public Length max(Length other) {
    return picometres >= other.picometres ? this : other;
  }

  public boolean isLessThan(Length other) {
    return picometres < other.picometres;
  }

  public boolean isGreaterThan(Length other) {
    return picometres > other.picometres;
  }

  public boolean isAtMost(Length other) {
    return picometres <= other.picometres;
  }

  public boolean isAtLeast(Length other) {
    return picometres >= other.picometres;
  }

  public boolean isZero() {
    return picometres == 0;
  }

  public boolean isNegative() {
    return picometres < 0;
  }

  public boolean isPositive() {
    return picometres > 0;
  }

  /** The exact number of the unit; a length kept here always has a finite decimal in mm. */
  public BigDecimal inMillimetres() {
    return plain(BigDecimal.valueOf(picometres, 9));
  }

  /** The number of inches to ten decimals, half up: enough to tell 0.01 µm. */
  public BigDecimal inInches() {
    return plain(
        BigDecimal.valueOf(picometres)
            .divide(BigDecimal.valueOf(LengthUnit.INCH.picometres()), 10, RoundingMode.HALF_UP));
  }

  /** Without needless zeros, and never as 1E+2. */
  private static BigDecimal plain(BigDecimal number) {
    var stripped = number.stripTrailingZeros();
    return stripped.scale() < 0 ? stripped.setScale(0) : stripped;
  }

  @Override
  public int compareTo(Length other) {
    return Long.compare(picometres, Objects.requireNonNull(other).picometres);
  }

  /** Exact, in millimetres: {@code 18.25625 mm}. {@link #of(String)} reads it back, up to 100 m. */
  @Override
  public String toString() {
    return inMillimetres().toPlainString() + " mm";
  }

  private static void requireStep(Length step) {
    if (step.picometres <= 0) {
      throw new IllegalArgumentException("a step must be greater than zero: " + step);
    }
  }
}
