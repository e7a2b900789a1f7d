package org.proofcut.solver;

import java.util.Arrays;

/**
 * What each item gives for a place, and what each order takes at each border between columns.
 * Whatever they are, they prove a bound: the dearer what is in demand, the better. They are whole
 * numbers of small parts, so that nothing is lost in sums.
 */
final class Prices {

  /** Of one unit of cost. */
  static final long PARTS = 64;

  private final Table table;
  private final long[] ofItem;
  private final long[][] ofOrder;

  /** What options cost with orders reckoned in, less what their items give. */
  private final long[] ofOption;

  /**
   * @param ofItem parts, none below nothing; those of items without options do not count
   * @param ofOrder parts by {@link Table#orders} and by border, none below nothing; made less where
   *     those of an order are more together than it costs
   */
  Prices(Table table, long[] ofItem, long[][] ofOrder) {
    this.table = table;
    this.ofItem = ofItem;
    this.ofOrder = ofOrder;
    Arrays.setAll(ofItem, item -> table.optionsOf[item].length == 0 ? 0 : ofItem[item]);
    for (int order = 0; order < ofOrder.length; order++) {
      keepTo(table.orders.get(order).cost() * PARTS, ofOrder[order]);
    }
    this.ofOption = ofOption();
  }

  /** Each item gives what it costs where it costs least. */
  static Prices ofCheapest(Table table) {
    var ofItem = new long[table.items()];
    for (int item = 0; item < ofItem.length; item++) {
      ofItem[item] =
          Arrays.stream(table.optionsOf[item]).mapToLong(o -> table.cost[o]).min().orElse(0)
              * PARTS;
    }
    return new Prices(table, ofItem, new long[table.orders.size()][table.borders.length]);
  }

  private static void keepTo(long most, long[] parts) {
    long sum = Arrays.stream(parts).sum();
    if (sum > most) {
      Arrays.setAll(parts, border -> parts[border] * most / sum);
    }
  }

  private long[] ofOption() {
    var of = new long[table.options()];
    Arrays.setAll(of, o -> table.cost[o] * PARTS - ofItem[table.itemOf[o]]);
    for (int order = 0; order < ofOrder.length; order++) {
      for (int border = 0; border < ofOrder[order].length; border++) {
        if (ofOrder[order][border] > 0) {
          add(order, border, of);
        }
      }
    }
    return of;
  }

  private void add(int number, int border, long[] of) {
    var order = table.orders.get(number);
    for (int option : table.optionsOf[order.before()]) {
      of[option] += table.isRight(option, border) ? ofOrder[number][border] : 0;
    }
    for (int option : table.optionsOf[order.after()]) {
      of[option] += table.isRight(option, border) ? 0 : ofOrder[number][border];
    }
  }

  /** Parts that taking an option costs beyond what its item gives; below nothing where it pays. */
  long of(int option) {
    return ofOption[option];
  }

  /** Parts that every placing costs at least, beyond what is in slots and nowhere. */
  long given() {
    long given = Arrays.stream(ofItem).sum();
    for (var parts : ofOrder) {
      given -= Arrays.stream(parts).sum();
    }
    return given;
  }

  /**
   * Parts that items cost at least that are nowhere, less what they would give.
   *
   * @param least how many of those that have options are nowhere, at least
   * @param most and at most
   */
  long nowhere(int least, int most) {
    long[] extra =
        Arrays.stream(ofItem).map(price -> table.placing.unplaced() * PARTS - price).toArray();
    for (int item = 0; item < extra.length; item++) {
      if (table.optionsOf[item].length == 0) {
        extra[item] = Long.MAX_VALUE;
      }
    }
    Arrays.sort(extra);
    long sum = 0;
    for (int count = 0; count < most && (count < least || extra[count] < 0); count++) {
      sum += extra[count];
    }
    return sum;
  }

  /** Prices between these and others. */
  Prices towards(Prices other, double share) {
    var items = new long[ofItem.length];
    Arrays.setAll(items, item -> between(ofItem[item], other.ofItem[item], share));
    var orders = new long[ofOrder.length][];
    Arrays.setAll(
        orders,
        order -> {
          var parts = new long[ofOrder[order].length];
          Arrays.setAll(parts, b -> between(ofOrder[order][b], other.ofOrder[order][b], share));
          return parts;
        });
    return new Prices(table, items, orders);
  }

  private static long between(long one, long other, double share) {
    return Math.round(one + share * (other - one));
  }

  /** A price in parts, of one as linear forms have it. */
  static long parts(double price) {
    return Math.max(0, Math.round(price * PARTS));
  }
}
