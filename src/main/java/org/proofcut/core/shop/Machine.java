package org.proofcut.core.shop;

import java.util.List;

/** A machine with a turning cutter. */
public sealed interface Machine
    permits RouterTable, HandRouter, TableSaw, TrackSaw, MitreSaw, DrillPress, HandDrill {

  /** Stable within the shop. */
  String id();

  /** What the maker calls it. */
  String name();

  /** The kind as content and conditions write it, such as {@code router-table}. */
  String kind();

  /** Speeds it can run at, slowest first; a single one where there is no dial. */
  List<SpeedStep> speeds();

  boolean hasGuard();

  boolean hasExtraction();
}
