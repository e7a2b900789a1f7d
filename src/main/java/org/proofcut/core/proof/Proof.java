package org.proofcut.core.proof;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.proofcut.core.measure.Angle;
import org.proofcut.core.measure.Band;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.Rounding;
import org.proofcut.core.proof.Verdict.Correction;
import org.proofcut.core.proof.Verdict.Outcome;
import org.proofcut.core.proof.Verdict.Turn;
import org.proofcut.core.setup.AngleShown;
import org.proofcut.core.setup.Measure;
import org.proofcut.core.setup.Setting;
import org.proofcut.core.setup.Setup;

/** Judges a proof cut by its readings. */
public final class Proof {

  /** As fine as a paper shim turns a piece on its fence. */
  private static final Angle BETWEEN_MARKS = Angle.THOUSANDTH.times(10);

  private Proof() {}

  /**
   * The verdicts on every measure of a set-up. A setting that is moved for one measure may move
   * another the other way; both are then put right at once.
   *
   * @param found the readings of each measure so far
   * @param setup the set-up that the proof was cut with, as corrected so far
   */
  public static List<Verdict> judge(Setup setup, Function<Measure, List<Length>> found) {
    var alone = setup.measures().stream().map(one -> judge(one, found.apply(one), setup)).toList();
    return alone.stream()
        .map(one -> judge(one.measure(), one.found(), setup, drift(one.measure(), alone)))
        .toList();
  }

  /** By how much the corrections of other measures will move this one. */
  private static Length drift(Measure measure, List<Verdict> alone) {
    return alone.stream()
        .map(Verdict::correction)
        .flatMap(Optional::stream)
        .filter(correction -> measure.counteredBy().equals(Optional.of(correction.role())))
        .map(correction -> correction.by().negated())
        .reduce(Length.ZERO, Length::plus);
  }

  /** The verdict on one measure, as if there were no other. */
  public static Verdict judge(Measure measure, List<Length> found, Setup setup) {
    return judge(measure, found, setup, Length.ZERO);
  }

  /**
   * Proven when every reading is accepted, now and after the drift. Else the setting that moves the
   * measure is moved by target less the middle of the readings, onto its steps, if that brings
   * every reading in.
   */
  private static Verdict judge(Measure measure, List<Length> found, Setup setup, Length drift) {
    if (found.size() < measure.readings()) {
      return new Verdict(measure, found, Outcome.MORE_READINGS, Optional.empty());
    }
    var accepted = measure.accepted();
    var ends = ends(found).movedBy(drift);
    if (accepted.contains(ends.least()) && accepted.contains(ends.most())) {
      // Or the drift alone will mend it.
      boolean alreadyIn = found.stream().allMatch(accepted::contains);
      return new Verdict(
          measure, found, alreadyIn ? Outcome.PROVEN : Outcome.CHANGE, Optional.empty());
    }
    if (ends.extent().isGreaterThan(accepted.extent())) {
      return new Verdict(measure, found, Outcome.UNEVEN, Optional.empty());
    }
    if (measure.angle().isPresent()) {
      return turned(measure, measure.angle().get(), found, setup);
    }
    var setting = measure.correctedBy().flatMap(setup::setting);
    if (setting.isEmpty()) {
      return new Verdict(measure, found, Outcome.OTHER_CUTTER, Optional.empty());
    }
    var correction = correction(measure, ends, setting.get());
    if (correction.isPresent()) {
      return new Verdict(measure, found, Outcome.CHANGE, correction);
    }
    // Would even readings come in? Then it is their spread that keeps them out.
    var even = new Band(ends.middle(), ends.middle());
    var outcome =
        correction(measure, even, setting.get()).isPresent()
            ? Outcome.UNEVEN
            : Outcome.OTHER_CUTTER;
    return new Verdict(measure, found, outcome, Optional.empty());
  }

  /**
   * The angle moved from that of the middle reading to the one aimed at: by steps of the machine if
   * one of them brings every reading in, else by less than a step.
   */
  private static Verdict turned(
      Measure measure, AngleShown shown, List<Length> found, Setup setup) {
    var middle = ends(found).middle();
    var step = setup.angle(shown.role()).orElseThrow().step();
    var turn =
        Stream.of(Rounding.NEAREST, Rounding.UP, Rounding.DOWN)
            .map(rounding -> shown.correction(middle, step, rounding))
            .filter(by -> bringsIn(by.value(), measure, shown, found))
            .findFirst()
            .map(by -> new Turn(shown.role(), by, false))
            .orElseGet(
                () ->
                    new Turn(
                        shown.role(),
                        shown.correction(middle, BETWEEN_MARKS, Rounding.NEAREST),
                        true));
    return new Verdict(measure, found, Outcome.CHANGE, Optional.empty(), Optional.of(turn));
  }

  private static boolean bringsIn(Angle by, Measure measure, AngleShown shown, List<Length> found) {
    return found.stream().allMatch(one -> measure.accepted().contains(shown.afterTurning(one, by)));
  }

  /** The step nearest to the ideal that brings both ends in; none where no step does. */
  private static Optional<Correction> correction(Measure measure, Band ends, Setting setting) {
    var accepted = measure.accepted();
    // As near to the target as both ends allow: the target may lie to one side in the band, and a
    // setting can't be nothing or less.
    int times = measure.timesMoved().orElse(1);
    var toNothing = setting.step().minus(setting.set().value()).times(times);
    var wanted =
        measure
            .target()
            .value()
            .minus(ends.middle())
            .max(accepted.least().minus(ends.least()))
            .min(accepted.most().minus(ends.most()));
    var ideal = times > 0 ? wanted.max(toNothing) : wanted.min(toNothing);
    for (var rounding : List.of(Rounding.NEAREST, Rounding.UP, Rounding.DOWN)) {
      var by = share(ideal, times).roundedTo(setting.step(), rounding);
      var moved = ends.movedBy(by.times(times));
      if (accepted.contains(moved.least())
          && accepted.contains(moved.most())
          && setting.set().value().plus(by).isPositive()) {
        return Optional.of(new Correction(setting.role(), by));
      }
    }
    return Optional.empty();
  }

  private static Length share(Length move, int times) {
    return new Length(move.picometres() / times);
  }

  static Band ends(List<Length> found) {
    return new Band(
        found.stream().min(Length::compareTo).orElseThrow(),
        found.stream().max(Length::compareTo).orElseThrow());
  }
}
