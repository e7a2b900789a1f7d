package org.proofcut.bench;

import jakarta.enterprise.inject.Produces;
import jakarta.inject.Singleton;
import org.proofcut.core.storage.Placer;
import org.proofcut.solver.ProvingPlacer;

/** Who solves placings, for whoever plans storage. */
@Singleton
class PlacerProducer {

  @Produces
  @Singleton
  Placer placer() {
    return new ProvingPlacer();
  }
}
