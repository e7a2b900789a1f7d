package org.proofcut.content;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.proofcut.core.exposure.MachineNoise;
import org.proofcut.core.exposure.NoiseLaw;
import org.proofcut.core.safety.Fact;

/**
 * What content says of noise.
 *
 * @param levels by kind of machine, and of what draws the dust off
 * @param laws by the id of each region
 */
public record NoiseContent(Map<String, MachineNoise> levels, Map<String, NoiseLaw> laws) {

  private static final String NO_MACHINE = "none";
  private static final String EXTRACTOR = "extractor";

  private static final Comparator<NoiseLaw> STRICTEST_FIRST =
      Comparator.comparing((NoiseLaw law) -> law.mayBeLeft().at().value())
          .thenComparing(NoiseLaw::id);

  public NoiseContent {
    levels = Map.copyOf(levels);
    laws = Map.copyOf(laws);
  }

  /**
   * What holds in a region; where no content knows it any more, what leaves the least under a
   * protector.
   */
  public NoiseLaw lawIn(String region) {
    return laws.containsKey(region)
        ? laws.get(region)
        : laws.values().stream().min(STRICTEST_FIRST).orElseThrow();
  }

  /** The kinds that need a level. */
  static List<String> kinds(Map<Fact, FactEntry> facts) {
    var machines =
        facts.containsKey(Fact.MACHINE) ? facts.get(Fact.MACHINE).words() : List.<String>of();
    return Stream.concat(
            machines.stream().filter(machine -> !machine.equals(NO_MACHINE)), Stream.of(EXTRACTOR))
        .toList();
  }
}
