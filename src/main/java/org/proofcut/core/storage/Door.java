package org.proofcut.core.storage;

import org.proofcut.core.measure.Band;
import org.proofcut.core.measure.Length;

/**
 * A door that shuts over some of a cabinet.
 *
 * @param number from 1, on the left
 * @param across what of the inside it shuts
 * @param hingedLeft whether its hinges are on its left, seen from the front
 * @param thickness of the panel that hooks are screwed to
 */
public record Door(int number, Band across, boolean hingedLeft, Length thickness) {

  /** The edge of the opening at its hinges, from the inner face of the cabinet's left side. */
  public Length hinges() {
    return hingedLeft ? across.least() : across.most();
  }

  /** How far a point lies from its hinges, however it stands. */
  public Length fromHinges(Length point) {
    return point.minus(hinges()).abs();
  }
}
