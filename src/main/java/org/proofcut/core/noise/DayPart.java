package org.proofcut.core.noise;

import java.time.Duration;
import java.util.Optional;
import org.proofcut.core.evidence.Amount;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.exposure.Stay;

/**
 * One sheet of the day, or something else that is loud.
 *
 * @param sheet number of the sheet; empty for anything else
 * @param id of the sheet's operation; empty for anything else
 * @param machine with what it is done; empty where no machine runs
 * @param level at the ear; empty where none is known, and then nothing is counted
 * @param planned how long it runs as worked out; empty where that can't be
 * @param time how long it counts; empty where nothing is counted
 * @param done whether it is done that day
 */
public record DayPart(
    Optional<Integer> sheet,
    String id,
    String title,
    Optional<String> machine,
    Optional<Worked<Amount>> level,
    NoiseLevels.From from,
    Optional<Worked<Duration>> planned,
    Optional<Worked<Duration>> time,
    boolean done) {

  /** What of it counts: nothing where it is not done, or no level or no time is known. */
  public Optional<Stay> stay() {
    return done
        ? level.flatMap(
            heard -> time.filter(one -> !one.value().isZero()).map(lasts -> new Stay(heard, lasts)))
        : Optional.empty();
  }

  /** Whether it is done at a machine that nothing can be counted of. */
  public boolean isUnknown() {
    return done && machine.isPresent() && (level.isEmpty() || time.isEmpty());
  }
}
