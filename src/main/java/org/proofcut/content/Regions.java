package org.proofcut.content;

import java.util.Collection;
import java.util.List;
import java.util.Map;

/** The regions that a shop can stand in, and which lies within which. */
record Regions(Map<String, Region> byId) {

  /** These regions and all that lie within them, in the order of the file. */
  List<String> spread(Collection<String> named) {
    return byId.keySet().stream().filter(id -> liesWithin(id, named)).toList();
  }

  private boolean liesWithin(String id, Collection<String> named) {
    var at = byId.get(id);
    // No more steps than there are regions: a ring of them is told as a fault elsewhere.
    for (int steps = 0; at != null && steps <= byId.size(); steps++) {
      if (named.contains(at.id())) {
        return true;
      }
      at = at.within().map(larger -> byId.get(larger.value())).orElse(null);
    }
    return false;
  }
}
