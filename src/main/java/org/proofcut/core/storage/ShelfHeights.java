package org.proofcut.core.storage;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.LengthUnit;
import org.proofcut.core.measure.Rounding;
import org.proofcut.core.storage.Fitting.Shelf;
import org.proofcut.core.storage.Placer.Effort;

/**
 * Heights of shelves that may still be chosen, as the things ask for them. One shelf after the
 * other goes where the plan is best, until none finds a better height: first from where the shelves
 * are, then from heights spread over the cabinet, then two shelves at a time, until so many plans
 * were tried as are worth it.
 *
 * <p>Between two heights at which something just fits over or under the shelf, or is just reached,
 * or at which a hand just finds something where hands are, what a plan costs goes up or down
 * evenly; so only those heights are tried. Those at which one thing just hangs over another are not
 * among them: there would be too many.
 */
public final class ShelfHeights {

  /** What was found. */
  public record Chosen(StorageTask task, StoragePlan plan) {}

  private static final int MOST_ROUNDS = 4;
  private static final int TRIES_OF_ONE_THING = 12_000;

  /** Heights to begin from, in parts of the cabinet's. */
  private static final int PARTS = 6;

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
   * The best heights that were found, all of which can be built; those of the task where none is
   * better.
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
    var best = descend(first);
    for (var start : spread()) {
      if (tried.size() < mostTries() && isSound(start)) {
        var found = descend(first.in(start));
        best = BEST_FIRST.compare(glance(found), glance(best)) < 0 ? found : best;
      }
    }
    for (int i = 1; i < movable.size(); i++) {
      best = bestOfBoth(best, movable.get(i - 1), movable.get(i));
    }
    var before = StoragePlanner.plan(first, placer, Effort.PLAN);
    var after = StoragePlanner.plan(best, placer, Effort.PLAN);
    return BEST_FIRST.compare(after, before) < 0
        ? new Chosen(best, after)
        : new Chosen(first, before);
  }

  /** The more things there are, the longer each plan takes. */
  private int mostTries() {
    return TRIES_OF_ONE_THING / Math.max(1, first.things().size());
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
      if (isSound(moved.cabinet()) && BEST_FIRST.compare(glance(moved), glance(best)) < 0) {
        best = moved;
      }
    }
    return best;
  }

  /** Two shelves at a time, the second wherever the first leaves it, as far as tries are left. */
  private StorageTask bestOfBoth(StorageTask task, String id, String other) {
    var best = task;
    var above = ShelfTops.neighbour(task.cabinet(), shelf(task.cabinet(), other), false);
    var away = task.in(moved(task.cabinet(), other, above.minus(clear)));
    for (var top : worthTrying(away, shelf(away.cabinet(), id))) {
      var begun = away.in(moved(away.cabinet(), id, top));
      for (var next : worthTrying(begun, shelf(begun.cabinet(), other))) {
        if (tried.size() < mostTries()) {
          var both = task.in(moved(begun.cabinet(), other, next));
          boolean better =
              isSound(both.cabinet()) && BEST_FIRST.compare(glance(both), glance(best)) < 0;
          best = better ? both : best;
        }
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
    var below = ShelfTops.neighbour(task.cabinet(), shelf, true);
    var above = ShelfTops.neighbour(task.cabinet(), shelf, false);
    var tops = new TreeSet<Length>();
    var heights = new ShelfTops(task);
    heights.ofOne(shelf).forEach(top -> onStep(top, tops));
    heights.reached().forEach(top -> onStep(top, tops));
    heights.atHand().forEach(top -> onStep(top, tops));
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

  /** Whether it can be built so: no shelf lies over hooks. */
  private static boolean isSound(Cabinet cabinet) {
    return CabinetCheck.problems(cabinet, LengthUnit.MILLIMETRE).isEmpty();
  }

  /**
   * All ways to lay the shelves of a bay at parts of its height, where nothing else is built in
   * there; bays are begun from one by one.
   */
  private List<Cabinet> spread() {
    var starts = new ArrayList<Cabinet>();
    for (var bay : first.cabinet().bays()) {
      var shelves =
          first
              .cabinet()
              .fittings(Shelf.class)
              .filter(shelf -> shelf.bay() == bay.number())
              .sorted(Comparator.comparing(Shelf::top))
              .toList();
      long built =
          first.cabinet().built().stream()
              .filter(block -> Block.overlap(block.across(), bay.across()))
              .count();
      if (built == shelves.size() && shelves.stream().allMatch(one -> movable.contains(one.id()))) {
        spread(shelves, 1, first.cabinet(), starts);
      }
    }
    return starts;
  }

  private void spread(List<Shelf> left, int part, Cabinet begun, List<Cabinet> starts) {
    if (left.isEmpty()) {
      starts.add(begun);
      return;
    }
    for (int next = part; next <= PARTS - left.size(); next++) {
      var parts = Length.ofMillimetres(PARTS);
      var top =
          begun
              .inside()
              .high()
              .inProportion(Length.ofMillimetres(next), parts, step, Rounding.DOWN);
      var on = moved(begun, left.get(0).id(), top);
      spread(left.subList(1, left.size()), next + 1, on, starts);
    }
  }
}
