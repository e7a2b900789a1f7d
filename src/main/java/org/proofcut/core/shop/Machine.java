package org.proofcut.core.shop;

import java.util.List;
import java.util.Optional;

/** A machine with a turning cutter. */
public sealed interface Machine
    permits RouterTable,
        HandRouter,
        TableSaw,
        TrackSaw,
        MitreSaw,
        DrillPress,
        HandDrill,
        KnifeMachine {

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

  /** The cutter that is part of it; empty where cutters are put in and taken out. */
  default Optional<Cutter> ownCutter() {
    return Optional.empty();
  }
}
