package org.proofcut.core.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.proofcut.core.measure.Band;
import org.proofcut.core.measure.Length;
import org.proofcut.core.storage.Cabinet;
import org.proofcut.core.storage.Door;
import org.proofcut.core.storage.Place;
import org.proofcut.core.storage.Put;
import org.proofcut.core.storage.StoragePlan;

/**
 * A cabinet taken apart for a drawing: the case from the front, and below it the backs of those
 * doors that have hooks and what hangs on the wall, in rows. What is laid out counts to the right
 * and down from the upper left.
 */
final class OpenCabinet {

  /** Between what stands side by side (our own choice). */
  private static final Length APART = Length.ofMillimetres(40);

  /** How much is drawn below hooks that nothing hangs on (our own choice). */
  private static final Length EMPTY = Length.ofMillimetres(100);

  /**
   * One piece of the drawing.
   *
   * @param caption what stands over it; empty over the case
   * @param door whose back it is, if it is one
   * @param wall the place on the wall that it is, if it is one
   * @param upright from its lowest to its highest, above the inner face of the bottom
   */
  record Part(
      String caption, Optional<Door> door, Optional<Place> wall, Length wide, Band upright) {}

  /** A piece in its place. */
  record Laid(Part part, Length left, Length top) {

    /** How far down a height lies that counts from the inner face of the bottom. */
    Length down(Length up) {
      return top.plus(part.upright().most()).minus(up);
    }

    Band across() {
      return new Band(left, left.plus(part.wide()));
    }
  }

  private final Cabinet cabinet;
  private final List<List<Part>> rows = new ArrayList<>();
  private final List<Laid> laid = new ArrayList<>();
  private Length bottom = Length.ZERO;

  OpenCabinet(Cabinet cabinet, List<Place> places, StoragePlan plan) {
    this.cabinet = cabinet;
    var side = cabinet.side();
    var inside = cabinet.inside();
    var around = new Band(side.negated(), inside.high().plus(side));
    rows.add(
        List.of(
            new Part(
                "",
                Optional.empty(),
                Optional.empty(),
                inside.wide().plus(side.times(2)),
                around)));
    cabinet.doors().stream()
        .filter(door -> places.stream().anyMatch(place -> isOn(door, place)))
        .forEach(door -> add(back(door)));
    places.stream().filter(Place::isOpen).forEach(place -> add(onWall(place, plan)));
  }

  private Part back(Door door) {
    var name = cabinet.doors().size() == 1 ? "back of the door" : "back of door " + door.number();
    return new Part(
        name,
        Optional.of(door),
        Optional.empty(),
        door.across().extent(),
        cabinet.room().upright());
  }

  /** No lower than the lowest that hangs there. */
  private static Part onWall(Place place, StoragePlan plan) {
    var hooks = place.upright().most();
    var low =
        plan.in(place.id()).stream()
            .map(put -> put.block().upright().least())
            .min(Comparator.naturalOrder())
            .orElse(hooks.minus(EMPTY));
    return new Part(
        place.name(), Optional.empty(), Optional.of(place), place.width(), new Band(low, hooks));
  }

  /**
   * Into the row that was begun last, if it is not that of the case and stays no wider: a wider one
   * would make all of it small.
   */
  private void add(Part part) {
    var last = rows.get(rows.size() - 1);
    var most = rows.get(0).get(0).wide();
    if (rows.size() > 1 && wide(last).plus(APART).plus(part.wide()).isAtMost(most)) {
      last.add(part);
    } else {
      rows.add(new ArrayList<>(List.of(part)));
    }
  }

  private static Length wide(List<Part> row) {
    return row.stream()
        .map(Part::wide)
        .reduce((one, other) -> one.plus(APART).plus(other))
        .orElse(Length.ZERO);
  }

  private static Length high(List<Part> row) {
    return row.stream()
        .map(part -> part.upright().extent())
        .max(Comparator.naturalOrder())
        .orElse(Length.ZERO);
  }

  /** Width of the widest row. */
  Length wide() {
    return rows.stream().map(OpenCabinet::wide).max(Comparator.naturalOrder()).orElseThrow();
  }

  /** Height of the highest row. */
  Length highest() {
    return rows.stream().map(OpenCabinet::high).max(Comparator.naturalOrder()).orElseThrow();
  }

  /** Lays the rows out with so much room between two; how high all is. */
  Length layOut(Length between) {
    for (var row : rows) {
      var left = Length.ZERO;
      var top = laid.isEmpty() ? Length.ZERO : bottom.plus(between);
      for (var part : row) {
        laid.add(new Laid(part, left, top));
        left = left.plus(part.wide()).plus(APART);
      }
      bottom = top.plus(high(row));
    }
    return bottom;
  }

  /** The case itself. */
  Laid front() {
    return laid.get(0);
  }

  /** All but the case. */
  List<Laid> others() {
    return laid.subList(1, laid.size());
  }

  /** The piece that a place is drawn on. */
  Laid of(Place place) {
    return others().stream()
        .filter(one -> holds(one.part(), place))
        .findFirst()
        .orElseGet(this::front);
  }

  private static boolean holds(Part part, Place place) {
    return place.isOnDoor()
        ? part.door().filter(door -> isOn(door, place)).isPresent()
        : part.wall().filter(wall -> wall.id().equals(place.id())).isPresent();
  }

  private static boolean isOn(Door door, Place place) {
    return place.isOnDoor() && door.across().contains(place.across().middle());
  }

  /** Where a place is drawn, from left to right. */
  Band across(Place place) {
    return across(place, place.across());
  }

  /** Where a thing is drawn, from left to right. */
  Band across(Put put) {
    return across(put.place(), put.block().across());
  }

  /** What hangs on a door lies as far from its hinges when it is open: its back is mirrored. */
  private Band across(Place place, Band inside) {
    var on = of(place);
    if (on.part().door().isPresent()) {
      var by = on.left().plus(on.part().door().get().across().most());
      return new Band(by.minus(inside.most()), by.minus(inside.least()));
    }
    return on.part().wall().isPresent()
        ? inside.movedBy(on.left().minus(place.across().least()))
        : inFront(inside);
  }

  /** Where something in the case is drawn, from left to right. */
  Band inFront(Band inside) {
    return inside.movedBy(front().left().plus(cabinet.side()));
  }
}
