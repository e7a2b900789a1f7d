package org.proofcut.solver;

import java.util.Arrays;
import java.util.Comparator;
import java.util.stream.IntStream;
import org.proofcut.core.storage.Placed;
import org.proofcut.core.storage.Placer;
import org.proofcut.core.storage.Placing;

/**
 * Finds good placings by annealing, from several starts. It proves little: its bound counts each
 * item where it costs least, whatever else is there.
 */
public final class AnnealedPlacer implements Placer {

  /**
   * How much is tried.
   *
   * @param moves of each start, for each item
   */
  private record Tries(int starts, int moves) {}

  @Override
  public Placed place(Placing placing, Effort effort) {
    var table = new Table(placing);
    return placed(table, best(table, table.nothing(), effort), table.cheapest());
  }

  /**
   * The best options by item of all starts; of equal ones that of the earliest.
   *
   * @param from options by item to begin with
   */
  static int[] best(Table table, int[] from, Effort effort) {
    var tries = tries(effort);
    int moves = tries.moves() * table.items();
    return IntStream.range(0, tries.starts())
        .parallel()
        .mapToObj(start -> Annealing.search(table, from, start, moves))
        .toList()
        .stream()
        .min(Comparator.comparingLong(taken -> cost(table, taken)))
        .orElseThrow();
  }

  private static Tries tries(Effort effort) {
    return switch (effort) {
      case GLANCE -> new Tries(2, 500);
      case PLAN -> new Tries(4, 3000);
      case LONG -> new Tries(6, 8000);
    };
  }

  static long cost(Table table, int[] taken) {
    return table.placing.cost(table.slots(taken));
  }

  /** Counted anew by the placing itself. */
  static Placed placed(Table table, int[] taken, long bound) {
    var slots = table.slots(taken);
    if (!table.placing.isAllowed(slots)) {
      throw new IllegalStateException("What was found does not keep to room, mass and exclusions");
    }
    long cost = table.placing.cost(slots);
    return new Placed(Arrays.stream(slots).boxed().toList(), cost, Math.min(cost, bound));
  }
}
