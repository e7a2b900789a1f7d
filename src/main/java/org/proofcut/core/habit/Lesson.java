package org.proofcut.core.habit;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.stream.Stream;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.LengthUnit;
import org.proofcut.core.measure.Rounding;
import org.proofcut.core.measure.display.Scale;

/** What becomes of a new observation. */
public sealed interface Lesson {

  Observation observation();

  /** It counts from now on. */
  record Learned(Observation observation) implements Lesson {}

  /**
   * It lies too far off to be learned unasked; it counts only once it is {@link Ruling.Accepted}.
   *
   * @param expected the mean of those learned before, or the mark where there are none
   * @param earlier how many were learned before
   */
  record AskFirst(Observation observation, Length expected, int earlier) implements Lesson {

    /** The question, for a page. */
    public String why(LengthUnit unit) {
      var scale = Scale.caliper(unit);
      var found = scale.show(observation.value()).text();
      var before =
          earlier == 0
              ? scale.show(expected).text() + " was to be expected"
              : "the mean of " + proofs(earlier) + " before was " + scale.show(expected).text();
      return "This proof found "
          + found
          + ", "
          + before
          + ". Was it this cut alone, a chip or a wrong reading? Then leave it out. Was something"
          + " changed for good? Then start afresh.";
    }
  }

  static String proofs(int count) {
    return count == 1 ? "1 proof" : count + " proofs";
  }

  /**
   * Judges a new observation. Within twice the usual scatter of what is expected it is learned:
   * where a few agree to the last hundredth, Grubbs' test would take the next hundredth for an
   * outlier. Beyond the limit it is asked about however few there are; between the two, by Grubbs'
   * test as soon as there are three with it.
   *
   * @param earlier what was learned of the same trait before
   */
  static Lesson of(
      Observation observation, List<Observation> earlier, HabitLimits limits, StudentT t) {
    var trait = observation.trait();
    var before = earlier.stream().map(Observation::value).toList();
    var expected =
        before.isEmpty()
            ? trait.valueOf(observation.set(), observation.set())
            : Length.mean(before, Estimate.STEP, Rounding.NEAREST);
    var off = observation.value().minus(expected).abs();
    boolean ask;
    if (off.isAtMost(limits.usualScatter(trait).value().times(2))) {
      ask = false;
    } else if (off.isGreaterThan(limits.far(trait))) {
      ask = true;
    } else {
      ask = isOdd(observation.value(), before, limits, t);
    }
    return ask
        ? new AskFirst(observation, expected, before.size())
        : new Learned(observation);
  }

  private static boolean isOdd(
      Length value, List<Length> before, HabitLimits limits, StudentT t) {
    var all = Stream.concat(before.stream(), Stream.of(value)).toList();
    if (all.size() < Grubbs.FEWEST) {
      return false;
    }
    var alpha =
        BigDecimal.ONE.divide(
            BigDecimal.valueOf(limits.oddOneIn().value()), 6, RoundingMode.HALF_UP);
    return Grubbs.statistic(all, value).compareTo(Grubbs.critical(all.size(), alpha, t)) > 0;
  }
}
