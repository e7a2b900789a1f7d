package org.proofcut.rulebook;

import java.math.BigDecimal;
import java.util.Map;
import org.proofcut.core.evidence.Amount;
import org.proofcut.core.measure.Length;

/**
 * A value as a condition sees it: what is measured is a whole number of a unit so small that
 * nothing is rounded, picometres, micrograms or hundredths of a decibel.
 */
final class Scaled {

  /** How many of the smallest unit each unit is; a pound is 0.45359237 kg exactly. */
  private static final Map<String, BigDecimal> UNITS =
      Map.of(
          "kg", BigDecimal.valueOf(1_000_000_000L),
          "g", BigDecimal.valueOf(1_000_000L),
          "lb", BigDecimal.valueOf(453_592_370L),
          "dBA", BigDecimal.valueOf(100));

  private Scaled() {}

  /**
   * @throws ArithmeticException if the amount is finer than the smallest unit
   * @throws IllegalArgumentException if its unit is none that a condition can compare
   */
  static Object of(Object value) {
    if (value instanceof Length length) {
      return length.picometres();
    }
    return value instanceof Amount amount ? (Object) number(amount) : value;
  }

  private static long number(Amount amount) {
    var unit = UNITS.get(amount.unit());
    if (unit == null) {
      throw new IllegalArgumentException("a condition can't compare " + amount);
    }
    return amount.value().multiply(unit).longValueExact();
  }
}
