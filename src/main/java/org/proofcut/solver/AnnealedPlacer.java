package org.proofcut.solver;

import java.util.Comparator;
import java.util.List;
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
    return table.placed(best(table, effort), table.cheapest());
  }

  /** The best options by item of all starts from nothing. */
  static int[] best(Table table, Effort effort) {
    return best(table, table.nothing(), List.of(2.5, 0.5), effort);
  }

  /** The best options by item of all starts from a placing that is worth to be kept. */
  static int[] better(Table table, int[] from, Effort effort) {
    return best(table, from, List.of(0.1, 0.02), effort);
  }

  /** Of equal ones that of the earliest start. */
  private static int[] best(Table table, int[] from, List<Double> heats, Effort effort) {
    var tries = tries(effort);
    int moves = tries.moves() * table.items();
    return IntStream.range(0, tries.starts())
        .parallel()
        .mapToObj(
            start -> Annealing.search(table, from, start, moves, heats.get(start % heats.size())))
        .toList()
        .stream()
        .min(Comparator.comparingLong(table::cost))
        .orElseThrow();
  }

  private static Tries tries(Effort effort) {
    return switch (effort) {
      case GLANCE -> new Tries(2, 500);
      case PLAN -> new Tries(4, 2000);
      case LONG -> new Tries(6, 5000);
    };
  }
}
