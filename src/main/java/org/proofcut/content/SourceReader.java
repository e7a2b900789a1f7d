package org.proofcut.content;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.proofcut.content.yaml.Faults;
import org.proofcut.content.yaml.Located;
import org.proofcut.content.yaml.Spot;
import org.proofcut.core.evidence.Citation;

/** Knows the published sources, and understands what cites them. */
final class SourceReader {

  /** What a rule or limit may stand on without a published source. */
  private static final Map<String, Citation> UNPUBLISHED =
      Map.of(
          "common-practice", Citation.COMMON_PRACTICE,
          "own-choice", Citation.OWN_CHOICE);

  private final Faults faults;
  private final OwnMarks marks;
  private final Map<String, Located<Source>> sources = new LinkedHashMap<>();
  private final Set<String> cited = new HashSet<>();
  private Regions regions = new Regions(Map.of());

  SourceReader(Faults faults, OwnMarks marks) {
    this.faults = faults;
    this.marks = marks;
  }

  /** The sources by id, to be filled in before anything is resolved. */
  Map<String, Located<Source>> read() {
    return sources;
  }

  /** Where a source binds, it binds in all that lies within these regions. */
  void areIn(Regions known) {
    regions = known;
    for (var source : sources.values()) {
      for (var region : source.value().jurisdiction()) {
        faults.refuseUnknown(region, "region", regions.byId().keySet());
      }
    }
  }

  boolean isCited(String id) {
    return cited.contains(id);
  }

  Optional<Because> resolve(Located<Because.Entry> because) {
    var entry = because.value();
    var says = entry.says().orElse("");
    var place = entry.place().orElse("");
    if (UNPUBLISHED.containsKey(entry.source())) {
      return Optional.of(
          new Because(
              own(UNPUBLISHED.get(entry.source()), because.spot()), says, false, List.of()));
    }
    var source = sources.get(entry.source());
    if (source == null) {
      faults.addUnknown(because.spot(), "source", entry.source(), sourceNames());
      return Optional.empty();
    }
    cited.add(entry.source());
    if (place.isEmpty()) {
      faults.add(
          because.spot(),
          "\"%s\" is cited without a place".formatted(entry.source()),
          "paragraph, table or page, such as \"(b)(3)\"",
          "Write \"place: …\".");
      return Optional.empty();
    }
    var published = source.value();
    return Optional.of(
        new Because(
            own(new Citation(published.kind(), published.cited(), place), because.spot()),
            says,
            entry.asksForGear().orElse(false),
            regions.spread(published.jurisdiction().stream().map(Located::value).toList())));
  }

  private Citation own(Citation citation, Spot spot) {
    return marks.at(spot).map(citation::forOwn).orElse(citation);
  }

  private List<String> sourceNames() {
    var names = new ArrayList<>(sources.keySet());
    UNPUBLISHED.keySet().stream().sorted().forEach(names::add);
    return names;
  }
}
