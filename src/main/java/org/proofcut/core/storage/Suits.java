package org.proofcut.core.storage;

import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import org.proofcut.core.measure.Band;
import org.proofcut.core.measure.Length;

/** Whether a thing can be kept in a place at all, whatever else is there. */
final class Suits {

  /**
   * Why it can't.
   *
   * @param words a sentence without its stop
   */
  record Why(HardRule rule, String words) {}

  private final StorageTask task;
  private final StorageLimits limits;
  private final List<Block> built;

  Suits(StorageTask task) {
    this.task = task;
    this.limits = task.limits();
    this.built = task.cabinet().built();
  }

  /** The first rule that refuses; empty where none does. */
  Optional<Why> refusal(Thing thing, Place place) {
    return pinned(thing, place)
        .or(() -> kept(thing, place))
        .or(() -> sized(thing, place))
        .or(() -> carried(thing, place))
        .or(() -> reached(thing, place));
  }

  private static Optional<Why> refuse(boolean refused, HardRule rule, String words) {
    return refused ? Optional.of(new Why(rule, words)) : Optional.empty();
  }

  private Optional<Why> pinned(Thing thing, Place place) {
    var pin = task.pins().get(thing.id());
    return refuse(
        pin != null && !pin.equals(place.id()), HardRule.PINNED, "it is pinned elsewhere");
  }

  private static Optional<Why> kept(Thing thing, Place place) {
    boolean upright = thing.needs(Need.UPRIGHT);
    boolean shut = place.kind() == Place.Kind.DRAWER || place.kind() == Place.Kind.BOX;
    return refuse(thing.needs(Need.ELSEWHERE), HardRule.ELSEWHERE, "it is never kept with gear")
        .or(
            () ->
                refuse(
                    thing.needs(Need.OPEN) && !place.isOpen(),
                    HardRule.OPEN,
                    "it has to be in sight, behind no door"))
        .or(
            () ->
                refuse(
                    thing.postures().stream().noneMatch(place::takes)
                        || (upright && !stands(thing, place)),
                    HardRule.POSTURE,
                    place.kind().isHung() ? "it does not hang" : "it only hangs"))
        .or(
            () ->
                refuse(
                    thing.needs(Need.SEALED) && !place.sealed(),
                    HardRule.SEALED,
                    "it needs a box with a lid, or one of its own"))
        .or(() -> refuse(thing.needs(Need.DRY) && !place.dry(), HardRule.DRY, "it has to be dry"))
        .or(
            () ->
                refuse(
                    thing.needs(Need.AT_ONCE) && shut,
                    HardRule.AT_ONCE,
                    "it has to be taken out with one move"));
  }

  private static boolean stands(Thing thing, Place place) {
    return !place.kind().isHung() && thing.postures().contains(Posture.STANDING);
  }

  private Optional<Why> sized(Thing thing, Place place) {
    var size = thing.size();
    var tall = size.high().plus(overOrUnder(place)).plus(inside(thing, place));
    var deep = size.deep().plus(inside(thing, place).times(2));
    return tooMuch("high", tall, place.upright(), HardRule.IN_PLACE)
        .or(() -> tooMuch("wide", wide(thing), place.across(), HardRule.IN_PLACE))
        .or(() -> tooMuch("deep", deep, place.deep(), HardRule.IN_PLACE))
        .or(() -> handRoom(thing, place))
        .or(
            () ->
                refuse(
                    meetsBuilt(thing, place),
                    place.isOnDoor() ? HardRule.DOOR_SHUTS : HardRule.NOT_THROUGH,
                    "it meets what is built in there"));
  }

  /** Room that nothing may press into, where something closes over a thing and around it. */
  private Length inside(Thing thing, Place place) {
    boolean closed = place.kind() == Place.Kind.DRAWER || place.kind() == Place.Kind.BOX;
    return closed && thing.needs(Need.UNDEFORMED) ? limits.untouched().value() : Length.ZERO;
  }

  /** A drawer is drawn out, and a box has its lid off: nothing is over what is in them. */
  private Length overOrUnder(Place place) {
    return switch (place.kind()) {
      case SHELF -> limits.above().value();
      case RAIL, WALL -> limits.belowHanging().value();
      case DOOR_RAIL -> limits.behindDoor().value();
      case DRAWER, BOX -> Length.ZERO;
    };
  }

  /** What hangs is lifted off its hook, and a lid is lifted too. */
  private Optional<Why> handRoom(Thing thing, Place place) {
    return switch (place.kind()) {
      case RAIL ->
          refuse(
              !isFree(anywhere(thing, place).over(limits.above().value())),
              HardRule.HAND_ROOM,
              "there is no room to lift it off its hook");
      case BOX ->
          refuse(
              !isFree(task.cabinet().boxAround(place.id()).over(limits.above().value())),
              HardRule.HAND_ROOM,
              "there is no room to lift the lid");
      case SHELF, DRAWER, DOOR_RAIL, WALL -> Optional.empty();
    };
  }

  private boolean isFree(Block room) {
    return task.cabinet().room().holds(room) && built.stream().noneMatch(room::overlaps);
  }

  private static Optional<Why> tooMuch(String how, Length wanted, Band there, HardRule rule) {
    return refuse(
        wanted.isGreaterThan(there.extent()),
        rule,
        "it is too %s by %s mm"
            .formatted(
                how,
                wanted
                    .minus(there.extent())
                    .inMillimetres()
                    .setScale(0, RoundingMode.CEILING)
                    .toPlainString()));
  }

  /** Wherever in the place it is. */
  private boolean meetsBuilt(Thing thing, Place place) {
    return switch (place.kind()) {
      case DOOR_RAIL ->
          !task.cabinet().room().upright().contains(swinging(thing, place).upright().most())
              || built.stream().anyMatch(swinging(thing, place)::overlaps);
      case RAIL -> built.stream().anyMatch(hanging(thing, place)::overlaps);
      case SHELF, DRAWER, BOX, WALL -> false;
    };
  }

  /** The room that a thing may take anywhere along its place. */
  static Block anywhere(Thing thing, Place place) {
    var put = new Put(thing, place, place.across().least()).block();
    return new Block(place.across(), put.upright(), put.deep());
  }

  /** With room under it. */
  private Block hanging(Thing thing, Place place) {
    return hooked(thing, place).withRoomUnder(limits.belowHanging().value());
  }

  /** No flatter than its hook stands out, and with nothing behind it. */
  private Block hooked(Thing thing, Place place) {
    var block = anywhere(thing, place);
    var deep = block.deep();
    var hook = limits.hookDeep().value().max(deep.extent());
    return new Block(
        block.across(),
        block.upright(),
        place.isOnDoor()
            ? new Band(deep.most().minus(hook), deep.most())
            : new Band(Length.ZERO, deep.least().plus(hook)));
  }

  /**
   * What a thing on a door needs as the door shuts: room around it, for it swings on its hook, and
   * room beside it, out to where its corner comes by.
   */
  private Block swinging(Thing thing, Place place) {
    var room = limits.behindDoor().value();
    var hooked = hooked(thing, place);
    var across = hooked.across();
    var door = task.cabinet().doorOf(place);
    var farEdge = door.fromHinges(door.hingedLeft() ? across.most() : across.least());
    var along = farEdge.minus(beside(thing));
    var corner = Places.diagonal(along, thing.size().deep()).plus(room).max(farEdge);
    var swept =
        door.hingedLeft()
            ? new Band(across.least(), door.hinges().plus(corner))
            : new Band(door.hinges().minus(corner), across.most());
    return new Block(swept, hooked.upright(), hooked.deep()).grown(Length.ZERO, room, room);
  }

  /** Whether two things can't be in their two places, wherever along these they are. */
  boolean cross(Thing a, Place one, Thing b, Place other) {
    var first = anywhere(a, one);
    var second = anywhere(b, other);
    var untouched = beside(a).max(beside(b));
    boolean door = one.isOnDoor() != other.isOnDoor();
    // What swings with a door keeps clear of hooks too.
    return claimed(a, one, other).overlaps(door ? withHook(b, other) : second)
        || claimed(b, other, one).overlaps(door ? withHook(a, one) : first)
        || first.grown(Length.ZERO, untouched, untouched).overlaps(second);
  }

  private Block withHook(Thing thing, Place place) {
    return place.kind().isHung() ? hooked(thing, place) : anywhere(thing, place);
  }

  /** What a thing has to itself beside things in another place. */
  private Block claimed(Thing thing, Place place, Place other) {
    if (place.isOnDoor() && !other.isOnDoor()) {
      return swinging(thing, place);
    }
    return place.kind().isHung() ? hanging(thing, place) : anywhere(thing, place);
  }

  private Optional<Why> carried(Thing thing, Place place) {
    boolean hook =
        place
            .mostGramsEach()
            .filter(each -> (long) thing.grams() * limits.hookFactor().value() > each)
            .isPresent();
    return refuse(hook, HardRule.LOAD, "it is too heavy for a hook there")
        .or(
            () ->
                refuse(
                    thing.grams() > place.mostGrams(),
                    HardRule.LOAD,
                    "it is heavier than what the place carries"));
  }

  private Optional<Why> reached(Thing thing, Place place) {
    var floor = task.cabinet().raised();
    var grip = Put.grip(thing, place).plus(floor);
    for (var person : task.usersOf(thing)) {
      if (Reach.of(person, task.cabinet().before(), limits)
          .filter(band -> band.contains(grip))
          .isEmpty()) {
        return Optional.of(new Why(HardRule.REACH, person.name() + " does not reach it there"));
      }
    }
    var up = anywhere(thing, place).upright().movedBy(floor);
    return thing
        .kind()
        .mounting()
        .flatMap(
            mounting ->
                refuse(
                        up.most().isGreaterThan(mounting.topAtMost(thing.grams())),
                        HardRule.MOUNTING,
                        "its top would be too high")
                    .or(
                        () ->
                            refuse(
                                up.least().isLessThan(mounting.bottomAtLeast()),
                                HardRule.MOUNTING,
                                "it would be too near the floor")));
  }

  /** How much of a place's width a thing takes, with what it must have on both sides. */
  Length wide(Thing thing) {
    return thing.size().wide().plus(beside(thing).times(2));
  }

  /** Room that a thing must have on each side over and above what any has. */
  Length beside(Thing thing) {
    return thing.needs(Need.UNDEFORMED) || thing.needs(Need.AT_ONCE)
        ? limits.untouched().value()
        : Length.ZERO;
  }

  /** Room between any two things in a place. */
  Length between(Place place) {
    return place.kind().isHung() ? limits.besideHanging().value() : limits.besideStanding().value();
  }
}
