package org.proofcut.core.measure;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
import java.math.RoundingMode;

/** Sines and tangents in decimals, so that no length passes through a floating point number. */
final class Trigonometry {

  static final BigDecimal PI =
      new BigDecimal("3.14159265358979323846264338327950288419716939937511");

  /** Decimals given: a length of 100 m is not off by a picometre. */
  private static final int DECIMALS = 34;

  /** Decimals worked with: the last few are lost on the way. */
  private static final MathContext WORKING = new MathContext(50);

  private static final BigDecimal SMALLEST = BigDecimal.ONE.movePointLeft(48);
  private static final BigDecimal HALF_TURN = BigDecimal.valueOf(180);

  private Trigonometry() {}

  static BigDecimal sine(Angle angle) {
    return rounded(fullSine(angle));
  }

  static BigDecimal tangent(Angle angle) {
    var cosine = fullSine(Angle.RIGHT.minus(angle));
    if (rounded(cosine).signum() == 0) {
      throw new ArithmeticException(angle + " has no tangent");
    }
    return rounded(fullSine(angle).divide(cosine, WORKING));
  }

  /** By the series x − x³/3! + x⁵/5! …, from −90° to 90°, where it settles fast. */
  private static BigDecimal fullSine(Angle angle) {
    var once = Math.floorMod(angle.hundredthsOfAnArcSecond(), 360 * Angle.PER_DEGREE);
    var turned = new Angle(once);
    if (turned.isGreaterThan(Angle.RIGHT)) {
      turned =
          once <= 270 * Angle.PER_DEGREE
              ? Angle.STRAIGHT.minus(turned)
              : turned.minus(Angle.ofDegrees(360));
    }
    var x =
        PI.multiply(BigDecimal.valueOf(turned.hundredthsOfAnArcSecond()))
            .divide(HALF_TURN.multiply(BigDecimal.valueOf(Angle.PER_DEGREE)), WORKING);
    var square = x.multiply(x, WORKING).negate();
    var sum = x;
    var term = x;
    for (long n = 2; term.abs().compareTo(SMALLEST) > 0; n += 2) {
      term = term.multiply(square, WORKING).divide(BigDecimal.valueOf(n * (n + 1)), WORKING);
      sum = sum.add(term, WORKING);
    }
    return sum;
  }

  /**
   * By the series x − x³/3 + x⁵/5 …, after halving the angle until it is small: {@code tan(a/2) =
   * tan a ÷ (1 + √(1 + tan² a))}.
   */
  static BigDecimal degreesOfTangent(BigDecimal tangent) {
    if (tangent.signum() < 0) {
      throw new IllegalArgumentException("a negative tangent: " + tangent);
    }
    if (tangent.compareTo(BigDecimal.ONE) > 0) {
      return rounded(
          BigDecimal.valueOf(90).subtract(fullDegrees(BigDecimal.ONE.divide(tangent, WORKING))));
    }
    return rounded(fullDegrees(tangent));
  }

  static BigDecimal degreesOfSine(BigDecimal sine) {
    if (sine.signum() < 0 || sine.compareTo(BigDecimal.ONE) > 0) {
      throw new IllegalArgumentException("no sine: " + sine);
    }
    // The half angle again: near 90° the tangent itself would grow beyond bounds.
    var cosine = BigDecimal.ONE.subtract(sine.multiply(sine)).sqrt(WORKING);
    var half = sine.divide(BigDecimal.ONE.add(cosine), WORKING);
    return rounded(fullDegrees(half).multiply(BigDecimal.valueOf(2)));
  }

  private static BigDecimal fullDegrees(BigDecimal tangent) {
    var x = tangent;
    int halvings = 4;
    for (int i = 0; i < halvings; i++) {
      var hypotenuse = BigDecimal.ONE.add(x.multiply(x, WORKING)).sqrt(WORKING);
      x = x.divide(BigDecimal.ONE.add(hypotenuse), WORKING);
    }
    var square = x.multiply(x, WORKING).negate();
    var sum = x;
    var power = x;
    for (long n = 3; power.abs().compareTo(SMALLEST) > 0; n += 2) {
      power = power.multiply(square, WORKING);
      sum = sum.add(power.divide(BigDecimal.valueOf(n), WORKING), WORKING);
    }
    return sum.multiply(new BigDecimal(BigInteger.ONE.shiftLeft(halvings)))
        .multiply(HALF_TURN, WORKING)
        .divide(PI, WORKING);
  }

  private static BigDecimal rounded(BigDecimal number) {
    return number.setScale(DECIMALS, RoundingMode.HALF_EVEN);
  }
}
