package org.proofcut.core.storage;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.proofcut.core.measure.Length;
import org.proofcut.core.storage.Fitting.DoorRail;
import org.proofcut.core.storage.Fitting.LidBox;
import org.proofcut.core.storage.Fitting.Rail;
import org.proofcut.core.storage.Fitting.Shelf;
import org.proofcut.core.storage.Placer.Effort;

/**
 * The smallest change with which everything has a place: a pin taken out, a shelf moved no farther
 * than must be, a row of hooks more, a wider cabinet. Each is tried by planning anew, the smallest
 * first; heights that are worth trying follow from the heights of the things.
 */
public final class SmallestChange {

  /** All three are our own choice. */
  private static final Length HOOKS_BELOW_TOP = Length.ofMillimetres(40);

  private static final Length WIDER_BY_STEPS = Length.ofMillimetres(10);
  private static final int MOST_STEPS = 60;

  private final StorageTask task;
  private final StoragePlan plan;
  private final Placer placer;

  private SmallestChange(StorageTask task, StoragePlan plan, Placer placer) {
    this.task = task;
    this.plan = plan;
    this.placer = placer;
  }

  /**
   * The smallest change after which nothing is left over that can be kept at all; empty where
   * nothing is left over, or no single change helps.
   */
  public static Optional<Change> of(StorageTask task, StoragePlan plan, Placer placer) {
    return plan.without().stream().allMatch(thing -> thing.needs(Need.ELSEWHERE))
        ? Optional.empty()
        : new SmallestChange(task, plan, placer).find();
  }

  private Optional<Change> find() {
    return changes().stream()
        .sorted(Comparator.comparingLong(Change::much).thenComparing(Change::words))
        .filter(this::helps)
        .findFirst()
        .or(this::wider);
  }

  private boolean helps(Change change) {
    var changed = change.in(task);
    var options = StoragePlanner.placing(changed).items();
    boolean possible =
        options.stream()
            .noneMatch(
                item ->
                    item.options().isEmpty()
                        && !task.thing(item.id()).orElseThrow().needs(Need.ELSEWHERE));
    return possible
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

  /** Heights at which what is left over, or what it would drive out, just fits over or under it. */
  private List<Change> moves(Shelf shelf) {
    var cabinet = task.cabinet();
    if (cabinet.fittings(LidBox.class).anyMatch(box -> box.on().equals(shelf.id()))) {
      return List.of();
    }
    var below = neighbour(shelf, true);
    var above = neighbour(shelf, false);
    var tops = new TreeSet<Length>();
    for (var high : heights()) {
      tops.add(below.plus(high).plus(shelf.thickness()));
      tops.add(above.minus(high));
    }
    tops.remove(shelf.top());
    return tops.stream()
        .filter(top -> top.minus(shelf.thickness()).isGreaterThan(below) && top.isLessThan(above))
        .<Change>map(top -> new Change.MoveShelf(shelf, top, said(shelf)))
        .toList();
  }

  private String said(Shelf shelf) {
    return task.cabinet().bays().size() == 1
        ? shelf.name()
        : shelf.name() + " of bay " + shelf.bay();
  }

  /** Room that things take over a shelf, with that for the hand. */
  private List<Length> heights() {
    var heights = new LinkedHashSet<Length>();
    for (var thing : task.things()) {
      heights.add(thing.size().high().plus(task.limits().above().value()));
    }
    return List.copyOf(heights);
  }

  /** The nearest face below, or underside above. */
  private Length neighbour(Shelf shelf, boolean below) {
    var room = task.cabinet().bay(shelf.bay()).orElseThrow().across();
    var edge = below ? Length.ZERO : task.cabinet().inside().high();
    for (var block : task.cabinet().built()) {
      if (!Block.overlap(block.across(), room)) {
        continue;
      }
      var top = block.upright().most();
      var bottom = block.upright().least();
      if (below && top.isLessThan(shelf.top())) {
        edge = edge.max(top);
      }
      if (!below && bottom.isGreaterThan(shelf.top())) {
        edge = edge.min(bottom);
      }
    }
    return edge;
  }

  /** Hooks just under the top and under each shelf, where none are. */
  private List<Change> rails(Bay bay) {
    var cabinet = task.cabinet();
    var undersides = new TreeSet<Length>();
    undersides.add(cabinet.inside().high());
    cabinet
        .fittings(Shelf.class)
        .filter(shelf -> shelf.bay() == bay.number())
        .forEach(shelf -> undersides.add(shelf.top().minus(shelf.thickness())));
    return undersides.stream()
        .map(under -> under.minus(HOOKS_BELOW_TOP))
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
                        "new hooks",
                        bay.number(),
                        at,
                        Fitting.RAIL_GRAMS,
                        Fitting.HOOK_GRAMS),
                    cabinet.bays().size() == 1 ? "the cabinet" : "bay " + bay.number()))
        .toList();
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
                        "new hooks",
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
