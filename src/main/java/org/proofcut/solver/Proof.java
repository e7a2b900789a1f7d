package org.proofcut.solver;

import java.util.concurrent.CompletableFuture;
import org.proofcut.core.storage.Placed;
import org.proofcut.core.storage.Placer.Effort;
import org.proofcut.solver.Search.Sought;

/**
 * Looks for something better than a known placing, and proves how good any can be: first that no
 * fewer items can be left over, then that they can't lie better. While the second is proven on one
 * core, the placing is improved bit by bit on the other.
 */
final class Proof {

  /**
   * How much is done, in the solver's own measure of work. Prices are worth their while where it
   * can't be hoped that all is decided.
   *
   * @param improving at the same time as on the wishes
   */
  private record Work(double packing, Sought wished, double wishes, double improving) {}

  private final Table table;
  private final Effort effort;
  private int[] best;
  private long cost;

  /**
   * @param known options by item
   */
  Proof(Table table, int[] known, Effort effort) {
    this.table = table;
    this.effort = effort;
    this.best = known;
    this.cost = table.cost(known);
  }

  private Work work() {
    return switch (effort) {
      case GLANCE -> new Work(0, Sought.BETTER, 0, 0);
      case PLAN -> new Work(0.5, Sought.BETTER, 1.5, 1.5);
      case LONG -> new Work(1, Sought.LEAST, 5, 4);
    };
  }

  Placed placed() {
    int out = leastOut();
    var improving = new Improving(table, best, out);
    var improved = CompletableFuture.supplyAsync(() -> improving.after(work().improving()));
    var model = Model.ofWishes(table, cost, out);
    long priced = 0;
    if (work().wished() == Sought.LEAST) {
      var prices = Pricing.best(table, cost, out);
      priced = prices.bound();
      model.with(prices);
    }
    var search = new Search(model, work().wished(), work().wishes());
    if (search.isDecided()) {
      // How far it came by now is chance: nothing of it may be taken.
      improving.stop();
      improved.join();
    } else {
      takeIfBetter(improved.join());
    }
    if (search.hasFound()) {
      takeIfBetter(search.found(table));
    }
    long bound = search.isInVain() ? cost : Math.max(priced, search.bound());
    return table.placed(best, bound);
  }

  /** How many items that have options stay out at least. Where fewer do, that is taken over. */
  private int leastOut() {
    int out = table.out(best);
    if (out == 0) {
      return 0;
    }
    var search = new Search(Model.ofPacking(table, out), Sought.PACKING, work().packing());
    if (search.isInVain()) {
      return out;
    }
    if (search.hasFound()) {
      takeIfBetter(AnnealedPlacer.better(table, search.found(table), effort));
    }
    return (int) Math.max(0, search.bound());
  }

  /** Fewer left over are better only where being left over costs more than all else. */
  private void takeIfBetter(int[] other) {
    long others = table.cost(other);
    if (others < cost) {
      best = other;
      cost = others;
    }
  }
}
