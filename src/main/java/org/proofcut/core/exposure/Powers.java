package org.proofcut.core.exposure;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** Powers of two and logarithms in decimals, to 20 digits and better. */
final class Powers {

  private static final MathContext DIGITS = new MathContext(30);

  private static final BigDecimal TWO = BigDecimal.valueOf(2);

  private static final BigDecimal LN_2 = new BigDecimal("0.693147180559945309417232121458");

  private static final BigDecimal LOG2_OF_TEN = new BigDecimal("3.321928094887362347870319429489");

  private static final BigDecimal LN_10 = new BigDecimal("2.302585092994045684017991454684");

  /** A term smaller than this changes no digit that is kept. */
  private static final BigDecimal SMALLEST = new BigDecimal("1E-30");

  /** How often a root is drawn before the series, so that it is short. */
  private static final int ROOTS = 3;

  private Powers() {}

  /** {@code 2^exponent}: the whole part by doubling, the rest by the series of {@code e^x}. */
  static BigDecimal ofTwo(BigDecimal exponent) {
    int whole = exponent.setScale(0, RoundingMode.FLOOR).intValueExact();
    var x = exponent.subtract(BigDecimal.valueOf(whole)).multiply(LN_2, DIGITS);
    var sum = BigDecimal.ONE;
    var term = BigDecimal.ONE;
    for (int n = 1; term.compareTo(SMALLEST) > 0; n++) {
      term = term.multiply(x, DIGITS).divide(BigDecimal.valueOf(n), DIGITS);
      sum = sum.add(term);
    }
    return sum.multiply(TWO.pow(whole, DIGITS), DIGITS);
  }

  /** {@code 10^exponent}, as a power of two. */
  static BigDecimal ofTen(BigDecimal exponent) {
    return ofTwo(exponent.multiply(LOG2_OF_TEN, DIGITS));
  }

  /**
   * The decimal logarithm: places moved until one digit stands before the point, then {@code ln m =
   * 2 · (z + z³/3 + z⁵/5 + …)} with {@code z = (m − 1) ÷ (m + 1)}.
   */
  static BigDecimal log10(BigDecimal of) {
    if (of.signum() <= 0) {
      throw new IllegalArgumentException("no logarithm of " + of);
    }
    int places = of.precision() - of.scale() - 1;
    var m = of.movePointLeft(places);
    for (int i = 0; i < ROOTS; i++) {
      m = m.sqrt(DIGITS);
    }
    var z = m.subtract(BigDecimal.ONE).divide(m.add(BigDecimal.ONE), DIGITS);
    var square = z.multiply(z, DIGITS);
    var power = z;
    var sum = BigDecimal.ZERO;
    for (int n = 1; power.compareTo(SMALLEST) > 0; n += 2) {
      sum = sum.add(power.divide(BigDecimal.valueOf(n), DIGITS));
      power = power.multiply(square, DIGITS);
    }
    var ln = sum.multiply(TWO.pow(ROOTS + 1));
    return ln.divide(LN_10, DIGITS).add(BigDecimal.valueOf(places));
  }
}
