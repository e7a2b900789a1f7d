package org.proofcut.core.storage;

import java.util.Arrays;
import java.util.List;

/**
 * A placing with nothing left of what is placed: items with options among slots, and what each
 * choice costs. Lengths are in hundredths of a millimetre, items rounded up and slots down; masses
 * are in grams.
 *
 * @param exclusions choices that exclude others
 * @param together items that cost when they are spread
 * @param orders items that cost when one lies in a column to the right of the other
 * @param unplaced cost of each item without a slot; more than all other costs together
 */
public record Placing(
    List<Item> items,
    List<Slot> slots,
    List<Exclusion> exclusions,
    List<Together> together,
    List<Order> orders,
    long unplaced) {

  /** No slot. */
  public static final int NOWHERE = -1;

  /**
   * One item.
   *
   * @param options in the order of their slots; none where nothing takes it
   */
  public record Item(String id, List<Option> options, long mass) {
    public Item {
      options = List.copyOf(options);
    }
  }

  /**
   * A slot that takes an item.
   *
   * @param room that the item takes there, with the gap beside it
   */
  public record Option(int slot, long room, long cost) {}

  /**
   * One slot.
   *
   * @param room for all items, with one gap more
   * @param mass that it carries
   * @param column from the left
   * @param comfortable room that may be taken before crowding costs
   * @param crowding cost of each per cent of the room, or part of one, over what is comfortable
   */
  public record Slot(String id, long room, long mass, int column, long comfortable, long crowding) {

    /** What crowding costs with so much room taken. */
    public long crowded(long taken) {
      long over = Math.max(0, taken - comfortable);
      return room == 0 ? 0 : -Math.floorDiv(-over * 100, room) * crowding;
    }
  }

  /** An item in a slot. */
  public record Choice(int item, int slot) {}

  /** No choice of the first kind goes with any of the second. */
  public record Exclusion(List<Choice> ones, List<Choice> others) {
    public Exclusion {
      ones = List.copyOf(ones);
      others = List.copyOf(others);
    }
  }

  /**
   * Items that are used together.
   *
   * @param cost of each slot but the first that they are spread over
   */
  public record Together(List<Integer> items, long cost) {
    public Together {
      items = List.copyOf(items);
    }
  }

  /**
   * An item that comes before another.
   *
   * @param cost where it lies in a column to the right of the other
   */
  public record Order(int before, int after, long cost) {}

  public Placing {
    items = List.copyOf(items);
    slots = List.copyOf(slots);
    exclusions = List.copyOf(exclusions);
    together = List.copyOf(together);
    orders = List.copyOf(orders);
  }

  /** The option of an item in a slot. */
  private Option option(int item, int slot) {
    return items.get(item).options().stream()
        .filter(option -> option.slot() == slot)
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException(item + " may not go to " + slot));
  }

  /** Whether slots by item keep to room, mass and exclusions. */
  public boolean isAllowed(int[] slotOf) {
    var room = new long[slots.size()];
    var mass = new long[slots.size()];
    for (int i = 0; i < slotOf.length; i++) {
      if (slotOf[i] != NOWHERE) {
        int slot = slotOf[i];
        if (items.get(i).options().stream().noneMatch(option -> option.slot() == slot)) {
          return false;
        }
        room[slot] += option(i, slot).room();
        mass[slot] += items.get(i).mass();
      }
    }
    for (int s = 0; s < slots.size(); s++) {
      if (room[s] > slots.get(s).room() || mass[s] > slots.get(s).mass()) {
        return false;
      }
    }
    return exclusions.stream()
        .noneMatch(
            exclusion -> anyOf(exclusion.ones(), slotOf) && anyOf(exclusion.others(), slotOf));
  }

  private static boolean anyOf(List<Choice> choices, int[] slotOf) {
    return choices.stream().anyMatch(choice -> slotOf[choice.item()] == choice.slot());
  }

  /** What slots by item cost, with what is nowhere. */
  public long cost(int[] slotOf) {
    long cost = 0;
    var room = new long[slots.size()];
    for (int i = 0; i < slotOf.length; i++) {
      if (slotOf[i] == NOWHERE) {
        cost += unplaced;
      } else {
        var option = option(i, slotOf[i]);
        cost += option.cost();
        room[slotOf[i]] += option.room();
      }
    }
    for (int s = 0; s < slots.size(); s++) {
      cost += slots.get(s).crowded(room[s]);
    }
    return cost + spread(slotOf) + outOfOrder(slotOf);
  }

  private long spread(int[] slotOf) {
    return together.stream()
        .mapToLong(
            group -> {
              long used =
                  group.items().stream()
                      .map(item -> slotOf[item])
                      .filter(slot -> slot != NOWHERE)
                      .distinct()
                      .count();
              return Math.max(0, used - 1) * group.cost();
            })
        .sum();
  }

  private long outOfOrder(int[] slotOf) {
    return orders.stream()
        .filter(
            order ->
                slotOf[order.before()] != NOWHERE
                    && slotOf[order.after()] != NOWHERE
                    && slots.get(slotOf[order.before()]).column()
                        > slots.get(slotOf[order.after()]).column())
        .mapToLong(Order::cost)
        .sum();
  }

  /** Nothing is anywhere. */
  public int[] nowhere() {
    var slotOf = new int[items.size()];
    Arrays.fill(slotOf, NOWHERE);
    return slotOf;
  }
}
