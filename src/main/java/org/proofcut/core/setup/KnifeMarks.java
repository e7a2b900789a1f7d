package org.proofcut.core.setup;

import org.proofcut.core.evidence.Amount;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.measure.Length;

/**
 * What turning knives leave on a face that goes past them.
 *
 * @param feed length of wood that goes by in a minute: the machine's, or the fastest that a hand
 *     may push it for a finished face
 * @param apart from one mark to the next
 * @param perInch marks to the inch
 * @param wanted marks to the inch that a finished face has at least
 */
public record KnifeMarks(
    Worked<Length> feed, Worked<Length> apart, Worked<Amount> perInch, Worked<Integer> wanted) {

  /** Whether the face can be left as it comes. */
  public boolean areFine() {
    return perInch.value().value().compareTo(java.math.BigDecimal.valueOf(wanted.value())) >= 0;
  }
}
