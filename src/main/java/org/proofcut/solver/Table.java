package org.proofcut.solver;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.proofcut.core.storage.Placed;
import org.proofcut.core.storage.Placing;
import org.proofcut.core.storage.Placing.Choice;
import org.proofcut.core.storage.Placing.Option;
import org.proofcut.core.storage.Placing.Order;
import org.proofcut.core.storage.Placing.Slot;

/**
 * A placing with all options numbered through, those left out that can't be taken even with nothing
 * else there.
 */
final class Table {

  /** No option is taken. */
  static final int NONE = -1;

  /** An order, seen from one of its items. */
  record Turn(int other, boolean isBefore, long cost) {}

  /** Options of which none goes with any of the others. */
  record Conflict(List<Integer> ones, List<Integer> others) {}

  final Placing placing;
  final int[] itemOf;
  final int[] slotOf;
  final long[] room;
  final long[] cost;
  final int[][] optionsOf;
  final int[][] optionsIn;
  final List<Conflict> conflicts;

  /** Conflicts by option: those in which it is one of the ones, and one of the others. */
  final int[][] asOne;

  final int[][] asOther;
  final int[][] groupsOf;
  final List<List<Turn>> turns;
  final List<Order> orders;

  /** Columns that have another one to the right. */
  final int[] borders;

  /** Conflicts by slot, of which both sides have an option in it. */
  final int[][] conflictsIn;

  Table(Placing placing) {
    this.placing = placing;
    var options = new ArrayList<Option>();
    var items = new ArrayList<Integer>();
    for (int i = 0; i < placing.items().size(); i++) {
      for (var option : fitting(i)) {
        options.add(option);
        items.add(i);
      }
    }
    itemOf = items.stream().mapToInt(Integer::intValue).toArray();
    slotOf = options.stream().mapToInt(Option::slot).toArray();
    room = options.stream().mapToLong(Option::room).toArray();
    cost = options.stream().mapToLong(Option::cost).toArray();
    optionsOf = numbersBy(itemOf, placing.items().size());
    optionsIn = numbersBy(slotOf, placing.slots().size());
    conflicts = conflicts();
    asOne = numbersOf(conflicts.stream().map(Conflict::ones).toList(), options.size());
    asOther = numbersOf(conflicts.stream().map(Conflict::others).toList(), options.size());
    groupsOf =
        numbersOf(
            placing.together().stream().map(group -> distinct(group.items())).toList(),
            placing.items().size());
    turns = turns();
    orders = orders();
    borders = borders();
    conflictsIn = conflictsIn();
  }

  private static List<Integer> distinct(List<Integer> items) {
    return items.stream().distinct().toList();
  }

  /**
   * What would be the only thing in its slot and still too much, or excludes itself, is left out.
   */
  private List<Option> fitting(int item) {
    var seen = new LinkedHashMap<Integer, Option>();
    for (var option : placing.items().get(item).options()) {
      seen.putIfAbsent(option.slot(), option);
    }
    seen.values().removeIf(option -> !isAlone(item, option));
    return List.copyOf(seen.values());
  }

  private boolean isAlone(int item, Option option) {
    var slot = placing.slots().get(option.slot());
    var choice = new Choice(item, option.slot());
    return option.room() <= slot.room()
        && placing.items().get(item).mass() <= slot.mass()
        && placing.exclusions().stream()
            .noneMatch(both -> both.ones().contains(choice) && both.others().contains(choice));
  }

  private static int[][] numbersBy(int[] key, int keys) {
    var lists = lists(keys);
    for (int n = 0; n < key.length; n++) {
      lists.get(key[n]).add(n);
    }
    return arrays(lists);
  }

  /** By member, the numbers of the sets that it is in. */
  private static int[][] numbersOf(List<List<Integer>> sets, int members) {
    var lists = lists(members);
    for (int n = 0; n < sets.size(); n++) {
      for (int member : sets.get(n)) {
        lists.get(member).add(n);
      }
    }
    return arrays(lists);
  }

  private static List<List<Integer>> lists(int count) {
    var lists = new ArrayList<List<Integer>>();
    for (int n = 0; n < count; n++) {
      lists.add(new ArrayList<>());
    }
    return lists;
  }

  private static int[][] arrays(List<List<Integer>> lists) {
    return lists.stream()
        .map(list -> list.stream().mapToInt(Integer::intValue).toArray())
        .toArray(int[][]::new);
  }

  /** Those with the same others are one, and so are those with the same ones. */
  private List<Conflict> conflicts() {
    var byOthers = new LinkedHashMap<Set<Integer>, Set<Integer>>();
    for (var exclusion : placing.exclusions()) {
      var ones = options(exclusion.ones());
      var others = options(exclusion.others());
      if (!ones.isEmpty() && !others.isEmpty()) {
        byOthers.computeIfAbsent(others, any -> new TreeSet<>()).addAll(ones);
      }
    }
    var byOnes = new LinkedHashMap<Set<Integer>, Set<Integer>>();
    byOthers.forEach(
        (others, ones) -> byOnes.computeIfAbsent(ones, any -> new TreeSet<>()).addAll(others));
    return byOnes.entrySet().stream().map(Table::conflict).toList();
  }

  private static Conflict conflict(Map.Entry<Set<Integer>, Set<Integer>> entry) {
    return new Conflict(List.copyOf(entry.getKey()), List.copyOf(entry.getValue()));
  }

  private Set<Integer> options(List<Choice> choices) {
    var options = new TreeSet<Integer>();
    for (var choice : choices) {
      int option = option(choice.item(), choice.slot());
      if (option != NONE) {
        options.add(option);
      }
    }
    return options;
  }

  private List<List<Turn>> turns() {
    var turns = new ArrayList<List<Turn>>();
    placing.items().forEach(item -> turns.add(new ArrayList<>()));
    for (var order : placing.orders()) {
      turns.get(order.before()).add(new Turn(order.after(), true, order.cost()));
      turns.get(order.after()).add(new Turn(order.before(), false, order.cost()));
    }
    return turns;
  }

  /** Each pair once, those alone that can be out of order. */
  private List<Order> orders() {
    var once = new LinkedHashMap<Order, Long>();
    for (var order : placing.orders()) {
      boolean both = optionsOf[order.before()].length > 0 && optionsOf[order.after()].length > 0;
      if (both && order.before() != order.after() && order.cost() > 0) {
        once.merge(new Order(order.before(), order.after(), 0), order.cost(), Long::sum);
      }
    }
    return once.entrySet().stream()
        .map(each -> new Order(each.getKey().before(), each.getKey().after(), each.getValue()))
        .toList();
  }

  private int[] borders() {
    var columns = placing.slots().stream().mapToInt(Slot::column).distinct().sorted().toArray();
    return Arrays.copyOf(columns, Math.max(0, columns.length - 1));
  }

  private int[][] conflictsIn() {
    return IntStream.range(0, placing.slots().size())
        .mapToObj(
            slot ->
                IntStream.range(0, conflicts.size())
                    .filter(
                        n ->
                            isIn(slot, conflicts.get(n).ones())
                                && isIn(slot, conflicts.get(n).others()))
                    .toArray())
        .toArray(int[][]::new);
  }

  private boolean isIn(int slot, List<Integer> options) {
    return options.stream().anyMatch(option -> slotOf[option] == slot);
  }

  /** The number of an item's option in a slot; none where there is none. */
  private int option(int item, int slot) {
    for (int option : optionsOf[item]) {
      if (slotOf[option] == slot) {
        return option;
      }
    }
    return NONE;
  }

  int items() {
    return optionsOf.length;
  }

  int options() {
    return itemOf.length;
  }

  int column(int option) {
    return placing.slots().get(slotOf[option]).column();
  }

  /** Whether an option lies to the right of a border, by its number. */
  boolean isRight(int option, int border) {
    return column(option) > borders[border];
  }

  /** The first group that an item is in, or none. */
  int groupOf(int item) {
    return groupsOf[item].length == 0 ? NONE : groupsOf[item][0];
  }

  /** Options by item where none is taken. */
  int[] nothing() {
    var nothing = new int[items()];
    Arrays.fill(nothing, NONE);
    return nothing;
  }

  /** Slots by item of options by item. */
  int[] slots(int[] taken) {
    var slots = placing.nowhere();
    for (int i = 0; i < taken.length; i++) {
      if (taken[i] != NONE) {
        slots[i] = slotOf[taken[i]];
      }
    }
    return slots;
  }

  long cost(int[] taken) {
    return placing.cost(slots(taken));
  }

  /** How many items have no option at all. */
  long homeless() {
    return Arrays.stream(optionsOf).filter(options -> options.length == 0).count();
  }

  /** How many items are somewhere. */
  int placed(int[] taken) {
    return (int) Arrays.stream(taken).filter(option -> option != NONE).count();
  }

  /** How many items are nowhere that have options. */
  int out(int[] taken) {
    return (int) (items() - homeless() - placed(taken));
  }

  /**
   * Options by item as a placing, counted anew by the placing itself.
   *
   * @param bound the least that any costs
   */
  Placed placed(int[] taken, long bound) {
    var slots = slots(taken);
    if (!placing.isAllowed(slots)) {
      throw new IllegalStateException("What was found does not keep to room, mass and exclusions");
    }
    long cost = placing.cost(slots);
    return new Placed(Arrays.stream(slots).boxed().toList(), cost, Math.min(cost, bound));
  }

  /** Least that any placing costs: each item where it costs least, whatever else is there. */
  long cheapest() {
    long least = 0;
    for (var options : optionsOf) {
      long best = placing.unplaced();
      for (int option : options) {
        best = Math.min(best, cost[option]);
      }
      least += best;
    }
    return least;
  }
}
