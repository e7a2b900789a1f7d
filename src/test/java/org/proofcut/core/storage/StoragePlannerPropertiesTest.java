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
