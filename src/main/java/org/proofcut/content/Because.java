package org.proofcut.content;

import java.util.List;
import java.util.Optional;
import org.proofcut.core.evidence.Citation;
import org.proofcut.core.safety.Ground;

/**
 * Why a rule or limit stands.
 *
 * @param says what the source says, in our words; empty where none is quoted
 * @param asksForGear whether the source itself asks for the gear of the rule
 * @param regions where the source binds
 */
record Because(Citation citation, String says, boolean asksForGear, List<String> regions) {

  Ground ground() {
    return new Ground(citation, says, asksForGear, regions);
  }

  /** As it stands in a file: the id of a source, and where in it. */
  record Entry(
      String source,
      Optional<String> place,
      Optional<String> says,
      Optional<Boolean> asksForGear) {}
}
