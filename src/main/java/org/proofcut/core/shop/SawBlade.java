package org.proofcut.core.shop;

import java.util.Optional;
import org.proofcut.core.measure.Length;

/**
 * A circular saw blade.
 *
 * @param kerf width of the cut it leaves
 */
public record SawBlade(
    String id,
    String name,
    Length diameter,
    Length kerf,
    int edges,
    Optional<Integer> markedTopSpeed)
    implements Cutter {

  @Override
  public Length cutWidth() {
    return kerf;
  }
}
