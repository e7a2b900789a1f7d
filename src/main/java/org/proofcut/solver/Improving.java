package org.proofcut.solver;

import java.util.SplittableRandom;

/**
 * Makes a placing better step by step: what lies in some slots, drawn by lot, and what is nowhere,
 * is placed anew in the best way, while all else stays.
 */
final class Improving {

  /** A third of the items, as many as are placed anew in a moment. */
  private static final int PART_FREE = 3;

  private static final int LEAST_FREE = 12;
  private static final double WORK_OF_STEP = 0.2;

  /** What a step costs besides the solver's work. */
  private static final double STEP = 0.01;

  private static final long SEED = 5;

  private final Table table;
  private final int out;
  private final SplittableRandom chance = new SplittableRandom(SEED);
  private int[] best;
  private volatile boolean isStopped;

  /**
   * @param known options by item
   * @param out proven to be nowhere at least, of the items that have options
   */
  Improving(Table table, int[] known, int out) {
    this.table = table;
    this.best = known;
    this.out = out;
  }

  /** Nobody waits for what comes of it any more. */
  void stop() {
    isStopped = true;
  }

  /** Options by item after so much work, in the solver's own measure. */
  int[] after(double work) {
    double left = work;
    while (left > 0 && !isStopped) {
      var model = Model.ofWishes(table, table.cost(best), out);
      var free = free();
      for (int item = 0; item < best.length; item++) {
        if (best[item] != Table.NONE && !free[item]) {
          model.keep(best[item]);
        }
      }
      var search = new Search(model, Search.Sought.BETTER, WORK_OF_STEP);
      left -= search.work() + STEP;
      if (search.hasFound()) {
        best = search.found(table);
      }
    }
    return best;
  }

  private boolean[] free() {
    var free = new boolean[best.length];
    int wanted = Math.min(table.placed(best), Math.max(LEAST_FREE, best.length / PART_FREE));
    for (int count = 0; count < wanted; ) {
      int slot = chance.nextInt(table.optionsIn.length);
      for (int option : table.optionsIn[slot]) {
        int item = table.itemOf[option];
        if (best[item] == option && !free[item]) {
          free[item] = true;
          count++;
        }
      }
    }
    return free;
  }
}
