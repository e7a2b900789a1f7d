package org.proofcut.solver;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import org.proofcut.core.storage.Placing;
import org.proofcut.core.storage.Placing.Choice;
import org.proofcut.core.storage.Placing.Exclusion;
import org.proofcut.core.storage.Placing.Item;
import org.proofcut.core.storage.Placing.Option;
import org.proofcut.core.storage.Placing.Order;
import org.proofcut.core.storage.Placing.Slot;
import org.proofcut.core.storage.Placing.Together;

/** Placings of any kind, few enough of each thing that all can be tried. */
final class PlacingArbitraries {

  static final long MORE_THAN_ALL_ELSE = 10_000;

  private PlacingArbitraries() {}

  static Arbitrary<Placing> small() {
    return Arbitraries.longs().map(seed -> new Made(new Random(seed)).placing());
  }

  private record Made(Random chance) {

    int between(int least, int most) {
      return least + chance.nextInt(most - least + 1);
    }

    Placing placing() {
      int slotCount = between(1, 4);
      var slots = IntStream.range(0, slotCount).mapToObj(this::slot).toList();
      var items =
          IntStream.range(0, between(1, 5)).mapToObj(number -> item(number, slotCount)).toList();
      return new Placing(
          items,
          slots,
          exclusions(items),
          together(items),
          orders(items),
          // Seldom so little that an item is better left out.
          chance.nextInt(5) == 0 ? between(0, 60) : MORE_THAN_ALL_ELSE);
    }

    Slot slot(int number) {
      int room = between(0, 40) * 100;
      return new Slot(
          "slot " + number,
          room,
          between(0, 40) * 100,
          between(0, 2),
          room * between(50, 100) / 100,
          between(0, 3));
    }

    Item item(int number, int slots) {
      var options = new ArrayList<Option>();
      for (int slot = 0; slot < slots; slot++) {
        if (chance.nextInt(4) > 0) {
          options.add(new Option(slot, between(1, 2500), between(0, 50)));
        }
      }
      return new Item("item " + number, options, between(0, 2500));
    }

    List<Exclusion> exclusions(List<Item> items) {
      return IntStream.range(0, between(0, 4))
          .mapToObj(any -> new Exclusion(choices(items), choices(items)))
          .toList();
    }

    /** Also of slots that are no option, as the planner gives them. */
    List<Choice> choices(List<Item> items) {
      return IntStream.range(0, between(1, 3))
          .mapToObj(any -> new Choice(between(0, items.size() - 1), between(0, 3)))
          .toList();
    }

    List<Together> together(List<Item> items) {
      return IntStream.range(0, between(0, 2))
          .mapToObj(
              any ->
                  new Together(
                      IntStream.range(0, items.size())
                          .filter(item -> chance.nextBoolean())
                          .boxed()
                          .toList(),
                      between(0, 60)))
          .toList();
    }

    List<Order> orders(List<Item> items) {
      var orders = new ArrayList<Order>();
      for (int before = 0; before < items.size(); before++) {
        for (int after = 0; after < items.size(); after++) {
          if (chance.nextInt(4) == 0) {
            orders.add(new Order(before, after, between(0, 30)));
          }
        }
      }
      return orders;
    }
  }
}
