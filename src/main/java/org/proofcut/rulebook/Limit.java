package org.proofcut.rulebook;

import java.math.BigInteger;
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

  /** Whether it is within so many times another one, or that part of it. */
  public boolean isNear(Limit other, int times) {
    var here = BigInteger.valueOf(number());
    var there = BigInteger.valueOf(other.number());
    var many = BigInteger.valueOf(times);
    return here.signum() == there.signum()
        && here.abs().compareTo(there.abs().multiply(many)) <= 0
        && there.abs().compareTo(here.abs().multiply(many)) <= 0;
  }

  /** The whole number that stands for it in a condition. */
  long number() {
    return (Long) Scaled.of(value);
  }
}
