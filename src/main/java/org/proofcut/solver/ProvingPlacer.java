package org.proofcut.solver;

import java.util.function.BooleanSupplier;
import org.proofcut.core.storage.Placed;
import org.proofcut.core.storage.Placer;
import org.proofcut.core.storage.Placing;

/**
 * Finds a good placing by annealing, then has CP-SAT look for a better one and prove how good any
 * can be. Neither goes by a clock, so that the same placing gets the same answer on a busy machine;
 * where nothing better is found, that of annealing stands. Without the native library, and at a
 * glance, there is no proof.
 */
public final class ProvingPlacer implements Placer {

  private final BooleanSupplier proves;

  /** Proves if the native library is there; it is loaded when it is first needed. */
  public ProvingPlacer() {
    this(Native::isThere);
  }

  ProvingPlacer(BooleanSupplier proves) {
    this.proves = proves;
  }

  @Override
  public Placed place(Placing placing, Effort effort) {
    var table = new Table(placing);
    var found = AnnealedPlacer.best(table, table.nothing(), effort);
    return effort == Effort.GLANCE || !proves.getAsBoolean()
        ? AnnealedPlacer.placed(table, found, table.cheapest())
        : new Proof(table, found, effort).placed();
  }
}
