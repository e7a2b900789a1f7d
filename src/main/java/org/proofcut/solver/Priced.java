package org.proofcut.solver;

import java.util.List;
import java.util.stream.IntStream;

/**
 * What prices come to, if each slot is filled with what pays best there, whatever the others are
 * filled with.
 *
 * @param fills the best of each slot
 * @param parts that any placing costs at least
 */
record Priced(Prices prices, List<Fill> fills, long parts) {

  Priced {
    fills = List.copyOf(fills);
  }

  /**
   * @param least how many items that have options are nowhere, at least
   * @param most and at most
   */
  static Priced of(Table table, Prices prices, int least, int most) {
    var fills =
        IntStream.range(0, table.optionsIn.length)
            .mapToObj(slot -> Filling.best(table, slot, prices))
            .toList();
    long parts =
        prices.given()
            + prices.nowhere(least, most)
            + fills.stream().mapToLong(Fill::worth).sum()
            + fixed(table) * Prices.PARTS;
    return new Priced(prices, fills, parts);
  }

  /** What has no options is nowhere, and the first slot of each group is free. */
  static long fixed(Table table) {
    long groups = table.placing.together().stream().mapToLong(group -> group.cost()).sum();
    return table.homeless() * table.placing.unplaced() - groups;
  }

  /** What any placing costs at least, in whole units as all costs are. */
  long bound() {
    return -Math.floorDiv(-parts, Prices.PARTS);
  }
}
