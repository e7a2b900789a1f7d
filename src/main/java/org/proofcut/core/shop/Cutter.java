package org.proofcut.core.shop;

import java.util.Optional;
import org.proofcut.core.measure.Band;
import org.proofcut.core.measure.Length;

/** Something with cutting edges that a machine turns. */
public sealed interface Cutter permits StraightCutter, SawBlade, StackedCutter, Bit {

  /** Stable within the shop. */
  String id();

  /** What the maker calls it. */
  String name();

  Length diameter();

  /** Width of the cut that one pass leaves, as marked. */
  Length cutWidth();

  /** Number of cutting edges. */
  int edges();

  /** Highest speed marked on it, in revolutions a minute; empty where no mark can be read. */
  Optional<Integer> markedTopSpeed();

  /**
   * The room that a part has in the cut of one pass, both sides together: from its thickest reading
   * to its thinnest, negative where it won't go in.
   */
  default Band roomFor(Band thickness) {
    return new Band(cutWidth().minus(thickness.most()), cutWidth().minus(thickness.least()));
  }
}
