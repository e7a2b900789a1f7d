package org.proofcut.core.storage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
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
