package org.proofcut.core.storage;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.Rounding;
import org.proofcut.core.storage.Fitting.Shelf;
import org.proofcut.core.storage.Placer.Effort;

/**
 * Heights of shelves that may still be chosen, as the things ask for them. One shelf after the
 * other goes where the plan is best, until none finds a better height: first where the shelves are,
 * then from heights that part the cabinet evenly.
 *
 * <p>Between two heights at which something just fits over or under the shelf, or at which a hand
 * just finds something where hands are, what a plan costs goes up or down evenly; so it is enough
 * to try those heights.
 */
public final class ShelfHeights {

  /** What was found. */
  public record Chosen(StorageTask task, StoragePlan plan) {}

  private static final int MOST_ROUNDS = 4;

  private static final Comparator<StoragePlan> BEST_FIRST =
      Comparator.comparingInt((StoragePlan plan) -> plan.without().size())
          .thenComparingLong(StoragePlan::cost);

  private final StorageTask first;
  private final List<String> movable;
  private final Length step;
  private final Length clear;
  private final Placer placer;
  private final Map<Cabinet, StoragePlan> tried = new HashMap<>();

  private ShelfHeights(
      StorageTask first, List<String> movable, Length step, Length clear, Placer placer) {
    this.first = first;
    this.movable = movable;
    this.step = step;
    this.clear = clear;
    this.placer = placer;
  }

  /**
   * The best heights that were found; those of the task where none is better.
   *
   * @param movable ids of the shelves that may move
   * @param step that heights of their faces are multiples of
   * @param clear least room between a shelf and what is next above or below
   */
  public static Chosen of(
      StorageTask task, List<String> movable, Length step, Length clear, Placer placer) {
    return new ShelfHeights(task, List.copyOf(movable), step, clear, placer).choose();
  }

  private Chosen choose() {
    var asItIs = descend(first);
    var even = descend(first.in(evenly()));
    var best = BEST_FIRST.compare(glance(even), glance(asItIs)) < 0 ? even : asItIs;
    var before = StoragePlanner.plan(first, placer, Effort.PLAN);
    var after = StoragePlanner.plan(best, placer, Effort.PLAN);
    return BEST_FIRST.compare(after, before) < 0
        ? new Chosen(best, after)
        : new Chosen(first, before);
  }

  private StoragePlan glance(StorageTask task) {
    return tried.computeIfAbsent(
        task.cabinet(), any -> StoragePlanner.plan(task, placer, Effort.GLANCE));
  }

  private StorageTask descend(StorageTask from) {
    var best = from;
    for (int round = 0; round < MOST_ROUNDS; round++) {
      var before = best;
      for (var shelf : movable) {
        best = bestOf(best, shelf);
      }
      if (best.equals(before)) {
        break;
      }
    }
    return best;
  }

  /** Of equally good heights the one that it has, then the lowest. */
  private StorageTask bestOf(StorageTask task, String id) {
    var best = task;
    for (var top : worthTrying(task, shelf(task.cabinet(), id))) {
      var moved = task.in(moved(task.cabinet(), id, top));
      if (BEST_FIRST.compare(glance(moved), glance(best)) < 0) {
        best = moved;
      }
    }
    return best;
  }

  private static Shelf shelf(Cabinet cabinet, String id) {
    return cabinet
        .fittings(Shelf.class)
        .filter(one -> one.id().equals(id))
        .findFirst()
        .orElseThrow();
  }

  private static Cabinet moved(Cabinet cabinet, String id, Length top) {
    return cabinet.with(
        fittings -> {
          var there = new ArrayList<>(fittings);
          there.replaceAll(
              one -> one instanceof Shelf shelf && shelf.id().equals(id) ? at(shelf, top) : one);
          return there;
        });
  }

  private static Shelf at(Shelf shelf, Length top) {
    return new Shelf(
        shelf.id(),
        shelf.name(),
        shelf.bay(),
        top,
        shelf.thickness(),
        shelf.deep(),
        shelf.mostGrams());
  }

  private TreeSet<Length> worthTrying(StorageTask task, Shelf shelf) {
    var below = neighbour(task.cabinet(), shelf, true);
    var above = neighbour(task.cabinet(), shelf, false);
    var tops = new TreeSet<Length>();
    for (var thing : task.things()) {
      var high = thing.size().high();
      var over = high.plus(task.limits().above().value());
      onStep(below.plus(over).plus(shelf.thickness()), tops);
      onStep(above.minus(over), tops);
      for (var person : task.usersOf(thing)) {
        for (var hand : List.of(person.knuckle(), person.elbow(), person.shoulder())) {
          onStep(hand.minus(task.cabinet().raised()).minus(high.half()), tops);
        }
      }
    }
    for (var rail : task.cabinet().fittings(Fitting.Rail.class).toList()) {
      task.things().forEach(thing -> onStep(rail.at().minus(thing.size().high()), tops));
    }
    var least = below.plus(clear).plus(shelf.thickness());
    var most = above.minus(clear);
    tops.removeIf(top -> top.isLessThan(least) || top.isGreaterThan(most));
    return tops;
  }

  /** The multiples of the step on both sides. */
  private void onStep(Length top, TreeSet<Length> tops) {
    if (top.isPositive()) {
      tops.add(top.roundedTo(step, Rounding.DOWN));
      tops.add(top.roundedTo(step, Rounding.UP));
    }
  }

  /** The nearest face below, or underside above. */
  private static Length neighbour(Cabinet cabinet, Shelf shelf, boolean below) {
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

  /**
   * Movable shelves of each bay at equal distances; as they are where something else is built in.
   */
  private Cabinet evenly() {
    var cabinet = first.cabinet();
    for (var bay : first.cabinet().bays()) {
      var shelves =
          first
              .cabinet()
              .fittings(Shelf.class)
              .filter(shelf -> shelf.bay() == bay.number())
              .sorted(Comparator.comparing(Shelf::top))
              .toList();
      boolean all = shelves.stream().allMatch(shelf -> movable.contains(shelf.id()));
      boolean alone =
          first.cabinet().built().stream()
                  .filter(block -> Block.overlap(block.across(), bay.across()))
                  .count()
              == shelves.size();
      for (int i = 0; all && alone && i < shelves.size(); i++) {
        var top =
            cabinet
                .inside()
                .high()
                .inProportion(
                    Length.ofMillimetres(i + 1L),
                    Length.ofMillimetres(shelves.size() + 1L),
                    step,
                    Rounding.DOWN);
        cabinet = moved(cabinet, shelves.get(i).id(), top);
      }
    }
    return cabinet;
  }
}
