package org.proofcut.solver;

import java.util.SplittableRandom;

/**
 * One search by annealing. An item goes to another slot, what stands in its way is put out and goes
 * where it now costs least; a step up is taken the more seldom the higher it is and the later. The
 * moves are counted and chance has a seed, so that the same search gives the same answer.
 */
final class Annealing {

  private static final int MOST_PUT_OUT = 6;
  private static final double HOT = Double.parseDouble(System.getProperty("hot", "2.5"));
  private static final double WARM = Double.parseDouble(System.getProperty("warm", "0.5"));
  private static final double COLD = 0.3;

  private final Table table;
  private final SplittableRandom chance;
  private final int moves;
  private final double hot;
  private final State state;
  private final int[] changed;
  private final int[] before;
  private int changes;
  private double heat;

  private Annealing(Table table, long seed, int moves, double hot) {
    this.table = table;
    this.chance = new SplittableRandom(seed);
    this.moves = moves;
    this.hot = hot;
    this.heat = hot;
    this.state = new State(table);
    this.changed = new int[MOST_PUT_OUT + 1];
    this.before = new int[MOST_PUT_OUT + 1];
  }

  /**
   * Options by item, the best that so many moves have found. Every other start is a hot one.
   *
   * @param from options by item to begin with
   */
  static int[] search(Table table, int[] from, long start, int moves) {
    double hot = greatestStep(table) * (start % 2 == 0 ? HOT : WARM) + COLD;
    var annealing = new Annealing(table, start, moves, hot);
    for (int option : from) {
      if (option != Table.NONE) {
        annealing.state.add(option);
      }
    }
    return annealing.best();
  }

  /** The greatest difference that one wish for one item makes. */
  private static long greatestStep(Table table) {
    long most = 0;
    for (var options : table.optionsOf) {
      long least = Long.MAX_VALUE;
      long greatest = 0;
      for (int option : options) {
        least = Math.min(least, table.cost[option]);
        greatest = Math.max(greatest, table.cost[option]);
      }
      most = Math.max(most, greatest - Math.min(least, greatest));
    }
    for (var group : table.placing.together()) {
      most = Math.max(most, group.cost());
    }
    return most;
  }

  private int[] best() {
    int[] movable = movable();
    var best = state.all();
    long least = state.cost();
    long cheapest = table.cheapest();
    double step = movable.length == 0 ? 1 : StrictMath.pow(COLD / hot, 1.0 / moves);
    for (int move = 0; move < moves && movable.length > 0 && least > cheapest; move++) {
      heat *= step;
      var options = table.optionsOf[movable[chance.nextInt(movable.length)]];
      tryOut(options[chance.nextInt(options.length)]);
      if (state.cost() < least) {
        least = state.cost();
        best = state.all();
      }
    }
    return best;
  }

  private int[] movable() {
    return java.util.stream.IntStream.range(0, table.items())
        .filter(item -> table.optionsOf[item].length > 0)
        .toArray();
  }

  private void tryOut(int option) {
    int item = table.itemOf[option];
    if (state.taken(item) == option) {
      return;
    }
    long old = state.cost();
    changes = 0;
    putOut(item);
    boolean free = makeWay(option);
    if (free) {
      state.add(option);
      for (int n = 1; n < changes; n++) {
        putBack(changed[n]);
      }
    }
    if (!free || !isTaken(state.cost() - old)) {
      undo();
    }
  }

  private boolean isTaken(long up) {
    return up <= 0 || chance.nextDouble() < StrictMath.exp(-up / heat);
  }

  private void putOut(int item) {
    changed[changes] = item;
    before[changes] = state.taken(item);
    changes++;
    if (state.taken(item) != Table.NONE) {
      state.drop(item);
    }
  }

  /** Puts out what stands in the way of an option, as long as that is not too much. */
  private boolean makeWay(int option) {
    while (!state.takes(option)) {
      int inTheWay = changes > MOST_PUT_OUT ? Table.NONE : inTheWay(option);
      if (inTheWay == Table.NONE) {
        return false;
      }
      putOut(inTheWay);
    }
    return true;
  }

  private int inTheWay(int option) {
    int conflict = state.conflict(option);
    int found = Table.NONE;
    int seen = 0;
    if (conflict == Table.NONE) {
      for (int there : table.optionsIn[table.slotOf[option]]) {
        if (isTaken(there) && chance.nextInt(++seen) == 0) {
          found = table.itemOf[there];
        }
      }
      return found;
    }
    var both = table.conflicts.get(conflict);
    for (int there : both.ones().contains(option) ? both.others() : both.ones()) {
      if (isTaken(there) && chance.nextInt(++seen) == 0) {
        found = table.itemOf[there];
      }
    }
    return found;
  }

  private boolean isTaken(int option) {
    return state.taken(table.itemOf[option]) == option;
  }

  /** Where it costs least now, give or take a little; nowhere if there is no slot for it. */
  private void putBack(int item) {
    int best = Table.NONE;
    double least = Double.POSITIVE_INFINITY;
    for (int option : table.optionsOf[item]) {
      if (state.takes(option)) {
        double more = state.more(option) + chance.nextDouble() * heat;
        if (more < least) {
          least = more;
          best = option;
        }
      }
    }
    if (best != Table.NONE) {
      state.add(best);
    }
  }

  private void undo() {
    for (int n = 0; n < changes; n++) {
      if (state.taken(changed[n]) != Table.NONE) {
        state.drop(changed[n]);
      }
    }
    for (int n = 0; n < changes; n++) {
      if (before[n] != Table.NONE) {
        state.add(before[n]);
      }
    }
  }
}
