package org.proofcut.core.exposure;

import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.proofcut.core.evidence.Amount;
import org.proofcut.core.evidence.Worked;

/**
 * What the maker says of the noise of one day. Work that is planned is known here by its number
 * alone.
 *
 * @param leftOut numbers of the sheets that are not done that day
 * @param times by number of the sheet, where the maker knows them better
 * @param others what else is loud that day
 * @param tried a protector that is thought of
 * @param second one that is worn together with another, plugs under muffs
 * @param dbcOverDba how much more the maker's meter reads in dBC, where that was measured
 */
public record DayAsked(
    Set<Integer> leftOut,
    Map<Integer, Worked<Duration>> times,
    List<Other> others,
    Optional<HearingRating> tried,
    Optional<HearingRating> second,
    Optional<Worked<Integer>> dbcOverDba) {

  /** A day as planned. */
  public static final DayAsked AS_PLANNED =
      new DayAsked(
          Set.of(), Map.of(), List.of(), Optional.empty(), Optional.empty(), Optional.empty());

  /** Time in a noise that belongs to no sheet. */
  public record Other(String what, Worked<Amount> level, Worked<Duration> time) {}

  public DayAsked {
    leftOut = Set.copyOf(leftOut);
    times = Map.copyOf(times);
    others = List.copyOf(others);
  }
}
