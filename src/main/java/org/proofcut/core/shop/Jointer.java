package org.proofcut.core.shop;

import org.proofcut.core.measure.Length;

/**
 * A jointer: a head of knives between two tables, of which the outfeed table is level with the top
 * of the knives' circle and the infeed table stands lower by what a pass takes.
 *
 * @param infeedLength of the table before the knives
 * @param outfeedLength of the table behind them
 * @param step smallest change of the infeed table that can be set and read
 * @param hasGuard whether a guard covers the head but where the work lies
 */
public record Jointer(
    String id,
    String name,
    Head knives,
    Length widestWork,
    Length infeedLength,
    Length outfeedLength,
    Length deepestPass,
    Length step,
    Length shortestWork,
    Length thinnestWork,
    boolean hasGuard,
    boolean hasExtraction)
    implements KnifeMachine {

  @Override
  public String kind() {
    return "jointer";
  }
}
