package org.proofcut.core.noise;

import java.util.Map;
import java.util.Optional;
import org.proofcut.core.evidence.Amount;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.exposure.MachineNoise;
import org.proofcut.core.exposure.SoundEnergy;
import org.proofcut.core.shop.Machine;

/**
 * How loud the machines of a shop are at the ear.
 *
 * @param usual by kind of machine, with one for {@link #EXTRACTOR}
 * @param measured by the shop's own meter, by the id of the machine
 */
public record NoiseLevels(Map<String, MachineNoise> usual, Map<String, Worked<Amount>> measured) {

  /** What draws the dust off; it runs whenever a machine does that it is connected to. */
  public static final String EXTRACTOR = "extractor";

  /** Where a level is from. */
  public enum From {
    METER("your meter"),
    USUAL("usual for its kind"),
    USUAL_WITH_EXTRACTOR("usual for its kind, extractor on"),
    TYPED("entered"),
    NONE("no level");

    private final String words;

    From(String words) {
      this.words = words;
    }

    public String words() {
      return words;
    }
  }

  /** A level and where it is from. */
  public record Heard(Worked<Amount> level, From from) {}

  public NoiseLevels {
    usual = Map.copyOf(usual);
    measured = Map.copyOf(measured);
  }

  /** The meter's word counts before what is usual; it heard the extractor, too. */
  public Optional<Heard> of(Machine machine) {
    if (measured.containsKey(machine.id())) {
      return Optional.of(new Heard(measured.get(machine.id()), From.METER));
    }
    return Optional.ofNullable(usual.get(machine.kind())).map(noise -> usual(machine, noise));
  }

  private Heard usual(Machine machine, MachineNoise noise) {
    var extractor =
        Optional.ofNullable(usual.get(EXTRACTOR)).filter(one -> machine.hasExtraction());
    return extractor
        .map(
            on ->
                new Heard(
                    SoundEnergy.together(noise.level(), on.level())
                        .as("level of a " + noise.name() + " with its extractor"),
                    From.USUAL_WITH_EXTRACTOR))
        .orElseGet(() -> new Heard(noise.level(), From.USUAL));
  }
}
