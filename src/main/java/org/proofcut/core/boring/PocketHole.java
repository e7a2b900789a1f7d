package org.proofcut.core.boring;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.proofcut.core.evidence.Problem;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.measure.Angle;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.LengthUnit;
import org.proofcut.core.measure.Rounding;
import org.proofcut.core.measure.display.Scale;

/**
 * A pocket hole: bored at a slant from the face of one part through its end, for a screw into
 * another part that the end butts against.
 *
 * <p>{@code x} runs along the pocketed part, 0 at the joint, positive into the other part; {@code
 * y} runs across its thickness, 0 at the face with the pocket. The axis leaves the end at {@code
 * (0, exit)} and goes {@code (cos a, sin a)}: what lies {@code s} along it beyond the joint lies at
 * {@code (s · cos a, exit + s · sin a)}.
 *
 * @param angle between the axis and the face, 15° in the trade
 * @param thickness of the pocketed part
 * @param exit from the face with the pocket to where the axis leaves the end
 * @param nose of the stepped drill, from its shoulder to its tip; the head of the screw lands where
 *     the shoulder was
 * @param stopShort wood that the drill leaves between its tip and the end, along the axis
 * @param wide diameter of the drill above its shoulder
 */
public record PocketHole(
    Worked<Angle> angle,
    Worked<Length> thickness,
    Worked<Length> exit,
    Worked<Length> nose,
    Worked<Length> stopShort,
    Worked<Length> wide) {

  /** A place in the section through the axis. */
  public record Spot(Length x, Length y) {}

  /**
   * What the screw goes into.
   *
   * @param deep how far it reaches away from the joint
   * @param thick its thickness, where its face lies flush with the face that has the pocket; empty
   *     where it reaches on past the pocketed part
   * @param leastLeft least wood beyond the screw's tip, either way
   * @param leastBite least length of screw in it
   */
  public record Other(
      Worked<Length> deep,
      Optional<Worked<Length>> thick,
      Worked<Length> leastLeft,
      Worked<Length> leastBite) {

    public Other {
      deep.value().requirePositive(deep.name());
      thick.ifPresent(one -> one.value().requirePositive(one.name()));
      leastBite.value().requirePositive(leastBite.name());
      requireNotNegative(leastLeft);
    }
  }

  /**
   * The section for a drawing.
   *
   * @param mouthFar where the pocket opens the face, away from the joint
   * @param mouthNear the same, nearer to the joint
   * @param seatFar corner of the pocket's floor at the far face's side
   * @param seatNear corner of the pocket's floor at the pocket's own side
   * @param seat middle of the floor, under the head of the screw
   * @param exit where the axis crosses the joint
   * @param tip of the screw
   */
  public record Section(
      Spot mouthFar, Spot mouthNear, Spot seatFar, Spot seatNear, Spot seat, Spot exit, Spot tip) {}

  public PocketHole {
    if (!angle.value().isPositive() || !angle.value().isLessThan(Angle.RIGHT)) {
      throw new IllegalArgumentException("no slant: " + angle.value());
    }
    for (var one : List.of(thickness, exit, nose, wide)) {
      one.value().requirePositive(one.name());
    }
    requireNotNegative(stopShort);
  }

  private static void requireNotNegative(Worked<Length> length) {
    if (length.value().isNegative()) {
      throw new IllegalArgumentException(length.name() + " is negative: " + length.value());
    }
  }

  /** The axis from the face with the pocket to the end; downward, so that the drill stops early. */
  public Worked<Length> axisInWood() {
    // 1 ÷ sin a is the secant of what is left to a right angle.
    var oneOverSine = Angle.RIGHT.minus(angle.value()).secant();
    return Worked.called("axis from the face to the end")
        .by("exit ÷ sin(angle), to 0.01 mm downward")
        .with("exit", exit)
        .with("angle", angle)
        .is(exit.value().times(oneOverSine, Length.HUNDREDTH, Rounding.DOWN));
  }

  /**
   * From the drill's tip to its stop collar.
   *
   * @param guide along the axis from the face of the work up to where the collar lands on the jig
   */
  public Worked<Length> collar(Worked<Length> guide) {
    requireNotNegative(guide);
    return Worked.called("drill's tip to the stop collar")
        .by("guide + axis in the wood − what it stops short of the end")
        .with("guide", guide)
        .with("axis in the wood", axisInWood())
        .with("what it stops short of the end", stopShort)
        .is(guide.value().plus(axisInWood().value()).minus(stopShort.value()));
  }

  /** Wood between the head of the screw and the joint, along the axis. */
  public Worked<Length> underTheHead() {
    return Worked.called("head of the screw to the joint, along the axis")
        .by("drill's nose + what it stops short of the end")
        .with("drill's nose", nose)
        .with("what it stops short of the end", stopShort)
        .is(nose.value().plus(stopShort.value()));
  }

  /** Screw in the other part, along the axis; not positive where it does not get there. */
  public Worked<Length> bite(Worked<Length> screw) {
    return Worked.called("screw in the other part, along the axis")
        .by("screw − head to the joint")
        .with("screw", screw)
        .with("head to the joint", underTheHead())
        .is(screw.value().minus(underTheHead().value()));
  }

  /** How far the screw's tip lies beyond the joint. */
  public Worked<Length> tipBeyondJoint(Worked<Length> screw) {
    return Worked.called("screw's tip beyond the joint")
        .by("screw in the other part × cos(angle), to 0.01 mm upward")
        .with("screw in the other part", bite(screw))
        .with("angle", angle)
        .is(along(bite(screw).value(), Rounding.UP));
  }

  /** How far the screw's tip lies below the face with the pocket. */
  public Worked<Length> tipBelowFace(Worked<Length> screw) {
    return Worked.called("screw's tip below the face with the pocket")
        .by("exit + screw in the other part × sin(angle), to 0.01 mm upward")
        .with("exit", exit)
        .with("screw in the other part", bite(screw))
        .with("angle", angle)
        .is(exit.value().plus(across(bite(screw).value(), Rounding.UP)));
  }

  /** Those of the screws that hold and stay inside. */
  public List<Worked<Length>> fitting(List<Worked<Length>> screws, Other other, LengthUnit unit) {
    return screws.stream().filter(screw -> problems(screw, other, unit).isEmpty()).toList();
  }

  /** The section, each place to the nearest 0.01 mm. */
  public Section section(Worked<Length> screw) {
    var radius = wide.value().half();
    var seat = underTheHead().value().negated();
    return new Section(
        mouth(radius),
        mouth(radius.negated()),
        beside(seat, radius),
        beside(seat, radius.negated()),
        beside(seat, Length.ZERO),
        beside(Length.ZERO, Length.ZERO),
        beside(bite(screw).value(), Length.ZERO));
  }

  /** So far along the axis beyond the joint, and so far square from it toward the far face. */
  private Spot beside(Length along, Length off) {
    return new Spot(
        along(along, Rounding.NEAREST).minus(across(off, Rounding.NEAREST)),
        exit.value().plus(across(along, Rounding.NEAREST)).plus(along(off, Rounding.NEAREST)));
  }

  /**
   * Where a line beside the axis meets the face: from {@code y = 0 = exit + s · sin a + off · cos
   * a} follows {@code x = s · cos a − off · sin a = −(exit · cos a + off) ÷ sin a}.
   */
  private Spot mouth(Length off) {
    var oneOverSine = Angle.RIGHT.minus(angle.value()).secant();
    var cotangent = Angle.RIGHT.minus(angle.value()).tangent();
    var x =
        exit.value()
            .times(cotangent, Length.HUNDREDTH, Rounding.NEAREST)
            .plus(off.times(oneOverSine, Length.HUNDREDTH, Rounding.NEAREST));
    return new Spot(x.negated(), Length.ZERO);
  }

  private Length along(Length onAxis, Rounding rounding) {
    return onAxis.times(angle.value().cosine(), Length.HUNDREDTH, rounding);
  }

  private Length across(Length onAxis, Rounding rounding) {
    return onAxis.times(angle.value().sine(), Length.HUNDREDTH, rounding);
  }

  /** What is wrong; names {@code exit}, {@code nose} or {@code screw}. */
  public List<Problem> problems(Worked<Length> screw, Other other, LengthUnit unit) {
    screw.value().requirePositive(screw.name());
    var problems = new ArrayList<Problem>();
    var scale = Scale.caliper(unit);
    pocket(problems, scale);
    var bite = bite(screw).value();
    if (bite.isLessThan(other.leastBite().value())) {
      var what =
          bite.isPositive()
              ? "Only " + scale.show(bite).text() + " of the screw is in the other part"
              : "A screw of " + scale.show(screw.value()).text() + " does not reach the other part";
      var allowed = scale.show(other.leastBite().value()).text() + " or more in the other part";
      problems.add(
          bite.isPositive()
              ? Problem.warns("screw", what, allowed, "Use a longer screw")
              : Problem.stops("screw", what, allowed, "Use a longer screw"));
    }
    beyond(
        problems,
        tipBeyondJoint(screw).value(),
        other.deep().value(),
        other.leastLeft().value(),
        scale);
    other
        .thick()
        .ifPresent(
            thick ->
                beyond(
                    problems,
                    tipBelowFace(screw).value(),
                    thick.value(),
                    other.leastLeft().value(),
                    scale));
    return problems;
  }

  private void pocket(List<Problem> problems, Scale scale) {
    if (!exit.value().isLessThan(thickness.value())) {
      problems.add(
          Problem.stops(
              "exit",
              "The hole leaves the part through its far face",
              "less than the thickness, " + scale.show(thickness.value()).text(),
              "Set the jig for this thickness: the middle of it"));
      return;
    }
    if (!underTheHead().value().isLessThan(axisInWood().value())) {
      problems.add(
          Problem.stops(
              "nose",
              "The shoulder of the drill stays outside the wood: the screw has no seat",
              "less than the axis in the wood, " + scale.show(axisInWood().value()).text(),
              "Use a drill with a shorter nose, or join the parts another way"));
    }
    var floor = beside(underTheHead().value().negated(), wide.value().half()).y();
    if (!floor.isLessThan(thickness.value())) {
      problems.add(
          Problem.stops(
              "exit",
              "The pocket comes through the far face",
              "a floor less than " + scale.show(thickness.value()).text() + " below the face",
              "Use a thinner drill, or set the jig for this thickness"));
    }
  }

  private static void beyond(
      List<Problem> problems, Length tip, Length size, Length leastLeft, Scale scale) {
    var left = size.minus(tip);
    if (left.isAtLeast(leastLeft)) {
      return;
    }
    var allowed = scale.show(leastLeft).text() + " or more of wood beyond the tip";
    problems.add(
        left.isPositive()
            ? Problem.warns(
                "screw",
                "Only " + scale.show(left).text() + " of wood is left beyond the screw's tip",
                allowed,
                "Use a shorter screw")
            : Problem.stops(
                "screw",
                "The screw's tip comes out of the other part",
                allowed,
                "Use a shorter screw"));
  }
}
