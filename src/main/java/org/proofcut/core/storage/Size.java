package org.proofcut.core.storage;

import org.proofcut.core.measure.Length;

/**
 * How much room a thing takes as it is kept, seen from the front of the cabinet.
 *
 * @param wide from left to right
 * @param high from its lowest point to its top, or to the hook that it hangs on
 * @param deep from back to front
 */
public record Size(Length wide, Length high, Length deep) {

  public Size {
    wide.requirePositive("width");
    high.requirePositive("height");
    deep.requirePositive("depth");
  }
}
