package org.proofcut.core.safety;

import java.util.List;
import org.proofcut.core.evidence.Citation;

/**
 * What a rule stands on.
 *
 * @param says what the source says, in our words; empty where none is quoted
 * @param asksForGear whether it is the source itself that asks for the rule's gear, and not the
 *     rule for the sake of what the source asks
 * @param regions where it binds, smaller regions within them included; elsewhere it is advice
 */
public record Ground(Citation citation, String says, boolean asksForGear, List<String> regions) {

  /** What the trade does, with no published source. */
  public static final Ground COMMON_PRACTICE =
      new Ground(Citation.COMMON_PRACTICE, "", false, List.of());

  public Ground {
    regions = List.copyOf(regions);
  }

  /** Whether it is the law where the shop stands. */
  public boolean isLawIn(String region) {
    return citation.kind() == Citation.Kind.LAW && regions.contains(region);
  }
}
