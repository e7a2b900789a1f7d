package org.proofcut.core.feeding;

import java.util.ArrayList;
import java.util.List;
import org.proofcut.core.evidence.Citation;
import org.proofcut.core.evidence.Problem;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.LengthUnit;
import org.proofcut.core.measure.Rounding;
import org.proofcut.core.measure.display.Scale;

/**
 * Stock brought to a thickness by passes on both faces in turn.
 *
 * <p>Wood holds its strains in balance; a board that loses more on one face bends. So passes come
 * in pairs, one on each face, both of a pair equally deep; the last pair is light (common
 * practice). What the machine's steps can't share falls to the very first pass, so the faces differ
 * by less than two steps. Every thickness set lies whole steps above the one wanted.
 *
 * @param start thickness at the thickest place
 * @param target thickness wanted
 * @param finished length wanted
 */
public record Thicknessing(
    Worked<Length> start, Worked<Length> target, Worked<Length> finished, ThicknessLimits limits) {

  /** Which face is up at the knives. */
  public enum Face {
    FIRST("first face"),
    SECOND("second face");

    private final String words;

    Face(String words) {
      this.words = words;
    }

    public String words() {
      return words;
    }
  }

  /**
   * One pass.
   *
   * @param number counted from 1
   * @param face that is cut
   * @param setTo thickness the machine is set to
   * @param takes at the thickest place
   */
  public record Pass(int number, Face face, Worked<Length> setTo, Length takes) {}

  public Thicknessing {
    for (var one : List.of(start, target, finished)) {
      one.value().requirePositive(one.name());
    }
  }

  /** How long the piece is left until it has its thickness. */
  public Worked<Length> roughLength() {
    return Worked.called("length before thicknessing")
        .by("length wanted + 2 × snipe")
        .with("length wanted", finished)
        .with("snipe", limits.snipe())
        .from(limits.snipe().source())
        .is(finished.value().plus(limits.snipe().value().times(2)));
  }

  /**
   * All passes, the first one first.
   *
   * @throws IllegalArgumentException if {@link #problems} stops it
   */
  public List<Pass> passes() {
    var takes = takes();
    if (takes.isEmpty()) {
      throw new IllegalArgumentException(
          "no passes from " + start.value() + " to " + target.value());
    }
    var passes = new ArrayList<Pass>();
    var left = start.value();
    for (int i = 0; i < takes.size(); i++) {
      left = left.minus(takes.get(i));
      passes.add(
          new Pass(
              i + 1,
              i % 2 == 0 ? Face.FIRST : Face.SECOND,
              setTo(i + 1, takes.size(), left),
              takes.get(i)));
    }
    return passes;
  }

  private Worked<Length> setTo(int number, int of, Length left) {
    return Worked.called("thickness set for pass " + number + " of " + of)
        .by(
            "thickness wanted + what the passes after it take: a light one on each face, before"
                + " them pairs of equal ones no deeper than the deepest, on steps of the machine")
        .with("thickness at the start", start)
        .with("thickness wanted", target)
        .with("light", limits.light())
        .with("deepest", limits.deepest())
        .with("step", limits.step())
        .from(Citation.COMMON_PRACTICE)
        .is(left);
  }

  /** What each pass takes, the first one first; empty where there is no way. */
  private List<Length> takes() {
    var takes = shared();
    var deepest = limits.deepest().value();
    return takes.stream().allMatch(deepest::isAtLeast) ? takes : List.of();
  }

  private List<Length> shared() {
    var all = start.value().minus(target.value());
    var step = limits.step().value();
    var light = limits.light().value().roundedTo(step, Rounding.DOWN).max(step);
    if (!all.isPositive()) {
      return List.of();
    }
    if (all.isAtMost(light.times(2))) {
      var last = all.half().roundedTo(step, Rounding.UP);
      return last.isLessThan(all) ? List.of(all.minus(last), last) : List.of(all);
    }
    var rough = all.minus(light.times(2));
    long stepsAFace = rough.dividedBy(step.times(2), Rounding.DOWN);
    long stepsAPass = limits.deepest().value().dividedBy(step, Rounding.DOWN);
    long pairs = stepsAPass == 0 ? 0 : (stepsAFace + stepsAPass - 1) / stepsAPass;
    var takes = new ArrayList<Length>();
    // Pairs that take a step less come first, as the very first pass takes the rest besides.
    long less = pairs == 0 ? 0 : pairs - stepsAFace % pairs;
    for (long pair = 0; pair < pairs; pair++) {
      var each = step.times(stepsAFace / pairs + (pair < less ? 0 : 1));
      takes.add(each);
      takes.add(each);
    }
    takes.add(light);
    takes.add(light);
    var left = takes.stream().reduce(all, Length::minus);
    var withTheRest = takes.get(0).plus(left);
    if (withTheRest.isAtMost(limits.deepest().value())) {
      takes.set(0, withTheRest);
    } else {
      takes.add(0, left);
    }
    return takes;
  }

  /** What is wrong with what was asked; names {@code target}, {@code finished} or {@code step}. */
  public List<Problem> problems(LengthUnit unit) {
    var scale = Scale.caliper(unit);
    var problems = new ArrayList<Problem>();
    if (!start.value().isGreaterThan(target.value())) {
      problems.add(
          Problem.stops(
              "target",
              "The stock is " + scale.show(start.value()).text() + ": nothing is to be taken off",
              "less than " + scale.show(start.value()).text(),
              "Enter a smaller thickness, or take thicker stock"));
    } else if (takes().isEmpty()) {
      problems.add(
          Problem.stops(
              "step",
              "The machine's steps of "
                  + scale.show(limits.step().value()).text()
                  + " are too coarse for passes of "
                  + scale.show(limits.deepest().value()).text(),
              "steps of half a pass or less",
              "Set the thickness by caliper instead of the machine's scale"));
    }
    if (target.value().isLessThan(limits.thinnest().value())) {
      problems.add(
          Problem.stops(
              "target",
              scale.show(target.value()).text() + " is too thin for this machine",
              scale.show(limits.thinnest().value()).text() + " or more",
              "Leave it thicker, or bed it on a flat carrier board as long and wide as itself"));
    }
    if (roughLength().value().isLessThan(limits.shortest().value())) {
      problems.add(
          Problem.stops(
              "finished",
              "A piece of "
                  + scale.show(roughLength().value()).text()
                  + " with its snipe is too short to be fed",
              scale.show(limits.shortest().value()).text() + " or more",
              "Thickness a longer piece and crosscut it afterwards"));
    }
    return problems;
  }
}
