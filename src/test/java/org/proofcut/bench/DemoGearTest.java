package org.proofcut.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.proofcut.core.intake.DemoGear;
import org.proofcut.core.storage.Placer;
import org.proofcut.core.storage.StorageCheck;
import org.proofcut.core.storage.StoragePlan;
import org.proofcut.core.storage.StoragePlanner;
import org.proofcut.core.storage.StorageTask;
import org.proofcut.core.storage.Thing;

/**
 * The demo's gear lives where a plan of its cabinet has it, though no plan is made at the start.
 */
@QuarkusTest
class DemoGearTest {

  @Inject ShopFloor floor;
  @Inject StorageDesk desk;
  @Inject Placer placer;

  @BeforeEach
  void asOnTheFirstStart() {
    floor.keepDemo();
  }

  /** What other tests may have put beside it is left out. */
  private StorageTask task(boolean lived) {
    var task = desk.plan("demo-cabinet").orElseThrow().task();
    var people = DemoGear.people().stream().map(person -> person.get("name")).toList();
    return new StorageTask(
        task.cabinet(),
        task.things().stream().filter(thing -> thing.id().startsWith("demo-")).toList(),
        task.people().stream().filter(one -> people.contains(one.name())).toList(),
        Map.of(),
        lived ? task.before() : Map.of(),
        task.limits());
  }

  @Test
  void homes_areThoseOfThePlan_andItIsTheBest() {
    var task = task(true);
    var plan = StoragePlanner.plan(task, placer, Placer.Effort.PLAN);
    assertEquals(
        byPlace(task, plan), byPlace(DemoGear.homes()), "as DemoGear.homes() is to say it");
    assertEquals(List.of(), StorageCheck.faults(task, plan));
    assertEquals(List.of(), plan.without());
    assertTrue(plan.isBest(), plan.gap() + " per cent");
  }

  /** Nothing in it rests on where things were before. */
  @Test
  void homes_costNoMoreThanTheBestPlanOfAnEmptyCabinet() {
    var effort = Placer.Effort.PLAN;
    assertEquals(
        StoragePlanner.plan(task(false), placer, effort).cost(),
        StoragePlanner.plan(task(true), placer, effort).cost());
  }

  @Test
  void cabinet_isLivedBy_andPromptsNameItsPlaces() {
    var planned = desk.plan("demo-cabinet").orElseThrow();
    assertTrue(planned.taken(), "its page has nothing left to take");
    var mask =
        floor.shop().gear().stream()
            .filter(piece -> piece.name().equals("half mask with particle filters"))
            .findFirst()
            .orElseThrow();
    assertEquals("Gear cabinet by the door: bay 1, shelf 2", mask.place());
    assertEquals(
        List.of(),
        desk.things().stream()
            .filter(one -> one.thing().id().startsWith("demo-") && one.home().isEmpty())
            .map(one -> one.thing().name())
            .toList());
  }

  private static Map<String, List<String>> byPlace(StorageTask task, StoragePlan plan) {
    return byPlace(
        task.things().stream()
            .filter(thing -> plan.of(thing.id()).isPresent())
            .collect(
                Collectors.toMap(
                    Thing::name, thing -> plan.of(thing.id()).orElseThrow().place().id())));
  }

  private static Map<String, List<String>> byPlace(Map<String, String> homes) {
    var places = new TreeMap<String, List<String>>();
    homes.forEach(
        (name, place) -> places.computeIfAbsent(place, any -> new ArrayList<>()).add(name));
    places.values().forEach(names -> names.sort(null));
    return places;
  }
}
