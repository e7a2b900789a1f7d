package org.proofcut.core.storage;

/** Solves placings. */
public interface Placer {

  /**
   * A placing that keeps to room, mass and exclusions; the same for the same placing, on whatever
   * machine, as long as the effort is enough.
   *
   * @param effort how hard to try
   */
  Placed place(Placing placing, Effort effort);

  /** How hard to try. */
  enum Effort {
    /** While somebody types: tens of milliseconds. */
    GLANCE,
    /** For a plan that is shown: two seconds for thirty things. */
    PLAN,
    /** For a plan of a large cabinet: ten seconds for sixty things. */
    LONG
  }
}
