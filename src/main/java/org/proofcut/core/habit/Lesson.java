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
          + ". If a chip or a wrong reading made the difference, leave out the one that was wrong;"
          + " if something was changed for good, start afresh; if nothing explains it, count it.";
    }
  }

  /** The maker has left it out. */
  record LeftOut(Observation observation, String because) implements Lesson {}

  static String proofs(int count) {
    return count == 1 ? "1 proof" : count + " proofs";
  }

  /** Within so many times the usual scatter of what is expected, nothing is asked. */
  int UNREMARKABLE = 2;

  /** Beyond so many times the usual scatter from a few earlier ones, it is asked about. */
  int FAR_FROM_FEW = 5;

  /** So many earlier ones are too few for Grubbs' test. */
  int FEW = 3;

  /**
   * Judges a new observation. Nothing is asked within twice the usual scatter of what is expected:
   * where a few agree to the last hundredth, Grubbs' test would take the next hundredth for an
   * outlier. Beyond the limit it is asked about however many there are. Between the two Grubbs'
   * test decides, once there are four earlier ones. With fewer it hardly can: the oddest of four is
   * never more than 1.500 standard deviations from their mean, and chance alone goes to 1.496 once
   * in a hundred. So a few are held against five times the usual scatter (our choice, like the
   * two).
   *
   * @param earlier what was learned of the same trait before
   */
  static Lesson of(
      Observation observation, List<Observation> earlier, HabitLimits limits, StudentT t) {
    var before = earlier.stream().map(Observation::value).toList();
    var expected =
        before.isEmpty()
            ? observation.trait().valueOf(observation.set(), observation.set())
            : Length.mean(before, Estimate.STEP, Rounding.NEAREST);
    var off = observation.value().minus(expected).abs();
    var usual = limits.usualScatter(observation.trait()).value();
    if (off.isAtMost(usual.times(UNREMARKABLE))) {
      return new Learned(observation);
    }
    boolean ask =
        off.isGreaterThan(limits.far(observation.trait()))
            || (before.size() > FEW
                ? isOdd(observation.value(), before, limits, t)
                : !before.isEmpty() && off.isGreaterThan(usual.times(FAR_FROM_FEW)));
    return ask ? new AskFirst(observation, expected, before.size()) : new Learned(observation);
  }

  private static boolean isOdd(Length value, List<Length> before, HabitLimits limits, StudentT t) {
    var all = Stream.concat(before.stream(), Stream.of(value)).toList();
    var alpha =
        BigDecimal.ONE.divide(
            BigDecimal.valueOf(limits.oddOneIn().value()), 6, RoundingMode.HALF_UP);
    return Grubbs.statistic(all, value).compareTo(Grubbs.critical(all.size(), alpha, t)) > 0;
  }
}
