package org.proofcut.solver;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.TreeMap;

/**
 * Finds what fills a slot best at some prices: for each length of room that may be taken, the best
 * of the options so far. Lengths are rounded down and masses not looked at, so that nothing that
 * fits is missed.
 */
final class Filling {

  /** More steps of room are not told apart: of a third of a millimetre in a slot of 64 cm. */
  private static final int MOST_STEPS = 2000;

  /** Of each conflict within a slot either side is left out; further conflicts are not kept to. */
  private static final int MOST_CONFLICTS = 3;

  private static final long NEVER = Long.MAX_VALUE / 2;

  private static final byte LEFT = 0;
  private static final byte FIRST = 1;
  private static final byte TOO = 2;

  private final Table table;
  private final int slot;
  private final Prices prices;
  private final long step;
  private final int steps;

  private Filling(Table table, int slot, Prices prices) {
    this.table = table;
    this.slot = slot;
    this.prices = prices;
    long room = table.placing.slots().get(slot).room();
    step = Math.max(divisor(), room / MOST_STEPS + 1);
    steps = (int) (room / step);
  }

  /** What all lengths are whole multiples of, so that nothing is lost in rounding. */
  private long divisor() {
    return Arrays.stream(table.optionsIn[slot])
        .mapToObj(option -> BigInteger.valueOf(table.room[option]))
        .reduce(BigInteger.ZERO, BigInteger::gcd)
        .longValueExact();
  }

  /** The best filling of a slot. */
  static Fill best(Table table, int slot, Prices prices) {
    var filling = new Filling(table, slot, prices);
    var best = new Fill(slot, 0, 0, List.of());
    for (var options : filling.ways()) {
      var fill = filling.best(options);
      best = fill.worth() < best.worth() ? fill : best;
    }
    return best;
  }

  /** Options that pay, for each way to keep to conflicts. */
  private List<List<Integer>> ways() {
    var pay = Arrays.stream(table.optionsIn[slot]).filter(o -> prices.of(o) < 0).boxed().toList();
    var ways = List.of(pay);
    for (int conflict : Arrays.stream(table.conflictsIn[slot]).limit(MOST_CONFLICTS).toArray()) {
      var both = table.conflicts.get(conflict);
      ways =
          ways.stream()
              .flatMap(way -> List.of(less(way, both.ones()), less(way, both.others())).stream())
              .distinct()
              .toList();
    }
    return ways;
  }

  private static List<Integer> less(List<Integer> options, List<Integer> without) {
    return options.stream().filter(option -> !without.contains(option)).toList();
  }

  /** Options of one group, which costs once if any of them is taken. */
  private record Bundle(List<Integer> options, long cost) {}

  private List<Bundle> bundles(List<Integer> options) {
    var grouped = new TreeMap<Integer, List<Integer>>();
    var bundles = new ArrayList<Bundle>();
    for (int option : options) {
      int group = table.groupOf(table.itemOf[option]);
      if (group == Table.NONE) {
        bundles.add(new Bundle(List.of(option), 0));
      } else {
        grouped.computeIfAbsent(group, any -> new ArrayList<>()).add(option);
      }
    }
    grouped.forEach(
        (group, members) ->
            bundles.add(
                new Bundle(members, table.placing.together().get(group).cost() * Prices.PARTS)));
    return bundles;
  }

  private Fill best(List<Integer> options) {
    var least = new long[steps + 1];
    Arrays.fill(least, 1, steps + 1, NEVER);
    var taken = new ArrayList<Taken>();
    for (var bundle : bundles(options)) {
      taken.add(new Taken(bundle, least));
      least = taken.get(taken.size() - 1).least;
    }
    int at = 0;
    long worth = 0;
    for (int room = 0; room <= steps; room++) {
      long with = least[room] + crowded(room) * Prices.PARTS;
      if (with < worth) {
        worth = with;
        at = room;
      }
    }
    var found = traced(taken, at);
    return new Fill(slot, cost(found, at), worth, found);
  }

  private long crowded(int room) {
    return table.placing.slots().get(slot).crowded(room * step);
  }

  /** With the room as it was rounded: what is proven and what is mixed must be the same. */
  private long cost(List<Integer> options, int room) {
    long groups =
        options.stream()
            .mapToInt(option -> table.groupOf(table.itemOf[option]))
            .filter(group -> group != Table.NONE)
            .distinct()
            .mapToLong(group -> table.placing.together().get(group).cost())
            .sum();
    return crowded(room) + groups + options.stream().mapToLong(o -> table.cost[o]).sum();
  }

  private int steps(int option) {
    return (int) (table.room[option] / step);
  }

  private static List<Integer> traced(List<Taken> bundles, int room) {
    var options = new ArrayList<Integer>();
    int at = room;
    for (int n = bundles.size() - 1; n >= 0; n--) {
      at = bundles.get(n).traced(at, options);
    }
    return options;
  }

  /** The least for each room with a bundle looked at, and what of it is taken there. */
  private final class Taken {

    final Bundle bundle;
    final long[] least;
    final byte[][] how;
    final boolean[] any;

    Taken(Bundle bundle, long[] without) {
      this.bundle = bundle;
      how = new byte[bundle.options().size()][steps + 1];
      any = new boolean[steps + 1];
      var with = new long[steps + 1];
      Arrays.fill(with, NEVER);
      for (int n = 0; n < how.length; n++) {
        take(n, without, with);
      }
      least = without.clone();
      for (int room = 0; room <= steps; room++) {
        any[room] = with[room] < least[room];
        least[room] = Math.min(with[room], least[room]);
      }
    }

    /** From the most room down, so that an option is taken once. */
    private void take(int n, long[] without, long[] with) {
      int option = bundle.options().get(n);
      int wide = steps(option);
      for (int room = steps; room >= wide; room--) {
        long first = without[room - wide] + bundle.cost() + prices.of(option);
        long too = with[room - wide] + prices.of(option);
        if (Math.min(first, too) < with[room]) {
          with[room] = Math.min(first, too);
          how[n][room] = first <= too ? FIRST : TOO;
        }
      }
    }

    /** Adds what is taken where so much room is; what room the bundles before have. */
    int traced(int room, List<Integer> options) {
      if (!any[room]) {
        return room;
      }
      int at = room;
      for (int n = how.length - 1; ; n--) {
        byte taken = how[n][at];
        if (taken != LEFT) {
          options.add(bundle.options().get(n));
          at -= steps(bundle.options().get(n));
        }
        if (taken == FIRST) {
          return at;
        }
      }
    }
  }
}
