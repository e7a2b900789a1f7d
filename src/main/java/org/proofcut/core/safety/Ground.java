package org.proofcut.core.safety;

import java.util.List;
import org.proofcut.core.evidence.Citation;

/**
 * What a rule stands on.
 *
 * @param says what the source says, in our words; empty where none is quoted
 * @param regions where it binds, smaller regions within them included; elsewhere it is advice
 */
public record Ground(Citation citation, String says, List<String> regions) {

  /** What the trade does, with no published source. */
  public static final Ground COMMON_PRACTICE = new Ground(Citation.COMMON_PRACTICE, "", List.of());

  public Ground {
    regions = List.copyOf(regions);
  }

  /** Whether it is the law where the shop stands. */
  public boolean isLawIn(String region) {
    return citation.kind() == Citation.Kind.LAW && regions.contains(region);
  }
}
