package org.proofcut.core.casework;

import java.util.Map;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.measure.Length;

/**
 * Depths that proof cuts have found, by id of the housing. The final length of a housed part is
 * worked out from these, so that the outer width comes out right whatever the cutter really did.
 */
public record ProvenDepths(Map<String, Worked<Length>> byHousing) {

  /** Before anything was proven. */
  public static final ProvenDepths NONE = new ProvenDepths(Map.of());

  public ProvenDepths {
    byHousing = Map.copyOf(byHousing);
  }

  Worked<Length> orElse(String housing, Worked<Length> designed) {
    return byHousing.getOrDefault(housing, designed);
  }
}
