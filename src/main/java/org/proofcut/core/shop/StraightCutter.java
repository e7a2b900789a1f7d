package org.proofcut.core.shop;

import java.util.Optional;
import org.proofcut.core.measure.Length;

/**
 * A straight router cutter.
 *
 * @param diameter as marked; what it really cuts is known only from a proof
 * @param cuttingLength length of its edges
 * @param shank diameter of the shank, which has to fit the collet
 */
public record StraightCutter(
    String id,
    String name,
    Length diameter,
    Length cuttingLength,
    int edges,
    Length shank,
    Optional<Integer> markedTopSpeed)
    implements Cutter, RouterCutter {

  @Override
  public Length cutWidth() {
    return diameter;
  }
}
