package org.proofcut.core.exposure;

import java.util.List;
import java.util.Optional;
import org.proofcut.core.evidence.Amount;
import org.proofcut.core.evidence.Worked;

/**
 * What a maker wants to know the dust of.
 *
 * @param woods all that is cut, at least one
 * @param machine id of a {@link MachineDust}
 * @param hood the opening that dust is or would be drawn off through; empty for the port that such
 *     a machine usually has
 * @param drawnOff whether an extractor is there
 * @param airflow what it draws, in m³/h or ft³/min; empty where nobody knows
 * @param level what was measured at the collar, in mg/m³; empty where nothing was
 */
public record DustAsked(
    List<Wood> woods,
    String machine,
    Optional<Hood> hood,
    boolean drawnOff,
    Optional<Worked<Amount>> airflow,
    Optional<Worked<Amount>> level) {

  public DustAsked {
    woods = List.copyOf(woods);
    if (woods.isEmpty()) {
      throw new IllegalArgumentException("no wood, no dust");
    }
    if (airflow.isPresent() && !drawnOff) {
      throw new IllegalArgumentException("air without an extractor");
    }
  }
}
