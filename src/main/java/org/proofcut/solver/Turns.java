package org.proofcut.solver;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.TreeSet;
import org.proofcut.core.storage.Placing.Order;

/**
 * What comes before lies left, or it costs: for each border between columns, whether an item lies
 * to the right of it.
 */
final class Turns {

  private final Table table;
  private final CpModel model;
  private final LinearExprBuilder cost;
  private final BoolVar[] taken;
  private final Map<Integer, BoolVar> nowhere;

  /**
   * @param nowhere by item, whether it stays out; none for those that may not
   */
  Turns(
      Table table,
      CpModel model,
      LinearExprBuilder cost,
      BoolVar[] taken,
      Map<Integer, BoolVar> nowhere) {
    this.table = table;
    this.model = model;
    this.cost = cost;
    this.taken = taken;
    this.nowhere = nowhere;
  }

  void add() {
    var once = new LinkedHashMap<Order, Long>();
    for (var order : table.placing.orders()) {
      once.merge(new Order(order.before(), order.after(), 0), order.cost(), Long::sum);
    }
    once.forEach((order, each) -> add(order.before(), order.after(), each));
  }

  private void add(int before, int after, long each) {
    if (before == after
        || each == 0
        || table.optionsOf[before].length == 0
        || table.optionsOf[after].length == 0
        || columns(before).last() <= columns(after).first()) {
      return;
    }
    var wrong = model.newBoolVar("wrong %d %d".formatted(before, after));
    cost.addTerm(wrong, each);
    // Between two columns of the first nothing changes, and right of the last of them nothing is.
    for (int border : columns(after).headSet(columns(before).last())) {
      var gap = LinearExpr.newBuilder();
      right(gap, before, border, 1);
      right(gap, after, border, -1);
      if (nowhere.containsKey(after)) {
        gap.addTerm(nowhere.get(after), -1);
      }
      gap.addTerm(wrong, -1);
      model.addLessOrEqual(gap, 0);
    }
  }

  private TreeSet<Integer> columns(int item) {
    var columns = new TreeSet<Integer>();
    for (int option : table.optionsOf[item]) {
      columns.add(table.column(option));
    }
    return columns;
  }

  /** Whether an item lies in a column to the right of one. */
  private void right(LinearExprBuilder sum, int item, int column, int sign) {
    for (int option : table.optionsOf[item]) {
      if (table.column(option) > column) {
        sum.addTerm(taken[option], sign);
      }
    }
  }
}
