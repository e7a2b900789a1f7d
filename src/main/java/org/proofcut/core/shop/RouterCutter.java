package org.proofcut.core.shop;

import org.proofcut.core.measure.Length;

/** What all cutters for a router have. */
public sealed interface RouterCutter permits StraightCutter, BearingCutter {

  /** What the maker calls it. */
  String name();

  /** Largest diameter, which sets its speed and the opening that it needs. */
  Length diameter();

  /** Length of its edges. */
  Length cuttingLength();

  /** Number of cutting edges. */
  int edges();
}
