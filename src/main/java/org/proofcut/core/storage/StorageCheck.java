package org.proofcut.core.storage;

import static org.proofcut.core.storage.HardRule.*;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.function.Predicate;
import org.proofcut.core.measure.Length;

/**
 * Judges a plan by geometry and by the hard rules alone, with every thing as a block in its place.
 * It knows nothing of wishes and of how the plan was found.
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
  private final List<Fault> faults = new ArrayList<>();

  private StorageCheck(StorageTask task, StoragePlan plan) {
    this.task = task;
    this.limits = task.limits();
    this.plan = plan;
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
    check.neighbours();
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
    }
    for (var thing : plan.without()) {
      seen.add(thing.id());
    }
    for (var thing : task.things()) {
      if (!seen.contains(thing.id())) {
        faults.add(new Fault(ONCE, thing.name(), "It is neither placed nor left over"));
      }
    }
  }

  private void room(Put put) {
    var block = put.block();
    var place = put.place();
    require(
        new Block(place.across(), place.upright(), place.deep()).holds(block),
        IN_PLACE,
        put,
        "It is larger than its place");
    if (!place.kind().isHung()) {
      var top = block.upright().most().plus(limits.above().value());
      require(
          top.isAtMost(place.upright().most()),
          HAND_ROOM,
          put,
          "There is no room for a hand over it");
    }
    if (place.kind() != Place.Kind.WALL
        && place.kind() != Place.Kind.DRAWER
        && place.kind() != Place.Kind.BOX) {
      require(task.cabinet().room().holds(block), IN_PLACE, put, "It sticks out of the cabinet");
      var clear = place.isOnDoor() ? block.deeperBy(limits.behindDoor().value()) : block;
      require(
          task.cabinet().built().stream().noneMatch(clear::overlaps),
          place.isOnDoor() ? DOOR_SHUTS : NOT_THROUGH,
          put,
          "It meets what is built in");
    }
    if (place.isOnDoor()) {
      swing(put);
    }
  }

  /** The corner that is farthest from the hinges passes the frame as the door shuts. */
  private void swing(Put put) {
    var block = put.block();
    var door =
        task.cabinet().doors().stream()
            .filter(one -> Block.overlap(one.across(), block.across()))
            .findFirst();
    if (door.isEmpty()) {
      require(false, DOOR_SHUTS, put, "There is no door");
      return;
    }
    var along =
        door.get().hingedLeft()
            ? block.across().most().minus(door.get().across().least())
            : door.get().across().most().minus(block.across().least());
    var free = door.get().across().extent().minus(limits.behindDoor().value());
    require(
        squared(along).add(squared(put.thing().size().deep())).compareTo(squared(free)) <= 0,
        DOOR_SHUTS,
        put,
        "Its corner meets the frame as the door shuts");
  }

  private static BigInteger squared(Length length) {
    return BigInteger.valueOf(length.picometres()).pow(2);
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
          one.thing().needs(Need.UNDEFORMED) || other.thing().needs(Need.UNDEFORMED)
              ? UNDEFORMED
              : HAND_ROOM,
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
    boolean door = one.place().isOnDoor() != other.place().isOnDoor();
    var grown = door ? one.block().deeperBy(limits.behindDoor().value()) : one.block();
    require(
        !grown.overlaps(other.block()),
        door ? DOOR_SHUTS : NOT_THROUGH,
        one,
        "It meets " + other.thing().name());
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
    Predicate<Put> delicate =
        put -> put.thing().needs(Need.UNDEFORMED) || put.thing().needs(Need.AT_ONCE);
    return delicate.test(one) || delicate.test(other)
        ? beside.plus(limits.untouched().value())
        : beside;
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

  /** Whether a board covers all of the width in which one thing is over the other. */
  private static boolean isBetween(Block board, Block above, Block below) {
    var left = above.across().least().max(below.across().least());
    var right = above.across().most().min(below.across().most());
    return board.across().contains(left)
        && board.across().contains(right)
        && board.upright().least().isAtLeast(below.upright().most())
        && board.upright().most().isAtMost(above.upright().least());
  }

  private void loads() {
    var places = plan.puts().stream().map(Put::place).distinct().toList();
    for (var place : places) {
      var there =
          plan.in(place.id()).stream()
              .sorted(Comparator.comparingInt((Put put) -> put.thing().grams()).reversed())
              .toList();
      int all = there.stream().mapToInt(put -> put.thing().grams()).sum();
      require(all <= place.mostGrams(), LOAD, there.get(0), "Its place carries too much");
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
