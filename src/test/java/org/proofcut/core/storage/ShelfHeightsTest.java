package org.proofcut.core.storage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.proofcut.core.storage.StorageForTests.length;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.proofcut.core.measure.Band;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.LengthUnit;
import org.proofcut.core.storage.Fitting.Shelf;
import org.proofcut.core.storage.Placer.Effort;

class ShelfHeightsTest {

  private static final Length STEP = length(20);
  private static final Length CLEAR = length(60);
  private static final Placer PLACER = new EveryPlacing();

  private static Cabinet cabinet(long... tops) {
    var shelves = new ArrayList<Fitting>();
    for (var top : tops) {
      var id = "shelf-" + (shelves.size() + 1);
      shelves.add(new Shelf(id, id, 1, length(top), length(18), length(280), 15_000));
    }
    return new Cabinet(
        "case",
        "case",
        new Size(length(500), length(900), length(300)),
        length(600),
        Length.ZERO,
        length(9),
        length(18),
        length(300),
        true,
        List.of(new Bay(1, new Band(Length.ZERO, length(500)))),
        List.of(),
        shelves);
  }

  private static Thing stands(String name, long high, int grams) {
    return StorageForTests.kind(name, Posture.STANDING).thing(name, 180, high, 200, grams);
  }

  private static List<Length> tops(Cabinet cabinet) {
    return cabinet.fittings(Shelf.class).map(Shelf::top).toList();
  }

  private static ShelfHeights.Chosen choose(StorageTask task) {
    var ids = task.cabinet().fittings(Shelf.class).map(Fitting::id).toList();
    return ShelfHeights.of(task, ids, STEP, CLEAR, PLACER);
  }

  /** 600 mm stand only where the shelf leaves 630 below or above it. */
  @Test
  void tallThing_isGivenRoom() {
    var task =
        StorageForTests.task(
            cabinet(440), List.of(stands("tall", 600, 900), stands("low", 150, 900)));
    assertEquals(1, StoragePlanner.plan(task, PLACER, Effort.PLAN).without().size());
    var chosen = choose(task);
    assertEquals(List.of(), chosen.plan().without());
    assertEquals(List.of(), StorageCheck.faults(chosen.task(), chosen.plan()));
  }

  /** Hooks at 560: no height from 540 to 578 can be built, whatever the plan would gain. */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10})
  void noShelf_liesOverHooks(long seed) {
    var hooks = new Fitting.Rail("rail", "hooks", 1, length(560), 10_000, 5_000);
    var cabinet =
        cabinet(300, 440)
            .with(
                all -> {
                  var more = new ArrayList<>(all);
                  more.add(hooks);
                  return more;
                });
    var things = new ArrayList<>(things(seed));
    things.add(StorageForTests.kind("muffs", Posture.HANGING).thing("muffs", 150, 200, 90, 300));
    var task = StorageForTests.task(cabinet, things);
    var chosen = ShelfHeights.of(task, List.of("shelf-1", "shelf-2"), STEP, CLEAR, PLACER);
    assertEquals(List.of(), CabinetCheck.problems(chosen.task().cabinet(), LengthUnit.MILLIMETRE));
    assertEquals(List.of(), StorageCheck.faults(chosen.task(), chosen.plan()));
  }

  @Test
  void nothingBetter_leavesTheShelvesWhereTheyAre() {
    var task = StorageForTests.task(cabinet(440), List.of());
    assertEquals(task, choose(task).task());
  }

  @Test
  void shelvesThatMayNotMove_stay_andKeepTheirDistance() {
    var task =
        StorageForTests.task(
            cabinet(300, 600), List.of(stands("a", 400, 900), stands("b", 100, 900)));
    var chosen = ShelfHeights.of(task, List.of("shelf-2"), STEP, CLEAR, PLACER);
    assertEquals(length(300), tops(chosen.task().cabinet()).get(0));
    assertEquals(List.of(), chosen.plan().without());
    var top = tops(chosen.task().cabinet()).get(1);
    assertTrue(top.minus(length(18)).minus(length(300)).isAtLeast(CLEAR));
  }

  @Test
  void sameTask_givesTheSameHeights() {
    var task = StorageForTests.task(cabinet(300, 600), things(5));
    assertEquals(choose(task), choose(task));
  }

  private static List<Thing> things(long seed) {
    var chance = new Random(seed);
    var things = new ArrayList<Thing>();
    for (int i = 0; i < 4; i++) {
      things.add(stands("t" + i, 60 + 20L * chance.nextInt(20), 500 + 900 * chance.nextInt(5)));
    }
    return things;
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10})
  void oneShelf_isNoWorseThanAnyHeightOnTheStep(long seed) {
    var task = StorageForTests.task(cabinet(440), things(seed));
    var chosen = choose(task).plan();
    for (long top = 80; top <= 840; top += 20) {
      var plan = StoragePlanner.plan(task.in(cabinet(top)), PLACER, Effort.PLAN);
      assertTrue(isNoWorse(chosen, plan), top + ": " + plan.cost() + " < " + chosen.cost());
    }
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6})
  void twoShelves_areNoWorseThanAnyTwoHeightsOnTheStep(long seed) {
    var task = StorageForTests.task(cabinet(300, 600), things(seed));
    var chosen = choose(task).plan();
    for (long low = 80; low <= 760; low += 40) {
      for (long high = low + 80; high <= 840; high += 40) {
        var plan = StoragePlanner.plan(task.in(cabinet(low, high)), PLACER, Effort.PLAN);
        assertTrue(
            isNoWorse(chosen, plan),
            low + ", " + high + ": " + plan.cost() + " < " + chosen.cost());
      }
    }
  }

  private static boolean isNoWorse(StoragePlan one, StoragePlan other) {
    return one.without().size() < other.without().size()
        || (one.without().size() == other.without().size() && one.cost() <= other.cost());
  }
}
