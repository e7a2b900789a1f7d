package org.proofcut.core.storage;

import java.time.LocalDate;
import java.time.Period;
import org.proofcut.core.evidence.Citation;

/**
 * What falls due with time.
 *
 * @param what is done then, in the imperative: "Look at the cushions"
 * @param months after the thing was opened, or after it was last done
 * @param ends whether the thing is over then, and not only to be looked at
 */
public record Ageing(String id, String what, int months, boolean ends, Citation because) {

  /** The day on which it falls due, counted from another. */
  public LocalDate after(LocalDate day) {
    return day.plus(Period.ofMonths(months));
  }
}
