package org.proofcut.core.habit;

import java.math.BigDecimal;

/** Student's t distribution. */
public interface StudentT {

  /**
   * The value that t stays below with this probability. For example, {@code quantile(0.975, 9)} is
   * 2.262.
   *
   * @param probability between 0 and 1, neither included
   * @param degreesOfFreedom at least 1
   */
  BigDecimal quantile(BigDecimal probability, int degreesOfFreedom);
}
