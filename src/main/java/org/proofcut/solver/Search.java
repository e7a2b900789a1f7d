package org.proofcut.solver;

import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;

/** One search of CP-SAT for something better, ended by work done and not by a clock. */
final class Search {

  /** The solver's bound comes in floating point, of what is whole. */
  private static final double ROUNDING = 1e-6;

  private static final int SEED = 1;

  /** What is sought, and how. */
  enum Sought {
    /** Something better, by logic more than by linear forms. */
    PACKING(1, false),
    /** Something better, and proof that there is nothing. */
    BETTER(2, false),
    /** Proof of what is the least; something better is found by the way, if at all. */
    LEAST(2, true);

    private final int linear;
    private final boolean fromBelow;

    Sought(int linear, boolean fromBelow) {
      this.linear = linear;
      this.fromBelow = fromBelow;
    }
  }

  private final Model model;
  private final CpSolver solver = new CpSolver();
  private final CpSolverStatus status;

  /**
   * @param work at most, in the solver's own measure: of the order of a second's
   */
  Search(Model model, Sought sought, double work) {
    this.model = model;
    var parameters = solver.getParameters();
    parameters.setRandomSeed(SEED);
    parameters.setNumWorkers(1);
    parameters.setLinearizationLevel(sought.linear);
    parameters.setOptimizeWithLbTreeSearch(sought.fromBelow);
    parameters.setMaxDeterministicTime(work);
    status = solver.solve(model.model());
    if (status == CpSolverStatus.MODEL_INVALID) {
      throw new IllegalStateException("CP-SAT refuses the model: " + model.model().validate());
    }
  }

  /** Whether there is nothing better: that is proven. */
  boolean isInVain() {
    return status == CpSolverStatus.INFEASIBLE;
  }

  boolean hasFound() {
    return status == CpSolverStatus.OPTIMAL || status == CpSolverStatus.FEASIBLE;
  }

  /** Whether what was found is the best, or there is nothing better. */
  boolean isDecided() {
    return isInVain() || status == CpSolverStatus.OPTIMAL;
  }

  /**
   * The least that was sought, as far as was proven; of no meaning where the search was in vain.
   */
  long bound() {
    return (long) Math.ceil(solver.bestObjectiveBound() - ROUNDING);
  }

  /** What was done, in the solver's own measure. */
  double work() {
    return solver.response().getDeterministicTime();
  }

  /** Options by item of what was found. */
  int[] found(Table table) {
    var taken = table.nothing();
    for (int option = 0; option < table.options(); option++) {
      if (solver.booleanValue(model.taken(option))) {
        taken[table.itemOf[option]] = option;
      }
    }
    return taken;
  }
}
