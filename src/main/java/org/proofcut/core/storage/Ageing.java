package org.proofcut.core.storage;

import java.time.LocalDate;
import java.time.Period;
import org.proofcut.core.evidence.Citation;

/**
 * What falls due with time.
 *
 * @param what is done then, in the imperative: "Look at the cushions"
 * @param every how long after the thing was opened, or after it was last done; more than no time
 * @param ends whether the thing is over then, and not only to be looked at
 */
public record Ageing(String id, String what, Period every, boolean ends, Citation because) {

  /**
   * @throws IllegalArgumentException if it would fall due at once, or before
   */
  public Ageing {
    if (every.isZero() || every.isNegative()) {
      throw new IllegalArgumentException(id + " falls due before any time has passed");
    }
  }

  /** The day on which it falls due, counted from another. */
  public LocalDate after(LocalDate day) {
    return day.plus(every);
  }
}
