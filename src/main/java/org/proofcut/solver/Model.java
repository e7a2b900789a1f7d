package org.proofcut.solver;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearArgument;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.sat.Literal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;

/**
 * A placing as linear forms over yes and no: those placings that are better than a known one, and
 * no others.
 */
final class Model {

  private static final int PER_CENT = 100;

  private final Table table;
  private final CpModel model = new CpModel();
  private final LinearExprBuilder cost = LinearExpr.newBuilder();
  private final BoolVar[] taken;
  private final Map<Integer, BoolVar> nowhere = new LinkedHashMap<>();
  private final Map<Integer, IntVar> crowded = new LinkedHashMap<>();
  private final Map<Used, BoolVar> used = new LinkedHashMap<>();

  /** Whether any item of a group is in a slot. */
  private record Used(int group, int slot) {}

  private Model(Table table, boolean mayStayOut) {
    this.table = table;
    taken = new BoolVar[table.options()];
    Arrays.setAll(taken, option -> model.newBoolVar("taken " + option));
    for (int item = 0; item < table.items(); item++) {
      once(item, mayStayOut);
    }
    for (int slot = 0; slot < table.optionsIn.length; slot++) {
      carries(slot);
    }
    table.conflicts.forEach(this::apart);
  }

  /** Placings with fewer items nowhere than so many that have options, the fewest sought. */
  static Model ofPacking(Table table, int out) {
    var model = new Model(table, true);
    model.nowhere.values().forEach(model.cost::add);
    model.seek(out);
    return model;
  }

  /**
   * Placings that cost less than a known one, the least sought.
   *
   * @param out proven to be nowhere at least, of the items that have options
   */
  static Model ofWishes(Table table, long known, int out) {
    long none = Arrays.stream(table.optionsOf).filter(options -> options.length == 0).count();
    boolean mayStayOut = (none + 1) * table.placing.unplaced() < known;
    var model = new Model(table, mayStayOut);
    model.cost.add(none * table.placing.unplaced());
    if (mayStayOut) {
      var nowhere = model.nowhere.values().toArray(BoolVar[]::new);
      model.model.addGreaterOrEqual(LinearExpr.sum(nowhere), out);
    }
    model.wishes();
    model.seek(known);
    return model;
  }

  private void wishes() {
    nowhere.values().forEach(out -> cost.addTerm(out, table.placing.unplaced()));
    for (int option = 0; option < taken.length; option++) {
      cost.addTerm(taken[option], table.cost[option]);
    }
    for (int slot = 0; slot < table.optionsIn.length; slot++) {
      crowding(slot);
    }
    for (int group = 0; group < table.placing.together().size(); group++) {
      together(group);
    }
    new Turns(table, model, cost, taken).add();
  }

  /** What costs less than so much, and as little as can be. */
  private void seek(long lessThan) {
    model.minimize(cost);
    var objective = model.getBuilder().getObjectiveBuilder();
    // The rest is no less than nothing.
    long most = lessThan - 1 - Math.round(objective.getOffset());
    objective.addDomain(Math.min(0, most)).addDomain(most);
  }

  CpModel model() {
    return model;
  }

  BoolVar taken(int option) {
    return taken[option];
  }

  /** Only placings that take this option. */
  void keep(int option) {
    model.addEquality(taken[option], 1);
  }

  /** That no slot is filled better than its best at some prices: so their bound is not lost. */
  void with(Priced priced) {
    priced.fills().forEach(fill -> noBetter(fill, priced.prices()));
  }

  private void noBetter(Fill best, Prices prices) {
    var pays = LinearExpr.newBuilder();
    var groups = new TreeSet<Integer>();
    for (int option : table.optionsIn[best.slot()]) {
      if (prices.of(option) < 0) {
        pays.addTerm(taken[option], -prices.of(option));
        groups.add(table.groupOf(table.itemOf[option]));
      }
    }
    for (int group : groups) {
      var here = used.get(new Used(group, best.slot()));
      if (here != null) {
        pays.addTerm(here, -table.placing.together().get(group).cost() * Prices.PARTS);
      }
    }
    if (crowded.containsKey(best.slot())) {
      long crowding = table.placing.slots().get(best.slot()).crowding();
      pays.addTerm(crowded.get(best.slot()), -crowding * Prices.PARTS);
    }
    model.addLessOrEqual(pays, -best.worth());
  }

  private void once(int item, boolean mayStayOut) {
    var ways = new ArrayList<Literal>();
    for (int option : table.optionsOf[item]) {
      ways.add(taken[option]);
    }
    if (ways.isEmpty()) {
      return;
    }
    if (mayStayOut) {
      nowhere.put(item, model.newBoolVar("nowhere " + item));
      ways.add(nowhere.get(item));
    }
    model.addExactlyOne(ways);
  }

  private void carries(int number) {
    var slot = table.placing.slots().get(number);
    int[] options = table.optionsIn[number];
    var mass =
        Arrays.stream(options)
            .mapToLong(option -> table.placing.items().get(table.itemOf[option]).mass())
            .toArray();
    model.addLessOrEqual(LinearExpr.weightedSum(vars(options), room(options, 1)), slot.room());
    model.addLessOrEqual(LinearExpr.weightedSum(vars(options), mass), slot.mass());
  }

  /** Per cents over what is comfortable; one more for a part of one. */
  private void crowding(int number) {
    var slot = table.placing.slots().get(number);
    int[] options = table.optionsIn[number];
    long most = Math.min(slot.room(), Arrays.stream(room(options, 1)).sum());
    if (slot.room() == 0 || slot.crowded(most) == 0) {
      return;
    }
    var over = model.newIntVar(0, slot.crowded(most) / slot.crowding(), "over " + number);
    var there = LinearExpr.newBuilder();
    there.addWeightedSum(vars(options), room(options, PER_CENT));
    there.addTerm(over, -slot.room());
    model.addLessOrEqual(there, slot.comfortable() * PER_CENT);
    cost.addTerm(over, slot.crowding());
    crowded.put(number, over);
  }

  private long[] room(int[] options, int times) {
    return Arrays.stream(options).mapToLong(option -> table.room[option] * times).toArray();
  }

  private LinearArgument[] vars(int[] options) {
    return Arrays.stream(options).mapToObj(option -> taken[option]).toArray(LinearArgument[]::new);
  }

  /** One side or the other. */
  private void apart(Table.Conflict conflict) {
    Literal ones =
        conflict.ones().size() == 1 ? taken[conflict.ones().get(0)] : model.newBoolVar("ones");
    if (conflict.ones().size() > 1) {
      conflict.ones().forEach(one -> model.addImplication(taken[one], ones));
    }
    conflict.others().forEach(other -> model.addImplication(taken[other], ones.not()));
    bySlot(conflict.ones()).forEach((slot, options) -> noMoreThan(slot, options, ones));
    bySlot(conflict.others()).forEach((slot, options) -> noMoreThan(slot, options, ones.not()));
  }

  private Map<Integer, List<Integer>> bySlot(List<Integer> options) {
    var bySlot = new LinkedHashMap<Integer, List<Integer>>();
    options.forEach(
        option ->
            bySlot.computeIfAbsent(table.slotOf[option], any -> new ArrayList<>()).add(option));
    return bySlot;
  }

  /**
   * Options of a slot take no more than all of its room if they are let in, and none if not. That
   * follows from each being let in, and not where only parts of each are: it helps to prove.
   */
  private void noMoreThan(int slot, List<Integer> options, Literal letIn) {
    int[] these = options.stream().mapToInt(Integer::intValue).toArray();
    long all = table.placing.slots().get(slot).room();
    var rooms = room(these, 1);
    if (these.length > 1 && Arrays.stream(rooms).sum() > all) {
      var sum = LinearExpr.newBuilder();
      sum.addWeightedSum(vars(these), rooms);
      sum.addTerm(letIn, -all);
      model.addLessOrEqual(sum, 0);
    }
  }

  /** Each slot that any of them is in counts, but for one. */
  private void together(int number) {
    var group = table.placing.together().get(number);
    var bySlot = new LinkedHashMap<Integer, List<Integer>>();
    for (int item : new TreeSet<>(group.items())) {
      for (int option : table.optionsOf[item]) {
        bySlot.computeIfAbsent(table.slotOf[option], none -> new ArrayList<>()).add(option);
      }
    }
    if (bySlot.isEmpty() || group.cost() == 0) {
      return;
    }
    var any = new ArrayList<Literal>();
    bySlot.forEach(
        (slot, options) -> {
          var here = model.newBoolVar("used " + slot);
          options.forEach(option -> model.addImplication(taken[option], here));
          noMoreThan(slot, options, here);
          cost.addTerm(here, group.cost());
          used.put(new Used(number, slot), here);
          any.add(here);
        });
    cost.add(-group.cost());
    model.addBoolOr(any);
  }
}
