package org.proofcut.content;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import org.proofcut.content.yaml.Faults;
import org.proofcut.content.yaml.Located;

/** The regions that a shop can stand in, and which lies within which. */
record Regions(Map<String, Region> byId) {

  /**
   * Those that a file names; one that lies within what is no region, or no outermost one, is told.
   */
  static Regions of(Map<String, Region> byId, Faults faults) {
    var regions = new Regions(byId);
    byId.values()
        .forEach(
            region ->
                region.within().ifPresent(larger -> regions.refuseWithin(region, larger, faults)));
    return regions;
  }

  private void refuseWithin(Region region, Located<String> larger, Faults faults) {
    faults.refuseUnknown(larger, "region", byId.keySet());
    var outer = byId.get(larger.value());
    if (outer != null && (outer.id().equals(region.id()) || outer.within().isPresent())) {
      faults.add(
          larger.spot(),
          "\"%s\" lies within another region itself".formatted(outer.id()),
          "a region that lies within none",
          "Name the largest region.");
    }
  }

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
