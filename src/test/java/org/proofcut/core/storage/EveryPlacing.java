package org.proofcut.core.storage;

import java.util.Arrays;

/** Tries every placing there is. */
public final class EveryPlacing implements Placer {

  @Override
  public Placed place(Placing placing, Effort effort) {
    var best = placing.nowhere();
    var tried = placing.nowhere();
    best = deeper(placing, tried, 0, best);
    long cost = placing.cost(best);
    return new Placed(Arrays.stream(best).boxed().toList(), cost, cost);
  }

  private static int[] deeper(Placing placing, int[] tried, int item, int[] best) {
    if (item == tried.length) {
      return placing.isAllowed(tried) && placing.cost(tried) < placing.cost(best)
          ? tried.clone()
          : best;
    }
    var better = deeper(placing, tried, item + 1, best);
    for (var option : placing.items().get(item).options()) {
      tried[item] = option.slot();
      better = deeper(placing, tried, item + 1, better);
    }
    tried[item] = Placing.NOWHERE;
    return better;
  }
}
