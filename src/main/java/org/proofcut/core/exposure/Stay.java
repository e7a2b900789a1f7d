package org.proofcut.core.exposure;

import java.time.Duration;
import org.proofcut.core.evidence.Amount;
import org.proofcut.core.evidence.Worked;

/**
 * Time spent in one noise.
 *
 * @param level at the ear, in {@code dBA}
 * @param time that it lasts in a day
 */
public record Stay(Worked<Amount> level, Worked<Duration> time) {

  public Stay {
    NoiseRule.requireDecibels(level);
    if (time.value().isNegative()) {
      throw new IllegalArgumentException(time.name() + " is negative: " + time.value());
    }
  }
}
