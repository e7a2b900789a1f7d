package org.proofcut.core.storage;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.proofcut.core.measure.Band;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.Rounding;
import org.proofcut.core.storage.Fitting.DoorRail;
import org.proofcut.core.storage.Fitting.Drawer;
import org.proofcut.core.storage.Fitting.LidBox;
import org.proofcut.core.storage.Fitting.Rail;
import org.proofcut.core.storage.Fitting.Shelf;
import org.proofcut.core.storage.Fitting.Wall;

/**
 * Takes a cabinet apart into its places: bay by bay in the order of its fittings, then doors and
 * wall.
 */
public final class Places {

  private final Cabinet cabinet;
  private final StorageLimits limits;

  private Places(Cabinet cabinet, StorageLimits limits) {
    this.cabinet = cabinet;
    this.limits = limits;
  }

  /** All places, each with room for something. */
  public static List<Place> of(Cabinet cabinet, StorageLimits limits) {
    return new Places(cabinet, limits).all();
  }

  private List<Place> all() {
    var places = new ArrayList<Place>();
    for (var bay : cabinet.bays()) {
      for (var fitting : cabinet.fittings()) {
        place(bay, fitting).ifPresent(places::add);
      }
      bottom(bay).ifPresent(places::add);
    }
    cabinet.fittings(DoorRail.class).forEach(rail -> onDoor(rail).ifPresent(places::add));
    cabinet.fittings(Wall.class).map(this::onWall).forEach(places::add);
    return List.copyOf(places);
  }

  private Optional<Place> place(Bay bay, Fitting fitting) {
    if (fitting instanceof Shelf shelf && shelf.bay() == bay.number()) {
      return surface(bay, shelf.id(), shelf.name(), shelf.top(), shelf.deep(), shelf.mostGrams());
    }
    if (fitting instanceof Rail rail && rail.bay() == bay.number()) {
      return hooks(bay, rail);
    }
    if (fitting instanceof Drawer drawer && drawer.bay() == bay.number()) {
      return Optional.of(inside(bay, drawer));
    }
    if (fitting instanceof LidBox box && box.bay() == bay.number()) {
      return Optional.of(inside(bay, box));
    }
    return Optional.empty();
  }

  private Optional<Place> bottom(Bay bay) {
    return surface(
        bay,
        "bottom-" + bay.number(),
        "bottom",
        Length.ZERO,
        cabinet.inside().deep(),
        Fitting.BOTTOM_GRAMS);
  }

  /** A face that things stand on, up to what is above it; none where a drawer is on it. */
  private Optional<Place> surface(
      Bay bay, String id, String name, Length top, Length deep, int mostGrams) {
    var across = besideBoxes(bay, id);
    var ceiling = ceiling(bay, top);
    var front = deep.min(behindDoors(bay));
    return across.isEmpty() || ceiling.isAtMost(top) || !front.isPositive()
        ? Optional.empty()
        : Optional.of(
            new Place(
                id,
                named(bay, name),
                Place.Kind.SHELF,
                bay.number() - 1,
                across.get(),
                new Band(top, ceiling),
                new Band(Length.ZERO, front),
                mostGrams - carriedBoxes(bay, id),
                Optional.empty(),
                false,
                cabinet.dry()));
  }

  /** How far from the back anything in a bay may reach, so that its doors shut over it. */
  private Length behindDoors(Bay bay) {
    var deep = cabinet.inside().deep();
    return cabinet.doors().stream().anyMatch(door -> Block.overlap(door.across(), bay.across()))
        ? deep.minus(limits.behindDoor().value())
        : deep;
  }

  /** Boxes stand on the right end of their shelf. */
  private Optional<Band> besideBoxes(Bay bay, String shelf) {
    var taken =
        boxesOn(bay, shelf).stream()
            .map(box -> box.outer().wide())
            .reduce(Length.ZERO, (one, other) -> one.max(other));
    var right = bay.across().most().minus(taken);
    return right.isAtMost(bay.across().least())
        ? Optional.empty()
        : Optional.of(new Band(bay.across().least(), right));
  }

  private List<LidBox> boxesOn(Bay bay, String shelf) {
    return cabinet
        .fittings(LidBox.class)
        .filter(box -> box.bay() == bay.number())
        .filter(box -> box.on().isEmpty() ? shelf.startsWith("bottom-") : box.on().equals(shelf))
        .toList();
  }

  private int carriedBoxes(Bay bay, String shelf) {
    return boxesOn(bay, shelf).stream().mapToInt(LidBox::mostGrams).sum();
  }

  /** The lowest thing built in above a height, or the top. */
  private Length ceiling(Bay bay, Length above) {
    var ceiling = cabinet.inside().high();
    for (var shelf : cabinet.fittings(Shelf.class).toList()) {
      if (shelf.bay() == bay.number() && shelf.top().isGreaterThan(above)) {
        ceiling = ceiling.min(shelf.top().minus(shelf.thickness()));
      }
    }
    for (var drawer : cabinet.fittings(Drawer.class).toList()) {
      if (drawer.bay() == bay.number() && drawer.bottom().isAtLeast(above)) {
        ceiling = ceiling.min(drawer.bottom());
      }
    }
    return ceiling;
  }

  /** What hangs may hang down to the next thing built in below. */
  private Length floor(Bay bay, Length below) {
    var floor = Length.ZERO;
    for (var shelf : cabinet.fittings(Shelf.class).toList()) {
      if (shelf.bay() == bay.number() && shelf.top().isLessThan(below)) {
        floor = floor.max(shelf.top());
      }
    }
    for (var drawer : cabinet.fittings(Drawer.class).toList()) {
      var top = drawer.bottom().plus(drawer.high());
      if (drawer.bay() == bay.number() && top.isLessThan(below)) {
        floor = floor.max(top);
      }
    }
    return floor;
  }

  /** On a back that holds no screw the hooks are on a batten, and all hangs before that. */
  private Optional<Place> hooks(Bay bay, Rail rail) {
    var back = HookSheet.Fastening.USUAL.standsOut(cabinet.back());
    var front = behindDoors(bay);
    return back.isAtLeast(front)
        ? Optional.empty()
        : Optional.of(
            new Place(
                rail.id(),
                named(bay, rail.name()),
                Place.Kind.RAIL,
                bay.number() - 1,
                bay.across(),
                new Band(floor(bay, rail.at()), rail.at()),
                new Band(back, front),
                rail.mostGrams(),
                Optional.of(rail.eachGrams()),
                false,
                cabinet.dry()));
  }

  private Place inside(Bay bay, Drawer drawer) {
    return new Place(
        drawer.id(),
        named(bay, drawer.name()),
        Place.Kind.DRAWER,
        bay.number() - 1,
        middle(bay.across(), drawer.inner().wide()),
        new Band(drawer.bottom(), drawer.bottom().plus(drawer.inner().high())),
        new Band(Length.ZERO, drawer.inner().deep()),
        drawer.mostGrams(),
        Optional.empty(),
        false,
        cabinet.dry());
  }

  private Place inside(Bay bay, LidBox box) {
    var right = bay.across().most();
    var outer = new Band(right.minus(box.outer().wide()), right);
    var bottom = cabinet.surface(box.on());
    return new Place(
        box.id(),
        named(bay, box.name()),
        Place.Kind.BOX,
        bay.number() - 1,
        middle(outer, box.inner().wide()),
        new Band(bottom, bottom.plus(box.inner().high())),
        new Band(Length.ZERO, box.inner().deep()),
        box.mostGrams(),
        Optional.empty(),
        true,
        cabinet.dry());
  }

  private static Band middle(Band outer, Length wide) {
    var left = outer.least().plus(outer.extent().minus(wide).half());
    return new Band(left, left.plus(wide));
  }

  /**
   * What hangs on a door swings with it: its inner corner away from the hinges must pass the frame,
   * {@code √(along² + deep²) ≤ opening − room}.
   */
  private Optional<Place> onDoor(DoorRail rail) {
    return cabinet
        .door(rail.door())
        .flatMap(
            door -> {
              var stile = limits.doorStile().value();
              var free = door.across().extent().minus(limits.behindDoor().value());
              var along = swing(free, rail.deepest()).min(door.across().extent().minus(stile));
              return along.isAtMost(stile)
                  ? Optional.<Place>empty()
                  : Optional.of(onDoor(rail, door, new Band(stile, along)));
            });
  }

  private Place onDoor(DoorRail rail, Door door, Band fromHinge) {
    var hinges = door.hinges();
    var across =
        door.hingedLeft()
            ? fromHinge.movedBy(hinges)
            : new Band(hinges.minus(fromHinge.most()), hinges.minus(fromHinge.least()));
    var deep = cabinet.inside().deep();
    return new Place(
        rail.id(),
        (cabinet.doors().size() == 1 ? "door" : "door " + door.number()) + ", " + rail.name(),
        Place.Kind.DOOR_RAIL,
        column(across),
        across,
        new Band(Length.ZERO, rail.at()),
        new Band(deep.minus(rail.deepest()), deep),
        rail.mostGrams(),
        Optional.of(rail.eachGrams()),
        false,
        cabinet.dry());
  }

  /** How far along the door the corner of something so deep may lie; zero where nothing may. */
  private static Length swing(Length free, Length deep) {
    if (deep.isAtLeast(free)) {
      return Length.ZERO;
    }
    var f = BigInteger.valueOf(free.picometres());
    var d = BigInteger.valueOf(deep.picometres());
    return Length.rootOf(f.multiply(f).subtract(d.multiply(d)), Length.HUNDREDTH, Rounding.DOWN);
  }

  /** From a door's hinges to the far corner of what hangs there, no less. */
  static Length diagonal(Length along, Length deep) {
    var a = BigInteger.valueOf(along.picometres());
    var d = BigInteger.valueOf(deep.picometres());
    return Length.rootOf(a.multiply(a).add(d.multiply(d)), Length.HUNDREDTH, Rounding.UP);
  }

  private int column(Band across) {
    var middle = across.middle();
    return (int)
        cabinet.bays().stream()
            .skip(1)
            .filter(bay -> bay.across().least().isAtMost(middle))
            .count();
  }

  private Place onWall(Wall wall) {
    var hook = wall.at().minus(cabinet.raised());
    return new Place(
        wall.id(),
        wall.name(),
        Place.Kind.WALL,
        cabinet.bays().size(),
        new Band(Length.ZERO, wall.wide()),
        new Band(hook.minus(wall.drop()), hook),
        new Band(Length.ZERO, wall.deep()),
        wall.mostGrams(),
        Optional.of(wall.eachGrams()),
        false,
        true);
  }

  private String named(Bay bay, String name) {
    return cabinet.bays().size() == 1 ? name : "bay " + bay.number() + ", " + name;
  }
}
