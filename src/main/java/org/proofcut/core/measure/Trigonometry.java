package org.proofcut.core.measure;

import java.math.BigDecimal;
import java.math.BigInteger;

/**
 * Sines and tangents in whole numbers, so that no length passes through a floating point number.
 * Inside, a number {@code x} is kept as {@code x · 2^160}, which is 48 decimals.
 */
final class Trigonometry {

  static final BigDecimal PI =
      new BigDecimal("3.14159265358979323846264338327950288419716939937511");

  /** Decimals given: a length of 100 m is not off by a picometre. */
  private static final int DECIMALS = 34;

  private static final int BITS = 160;
  private static final BigInteger ONE = BigInteger.ONE.shiftLeft(BITS);
  private static final BigInteger SCALE = BigInteger.TEN.pow(DECIMALS);
  private static final BigInteger HALF_TURN = BigInteger.valueOf(180);
  private static final BigInteger PI_INSIDE = inside(PI);

  private Trigonometry() {}

  static BigDecimal sine(Angle angle) {
    return outside(sineInside(angle));
  }

  static BigDecimal tangent(Angle angle) {
    return outside(sineInside(angle).shiftLeft(BITS).divide(cosineAsDivisor(angle)));
  }

  static BigDecimal secant(Angle angle) {
    return outside(ONE.shiftLeft(BITS).divide(cosineAsDivisor(angle)));
  }

  private static BigInteger cosineAsDivisor(Angle angle) {
    var cosine = sineInside(Angle.RIGHT.minus(angle));
    if (outside(cosine).signum() == 0) {
      throw new ArithmeticException(angle + " has no tangent");
    }
    return cosine;
  }

  /** By the series x − x³/3! + x⁵/5! …, from −90° to 90°, where it settles fast. */
  private static BigInteger sineInside(Angle angle) {
    var once = Math.floorMod(angle.hundredthsOfAnArcSecond(), 360 * Angle.PER_DEGREE);
    var turned = new Angle(once);
    if (turned.isGreaterThan(Angle.RIGHT)) {
      turned =
          once <= 270 * Angle.PER_DEGREE
              ? Angle.STRAIGHT.minus(turned)
              : turned.minus(Angle.ofDegrees(360));
    }
    var x =
        PI_INSIDE
            .multiply(BigInteger.valueOf(turned.hundredthsOfAnArcSecond()))
            .divide(HALF_TURN.multiply(BigInteger.valueOf(Angle.PER_DEGREE)));
    var square = product(x, x).negate();
    var sum = x;
    var term = x;
    for (long n = 2; term.bitLength() > 1; n += 2) {
      term = product(term, square).divide(BigInteger.valueOf(n * (n + 1)));
      sum = sum.add(term);
    }
    return sum;
  }

  static BigDecimal degreesOfTangent(BigDecimal tangent) {
    if (tangent.signum() < 0) {
      throw new IllegalArgumentException("a negative tangent: " + tangent);
    }
    var inside = inside(tangent);
    if (inside.compareTo(ONE) <= 0) {
      return outside(degreesInside(inside));
    }
    var rest = degreesInside(ONE.shiftLeft(BITS).divide(inside));
    return outside(BigInteger.valueOf(90).shiftLeft(BITS).subtract(rest));
  }

  static BigDecimal degreesOfSine(BigDecimal sine) {
    if (sine.signum() < 0 || sine.compareTo(BigDecimal.ONE) > 0) {
      throw new IllegalArgumentException("no sine: " + sine);
    }
    var inside = inside(sine);
    // By the half angle: near 90° the tangent itself would grow beyond bounds.
    var cosine = ONE.shiftLeft(BITS).subtract(inside.pow(2)).sqrt();
    var half = inside.shiftLeft(BITS).divide(ONE.add(cosine));
    return outside(degreesInside(half).shiftLeft(1));
  }

  /**
   * By the series x − x³/3 + x⁵/5 …, after halving the angle until it is small: {@code tan(a/2) =
   * tan a ÷ (1 + √(1 + tan² a))}.
   */
  private static BigInteger degreesInside(BigInteger tangent) {
    var x = tangent;
    int halvings = 3;
    for (int i = 0; i < halvings; i++) {
      var hypotenuse = ONE.shiftLeft(BITS).add(x.pow(2)).sqrt();
      x = x.shiftLeft(BITS).divide(ONE.add(hypotenuse));
    }
    var square = product(x, x).negate();
    var sum = x;
    var power = x;
    for (long n = 3; power.bitLength() > 1; n += 2) {
      power = product(power, square);
      sum = sum.add(power.divide(BigInteger.valueOf(n)));
    }
    return sum.shiftLeft(halvings).multiply(HALF_TURN).shiftLeft(BITS).divide(PI_INSIDE);
  }

  private static BigInteger product(BigInteger one, BigInteger other) {
    // Divided, not shifted: a shift takes a negative product away from zero and never to it.
    return one.multiply(other).divide(ONE);
  }

  private static BigInteger inside(BigDecimal number) {
    return number.multiply(new BigDecimal(ONE)).toBigInteger();
  }

  private static BigDecimal outside(BigInteger inside) {
    return new BigDecimal(Rounding.NEAREST.quotient(inside.multiply(SCALE), ONE), DECIMALS);
  }
}
