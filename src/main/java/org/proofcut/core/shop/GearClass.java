package org.proofcut.core.shop;

import java.util.Optional;
import org.proofcut.core.evidence.Citation;

/**
 * A class of one kind of protective gear.
 *
 * @param id as rules name it
 * @param name as it is marked, such as "FFP2 or N95"
 * @param goodFor what it holds up against, in a few words
 * @param seals whether it works only where it lies on bare skin all round: a beard undoes it
 * @param because where the marks are written
 */
public record GearClass(
    String id, String name, String goodFor, Optional<Boolean> seals, Citation because) {

  /** Whether hair under its rim lets through what it should keep out. */
  public boolean isUndoneByABeard() {
    return seals.orElse(false);
  }
}
