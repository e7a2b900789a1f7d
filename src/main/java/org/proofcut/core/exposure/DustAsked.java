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
 * @param extraction empty where there is none
 * @param level what was measured at the collar, in mg/m³; empty where nothing was
 */
public record DustAsked(
    List<Wood> woods,
    String machine,
    Optional<Extraction> extraction,
    Optional<Worked<Amount>> level) {

  /**
   * An extractor at the machine.
   *
   * @param airflow empty where it is not known
   * @param hood what it draws through; empty for the port that such a machine usually has
   */
  public record Extraction(Optional<Worked<Amount>> airflow, Optional<Hood> hood) {}

  public DustAsked {
    woods = List.copyOf(woods);
    if (woods.isEmpty()) {
      throw new IllegalArgumentException("no wood, no dust");
    }
  }
}
