package org.proofcut.core.habit;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
import java.util.Collection;
import java.util.Optional;
import org.proofcut.core.measure.Band;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.Rounding;

/**
 * What several observations of one trait come to.
 *
 * @param proofs how many there are, at least one
 * @param mean to the nearest 0.001 mm
 * @param scatter how they differ; empty with a single one, which says nothing of its own chance
 */
public record Estimate(int proofs, Length mean, Optional<Scatter> scatter) {

  /**
   * How observations differ among themselves. The interval of the mean is that of the NIST/SEMATECH
   * e-Handbook of Statistical Methods, section 1.3.5.2 (from memory); that of the next cut follows,
   * for its difference from the mean has the variance {@code s² + s² ÷ n}.
   *
   * @param deviation sample standard deviation {@code s = √(Σ(x − mean)² ÷ (n − 1))}, to 0.001 mm
   * @param ofMean where the true value lies, 95 % sure: mean ± t · s ÷ √n, ends moved outward to
   *     0.001 mm; t at n − 1 degrees of freedom leaves 2.5 % beyond each end
   * @param ofNext where the next single cut will come, 95 % sure: mean ± t · s · √(1 + 1 ÷ n)
   */
  public record Scatter(Length deviation, Band ofMean, Band ofNext) {

    /** Half of the interval of the mean: what stands behind ±. */
    public Length plusOrMinus() {
      return ofMean.extent().half();
    }
  }

  private static final BigDecimal UPPER = new BigDecimal("0.975");

  /** Lengths worked out here are kept to this. */
  static final Length STEP = Length.ofMicrometres(1);

  private static final MathContext DIGITS = MathContext.DECIMAL64;

  /** The estimate from at least one value; their order does not matter. */
  public static Estimate of(Collection<Length> values, StudentT t) {
    int n = values.size();
    var mean = Length.mean(values, STEP, Rounding.NEAREST);
    if (n == 1) {
      return new Estimate(n, mean, Optional.empty());
    }
    var variance = variance(values);
    var quantile = t.quantile(UPPER, n - 1);
    var count = BigDecimal.valueOf(n);
    var ofMean = variance.divide(count, DIGITS);
    return new Estimate(
        n,
        mean,
        Optional.of(
            new Scatter(
                onStep(root(variance), Rounding.NEAREST),
                around(mean, quantile.multiply(root(ofMean))),
                around(mean, quantile.multiply(root(variance.add(ofMean)))))));
  }

  private static Band around(Length mean, BigDecimal picometres) {
    return Band.around(mean, onStep(picometres, Rounding.UP));
  }

  /** In square picometres: (n · Σx² − (Σx)²) ÷ (n · (n − 1)), whole numbers until the division. */
  static BigDecimal variance(Collection<Length> values) {
    long n = values.size();
    var sum = BigInteger.ZERO;
    var squares = BigInteger.ZERO;
    for (var value : values) {
      var one = BigInteger.valueOf(value.picometres());
      sum = sum.add(one);
      squares = squares.add(one.multiply(one));
    }
    var over = squares.multiply(BigInteger.valueOf(n)).subtract(sum.multiply(sum));
    return new BigDecimal(over).divide(BigDecimal.valueOf(n * (n - 1)), DIGITS);
  }

  /** To the picometre downward, a millionth of the step that it is rounded to. */
  private static BigDecimal root(BigDecimal squarePicometres) {
    return new BigDecimal(squarePicometres.toBigInteger().sqrt());
  }

  static Length onStep(BigDecimal picometres, Rounding rounding) {
    return new Length(picometres.longValue()).roundedTo(STEP, rounding);
  }
}
