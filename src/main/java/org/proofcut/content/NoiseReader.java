package org.proofcut.content;

import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.proofcut.content.yaml.Faults;
import org.proofcut.content.yaml.Located;
import org.proofcut.content.yaml.Spot;
import org.proofcut.core.exposure.MachineNoise;
import org.proofcut.core.exposure.NoiseLaw;

/** Holds what content says of noise to this: every machine has its level, every region one law. */
final class NoiseReader {

  static final String LEVELS = "exposure/levels.yaml";
  static final String LAWS = "exposure/laws.yaml";

  private final Regions regions;
  private final Faults faults;

  NoiseReader(Regions regions, Faults faults) {
    this.regions = regions;
    this.faults = faults;
  }

  /**
   * @param wanted the kinds that need a level
   */
  NoiseContent read(
      List<String> wanted,
      Map<String, Located<MachineNoise>> levels,
      Map<String, Located<NoiseLaw>> laws) {
    levels.forEach(
        (id, level) -> {
          if (!wanted.contains(id)) {
            faults.addUnknown(level.spot(), "machine", id, wanted);
          }
        });
    refuseMissing(LEVELS, "level", wanted, levels.keySet());
    var byRegion = byRegion(laws.values());
    refuseMissing(LAWS, "law", regions.byId().keySet(), byRegion.keySet());
    return new NoiseContent(
        levels.entrySet().stream()
            .collect(Collectors.toMap(Map.Entry::getKey, entry -> entry.getValue().value())),
        byRegion);
  }

  private Map<String, NoiseLaw> byRegion(Collection<Located<NoiseLaw>> laws) {
    var known = regions.byId().keySet();
    var byRegion = new HashMap<String, NoiseLaw>();
    for (var law : laws) {
      for (var region : law.value().regions()) {
        if (!known.contains(region)) {
          faults.addUnknown(law.spot(), "region", region, known);
        }
      }
      for (var region : regions.spread(law.value().regions())) {
        if (byRegion.putIfAbsent(region, law.value()) != null) {
          faults.add(
              law.spot(),
              "\"%s\" has two laws of noise".formatted(region),
              "one for each region",
              "Name the region in one of the two.");
        }
      }
    }
    return byRegion;
  }

  private void refuseMissing(
      String path, String what, Collection<String> wanted, Collection<String> there) {
    for (var id : wanted) {
      if (!there.contains(id)) {
        faults.add(
            Spot.of(path),
            "\"%s\" has no %s".formatted(id, what),
            "one for each of " + String.join(", ", wanted),
            "Write it.");
      }
    }
  }
}
