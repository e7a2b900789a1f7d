package org.proofcut.core.storage;

import java.util.List;

/**
 * A placing that was solved.
 *
 * @param slotOf slot of each item, or {@link Placing#NOWHERE}
 * @param cost of it
 * @param bound the least that any costs, as far as was proven
 */
public record Placed(List<Integer> slotOf, long cost, long bound) {

  public Placed {
    slotOf = List.copyOf(slotOf);
    if (bound > cost) {
      throw new IllegalArgumentException("bound " + bound + " over cost " + cost);
    }
  }
}
