package org.proofcut.core.drawing;

import java.util.ArrayList;
import java.util.List;
import org.proofcut.core.measure.Band;
import org.proofcut.core.measure.Length;
import org.proofcut.core.storage.Cabinet;
import org.proofcut.core.storage.Door;
import org.proofcut.core.storage.Place;
import org.proofcut.core.storage.Put;

/**
 * A cabinet with its doors swung wide open, laid out flat: their backs stand beside it, farther
 * right what hangs on the wall. Widths count from the inner face of the left side, heights from the
 * inner face of the bottom, as in {@link Place}.
 */
final class OpenCabinet {

  /** Between what is drawn side by side (our own choice). */
  private static final Length APART = Length.ofMillimetres(40);

  /** The back of a door, as it is seen when the door stands open. */
  record Leaf(Door door, Band across) {}

  /** A place on the wall. */
  record OnWall(Place place, Band across) {}

  private final Cabinet cabinet;
  private final List<Leaf> leaves = new ArrayList<>();
  private final List<OnWall> walls = new ArrayList<>();
  private Length left;
  private Length right;

  OpenCabinet(Cabinet cabinet, List<Place> places) {
    this.cabinet = cabinet;
    left = Length.ZERO.minus(cabinet.side());
    right = cabinet.inside().wide().plus(cabinet.side());
    cabinet.doors().forEach(this::open);
    places.stream().filter(Place::isOpen).forEach(this::hang);
  }

  private void open(Door door) {
    var wide = door.across().extent();
    if (door.hingedLeft()) {
      var hinge = left.minus(APART);
      left = hinge.minus(wide);
      leaves.add(new Leaf(door, new Band(left, hinge)));
    } else {
      var hinge = right.plus(APART);
      right = hinge.plus(wide);
      leaves.add(new Leaf(door, new Band(hinge, right)));
    }
  }

  private void hang(Place place) {
    var from = right.plus(APART);
    right = from.plus(place.width());
    walls.add(new OnWall(place, new Band(from, right)));
  }

  List<Leaf> leaves() {
    return leaves;
  }

  List<OnWall> walls() {
    return walls;
  }

  /** From the far edge on the left to the far edge on the right. */
  Band across() {
    return new Band(left, right);
  }

  /** From the lowest to the highest that is drawn. */
  Band upright() {
    var low = Length.ZERO.minus(cabinet.side());
    var high = cabinet.inside().high().plus(cabinet.side());
    for (var wall : walls) {
      low = low.min(wall.place().upright().least());
      high = high.max(wall.place().upright().most());
    }
    return new Band(low, high);
  }

  /** Where a place is drawn, from left to right. */
  Band across(Place place) {
    return across(place, place.across());
  }

  /** Where a thing is drawn, from left to right. */
  Band across(Put put) {
    return across(put.place(), put.block().across());
  }

  private Band across(Place place, Band inside) {
    if (place.isOpen()) {
      return walls.stream()
          .filter(wall -> wall.place().id().equals(place.id()))
          .map(wall -> inside.movedBy(wall.across().least().minus(place.across().least())))
          .findFirst()
          .orElse(inside);
    }
    return place.isOnDoor() ? onLeaf(place, inside) : inside;
  }

  /** What hangs on a door lies as far from its hinges when it is open. */
  private Band onLeaf(Place place, Band inside) {
    for (var leaf : leaves) {
      var shut = leaf.door().across();
      if (shut.contains(place.across().least()) && shut.contains(place.across().most())) {
        var by = leaf.across().least().plus(shut.most());
        return new Band(by.minus(inside.most()), by.minus(inside.least()));
      }
    }
    return inside;
  }
}
