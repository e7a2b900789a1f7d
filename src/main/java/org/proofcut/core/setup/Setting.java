package org.proofcut.core.setup;

import java.util.Optional;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.LengthUnit;
import org.proofcut.core.measure.Rounding;
import org.proofcut.core.measure.display.Scale;

/**
 * One figure that the maker sets.
 *
 * @param role what is set
 * @param from between which two things it is measured, in words
 * @param set what it is set to, on the machine's own steps; fit and position are judged from this
 * @param step smallest change that can be set
 * @param learned what to add when it is read on its scale, as proof cuts have taught; empty where
 *     the scale is taken at its word
 */
public record Setting(
    Role role, String from, Worked<Length> set, Length step, Optional<Taught> learned) {

  /** A setting whose scale is taken at its word. */
  public Setting(Role role, String from, Worked<Length> set, Length step) {
    this(role, from, set, step, Optional.empty());
  }

  /** From this step on a rule can be read; finer settings are made by caliper or feeler. */
  private static final Length RULE_STEP = Length.ofMicrometres(100);

  /** What is set. */
  public enum Role {
    FENCE("Fence"),
    /** Between fence and work, or straightedge and base, for the first pass. */
    STRIP("Spacer strip"),
    /** Behind the outfeed half of a fence. */
    SHIM("Shim"),
    OPENING_LENGTH("Template, length"),
    OPENING_WIDTH("Template, width"),
    HEIGHT("Height"),
    DEPTH("Depth"),
    STOP("Stop"),
    /** What a second stop stands farther out than the first. */
    STOP_OFFSET("Stop offset"),
    /** Between two stops, along what they stand on. */
    STOPS_APART("Stops apart"),
    STRAIGHTEDGE("Straightedge"),
    MARK("Mark"),
    /** Along the reference edge, where no fence is. */
    LINE("Line"),
    /** On a bit in the hands. */
    COLLAR("Stop collar");

    private final String words;

    Role(String words) {
      this.words = words;
    }

    public String words() {
      return words;
    }

    /** Whether it decides how deep the cut goes. */
    public boolean isOfDepth() {
      return switch (this) {
        case HEIGHT, DEPTH, COLLAR -> true;
        case FENCE, STRIP, STOP, STOP_OFFSET, STOPS_APART, STRAIGHTEDGE, MARK, LINE -> false;
        case SHIM, OPENING_LENGTH, OPENING_WIDTH -> false;
      };
    }
  }

  /** The exact figure moved onto the steps of the machine's scale that it is set on. */
  static Setting of(Role role, String from, Worked<Length> exact, Length step) {
    return of(role, from, exact, Worked.entered("step that can be set", step));
  }

  /** The exact figure moved onto the steps of what it is set with, such as a rule. */
  static Setting of(Role role, String from, Worked<Length> exact, Worked<Length> step) {
    var rounded = exact.value().roundedTo(step.value(), Rounding.NEAREST);
    var set =
        rounded.equals(exact.value())
            ? exact
            : Worked.called(exact.name() + ", as set")
                .by("to the nearest step that can be set")
                .with("exact figure", exact)
                .with("step", step)
                .is(rounded);
    return new Setting(role, from, set, step.value());
  }

  /** What the scale reads when it is set. */
  public Worked<Length> read() {
    return learned
        .map(
            taught ->
                Worked.called(set.name() + ", as your scale reads it")
                    .by("figure + what proof cuts add to it, to a step that can be set")
                    .with("figure", set)
                    .with("what proof cuts add to it", taught.use())
                    .is(set.value().plus(taught.use().value().roundedTo(step, Rounding.NEAREST))))
        .orElse(set);
  }

  /**
   * The same setting, read on a scale that proof cuts have shown to be off. Not where the scale
   * would have to read nothing or less.
   */
  Setting readAs(Optional<Taught> taught) {
    var corrected = new Setting(role, from, set, step, taught);
    return corrected.read().value().isPositive() ? corrected : this;
  }

  /** Whether it is set by a rule, or more finely. */
  public boolean isSetByRule() {
    return !step.isLessThan(RULE_STEP);
  }

  /** The scale that it is set and read back on. */
  public Scale scale(LengthUnit unit) {
    return isSetByRule() ? Scale.rule(unit) : Scale.caliper(unit);
  }

  /** The same setting moved by a correction. */
  public Setting movedBy(Length by) {
    var moved =
        Worked.called(role.words() + ", corrected")
            .by("as set before + correction")
            .with("as set before", set)
            .with("correction", Worked.measured("correction from the proof cut", by))
            .is(set.value().plus(by));
    return new Setting(role, from, moved, step, learned);
  }
}
