package org.proofcut.core.setup;

import java.util.Optional;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.measure.Band;
import org.proofcut.core.measure.Length;

/**
 * One thing to measure on a proof cut, with how it will be judged. All of it is data, so that a
 * page compares and never computes.
 *
 * @param dimension what is measured
 * @param what in words, where the caliper goes
 * @param target what it should be
 * @param accepted readings that prove it
 * @param readings how many readings are taken
 * @param correctedBy the setting that moves it the same way; empty where only another cutter helps
 * @param counteredBy a setting that is there for another measure and moves this one too, one for
 *     one the other way; empty where none does
 * @param timesMoved how many times over a move of {@code correctedBy} shows in it; below nothing
 *     where it shows the other way, empty where it shows once
 * @param angle the angle that shows in it, which is then what corrects it; empty where none does
 */
public record Measure(
    Dimension dimension,
    String what,
    Worked<Length> target,
    Band accepted,
    int readings,
    Optional<Setting.Role> correctedBy,
    Optional<Setting.Role> counteredBy,
    Optional<Integer> timesMoved,
    Optional<AngleShown> angle) {

  /** A measure in which no angle shows, and which its setting moves one for one. */
  public Measure(
      Dimension dimension,
      String what,
      Worked<Length> target,
      Band accepted,
      int readings,
      Optional<Setting.Role> correctedBy,
      Optional<Setting.Role> counteredBy) {
    this(
        dimension,
        what,
        target,
        accepted,
        readings,
        correctedBy,
        counteredBy,
        Optional.empty(),
        Optional.empty());
  }

  /** The same measure, in which a move of its setting shows so many times over. */
  Measure movingTimes(int times) {
    return new Measure(
        dimension,
        what,
        target,
        accepted,
        readings,
        correctedBy,
        counteredBy,
        Optional.of(times),
        angle);
  }

  /** The same measure, in which this angle shows. */
  Measure showing(AngleShown shown) {
    return new Measure(
        dimension,
        what,
        target,
        accepted,
        readings,
        correctedBy,
        counteredBy,
        timesMoved,
        Optional.of(shown));
  }

  /** What is measured on a proof cut. */
  public enum Dimension {
    WIDTH("Width"),
    DEPTH("Depth"),
    DISTANCE("Distance"),
    SIZE("Size"),
    DIAMETER("Diameter"),
    /** Along the work, where the distance is across it. */
    FROM_END("From the end"),
    /** From one end of a slanted cut to the other, seen along the piece. */
    RUN_ACROSS("Run across the width"),
    RUN_THROUGH("Run through the thickness"),
    /** How much narrower a piece gets over a known length. */
    RUN_ALONG("Run along the piece");

    private final String words;

    Dimension(String words) {
      this.words = words;
    }

    public String words() {
      return words;
    }
  }
}
