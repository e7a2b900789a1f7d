package org.proofcut.core.proof;

import java.util.List;
import java.util.Optional;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.measure.Angle;
import org.proofcut.core.measure.Band;
import org.proofcut.core.measure.Length;
import org.proofcut.core.setup.AngleSetting;
import org.proofcut.core.setup.Measure;
import org.proofcut.core.setup.Setting;

/**
 * What the readings of one measure say.
 *
 * @param measure what was asked
 * @param found the readings so far, in order
 * @param outcome what they come to
 * @param correction what to move, and by how much; only with {@link Outcome#CHANGE}, and empty even
 *     then where the correction of another measure mends this one too
 * @param turn which angle to change, and by how much; only with {@link Outcome#CHANGE}
 */
public record Verdict(
    Measure measure,
    List<Length> found,
    Outcome outcome,
    Optional<Correction> correction,
    Optional<Turn> turn) {

  /** A verdict that changes no angle. */
  public Verdict(
      Measure measure, List<Length> found, Outcome outcome, Optional<Correction> correction) {
    this(measure, found, outcome, correction, Optional.empty());
  }

  /** What readings come to. */
  public enum Outcome {
    MORE_READINGS,
    PROVEN,
    /** One setting moved puts it right. */
    CHANGE,
    /** Even and off, and nothing that can be set on this set-up puts it right. */
    OTHER_CUTTER,
    /** The readings differ among themselves by more than a setting could bring in. */
    UNEVEN
  }

  /**
   * A setting to move.
   *
   * @param by how much, on the setting's own steps; positive makes the figure larger
   */
  public record Correction(Setting.Role role, Length by) {}

  /**
   * An angle to change.
   *
   * @param by how much; positive makes the angle larger
   * @param betweenMarks whether that is finer than the machine's own steps
   */
  public record Turn(AngleSetting.Role role, Worked<Angle> by, boolean betweenMarks) {}

  public Verdict {
    found = List.copyOf(found);
  }

  public boolean isProven() {
    return outcome == Outcome.PROVEN;
  }

  /** Smallest and largest reading; empty before the first. */
  public Optional<Band> ends() {
    return found.isEmpty() ? Optional.empty() : Optional.of(Proof.ends(found));
  }
}
