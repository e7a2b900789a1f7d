package org.proofcut.rulebook;

import org.proofcut.core.evidence.Amount;
import org.proofcut.core.evidence.Citation;
import org.proofcut.core.measure.Length;
import org.proofcut.core.safety.Fact;

/**
 * A number that a condition may compare a fact with.
 *
 * @param type what it counts or measures; a fact of another type can't be compared with it
 * @param value a {@link Length}, an {@link Amount} of weight or level, or a {@link Long} for a
 *     count or turns per minute
 */
public record Limit(String name, Fact.Type type, Object value, Citation because) {

  /** Whether a condition can compare it: neither too large for that nor too fine. */
  public static boolean canBeCompared(Object value) {
    try {
      return Scaled.of(value) instanceof Long;
    } catch (ArithmeticException | IllegalArgumentException e) {
      return false;
    }
  }

  /** The whole number that stands for it in a condition. */
  long number() {
    return (Long) Scaled.of(value);
  }
}
