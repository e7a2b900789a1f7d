package org.proofcut.core.measure;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.Objects;

/**
 * An exact angle, kept as a whole number of hundredths of an arc second.
 *
 * <p>One degree is 360,000 of them, so 0.0001°, one minute, a third and a 64th of a degree are all
 * whole: 22 1/2°, 22.5° and 22° 30' are one value. Text is read up to 360° either way.
 *
 * <p>For example, {@code Angle.parse("31° 37'")}.
 */
public record Angle(long hundredthsOfAnArcSecond) implements Comparable<Angle> {

  static final long PER_DEGREE = 360_000;

  /** π to 50 decimals. */
  public static final BigDecimal PI = Trigonometry.PI;

  public static final Angle ZERO = new Angle(0);

  /** 90°. */
  public static final Angle RIGHT = ofDegrees(90);

  /** 180°: no corner at all. */
  public static final Angle STRAIGHT = ofDegrees(180);

  /** 0.001°, on which computed angles are given: 5 µm over 300 mm, finer than any scale. */
  public static final Angle THOUSANDTH = new Angle(PER_DEGREE / 1000);

  /** 0.01 arc second: the finest that is kept. */
  public static final Angle FINEST = new Angle(1);

  /** An angle of so many whole degrees. */
  public static Angle ofDegrees(long degrees) {
    return new Angle(Math.multiplyExact(degrees, PER_DEGREE));
  }

  /**
   * Reads an angle as people write it; the grammar stands at {@link AngleText}.
   *
   * <p>For example, {@code 45}, {@code 45°}, {@code 22.5°}, {@code 22 1/2}, {@code 31° 37'}.
   *
   * @throws AngleFormatException if the text is no angle; says what is wrong and how to write it
   */
  public static Angle parse(String text) {
    return AngleText.parse(text);
  }

  /** The angle from 0° to 90° with this tangent, which is not negative, on a step. */
  public static Angle ofTangent(BigDecimal tangent, Angle step, Rounding rounding) {
    return inverse(Trigonometry.degreesOfTangent(tangent), step, rounding);
  }

  /** The angle from 0° to 90° with this sine, from 0 to 1, on a step. */
  public static Angle ofSine(BigDecimal sine, Angle step, Rounding rounding) {
    return inverse(Trigonometry.degreesOfSine(sine), step, rounding);
  }

  private static Angle inverse(BigDecimal degrees, Angle step, Rounding rounding) {
    var units = degrees.multiply(BigDecimal.valueOf(PER_DEGREE));
    return step.times(
        rounding.divide(
            units.unscaledValue(),
            BigInteger.TEN
                .pow(units.scale())
                .multiply(BigInteger.valueOf(step.hundredthsOfAnArcSecond))));
  }

  /** To 34 decimals; exact where it has fewer. */
  public BigDecimal sine() {
    return Trigonometry.sine(this);
  }

  /** To 34 decimals; exact where it has fewer. */
  public BigDecimal cosine() {
    return Trigonometry.sine(RIGHT.minus(this));
  }

  /**
   * To 34 decimals; exact where it has fewer.
   *
   * @throws ArithmeticException for a right angle, which has none
   */
  public BigDecimal tangent() {
    return Trigonometry.tangent(this);
  }

  /**
   * One over the cosine, to 34 decimals: how much longer a slope is than its base.
   *
   * @throws ArithmeticException for a right angle, which has none
   */
  public BigDecimal secant() {
    return Trigonometry.secant(this);
  }

  public Angle plus(Angle other) {
    return new Angle(Math.addExact(hundredthsOfAnArcSecond, other.hundredthsOfAnArcSecond));
  }

  public Angle minus(Angle other) {
    return new Angle(Math.subtractExact(hundredthsOfAnArcSecond, other.hundredthsOfAnArcSecond));
  }

  public Angle times(long count) {
    return new Angle(Math.multiplyExact(hundredthsOfAnArcSecond, count));
  }

  public Angle negated() {
    return new Angle(Math.negateExact(hundredthsOfAnArcSecond));
  }

  /** One of so many equal parts, moved onto a step. */
  public Angle dividedBy(long count, Angle step, Rounding rounding) {
    if (count <= 0 || !step.isPositive()) {
      throw new IllegalArgumentException("an angle in " + count + " parts on steps of " + step);
    }
    return step.times(
        rounding.divide(
            BigInteger.valueOf(hundredthsOfAnArcSecond),
            BigInteger.valueOf(step.hundredthsOfAnArcSecond).multiply(BigInteger.valueOf(count))));
  }

  /** This moved onto a whole number of steps, as a scale is read. */
  public Angle roundedTo(Angle step, Rounding rounding) {
    return dividedBy(1, step, rounding);
  }

  public Angle abs() {
    return hundredthsOfAnArcSecond < 0 ? negated() : this;
  }

  public boolean isZero() {
    return hundredthsOfAnArcSecond == 0;
  }

  public boolean isPositive() {
    return hundredthsOfAnArcSecond > 0;
  }

  public boolean isLessThan(Angle other) {
    return hundredthsOfAnArcSecond < other.hundredthsOfAnArcSecond;
  }

  public boolean isGreaterThan(Angle other) {
    return hundredthsOfAnArcSecond > other.hundredthsOfAnArcSecond;
  }

  @Override
  public int compareTo(Angle other) {
    return Long.compare(
        hundredthsOfAnArcSecond, Objects.requireNonNull(other).hundredthsOfAnArcSecond);
  }

  /**
   * Exact: {@code 22.5°} where four decimals do, else {@code 31° 37' 12.01"}. {@link #parse} reads
   * it back, up to 360°.
   */
  @Override
  public String toString() {
    var sign = hundredthsOfAnArcSecond < 0 ? "-" : "";
    var size = BigInteger.valueOf(hundredthsOfAnArcSecond).abs();
    var inTenThousandths = size.divideAndRemainder(BigInteger.valueOf(PER_DEGREE / 10_000));
    if (inTenThousandths[1].signum() == 0) {
      return sign + plain(new BigDecimal(inTenThousandths[0], 4)) + "°";
    }
    var degrees = size.divideAndRemainder(BigInteger.valueOf(PER_DEGREE));
    var minutes = degrees[1].divideAndRemainder(BigInteger.valueOf(PER_DEGREE / 60));
    var seconds = plain(new BigDecimal(minutes[1], 2));
    return "%s%d° %d' %s\"".formatted(sign, degrees[0], minutes[0], seconds);
  }

  private static String plain(BigDecimal number) {
    var stripped = number.stripTrailingZeros();
    return stripped
        .setScale(Math.max(stripped.scale(), 0), RoundingMode.UNNECESSARY)
        .toPlainString();
  }
}
