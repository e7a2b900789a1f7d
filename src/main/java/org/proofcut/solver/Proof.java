package org.proofcut.solver;

import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import org.proofcut.core.storage.Placed;
import org.proofcut.core.storage.Placer.Effort;

/**
 * Looks for something better than a known placing, with CP-SAT, and proves how good any can be:
 * first that no fewer items can be left over, then that they can't lie better. How long it looks is
 * counted in the solver's own measure of work, not by a clock.
 */
final class Proof {

  /** The solver's bound comes in floating point, of what is whole. */
  private static final double ROUNDING = 1e-6;

  private static final int SEED = 1;

  private final Table table;
  private final Effort effort;
  private int[] best;
  private long cost;

  Proof(Table table, int[] known, Effort effort) {
    this.table = table;
    this.effort = effort;
    take(known);
  }

  private void take(int[] better) {
    best = better;
    cost = AnnealedPlacer.cost(table, better);
  }

  Placed placed() {
    int out = leastOut();
    var model = Model.ofWishes(table, cost, out);
    var solver = solver(effort == Effort.LONG ? 7 : 2);
    var status = solve(solver, model);
    if (status == CpSolverStatus.INFEASIBLE) {
      return AnnealedPlacer.placed(table, best, cost);
    }
    if (isFound(status)) {
      take(taken(model, solver));
    }
    return AnnealedPlacer.placed(table, best, Math.max(table.cheapest(), bound(solver)));
  }

  /** How many items that have options stay out at least. Where fewer do, that is taken over. */
  private int leastOut() {
    int out = out();
    if (out == 0) {
      return 0;
    }
    var model = Model.ofPacking(table, out);
    var solver = solver(effort == Effort.LONG ? 2 : 0.5);
    var status = solve(solver, model);
    if (status == CpSolverStatus.INFEASIBLE) {
      return out;
    }
    if (isFound(status)) {
      takeIfBetter(AnnealedPlacer.best(table, taken(model, solver), effort));
    }
    return (int) Math.max(0, bound(solver));
  }

  /** Fewer left over are better only where being left over costs more than all else. */
  private void takeIfBetter(int[] other) {
    if (AnnealedPlacer.cost(table, other) < cost) {
      take(other);
    }
  }

  private int out() {
    int out = 0;
    for (int item = 0; item < best.length; item++) {
      out += best[item] == Table.NONE && table.optionsOf[item].length > 0 ? 1 : 0;
    }
    return out;
  }

  private static CpSolver solver(double work) {
    var solver = new CpSolver();
    var parameters = solver.getParameters();
    parameters.setRandomSeed(SEED);
    parameters.setNumWorkers(1);
    parameters.setLinearizationLevel(2);
    parameters.setMaxDeterministicTime(work);
    return solver;
  }

  private static CpSolverStatus solve(CpSolver solver, Model model) {
    var status = solver.solve(model.model());
    if (status == CpSolverStatus.MODEL_INVALID) {
      throw new IllegalStateException("CP-SAT refuses the model: " + model.model().validate());
    }
    return status;
  }

  private static boolean isFound(CpSolverStatus status) {
    return status == CpSolverStatus.OPTIMAL || status == CpSolverStatus.FEASIBLE;
  }

  private static long bound(CpSolver solver) {
    return (long) Math.ceil(solver.bestObjectiveBound() - ROUNDING);
  }

  private int[] taken(Model model, CpSolver solver) {
    var taken = table.nothing();
    for (int option = 0; option < table.options(); option++) {
      if (solver.booleanValue(model.taken(option))) {
        taken[table.itemOf[option]] = option;
      }
    }
    return taken;
  }
}
