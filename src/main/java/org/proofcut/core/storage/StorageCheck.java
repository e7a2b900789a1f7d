package org.proofcut.core.storage;

import static org.proofcut.core.storage.HardRule.*;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import org.proofcut.core.measure.Band;
import org.proofcut.core.measure.Length;
import org.proofcut.core.storage.Fitting.LidBox;
import org.proofcut.core.storage.Fitting.Shelf;

/**
 * Judges a plan by geometry and by the hard rules alone, with every thing as a block in its place.
 * It knows nothing of wishes and of how the plan was found, and believes a place nothing that its
 * fitting does not give.
 */
public final class StorageCheck {

  /**
   * What is wrong.
   *
   * @param thing name of the thing
   * @param words a sentence without its stop
   */
  public record Fault(HardRule rule, String thing, String words) {}

  private final StorageTask task;
  private final StorageLimits limits;
  private final StoragePlan plan;
  private final AsBuilt built;
  private final AsHung hung;
  private final List<Fault> faults = new ArrayList<>();

  private StorageCheck(StorageTask task, StoragePlan plan) {
    this.task = task;
    this.limits = task.limits();
    this.plan = plan;
    this.built = new AsBuilt(task.cabinet());
    this.hung = new AsHung(task.cabinet(), limits);
  }

  /** All faults of a plan; none where it keeps to every rule. */
  public static List<Fault> faults(StorageTask task, StoragePlan plan) {
    var check = new StorageCheck(task, plan);
    check.once();
    for (var put : plan.puts()) {
      check.room(put);
      check.keeping(put);
      check.reach(put);
    }
    if (plan.puts().stream().map(Put::place).allMatch(check.built::gives)) {
      check.neighbours();
    }
    check.loads();
    check.pins();
    return List.copyOf(check.faults);
  }

  private void require(boolean kept, HardRule rule, Put put, String words) {
    if (!kept) {
      faults.add(new Fault(rule, put.thing().name(), words));
    }
  }

  private void once() {
    var seen = new HashSet<String>();
    for (var put : plan.puts()) {
      require(seen.add(put.thing().id()), ONCE, put, "It has more than one place");
      require(task.things().contains(put.thing()), ONCE, put, "It is none of the things asked for");
    }
    for (var thing : plan.without()) {
      if (!seen.add(thing.id())) {
        faults.add(new Fault(ONCE, thing.name(), "It is left over as well"));
      }
    }
    for (var thing : task.things()) {
      if (!seen.contains(thing.id())) {
        faults.add(new Fault(ONCE, thing.name(), "It is neither placed nor left over"));
      }
    }
  }

  private void room(Put put) {
    var place = put.place();
    if (!built.gives(place)) {
      require(false, IN_PLACE, put, "Its place is not as it is built");
      return;
    }
    require(
        new Block(place.across(), place.upright(), place.deep()).holds(put.block()),
        IN_PLACE,
        put,
        "It is larger than its place");
    untouched(put);
    switch (place.kind()) {
      case SHELF -> onShelf(put);
      case RAIL -> onHook(put);
      case DOOR_RAIL -> onDoor(put);
      case BOX ->
          require(
              isFree(task.cabinet().boxAround(place.id()).over(limits.above().value())),
              HAND_ROOM,
              put,
              "There is no room to lift the lid");
      case WALL ->
          require(
              put.thing()
                  .size()
                  .high()
                  .plus(limits.belowHanging().value())
                  .isAtMost(place.upright().extent()),
              IN_PLACE,
              put,
              "It hangs down to what is under it");
      case DRAWER -> {}
    }
  }

  /** Nothing presses from the sides of its place, or from the lid and the walls of a box. */
  private void untouched(Put put) {
    var place = put.place();
    var room = limits.untouched().value();
    var across = put.block().across();
    require(
        !isDelicate(put)
            || (across.least().minus(room).isAtLeast(place.across().least())
                && across.most().plus(room).isAtMost(place.across().most())),
        put.thing().needs(Need.UNDEFORMED) ? UNDEFORMED : HAND_ROOM,
        put,
        "It is too near to the side of its place");
    boolean closed = place.kind() == Place.Kind.DRAWER || place.kind() == Place.Kind.BOX;
    require(
        !closed
            || !put.thing().needs(Need.UNDEFORMED)
            || (put.block().upright().most().plus(room).isAtMost(place.upright().most())
                && put.block().deep().extent().plus(room.times(2)).isAtMost(place.deep().extent())),
        UNDEFORMED,
        put,
        "It is too tight in there");
  }

  private void onShelf(Put put) {
    notThrough(put.block(), put);
    require(
        isFree(put.block().over(limits.above().value())),
        HAND_ROOM,
        put,
        "There is no room for a hand over it");
    behindDoor(put);
  }

  private void onHook(Put put) {
    notThrough(hung.needs(put), put);
    require(
        isFree(put.block().over(limits.above().value())),
        HAND_ROOM,
        put,
        "There is no room to lift it off its hook");
    behindDoor(put);
  }

  private void notThrough(Block block, Put put) {
    require(task.cabinet().room().holds(block), NOT_THROUGH, put, "It sticks out of the cabinet");
    require(
        task.cabinet().built().stream().noneMatch(block::overlaps),
        NOT_THROUGH,
        put,
        "It meets what is built in");
  }

  private boolean isFree(Block room) {
    return task.cabinet().room().holds(room)
        && task.cabinet().built().stream().noneMatch(room::overlaps);
  }

  /** Where a door shuts over it, it does not touch the door. */
  private void behindDoor(Put put) {
    boolean door =
        task.cabinet().doors().stream()
            .anyMatch(one -> Block.overlap(one.across(), put.block().across()));
    var front = put.block().deep().most().plus(limits.behindDoor().value());
    require(
        !door || front.isAtMost(task.cabinet().inside().deep()),
        DOOR_SHUTS,
        put,
        "The door meets it");
  }

  /** It passes the frame as the door shuts, and all that is behind the door. */
  private void onDoor(Put put) {
    var upright = hung.swaying(put).upright();
    require(
        task.cabinet().room().upright().contains(upright.least())
            && task.cabinet().room().upright().contains(upright.most()),
        DOOR_SHUTS,
        put,
        "It meets the bottom or the top as the door shuts");
    require(
        task.cabinet().built().stream().noneMatch(block -> hung.meetsSwinging(put, block)),
        DOOR_SHUTS,
        put,
        "It meets what is built in");
    require(hung.isInPanel(put), IN_PLACE, put, "Its hook is screwed into the edge of the door");
    require(hung.passesFrame(put), DOOR_SHUTS, put, "Its corner meets the frame as the door shuts");
  }

  private void keeping(Put put) {
    var thing = put.thing();
    var place = put.place();
    require(
        thing.postures().stream().anyMatch(place::takes),
        POSTURE,
        put,
        "It can't be kept so there");
    if (thing.needs(Need.UPRIGHT)) {
      require(
          !place.kind().isHung() && thing.postures().contains(Posture.STANDING),
          POSTURE,
          put,
          "It has to stand upright");
    }
    require(!thing.needs(Need.SEALED) || place.sealed(), SEALED, put, "Nothing closes its place");
    require(!thing.needs(Need.DRY) || place.dry(), DRY, put, "Its place is not dry");
    require(!thing.needs(Need.OPEN) || place.isOpen(), OPEN, put, "A door is before it");
    require(!thing.needs(Need.ELSEWHERE), ELSEWHERE, put, "It is not kept with gear");
    if (thing.needs(Need.AT_ONCE)) {
      require(
          place.kind() != Place.Kind.DRAWER && place.kind() != Place.Kind.BOX,
          AT_ONCE,
          put,
          "It has to be taken out with one move");
      require(
          plan.puts().stream().noneMatch(other -> standsBefore(other, put)),
          AT_ONCE,
          put,
          "Something is before it");
    }
  }

  /** What is on a door goes away with it. */
  private static boolean standsBefore(Put other, Put put) {
    return other != put
        && !other.place().isOnDoor()
        && inOneRoom(other, put)
        && Block.overlap(other.block().across(), put.block().across())
        && Block.overlap(other.block().upright(), put.block().upright())
        && other.block().deep().most().isGreaterThan(put.block().deep().most());
  }

  private static boolean inOneRoom(Put one, Put other) {
    return one.place().id().equals(other.place().id()) || (isInside(one) && isInside(other));
  }

  /** In the open room of the cabinet, not in a drawer, a box or on the wall. */
  private static boolean isInside(Put put) {
    return switch (put.place().kind()) {
      case SHELF, RAIL, DOOR_RAIL -> true;
      case DRAWER, BOX, WALL -> false;
    };
  }

  private void reach(Put put) {
    var grip = put.grip().plus(task.cabinet().raised());
    for (var person : task.usersOf(put.thing())) {
      require(
          Reach.of(person, task.cabinet().before(), limits)
              .filter(band -> band.contains(grip))
              .isPresent(),
          REACH,
          put,
          person.name() + " does not reach it");
    }
    put.thing()
        .kind()
        .mounting()
        .ifPresent(
            mounting -> {
              var up = put.block().upright().movedBy(task.cabinet().raised());
              require(
                  up.most().isAtMost(mounting.topAtMost(put.thing().grams())),
                  MOUNTING,
                  put,
                  "Its top is too high");
              require(
                  up.least().isAtLeast(mounting.bottomAtLeast()),
                  MOUNTING,
                  put,
                  "It is too near the floor");
            });
  }

  private void neighbours() {
    var puts = plan.puts();
    for (int i = 0; i < puts.size(); i++) {
      for (int j = i + 1; j < puts.size(); j++) {
        together(puts.get(i), puts.get(j));
      }
    }
  }

  private void together(Put one, Put other) {
    boolean samePlace = one.place().id().equals(other.place().id());
    if (samePlace) {
      require(
          between(one, other).isAtLeast(roomBetween(one, other)),
          tooNear(one, other),
          one,
          "It is too near to " + other.thing().name());
    } else if (isInside(one) && isInside(other)) {
      apartInRoom(one, other);
    }
    if (one.thing().soil().isKeptFrom(other.thing().soil())) {
      var dirty = one.thing().soil() == Soil.DIRTY ? one : other;
      var clean = dirty == one ? other : one;
      require(!samePlace, APART, clean, dirty.thing().name() + " is beside it and is not clean");
      require(
          samePlace || !fallsOn(dirty, clean),
          APART,
          clean,
          dirty.thing().name() + " is over it and is not clean");
    }
  }

  private void apartInRoom(Put one, Put other) {
    if (one.place().isOnDoor() == other.place().isOnDoor()) {
      require(
          !hung.needs(one).overlaps(other.block()) && !hung.needs(other).overlaps(one.block()),
          NOT_THROUGH,
          one,
          "It meets " + other.thing().name());
    } else {
      var onDoor = one.place().isOnDoor() ? one : other;
      var behind = onDoor == one ? other : one;
      require(
          !hung.meetsSwinging(onDoor, behind.block())
              && !hung.swaying(onDoor).overlaps(hung.withHook(behind))
              && !hung.needs(behind).overlaps(onDoor.block()),
          DOOR_SHUTS,
          onDoor,
          "It meets " + behind.thing().name());
    }
    if (isDelicate(one) || isDelicate(other)) {
      var room = limits.untouched().value();
      require(
          !one.block().grown(Length.ZERO, room, room).overlaps(other.block()),
          tooNear(one, other),
          one,
          "It is too near to " + other.thing().name());
    }
  }

  private static Length between(Put one, Put other) {
    var first = one.left().isAtMost(other.left()) ? one : other;
    var second = first == one ? other : one;
    return second.left().minus(first.block().across().most());
  }

  private Length roomBetween(Put one, Put other) {
    var beside =
        one.place().kind().isHung()
            ? limits.besideHanging().value()
            : limits.besideStanding().value();
    return isDelicate(one) || isDelicate(other) ? beside.plus(limits.untouched().value()) : beside;
  }

  private static HardRule tooNear(Put one, Put other) {
    return one.thing().needs(Need.UNDEFORMED) || other.thing().needs(Need.UNDEFORMED)
        ? UNDEFORMED
        : HAND_ROOM;
  }

  private static boolean isDelicate(Put put) {
    return put.thing().needs(Need.UNDEFORMED) || put.thing().needs(Need.AT_ONCE);
  }

  /** Whether what comes off one thing falls on the other, with nothing built in between. */
  private boolean fallsOn(Put dirty, Put clean) {
    if (!isInside(dirty) || !isInside(clean)) {
      return false;
    }
    var above = dirty.block();
    var below = clean.block();
    return Block.overlap(above.across(), below.across())
        && Block.overlap(above.deep(), below.deep())
        && above.upright().least().isAtLeast(below.upright().most())
        && task.cabinet().built().stream().noneMatch(board -> isBetween(board, above, below));
  }

  /** Whether a board covers all of the width and depth in which one thing is over the other. */
  private static boolean isBetween(Block board, Block above, Block below) {
    return board.upright().least().isAtLeast(below.upright().most())
        && board.upright().most().isAtMost(above.upright().least())
        && isUnder(board.across(), above.across(), below.across())
        && isUnder(board.deep(), above.deep(), below.deep());
  }

  private static boolean isUnder(Band board, Band above, Band below) {
    return board.least().isAtMost(above.least().max(below.least()))
        && board.most().isAtLeast(above.most().min(below.most()));
  }

  private void loads() {
    var places = plan.puts().stream().map(Put::place).distinct().toList();
    for (var place : places) {
      var there =
          plan.in(place.id()).stream()
              .sorted(Comparator.comparingInt((Put put) -> put.thing().grams()).reversed())
              .toList();
      require(
          grams(place.id()) <= place.mostGrams(), LOAD, there.get(0), "Its place carries too much");
      place
          .mostGramsEach()
          .ifPresent(
              each ->
                  there.forEach(
                      put ->
                          require(
                              (long) put.thing().grams() * limits.hookFactor().value() <= each,
                              LOAD,
                              put,
                              "It is too heavy for its hook")));
    }
    task.cabinet().fittings(LidBox.class).forEach(this::underBox);
  }

  private long grams(String place) {
    return plan.in(place).stream().mapToLong(put -> put.thing().grams()).sum();
  }

  /** A shelf carries what stands on it and what is in the box on it. */
  private void underBox(LidBox box) {
    var shelf = box.on().isEmpty() ? "bottom-" + box.bay() : box.on();
    int most =
        task.cabinet()
            .fittings(Shelf.class)
            .filter(one -> one.id().equals(shelf))
            .map(Shelf::mostGrams)
            .findFirst()
            .orElse(Fitting.BOTTOM_GRAMS);
    if (grams(shelf) + grams(box.id()) > most) {
      faults.add(new Fault(LOAD, box.name(), "It stands on what carries too much"));
    }
  }

  private void pins() {
    task.pins()
        .forEach(
            (thing, place) ->
                plan.of(thing)
                    .filter(put -> !put.place().id().equals(place))
                    .ifPresent(put -> require(false, PINNED, put, "It was pinned somewhere else")));
  }
}
