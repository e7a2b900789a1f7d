package org.proofcut.core.storage;

import org.proofcut.core.measure.Band;
import org.proofcut.core.measure.Length;

/**
 * A block with its faces along the three axes of a cabinet: from its left side, from its bottom,
 * from its back.
 */
public record Block(Band across, Band upright, Band deep) {

  /** Whether the two take up the same room somewhere; faces that touch do not. */
  public boolean overlaps(Block other) {
    return overlap(across, other.across)
        && overlap(upright, other.upright)
        && overlap(deep, other.deep);
  }

  /** Whether the other lies wholly inside; faces may touch. */
  public boolean holds(Block other) {
    return holds(across, other.across) && holds(upright, other.upright) && holds(deep, other.deep);
  }

  /** The block with so much room more on both sides, along each axis. */
  Block grown(Length byAcross, Length byUpright, Length byDeep) {
    return new Block(grown(across, byAcross), grown(upright, byUpright), grown(deep, byDeep));
  }

  private static Band grown(Band band, Length by) {
    return new Band(band.least().minus(by), band.most().plus(by));
  }

  /** The block with so much room under it. */
  Block withRoomUnder(Length room) {
    return new Block(across, new Band(upright.least().minus(room), upright.most()), deep);
  }

  /** The room over the block, so high. */
  Block over(Length room) {
    return new Block(across, new Band(upright.most(), upright.most().plus(room)), deep);
  }

  static boolean overlap(Band one, Band other) {
    return one.least().isLessThan(other.most()) && other.least().isLessThan(one.most());
  }

  private static boolean holds(Band outer, Band inner) {
    return outer.contains(inner.least()) && outer.contains(inner.most());
  }
}
