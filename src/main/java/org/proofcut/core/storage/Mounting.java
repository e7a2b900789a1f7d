package org.proofcut.core.storage;

import org.proofcut.core.evidence.Citation;
import org.proofcut.core.measure.Length;

/**
 * How high something that is fixed may hang, from the floor.
 *
 * @param topAtMost height of its top, where it is no heavier than {@code heavyOver}
 * @param heavyTopAtMost height of its top where it is heavier
 * @param heavyOver in grams
 * @param bottomAtLeast height of its lowest point
 */
public record Mounting(
    Length topAtMost,
    Length heavyTopAtMost,
    int heavyOver,
    Length bottomAtLeast,
    Citation because) {

  /** The greatest height of its top for a weight in grams. */
  public Length topAtMost(int grams) {
    return grams > heavyOver ? heavyTopAtMost : topAtMost;
  }
}
