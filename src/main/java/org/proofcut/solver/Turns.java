package org.proofcut.solver;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import org.proofcut.core.storage.Placing.Order;

/**
 * What comes before lies left, or it costs: for each border between columns, whether the first lies
 * to the right of it and the other to the left.
 */
final class Turns {

  private final Table table;
  private final CpModel model;
  private final LinearExprBuilder cost;
  private final BoolVar[] taken;

  Turns(Table table, CpModel model, LinearExprBuilder cost, BoolVar[] taken) {
    this.table = table;
    this.model = model;
    this.cost = cost;
    this.taken = taken;
  }

  void add() {
    table.orders.forEach(this::add);
  }

  private void add(Order order) {
    var wrong = model.newBoolVar("wrong " + order);
    cost.addTerm(wrong, order.cost());
    for (int border = 0; border < table.borders.length; border++) {
      var both = LinearExpr.newBuilder();
      for (int option : table.optionsOf[order.before()]) {
        if (table.isRight(option, border)) {
          both.add(taken[option]);
        }
      }
      for (int option : table.optionsOf[order.after()]) {
        if (!table.isRight(option, border)) {
          both.add(taken[option]);
        }
      }
      both.addTerm(wrong, -1);
      model.addLessOrEqual(both, 1);
    }
  }
}
