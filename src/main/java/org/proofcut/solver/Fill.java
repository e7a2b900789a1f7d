package org.proofcut.solver;

import java.util.List;

/**
 * What fills a slot, whatever lies elsewhere.
 *
 * @param cost in whole units, without turns, with crowding and with all groups that are there
 * @param worth parts that it costs at some prices, less what its items give; never above nothing,
 *     which is what an empty slot costs
 * @param options that are taken
 */
record Fill(int slot, long cost, long worth, List<Integer> options) {

  Fill {
    options = List.copyOf(options);
  }
}
