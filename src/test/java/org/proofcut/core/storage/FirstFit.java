package org.proofcut.core.storage;

import java.util.Arrays;

/** Puts each item where it costs least among what is left, in order; a plan, seldom a good one. */
final class FirstFit implements Placer {

  @Override
  public Placed place(Placing placing, Effort effort) {
    var slotOf = placing.nowhere();
    for (int i = 0; i < slotOf.length; i++) {
      var options = placing.items().get(i).options();
      long best = placing.cost(slotOf);
      int chosen = Placing.NOWHERE;
      for (var option : options) {
        slotOf[i] = option.slot();
        if (placing.isAllowed(slotOf) && placing.cost(slotOf) < best) {
          best = placing.cost(slotOf);
          chosen = option.slot();
        }
      }
      slotOf[i] = chosen;
    }
    return new Placed(Arrays.stream(slotOf).boxed().toList(), placing.cost(slotOf), 0);
  }
}
