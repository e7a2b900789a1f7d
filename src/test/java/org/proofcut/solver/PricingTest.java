package org.proofcut.solver;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.lifecycle.BeforeContainer;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.proofcut.core.storage.EveryPlacing;
import org.proofcut.core.storage.Placer.Effort;
import org.proofcut.core.storage.Placing;
import org.proofcut.core.storage.Placing.Item;
import org.proofcut.core.storage.Placing.Option;
import org.proofcut.core.storage.Placing.Slot;

class PricingTest {

  private static final int STEP = 100;

  @BeforeAll
  @BeforeContainer
  static void load() {
    assertTrue(Native.isThere());
  }

  @Provide
  Arbitrary<Placing> placings() {
    return PlacingArbitraries.small();
  }

  /** The same with what options take rounded up to whole steps, as slots have them. */
  private static Placing whole(Placing placing) {
    return new Placing(
        placing.items().stream().map(PricingTest::whole).toList(),
        placing.slots(),
        placing.exclusions(),
        placing.together(),
        placing.orders(),
        placing.unplaced());
  }

  private static Item whole(Item item) {
    return new Item(
        item.id(),
        item.options().stream()
            .map(one -> new Option(one.slot(), (one.room() / STEP + 1) * STEP, one.cost()))
            .toList(),
        item.mass());
  }

  private static Prices prices(Table table, Random chance) {
    var items = chance.longs(table.items(), 0, 80 * Prices.PARTS).toArray();
    var orders = new long[table.orders.size()][];
    for (int order = 0; order < orders.length; order++) {
      orders[order] = chance.longs(table.borders.length, 0, 20 * Prices.PARTS).toArray();
    }
    return new Prices(table, items, orders);
  }

  /**
   * What a set of options comes to in a slot, added up one by one; nothing where it is too much.
   */
  private static long worth(Table table, int number, Prices prices, List<Integer> options) {
    var slot = table.placing.slots().get(number);
    long room = options.stream().mapToLong(option -> table.room[option]).sum();
    boolean bad =
        table.conflicts.stream()
            .anyMatch(
                both ->
                    options.stream().anyMatch(both.ones()::contains)
                        && options.stream().anyMatch(both.others()::contains));
    if (room > slot.room() || bad) {
      return 0;
    }
    long sum = slot.crowded(room) * Prices.PARTS;
    for (int group = 0; group < table.placing.together().size(); group++) {
      int first = group;
      boolean any = options.stream().anyMatch(o -> table.groupOf(table.itemOf[o]) == first);
      sum += any ? table.placing.together().get(group).cost() * Prices.PARTS : 0;
    }
    return sum + options.stream().mapToLong(prices::of).sum();
  }

  private static long bestOfAll(Table table, int slot, Prices prices) {
    int[] there = table.optionsIn[slot];
    long best = 0;
    for (int set = 0; set < 1 << there.length; set++) {
      var options = new ArrayList<Integer>();
      for (int n = 0; n < there.length; n++) {
        if ((set >> n & 1) == 1) {
          options.add(there[n]);
        }
      }
      best = Math.min(best, worth(table, slot, prices, options));
    }
    return best;
  }

  @Property(tries = 500)
  void best_wholeSteps_isTheBestOfAll(@ForAll("placings") Placing placing, @ForAll long seed) {
    var table = new Table(whole(placing));
    var prices = prices(table, new Random(seed));
    for (int slot = 0; slot < table.optionsIn.length; slot++) {
      var fill = Filling.best(table, slot, prices);
      if (table.conflictsIn[slot].length <= 3) {
        assertEquals(bestOfAll(table, slot, prices), fill.worth(), placing::toString);
        assertEquals(fill.worth(), worth(table, slot, prices, fill.options()), placing::toString);
      }
    }
  }

  /** Where lengths are rounded, and conflicts left out, more may be let in and never less. */
  @Property(tries = 500)
  void best_anyLengths_missesNothing(@ForAll("placings") Placing placing, @ForAll long seed) {
    var table = new Table(placing);
    var prices = prices(table, new Random(seed));
    for (int slot = 0; slot < table.optionsIn.length; slot++) {
      long best = bestOfAll(table, slot, prices);
      assertTrue(Filling.best(table, slot, prices).worth() <= best, placing::toString);
    }
  }

  @Property(tries = 500)
  void bound_anyPrices_isNotOverTheBest(@ForAll("placings") Placing placing, @ForAll long seed) {
    long best = new EveryPlacing().place(placing, Effort.PLAN).cost();
    var table = new Table(placing);
    int items = (int) (table.items() - table.homeless());
    var priced = Priced.of(table, prices(table, new Random(seed)), 0, items);
    assertTrue(priced.bound() <= best, () -> priced.bound() + " over " + best + ": " + placing);
  }

  @Property(tries = 300)
  void bound_bestPrices_isNotOverTheBest(@ForAll("placings") Placing placing) {
    long best = new EveryPlacing().place(placing, Effort.PLAN).cost();
    var table = new Table(placing);
    var priced = Pricing.best(table, best + 1, 0);
    assertTrue(priced.bound() <= best, () -> priced.bound() + " over " + best + ": " + placing);
    assertTrue(
        priced.bound() >= Priced.of(table, Prices.ofCheapest(table), 0, table.items()).bound(),
        placing::toString);
  }

  /** Two things of which only one has room where both would cost nothing. */
  @Test
  void bound_oneSlotIsTooSmall_isWhatTheSecondBestCosts() {
    var near = new Slot("near", 1000, 1000, 0, 1000, 0);
    var far = new Slot("far", 1000, 1000, 0, 1000, 0);
    var wide = List.of(new Option(0, 600, 0), new Option(1, 600, 40));
    var narrow = List.of(new Option(0, 500, 0), new Option(1, 500, 30));
    var placing =
        new Placing(
            List.of(new Item("wide", wide, 1), new Item("narrow", narrow, 1)),
            List.of(near, far),
            List.of(),
            List.of(),
            List.of(),
            1000);
    var table = new Table(placing);
    assertEquals(0, Priced.of(table, Prices.ofCheapest(table), 0, 0).bound());
    assertEquals(30, Pricing.best(table, 1000, 0).bound());
  }
}
