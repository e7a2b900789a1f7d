package org.proofcut.core.exposure;

import java.util.List;
import java.util.Optional;
import org.proofcut.core.evidence.Amount;
import org.proofcut.core.evidence.AtLeastOne;
import org.proofcut.core.evidence.Citation;

/**
 * What a place makes of a day's noise. From {@code content/exposure/laws.yaml}.
 *
 * @param title as a page names it
 * @param regions where it holds
 * @param measure what of the day it looks at
 * @param steps what it asks for, from the quietest on
 * @param mayBeLeft highest steady level that may be left under a hearing protector
 * @param better what should be left at most, by good practice
 * @param ceiling level above which no time is allowed without a protector; empty where none is
 *     known to us
 */
public record NoiseLaw(
    String id,
    String title,
    @AtLeastOne List<String> regions,
    Measure measure,
    @AtLeastOne List<Step> steps,
    Left mayBeLeft,
    Left better,
    Optional<Left> ceiling) {

  /** What of a day a law looks at. */
  public enum Measure {
    /** Dose and steady level of {@link NoiseRule#PERMITTED_US}. */
    FIVE_DECIBEL_DOSE,
    /** {@link SoundEnergy#dailyLevel}. */
    DAILY_LEVEL,
    /** Dose and steady level of {@link NoiseRule#RECOMMENDED}. */
    THREE_DECIBEL_DOSE
  }

  /**
   * One step of a law.
   *
   * @param name such as "action level"
   * @param at the steady level from which it holds
   * @param above whether it holds only above that level, not at it
   * @param asks what it asks for
   */
  public record Step(String name, Amount at, boolean above, String asks, Citation because) {

    /** Whether a day of this steady level comes under it. */
    public boolean isReached(Amount steadyLevel) {
      int compared = steadyLevel.value().compareTo(at.value());
      return above ? compared > 0 : compared >= 0;
    }
  }

  /** A level that may be left or reached, and where that stands. */
  public record Left(Amount at, Citation because) {}

  public NoiseLaw {
    regions = List.copyOf(regions);
    steps = List.copyOf(steps);
  }
}
