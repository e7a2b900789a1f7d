package org.proofcut.core.evidence;

import java.math.BigDecimal;

/**
 * A number that is no length, with its unit: a speed, an angle, a mass.
 *
 * @param value already rounded, at the step that its working names
 * @param unit as printed behind it, such as {@code m/s}
 */
public record Amount(BigDecimal value, String unit) {

  /** As printed: {@code 11.3 m/s}. */
  public String text() {
    return value.toPlainString() + " " + unit;
  }

  @Override
  public String toString() {
    return text();
  }
}
