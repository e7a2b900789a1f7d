package org.proofcut.core.exposure;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
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

    public Step {
      requireDecibels(at);
    }

    /** Whether a day of this steady level comes under it. */
    public boolean isReached(Amount steadyLevel) {
      int compared = steadyLevel.value().compareTo(at.value());
      return above ? compared > 0 : compared >= 0;
    }
  }

  /** A level that may be left or reached, in dBA, and where that stands. */
  public record Left(Amount at, Citation because) {

    public Left {
      requireDecibels(at);
    }
  }

  public NoiseLaw {
    regions = List.copyOf(regions);
    steps = List.copyOf(steps);
  }

  private static void requireDecibels(Amount level) {
    if (!level.unit().equals("dBA")) {
      throw new IllegalArgumentException("a law of noise speaks of dBA, not of " + level);
    }
  }

  /** Whether any of it stands in a law. */
  public boolean restsOnLaw() {
    return Stream.concat(
            steps.stream().map(Step::because),
            Stream.concat(Stream.of(mayBeLeft), ceiling.stream()).map(Left::because))
        .anyMatch(because -> because.kind() == Citation.Kind.LAW);
  }

  /** Whether it asks for everything that another one asks for, at the same level or a lower one. */
  public boolean isAtLeastAsStrictAs(NoiseLaw other) {
    return measure == other.measure
        && isAtMost(mayBeLeft, other.mayBeLeft)
        && isAtMost(better, other.better)
        && other.ceiling.stream()
            .allMatch(most -> ceiling.filter(at -> isAtMost(at, most)).isPresent())
        && other.steps.stream()
            .allMatch(step -> steps.stream().anyMatch(one -> isReachedWith(one, step)));
  }

  private static boolean isAtMost(Left one, Left other) {
    return one.at.value().compareTo(other.at.value()) <= 0;
  }

  /** Whether no day comes under the second step that does not come under the first. */
  private static boolean isReachedWith(Step one, Step other) {
    int compared = one.at.value().compareTo(other.at.value());
    return compared < 0 || compared == 0 && (!one.above || other.above);
  }
}
