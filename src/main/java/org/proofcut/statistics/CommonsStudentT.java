package org.proofcut.statistics;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.apache.commons.statistics.distribution.TDistribution;
import org.proofcut.core.habit.StudentT;

/** Student's t from Apache Commons Statistics, to six decimals. */
public final class CommonsStudentT implements StudentT {

  private static final int DECIMALS = 6;

  @Override
  public BigDecimal quantile(BigDecimal probability, int degreesOfFreedom) {
    // From the tail: one less a small number would lose its last digits.
    var tail = BigDecimal.ONE.subtract(probability).doubleValue();
    return BigDecimal.valueOf(TDistribution.of(degreesOfFreedom).inverseSurvivalProbability(tail))
        .setScale(DECIMALS, RoundingMode.HALF_UP);
  }
}
