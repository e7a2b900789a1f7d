package org.proofcut.core.storage;

import org.proofcut.core.measure.Band;
import org.proofcut.core.measure.Length;

/**
 * A cabinet between two uprights.
 *
 * @param number from 1, on the left
 * @param across from the inner face of the cabinet's left side
 */
public record Bay(int number, Band across) {

  public Length width() {
    return across.extent();
  }
}
