package org.proofcut.core.storage;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.LengthUnit;
import org.proofcut.core.storage.Fitting.DoorRail;
import org.proofcut.core.storage.Fitting.Drawer;
import org.proofcut.core.storage.Fitting.LidBox;
import org.proofcut.core.storage.Fitting.Rail;
import org.proofcut.core.storage.Fitting.Shelf;
import org.proofcut.core.storage.Placer.Effort;

/**
 * The smallest change that was found with which everything has a place: a pin taken out, a shelf
 * moved no farther than must be, a row of hooks more, a wider cabinet; one of them, and what counts
 * for more is our own choice. Each is tried by planning anew at a glance, the smallest first; what
 * a longer look would have fitted in may be passed by. Shelves are tried at the heights at which
 * one thing, or something that was left over with one other, just fits or is just reached: the
 * nearest of them.
 */
public final class SmallestChange {

  /** All four are our own choice. */
  private static final Length HOOKS_BELOW_TOP = Length.ofMillimetres(40);

  private static final Length WIDER_BY_STEPS = Length.ofMillimetres(10);
  private static final int MOST_STEPS = 60;

  /** Of each shelf: every one costs a plan. */
  private static final int MOST_MOVES = 120;

  private static final Comparator<Change> SMALLEST_FIRST =
      Comparator.comparingLong(Change::much).thenComparing(Change::words);

  private final StorageTask task;
  private final StoragePlan plan;
  private final Placer placer;

  private SmallestChange(StorageTask task, StoragePlan plan, Placer placer) {
    this.task = task;
    this.plan = plan;
    this.placer = placer;
  }

  /**
   * The smallest change after which nothing is left over that can be kept at all, with a cabinet
   * that can be built; empty where nothing is left over, or no single change helps.
   */
  public static Optional<Change> of(StorageTask task, StoragePlan plan, Placer placer) {
    return plan.without().stream().allMatch(thing -> thing.needs(Need.ELSEWHERE))
        ? Optional.empty()
        : new SmallestChange(task, plan, placer).find();
  }

  private Optional<Change> find() {
    var found = changes().stream().sorted(SMALLEST_FIRST).filter(this::helps).findFirst();
    boolean enough = found.filter(one -> one.much() <= wider(1).much()).isPresent();
    return enough ? found : Stream.concat(found.stream(), wider().stream()).min(SMALLEST_FIRST);
  }

  private boolean helps(Change change) {
    var changed = change.in(task);
    return CabinetCheck.problems(changed.cabinet(), LengthUnit.MILLIMETRE).isEmpty()
        && StoragePlanner.placing(changed).items().stream()
            .filter(item -> !task.thing(item.id()).orElseThrow().needs(Need.ELSEWHERE))
            .noneMatch(item -> item.options().isEmpty())
        && StoragePlanner.plan(changed, placer, Effort.GLANCE).without().stream()
            .allMatch(thing -> thing.needs(Need.ELSEWHERE));
  }

  private List<Change> changes() {
    var changes = new ArrayList<Change>();
    for (var thing : task.pins().keySet()) {
      task.thing(thing).ifPresent(one -> changes.add(new Change.Unpin(thing, one.name())));
    }
    task.cabinet().fittings(Shelf.class).forEach(shelf -> changes.addAll(moves(shelf)));
    task.cabinet().bays().forEach(bay -> changes.addAll(rails(bay)));
    task.cabinet().doors().forEach(door -> changes.addAll(rails(door)));
    return changes;
  }

  /** Those heights of a shelf between its neighbours at which something just fits. */
  private List<Change> moves(Shelf shelf) {
    var cabinet = task.cabinet();
    if (cabinet.fittings(LidBox.class).anyMatch(box -> box.on().equals(shelf.id()))) {
      return List.of();
    }
    var below = ShelfTops.neighbour(cabinet, shelf, true);
    var above = ShelfTops.neighbour(cabinet, shelf, false);
    var heights = new ShelfTops(task);
    var tops = new TreeSet<>(heights.ofOne(shelf));
    tops.addAll(heights.ofTwo(shelf, plan.without()));
    tops.addAll(heights.reached());
    tops.remove(shelf.top());
    return tops.stream()
        .filter(top -> top.minus(shelf.thickness()).isGreaterThan(below) && top.isLessThan(above))
        .<Change>map(top -> new Change.MoveShelf(shelf, top, said(shelf)))
        .sorted(SMALLEST_FIRST)
        .limit(MOST_MOVES)
        .toList();
  }

  private String said(Shelf shelf) {
    return task.cabinet().bays().size() == 1
        ? shelf.name()
        : shelf.name() + " of bay " + shelf.bay();
  }

  /** Hooks just under the top, and under each shelf and drawer, where none are. */
  private List<Change> rails(Bay bay) {
    var cabinet = task.cabinet();
    var undersides = new TreeSet<Length>();
    undersides.add(cabinet.inside().high());
    cabinet
        .fittings(Shelf.class)
        .filter(shelf -> shelf.bay() == bay.number())
        .forEach(shelf -> undersides.add(shelf.top().minus(shelf.thickness())));
    cabinet
        .fittings(Drawer.class)
        .filter(drawer -> drawer.bay() == bay.number())
        .forEach(drawer -> undersides.add(drawer.bottom()));
    return undersides.stream()
        .map(under -> under.minus(HOOKS_BELOW_TOP.max(task.limits().above().value())))
        .filter(Length::isPositive)
        .filter(
            at ->
                cabinet
                    .fittings(Rail.class)
                    .noneMatch(
                        rail ->
                            rail.bay() == bay.number()
                                && rail.at().minus(at).abs().isLessThan(HOOKS_BELOW_TOP)))
        .<Change>map(
            at ->
                new Change.AddRail(
                    new Rail(
                        "new-rail-" + bay.number(),
                        newName(),
                        bay.number(),
                        at,
                        Fitting.RAIL_GRAMS,
                        Fitting.HOOK_GRAMS),
                    cabinet.bays().size() == 1 ? "the cabinet" : "bay " + bay.number()))
        .toList();
  }

  /** Labels and prompts go by names: one that no fitting has. */
  private String newName() {
    var names = task.cabinet().fittings().stream().map(Fitting::name).toList();
    return Stream.iterate(1, number -> number + 1)
        .map(number -> number == 1 ? "new hooks" : "new hooks " + number)
        .filter(name -> !names.contains(name))
        .findFirst()
        .orElseThrow();
  }

  private List<Change> rails(Door door) {
    var cabinet = task.cabinet();
    if (cabinet.fittings(DoorRail.class).anyMatch(rail -> rail.door() == door.number())) {
      return List.of();
    }
    var deepest = task.things().stream().map(thing -> thing.size().deep()).reduce(Length::max);
    return deepest.stream()
        .map(deep -> deep.min(Fitting.DOOR_RAIL_DEEPEST))
        .<Change>map(
            deep ->
                new Change.AddDoorRail(
                    new DoorRail(
                        "new-door-rail-" + door.number(),
                        newName(),
                        door.number(),
                        cabinet.inside().high().minus(HOOKS_BELOW_TOP),
                        deep,
                        Fitting.RAIL_GRAMS,
                        Fitting.HOOK_GRAMS),
                    cabinet.doors().size() == 1 ? "the door" : "door " + door.number()))
        .toList();
  }

  /** The least width more, in steps, found by halving: what fits stays fitting when it is wider. */
  private Optional<Change> wider() {
    if (!helps(wider(MOST_STEPS))) {
      return Optional.empty();
    }
    int no = 0;
    int yes = MOST_STEPS;
    while (yes - no > 1) {
      int middle = (no + yes) / 2;
      if (helps(wider(middle))) {
        yes = middle;
      } else {
        no = middle;
      }
    }
    return Optional.of(wider(yes));
  }

  private static Change wider(int steps) {
    return new Change.Wider(WIDER_BY_STEPS.times(steps));
  }
}
