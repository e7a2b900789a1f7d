package org.proofcut.content;

import org.proofcut.content.yaml.Located;
import org.proofcut.core.evidence.Citation;
import org.proofcut.core.shop.GearPair;

/** Two kinds of gear that disturb each other, as their file names them. */
record GearPairEntry(
    String id, Located<String> first, Located<String> second, String together, Citation because) {

  GearPair pair() {
    return new GearPair(id, first.value(), second.value(), together, because);
  }
}
