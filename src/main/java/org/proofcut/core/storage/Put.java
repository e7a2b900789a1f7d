package org.proofcut.core.storage;

import org.proofcut.core.measure.Band;
import org.proofcut.core.measure.Length;

/**
 * A thing in its place.
 *
 * @param left from the inner face of the cabinet's left side to the thing's left
 */
public record Put(Thing thing, Place place, Length left) {

  /**
   * The room that it takes: what stands there stands against the back, what hangs there hangs from
   * the hooks, on a door at its face.
   */
  public Block block() {
    var size = thing.size();
    var upright =
        place.kind().isHung()
            ? new Band(place.upright().most().minus(size.high()), place.upright().most())
            : new Band(place.upright().least(), place.upright().least().plus(size.high()));
    var deep =
        place.isOnDoor()
            ? new Band(place.deep().most().minus(size.deep()), place.deep().most())
            : new Band(place.deep().least(), place.deep().least().plus(size.deep()));
    return new Block(new Band(left, left.plus(size.wide())), upright, deep);
  }

  /** Where the hand takes it, above the inner face of the bottom: its hook, or half its height. */
  public Length grip() {
    return grip(thing, place);
  }

  static Length grip(Thing thing, Place place) {
    return place.kind().isHung()
        ? place.upright().most()
        : place.upright().least().plus(thing.size().high().half());
  }
}
