package org.proofcut.solver;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.Executors;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.proofcut.core.storage.EveryPlacing;
import org.proofcut.core.storage.Placed;
import org.proofcut.core.storage.Placer;
import org.proofcut.core.storage.Placer.Effort;
import org.proofcut.core.storage.Placing;
import org.proofcut.core.storage.Placing.Item;
import org.proofcut.core.storage.Placing.Option;
import org.proofcut.core.storage.Placing.Slot;
import org.proofcut.core.storage.ShopCabinets;
import org.proofcut.core.storage.StorageArbitraries;
import org.proofcut.core.storage.StorageCheck;
import org.proofcut.core.storage.StoragePlanner;
import org.proofcut.core.storage.StorageTask;

class PlacersTest {

  private static final Placer ANNEALED = new AnnealedPlacer();
  private static final Placer PROVING = new ProvingPlacer();
  private static final Placer UNPROVING = new ProvingPlacer(() -> false);

  @Provide
  Arbitrary<Placing> placings() {
    return PlacingArbitraries.small();
  }

  @Provide
  Arbitrary<StorageTask> tasks() {
    return StorageArbitraries.tasks(14);
  }

  private static void assertSound(Placing placing, Placed placed, long best) {
    var slots = placed.slotOf().stream().mapToInt(Integer::intValue).toArray();
    assertTrue(placing.isAllowed(slots), placing::toString);
    assertEquals(placing.cost(slots), placed.cost());
    assertTrue(placed.bound() <= best, () -> placed.bound() + " over " + best + ": " + placing);
  }

  /**
   * Of so few, annealing finds the best, if no item is better left out; that nothing is better is
   * proven.
   */
  @Property(tries = 300)
  void place_few_isTheBestOfAll(@ForAll("placings") Placing placing) {
    long best = new EveryPlacing().place(placing, Effort.PLAN).cost();
    var annealed = ANNEALED.place(placing, Effort.PLAN);
    assertSound(placing, annealed, best);
    if (placing.unplaced() == PlacingArbitraries.MORE_THAN_ALL_ELSE) {
      assertEquals(best, annealed.cost(), placing::toString);
    }
    var proven = PROVING.place(placing, Effort.PLAN);
    assertSound(placing, proven, best);
    assertEquals(best, proven.cost(), placing::toString);
    assertEquals(best, proven.bound(), placing::toString);
  }

  /** A bad placing handed to the proof is made the best one: it does not rest on annealing. */
  @Property(tries = 300)
  void proof_fromNothingPlaced_findsTheBest(@ForAll("placings") Placing placing) {
    long best = new EveryPlacing().place(placing, Effort.PLAN).cost();
    var table = new Table(placing);
    var proven = new Proof(table, table.nothing(), Effort.PLAN).placed();
    assertSound(placing, proven, best);
    assertEquals(best, proven.cost(), placing::toString);
    assertEquals(best, proven.bound(), placing::toString);
  }

  @Property(tries = 100)
  void glance_few_keepsToRoomMassAndExclusions(@ForAll("placings") Placing placing) {
    long best = new EveryPlacing().place(placing, Effort.PLAN).cost();
    assertSound(placing, PROVING.place(placing, Effort.GLANCE), best);
  }

  @Property(tries = 100)
  void everyPlan_keepsToEveryHardRule(@ForAll("tasks") StorageTask task) {
    var plan = StoragePlanner.plan(task, PROVING, Effort.PLAN);
    assertEquals(List.of(), StorageCheck.faults(task, plan));
    assertTrue(plan.bound() <= plan.cost());
  }

  @Test
  void place_againAndFromTwoThreads_isTheSame() throws Exception {
    var placing = StoragePlanner.placing(ShopCabinets.thirty(7));
    Callable<Placed> place = () -> PROVING.place(placing, Effort.PLAN);
    var alone = place.call();
    var two = Executors.newFixedThreadPool(2);
    try {
      for (var both : two.invokeAll(List.of(place, place))) {
        assertEquals(alone, both.get());
      }
    } finally {
      two.shutdown();
    }
  }

  @Test
  void place_noOption_staysOut() {
    var slot = new Slot("slot", 1000, 1000, 0, 1000, 0);
    var homeless = new Item("homeless", List.of(), 10);
    var large = new Item("large", List.of(new Option(0, 1001, 0)), 10);
    var fits = new Item("fits", List.of(new Option(0, 900, 5)), 10);
    var placing =
        new Placing(
            List.of(homeless, large, fits), List.of(slot), List.of(), List.of(), List.of(), 100);
    for (var placer : List.of(ANNEALED, PROVING)) {
      var placed = placer.place(placing, Effort.PLAN);
      assertEquals(List.of(Placing.NOWHERE, Placing.NOWHERE, 0), placed.slotOf());
      assertEquals(205, placed.cost());
      assertEquals(205, placed.bound());
    }
  }

  @Test
  void place_nothing_costsNothing() {
    var placing = new Placing(List.of(), List.of(), List.of(), List.of(), List.of(), 1);
    for (var placer : List.of(ANNEALED, PROVING)) {
      assertEquals(new Placed(List.of(), 0, 0), placer.place(placing, Effort.PLAN));
    }
  }

  /** Without the library a plan is found all the same, with the bound of what each costs alone. */
  @Test
  void place_withoutTheLibrary_isFoundAndNotProven() {
    var placing = StoragePlanner.placing(ShopCabinets.thirty(1));
    assertEquals(ANNEALED.place(placing, Effort.PLAN), UNPROVING.place(placing, Effort.PLAN));
  }

  @Test
  void library_thatDoesNotLoad_isSaidToBeMissing() {
    Runnable elsewhere =
        () -> {
          throw new UnsatisfiedLinkError("for another system");
        };
    Runnable unknown =
        () -> {
          throw new NullPointerException("Resource was not found");
        };
    assertFalse(Native.isLoaded(elsewhere));
    assertFalse(Native.isLoaded(unknown));
    assertTrue(Native.isThere(), "this system has one");
  }

  /** As large as a shop's: the best of all, with proof. */
  @Test
  void place_thirtyThings_isProven() {
    for (long seed = 1; seed <= 3; seed++) {
      var task = ShopCabinets.thirty(seed);
      var plan = StoragePlanner.plan(task, PROVING, Effort.PLAN);
      assertEquals(30, plan.puts().size());
      assertTrue(plan.isBest(), plan.gap() + " per cent");
      assertEquals(List.of(), StorageCheck.faults(task, plan));
    }
  }

  /** Twice as large: all placed, and how good the plan is is proven to a few per cent. */
  @Test
  void place_sixtyThings_isProvenWithinFivePerCent() {
    var task = ShopCabinets.sixty(3);
    var plan = StoragePlanner.plan(task, PROVING, Effort.LONG);
    assertEquals(60, plan.puts().size());
    assertTrue(plan.bound() * 100 >= plan.cost() * 95, plan.gap() + " per cent");
    assertEquals(List.of(), StorageCheck.faults(task, plan));
  }
}
