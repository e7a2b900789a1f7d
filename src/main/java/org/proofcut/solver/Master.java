package org.proofcut.solver;

import com.google.ortools.linearsolver.MPConstraint;
import com.google.ortools.linearsolver.MPObjective;
import com.google.ortools.linearsolver.MPSolver;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Mixes parts of the fills that are known so far, so that each item has a place in all, at the
 * least cost; the prices are those at which no other mix of them would cost less.
 */
final class Master implements AutoCloseable {

  private static final double ANY = Double.POSITIVE_INFINITY;

  private final Table table;
  private final MPSolver solver = MPSolver.createSolver("GLOP");
  private final MPObjective cost = solver.objective();
  private final MPConstraint[] once;
  private final MPConstraint[] full;
  private final MPConstraint[][] orders;
  private final Set<Known> known = new HashSet<>();

  private record Known(int slot, List<Integer> options) {}

  /**
   * @param least how many items that have options are nowhere, at least
   * @param most and at most
   */
  Master(Table table, int least, int most) {
    this.table = table;
    once = new MPConstraint[table.items()];
    full = new MPConstraint[table.optionsIn.length];
    orders = new MPConstraint[table.orders.size()][table.borders.length];
    Arrays.setAll(full, slot -> solver.makeConstraint(-ANY, 1));
    var nowhere = solver.makeConstraint(least, most);
    for (int item = 0; item < once.length; item++) {
      once[item] = solver.makeConstraint(table.optionsOf[item].length == 0 ? 0 : 1, ANY);
      var out = solver.makeNumVar(0, 1, "");
      cost.setCoefficient(out, table.placing.unplaced());
      once[item].setCoefficient(out, 1);
      nowhere.setCoefficient(out, 1);
    }
    // So that there is a mix before enough fills are known.
    var beyond = solver.makeNumVar(0, ANY, "");
    cost.setCoefficient(beyond, 2.0 * table.placing.unplaced() + 1);
    nowhere.setCoefficient(beyond, -1);
    orders();
    cost.setMinimization();
  }

  /** Wrong where the first lies to the right of a border and the other to the left. */
  private void orders() {
    for (int number = 0; number < orders.length; number++) {
      var wrong = solver.makeNumVar(0, 1, "");
      cost.setCoefficient(wrong, table.orders.get(number).cost());
      for (int border = 0; border < table.borders.length; border++) {
        orders[number][border] = solver.makeConstraint(-ANY, 1);
        orders[number][border].setCoefficient(wrong, -1);
      }
    }
  }

  /** Whether any of these fills was not known yet. */
  boolean add(List<Fill> fills) {
    boolean isNew = false;
    for (var fill : fills) {
      if (!fill.options().isEmpty() && known.add(new Known(fill.slot(), fill.options()))) {
        add(fill);
        isNew = true;
      }
    }
    return isNew;
  }

  private void add(Fill fill) {
    var part = solver.makeNumVar(0, 1, "");
    cost.setCoefficient(part, fill.cost());
    full[fill.slot()].setCoefficient(part, 1);
    var items =
        fill.options().stream().map(option -> table.itemOf[option]).collect(Collectors.toSet());
    items.forEach(item -> once[item].setCoefficient(part, 1));
    int column = table.placing.slots().get(fill.slot()).column();
    for (int number = 0; number < orders.length; number++) {
      var order = table.orders.get(number);
      for (int border = 0; border < table.borders.length; border++) {
        boolean isRight = column > table.borders[border];
        if (items.contains(isRight ? order.before() : order.after())) {
          orders[number][border].setCoefficient(part, 1);
        }
      }
    }
  }

  /** Whether there is a least, as there should be. */
  boolean solve() {
    return solver.solve() == MPSolver.ResultStatus.OPTIMAL;
  }

  /** The least of the mix. */
  double cost() {
    return cost.value();
  }

  /** The prices that the mix goes by. */
  Prices prices() {
    var items = new long[once.length];
    Arrays.setAll(items, item -> Prices.parts(once[item].dualValue()));
    var ofOrder = new long[orders.length][];
    Arrays.setAll(
        ofOrder,
        order ->
            Arrays.stream(orders[order])
                .mapToLong(row -> Prices.parts(-row.dualValue()))
                .toArray());
    return new Prices(table, items, ofOrder);
  }

  @Override
  public void close() {
    solver.delete();
  }
}
