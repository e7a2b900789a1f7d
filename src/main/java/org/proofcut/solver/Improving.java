package org.proofcut.solver;

import java.util.SplittableRandom;

/**
 * Makes a placing better step by step: what lies in some slots, drawn by lot, and what is nowhere,
 * is placed anew in the best way, while all else stays.
 */
final class Improving {

  private static final int LINEAR = 2;

  /** A third of the items, as many as are placed anew in a moment. */
  private static final int PART_FREE = 3;

  private static final int LEAST_FREE = 12;
  private static final double WORK = 0.2;
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

  /** Options by item after so many steps. */
  int[] after(int steps) {
    for (int step = 0; step < steps && !isStopped; step++) {
      var model = Model.ofWishes(table, table.cost(best), out);
      var free = free();
      for (int item = 0; item < best.length; item++) {
        if (best[item] != Table.NONE && !free[item]) {
          model.keep(best[item]);
        }
      }
      var search = new Search(model, LINEAR, WORK);
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
