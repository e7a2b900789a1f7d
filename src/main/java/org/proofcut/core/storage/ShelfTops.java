package org.proofcut.core.storage;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.proofcut.core.measure.Length;
import org.proofcut.core.storage.Fitting.DoorRail;
import org.proofcut.core.storage.Fitting.Rail;
import org.proofcut.core.storage.Fitting.Shelf;

/** Heights of a shelf's face, above the inner face of the bottom, at which something changes. */
final class ShelfTops {

  private final StorageTask task;
  private final StorageLimits limits;

  ShelfTops(StorageTask task) {
    this.task = task;
    this.limits = task.limits();
  }

  /** The nearest face below a shelf, or underside above it. */
  static Length neighbour(Cabinet cabinet, Shelf shelf, boolean below) {
    var room = cabinet.bay(shelf.bay()).orElseThrow().across();
    var edge = below ? Length.ZERO : cabinet.inside().high();
    for (var block : cabinet.built()) {
      if (Block.overlap(block.across(), room)) {
        var top = block.upright().most();
        var bottom = block.upright().least();
        if (below && top.isLessThan(shelf.top())) {
          edge = edge.max(top);
        }
        if (!below && bottom.isAtLeast(shelf.top())) {
          edge = edge.min(bottom);
        }
      }
    }
    return edge;
  }

  /** At which one thing just fits on it, under it or over it. */
  Set<Length> ofOne(Shelf shelf) {
    var below = neighbour(task.cabinet(), shelf, true);
    var above = neighbour(task.cabinet(), shelf, false);
    var tops = new TreeSet<Length>();
    for (var thing : task.things()) {
      if (thing.postures().stream().anyMatch(posture -> posture != Posture.HANGING)) {
        var over = thing.size().high().plus(limits.above().value());
        tops.add(below.plus(over).plus(shelf.thickness()));
        tops.add(above.minus(over));
      }
      if (thing.postures().contains(Posture.HANGING)) {
        hung(shelf, thing.size().high(), tops);
      }
    }
    hung(shelf, Length.ZERO, tops);
    return tops;
  }

  /** At which one thing on it is just reached by somebody who uses it. */
  Set<Length> reached() {
    var tops = new TreeSet<Length>();
    for (var thing : task.things()) {
      for (var person : task.usersOf(thing)) {
        Reach.of(person, task.cabinet().before(), limits)
            .ifPresent(
                reach -> {
                  tops.add(gripped(reach.least(), thing));
                  tops.add(gripped(reach.most(), thing));
                });
      }
    }
    return tops;
  }

  /** At which one of some things and one other just fit, one hanging over the other. */
  Set<Length> ofTwo(Shelf shelf, List<Thing> some) {
    var tops = new TreeSet<Length>();
    for (var one : some) {
      for (var other : task.things()) {
        hung(shelf, one.size().high().plus(other.size().high()), tops);
      }
    }
    return tops;
  }

  /** At which things on it are at a height where somebody's hands are best. */
  Set<Length> atHand() {
    var tops = new TreeSet<Length>();
    for (var thing : task.things()) {
      for (var person : task.usersOf(thing)) {
        for (var hand : List.of(person.knuckle(), person.elbow(), person.shoulder())) {
          tops.add(gripped(hand, thing));
        }
      }
    }
    return tops;
  }

  private Length gripped(Length hand, Thing thing) {
    return hand.minus(task.cabinet().raised()).minus(thing.size().high().half());
  }

  /** Clear of what hangs, and of the hand that lifts it off. */
  private void hung(Shelf shelf, Length high, Set<Length> tops) {
    task.cabinet()
        .fittings(Rail.class)
        .filter(rail -> rail.bay() == shelf.bay())
        .forEach(
            rail -> {
              tops.add(rail.at().minus(limits.belowHanging().value()).minus(high));
              tops.add(rail.at().plus(limits.above().value()).plus(shelf.thickness()));
            });
    var bay = task.cabinet().bay(shelf.bay()).orElseThrow().across();
    task.cabinet()
        .fittings(DoorRail.class)
        .filter(
            rail ->
                task.cabinet()
                    .door(rail.door())
                    .filter(door -> Block.overlap(door.across(), bay))
                    .isPresent())
        .forEach(
            rail -> {
              tops.add(rail.at().minus(limits.behindDoor().value()).minus(high));
              tops.add(rail.at().plus(limits.behindDoor().value()).plus(shelf.thickness()));
            });
  }
}
