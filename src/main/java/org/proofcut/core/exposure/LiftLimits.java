package org.proofcut.core.exposure;

import org.proofcut.core.evidence.Worked;
import org.proofcut.core.measure.Length;

/**
 * What is taken for granted of lifts in the shop. From {@code content/exposure/limits/lifting}.
 *
 * @param longestHeld longest piece that one person holds steady; beyond it there is no figure
 * @param deepestHeld largest size of a piece outward from the person; beyond it there is no figure
 * @param sawHandsOut how far out the hands are at least when a part is laid on the saw table
 * @param sawHandsFrom how high they are where it is taken up
 * @param sawHandsTo how high they are where it is laid down
 * @param sawLiftsPerMinute how often that is done
 */
public record LiftLimits(
    Worked<Length> longestHeld,
    Worked<Length> deepestHeld,
    Worked<Length> sawHandsOut,
    Worked<Length> sawHandsFrom,
    Worked<Length> sawHandsTo,
    Worked<Integer> sawLiftsPerMinute) {

  /** Whether a piece of these two sizes is too large for one person to hold steady. */
  public boolean isTooLarge(Length longest, Length deep) {
    return longest.isGreaterThan(longestHeld.value()) || deep.isGreaterThan(deepestHeld.value());
  }
}
