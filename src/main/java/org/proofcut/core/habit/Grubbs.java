package org.proofcut.core.habit;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
import java.util.Collection;
import org.proofcut.core.measure.Length;

/**
 * Grubbs' test for one value that lies too far from the others to be chance, on either side.
 *
 * <p>{@code G = |x − mean| ÷ s}, both of all N values, x among them. It is judged against
 *
 * <pre>{@code (N − 1) ÷ √N · √(t² ÷ (N − 2 + t²))}</pre>
 *
 * where t at N − 2 degrees of freedom leaves α ÷ (2N) beyond it. Source: NIST/SEMATECH e-Handbook
 * of Statistical Methods, section 1.3.5.17 (formula found in secondary copies; section number from
 * memory). One-sided, α ÷ N stands in place of α ÷ (2N): the two-sided test at twice the α.
 */
final class Grubbs {

  private static final MathContext DIGITS = MathContext.DECIMAL64;

  private Grubbs() {}

  /** How far the suspect lies from the mean of all, in standard deviations; zero if all agree. */
  static BigDecimal statistic(Collection<Length> all, Length suspect) {
    var variance = Estimate.variance(all);
    if (variance.signum() == 0) {
      return BigDecimal.ZERO;
    }
    var sum =
        all.stream()
            .map(value -> BigInteger.valueOf(value.picometres()))
            .reduce(BigInteger.ZERO, BigInteger::add);
    var mean = new BigDecimal(sum).divide(BigDecimal.valueOf(all.size()), DIGITS);
    return BigDecimal.valueOf(suspect.picometres())
        .subtract(mean)
        .abs()
        .divide(variance.sqrt(DIGITS), DIGITS);
  }

  /** What chance alone exceeds with a probability of α, both sides taken together. */
  static BigDecimal critical(int n, BigDecimal alpha, StudentT t) {
    var tail = alpha.divide(BigDecimal.valueOf(2L * n), DIGITS);
    var squared = t.quantile(BigDecimal.ONE.subtract(tail), n - 2).pow(2);
    var share = squared.divide(squared.add(BigDecimal.valueOf(n - 2L)), DIGITS);
    return BigDecimal.valueOf(n - 1L)
        .divide(BigDecimal.valueOf(n).sqrt(DIGITS), DIGITS)
        .multiply(share.sqrt(DIGITS), DIGITS);
  }
}
