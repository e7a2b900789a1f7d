package org.proofcut.core.measure;

import java.math.BigInteger;

/**
 * Which way a measure that does not fall on a step is moved onto one. Always said, never implied.
 */
public enum Rounding {
  /** To the next step toward minus infinity: the smaller measure. */
  DOWN,
  /** To the next step toward plus infinity: the larger measure. */
  UP,
  /** To the nearest step; exactly half way goes up. */
  NEAREST;

  /** How often the divisor, which is greater than zero, goes into the dividend. */
  long divide(BigInteger dividend, BigInteger divisor) {
    return quotient(dividend, divisor).longValueExact();
  }

  /** The same where it may be larger than any length. */
  BigInteger quotient(BigInteger dividend, BigInteger divisor) {
    var floored = floorDivide(dividend, divisor);
    var exact = floored.multiply(divisor).equals(dividend);
    return switch (this) {
      case DOWN -> floored;
      case UP -> exact ? floored : floored.add(BigInteger.ONE);
      case NEAREST -> floorDivide(dividend.add(dividend).add(divisor), divisor.add(divisor));
    };
  }

  private static BigInteger floorDivide(BigInteger dividend, BigInteger divisor) {
    var both = dividend.divideAndRemainder(divisor);
    var below = both[1].signum() != 0 && both[1].signum() != divisor.signum();
    return below ? both[0].subtract(BigInteger.ONE) : both[0];
  }
}
