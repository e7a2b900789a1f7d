package org.proofcut.core.setup;

import java.util.Optional;
import org.proofcut.core.evidence.Citation;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.measure.Angle;
import org.proofcut.core.measure.Rounding;
import org.proofcut.core.measure.display.Degrees;
import org.proofcut.core.shop.Side;

/**
 * One angle that the maker sets.
 *
 * @param role what is turned or tilted
 * @param toward which way, as seen by the person at the machine; empty where it stands square
 * @param from where it is measured from, in words
 * @param exact the angle aimed at
 * @param step smallest change that can be set
 */
public record AngleSetting(
    Role role, Optional<Side> toward, String from, Worked<Angle> exact, Angle step) {

  /** What is turned or tilted. */
  public enum Role {
    /** The saw turned about an upright axis, from a square cut. */
    MITRE("Mitre", "Turn"),
    /** The blade tilted from upright. */
    BEVEL("Bevel", "Tilt");

    private final String words;
    private final String deed;

    Role(String words, String deed) {
      this.words = words;
      this.deed = deed;
    }

    public String words() {
      return words;
    }

    /** What is done to make it larger. */
    public String deed() {
      return deed;
    }
  }

  /** What it is set to, on the machine's own steps. */
  public Worked<Angle> set() {
    var rounded = exact.value().roundedTo(step, Rounding.NEAREST);
    return rounded.equals(exact.value())
        ? exact
        : Worked.called(exact.name() + ", as set")
            .by("to the nearest step that can be set")
            .with("exact angle", exact)
            .with("step", Worked.given("step that can be set", step, Citation.ENTERED))
            .is(rounded);
  }

  /** The angle aimed at less the angle as set. */
  public Angle leftOver() {
    return exact.value().minus(set().value());
  }

  /** The angle as set, as its scale is read. */
  public String shown() {
    return Degrees.text(set().value(), Degrees.decimals(step));
  }
}
