package org.proofcut.core.storage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.proofcut.core.measure.Length;
import org.proofcut.core.storage.Placer.Effort;

class StoragePlannerPropertiesTest {

  @Provide
  Arbitrary<StorageTask> tasks() {
    return StorageArbitraries.tasks(14);
  }

  @Property(tries = 1000)
  void everyPlan_keepsToEveryHardRule(@ForAll("tasks") StorageTask task) {
    var plan = StoragePlanner.plan(task, new FirstFit(), Effort.PLAN);
    assertEquals(List.of(), StorageCheck.faults(task, plan));
    assertEquals(task.things().size(), plan.puts().size() + plan.without().size());
  }

  /** Nothing is kept from a place that would take it wherever along that it is put. */
  @Property(tries = 150)
  void thingRefused_breaksARuleSomewhereInThatPlace(@ForAll("tasks") StorageTask task) {
    var suits = new Suits(task);
    for (var thing : task.things()) {
      for (var place : task.places()) {
        boolean sound =
            spots(thing, place, suits).allMatch(left -> isSound(task, thing, place, left));
        assertEquals(
            sound,
            suits.refusal(thing, place).isEmpty(),
            () -> thing + " in " + place + ": " + suits.refusal(thing, place));
      }
    }
  }

  /** From end to end, by hundredths of the way that there is. */
  private static Stream<Length> spots(Thing thing, Place place, Suits suits) {
    var first = place.across().least().plus(suits.beside(thing));
    var last = place.across().most().minus(suits.beside(thing)).minus(thing.size().wide());
    return last.isLessThan(first)
        ? Stream.of(first)
        : IntStream.rangeClosed(0, 100)
            .mapToObj(i -> first.plus(last.minus(first).times(i).dividedBy(100)));
  }

  private static boolean isSound(StorageTask task, Thing thing, Place place, Length left) {
    var others = task.things().stream().filter(one -> !one.equals(thing)).toList();
    var plan = new StoragePlan(List.of(new Put(thing, place, left)), others, 0, 0);
    return StorageCheck.faults(task, plan).isEmpty();
  }

  @Provide
  Arbitrary<StorageTask> smallTasks() {
    return StorageArbitraries.tasks(4);
  }

  /**
   * Two things that a placing lets into two places are well there wherever along these they are.
   */
  @Property(tries = 500)
  void twoThingsLetIn_areSound_whereverTheyAre(@ForAll("smallTasks") StorageTask task) {
    var placing = StoragePlanner.placing(task);
    var suits = new Suits(task);
    var places = task.places();
    var things = task.things();
    for (int i = 0; i < things.size(); i++) {
      for (int j = i + 1; j < things.size(); j++) {
        for (int s = 0; s < places.size(); s++) {
          for (int t = 0; t < places.size(); t++) {
            var slots = placing.nowhere();
            slots[i] = s;
            slots[j] = t;
            if (s != t && placing.isAllowed(slots)) {
              for (var one : fewSpots(things.get(i), places.get(s), suits)) {
                for (var other : fewSpots(things.get(j), places.get(t), suits)) {
                  isSound(
                      task,
                      new Put(things.get(i), places.get(s), one),
                      new Put(things.get(j), places.get(t), other));
                }
              }
            }
          }
        }
      }
    }
  }

  /** Both ends, and two between. */
  private static List<Length> fewSpots(Thing thing, Place place, Suits suits) {
    var all = spots(thing, place, suits).toList();
    return IntStream.range(0, 4).mapToObj(n -> all.get((all.size() - 1) * n / 3)).toList();
  }

  private static void isSound(StorageTask task, Put one, Put other) {
    var rest =
        task.things().stream()
            .filter(thing -> !thing.equals(one.thing()) && !thing.equals(other.thing()))
            .toList();
    assertEquals(
        List.of(),
        StorageCheck.faults(task, new StoragePlan(List.of(one, other), rest, 0, 0)),
        () -> one + " and " + other + " in " + task.cabinet());
  }

  /** The wishes that are told come to the cost that was solved for, but for crowding. */
  @Property(tries = 300)
  void wishesTold_comeToTheCost(@ForAll("tasks") StorageTask task) {
    var plan = StoragePlanner.plan(task, new FirstFit(), Effort.PLAN);
    long told = Wishes.unmet(task, plan).stream().mapToLong(Wishes.Unmet::cost).sum();
    var placing = StoragePlanner.placing(task);
    long crowded = 0;
    for (var slot : placing.slots()) {
      long taken = 0;
      for (int i = 0; i < placing.items().size(); i++) {
        var item = placing.items().get(i);
        if (plan.of(item.id()).filter(put -> put.place().id().equals(slot.id())).isPresent()) {
          int index = placing.slots().indexOf(slot);
          taken +=
              item.options().stream()
                  .filter(option -> option.slot() == index)
                  .findFirst()
                  .orElseThrow()
                  .room();
        }
      }
      crowded += slot.crowded(taken);
    }
    assertEquals(plan.cost(), told + crowded);
  }

  /** Random tasks must not all be so hard, or so easy, that nothing is tried. */
  @Property(tries = 1)
  void tasks_placeSomeAndLeaveSome() {
    int placed = 0;
    int left = 0;
    for (var task : tasks().sampleStream().limit(300).toList()) {
      var plan = StoragePlanner.plan(task, new FirstFit(), Effort.PLAN);
      placed += plan.puts().size();
      left += plan.without().size();
    }
    assertTrue(placed > 300, "placed " + placed + ", left over " + left);
    assertTrue(left > 100, "placed " + placed + ", left over " + left);
  }
}
