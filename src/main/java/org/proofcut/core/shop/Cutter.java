package org.proofcut.core.shop;

import java.util.Optional;
import org.proofcut.core.measure.Length;

/** Something with cutting edges that a machine turns. */
public sealed interface Cutter
    permits StraightCutter, BearingCutter, SawBlade, StackedCutter, Bit, KnifeHead {

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
}
