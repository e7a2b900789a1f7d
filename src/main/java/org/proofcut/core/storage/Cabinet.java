package org.proofcut.core.storage;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.proofcut.core.measure.Band;
import org.proofcut.core.measure.Length;
import org.proofcut.core.storage.Fitting.Drawer;
import org.proofcut.core.storage.Fitting.LidBox;
import org.proofcut.core.storage.Fitting.Shelf;

/**
 * A cabinet for gear, seen from the front.
 *
 * @param inside clear sizes between sides, bottom and top, back and shut doors
 * @param raised from the floor to the inner face of its bottom
 * @param before how deep something is that stands before it and has to be reached over; zero if
 *     nothing does
 * @param back thickness of the back
 * @param side thickness of the sides
 * @param uprightDeep from the back to the front edge of the uprights between bays
 * @param dry whether it stays dry inside
 * @param bays from left to right, at least one, numbered from 1
 * @param doors from left to right, numbered from 1; none for an open cabinet
 */
public record Cabinet(
    String id,
    String name,
    Size inside,
    Length raised,
    Length before,
    Length back,
    Length side,
    Length uprightDeep,
    boolean dry,
    List<Bay> bays,
    List<Door> doors,
    List<Fitting> fittings) {

  public Cabinet {
    bays = List.copyOf(bays);
    doors = List.copyOf(doors);
    fittings = List.copyOf(fittings);
    if (bays.isEmpty()) {
      throw new IllegalArgumentException("a cabinet without a bay");
    }
    requireInOrder(bays.stream().map(Bay::number).toList());
    requireInOrder(doors.stream().map(Door::number).toList());
  }

  private static void requireInOrder(List<Integer> numbers) {
    if (!numbers.equals(IntStream.rangeClosed(1, numbers.size()).boxed().toList())) {
      throw new IllegalArgumentException("not numbered from 1 on the left: " + numbers);
    }
  }

  /** All fittings of one kind. */
  public <T extends Fitting> Stream<T> fittings(Class<T> kind) {
    return fittings.stream().filter(kind::isInstance).map(kind::cast);
  }

  /** The bay with this number, if there is one. */
  public Optional<Bay> bay(int number) {
    return bays.stream().filter(bay -> bay.number() == number).findFirst();
  }

  /** The door with this number, if there is one. */
  public Optional<Door> door(int number) {
    return doors.stream().filter(door -> door.number() == number).findFirst();
  }

  /** The same cabinet with other fittings. */
  public Cabinet with(UnaryOperator<List<Fitting>> change) {
    return new Cabinet(
        id,
        name,
        inside,
        raised,
        before,
        back,
        side,
        uprightDeep,
        dry,
        bays,
        doors,
        change.apply(fittings));
  }

  /** The same cabinet, wider in the bay on the right and the door before it. */
  Cabinet widerBy(Length by) {
    var wider = new ArrayList<>(bays);
    var last = bays.get(bays.size() - 1);
    wider.set(bays.size() - 1, new Bay(last.number(), widerBy(last.across(), by)));
    var shut =
        doors.stream()
            .map(
                door ->
                    door.across().most().equals(inside.wide())
                        ? new Door(
                            door.number(),
                            widerBy(door.across(), by),
                            door.hingedLeft(),
                            door.thickness())
                        : door)
            .toList();
    return new Cabinet(
        id,
        name,
        new Size(inside.wide().plus(by), inside.high(), inside.deep()),
        raised,
        before,
        back,
        side,
        uprightDeep,
        dry,
        wider,
        shut,
        fittings);
  }

  private static Band widerBy(Band across, Length by) {
    return new Band(across.least(), across.most().plus(by));
  }

  /** All that is inside. */
  public Block room() {
    return new Block(
        new Band(Length.ZERO, inside.wide()),
        new Band(Length.ZERO, inside.high()),
        new Band(Length.ZERO, inside.deep()));
  }

  /** What is built in and takes room: shelves, drawers, boxes, uprights between bays. */
  public List<Block> built() {
    return Stream.of(
            fittings(Shelf.class).map(this::block),
            fittings(Drawer.class).map(this::block),
            fittings(LidBox.class).map(this::block),
            uprights())
        .flatMap(blocks -> blocks)
        .toList();
  }

  private Block block(Shelf shelf) {
    return new Block(
        bay(shelf.bay()).orElseThrow().across(),
        new Band(shelf.top().minus(shelf.thickness()), shelf.top()),
        new Band(Length.ZERO, shelf.deep()));
  }

  private Block block(Drawer drawer) {
    return new Block(
        bay(drawer.bay()).orElseThrow().across(),
        new Band(drawer.bottom(), drawer.bottom().plus(drawer.high())),
        new Band(Length.ZERO, inside.deep().min(uprightDeep)));
  }

  /** The outside of the box with this id. */
  Block boxAround(String id) {
    return fittings(LidBox.class)
        .filter(box -> box.id().equals(id))
        .map(this::block)
        .findFirst()
        .orElseThrow();
  }

  /** The door that a row of hooks is on. */
  Door doorOf(Place rail) {
    return fittings(Fitting.DoorRail.class)
        .filter(one -> one.id().equals(rail.id()))
        .findFirst()
        .flatMap(one -> door(one.door()))
        .orElseThrow();
  }

  private Block block(LidBox box) {
    var right = bay(box.bay()).orElseThrow().across().most();
    var bottom = surface(box.on());
    return new Block(
        new Band(right.minus(box.outer().wide()), right),
        new Band(bottom, bottom.plus(box.outer().high())),
        new Band(Length.ZERO, box.outer().deep()));
  }

  /** Height of the face of a shelf; of the bottom, where there is no such shelf. */
  Length surface(String shelf) {
    return fittings(Shelf.class)
        .filter(one -> one.id().equals(shelf))
        .map(Shelf::top)
        .findFirst()
        .orElse(Length.ZERO);
  }

  private Stream<Block> uprights() {
    return bays.stream()
        .skip(1)
        .map(
            bay ->
                new Block(
                    new Band(bays.get(bay.number() - 2).across().most(), bay.across().least()),
                    room().upright(),
                    new Band(Length.ZERO, uprightDeep)));
  }
}
