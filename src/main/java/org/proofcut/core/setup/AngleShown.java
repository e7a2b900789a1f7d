package org.proofcut.core.setup;

import java.math.MathContext;
import java.util.Optional;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.measure.Angle;
import org.proofcut.core.measure.Band;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.Rounding;

/**
 * How an angle shows on a proof cut, where a caliper finds it: as how far the cut runs in over a
 * known length, {@code runs in = over · tan(angle)}.
 *
 * @param role the angle that is judged
 * @param angle aimed at, under a right angle
 * @param over the length that the cut crosses: the width for a mitre, the thickness for a bevel
 */
public record AngleShown(AngleSetting.Role role, Worked<Angle> angle, Worked<Length> over) {

  private static final MathContext DIGITS = new MathContext(50);

  /** Finer than a caliper reads. */
  private static final Length STEP = Length.ofMicrometres(1);

  public AngleShown {
    over.value().requirePositive(over.name());
  }

  /** How far a cut at the angle aimed at runs in. */
  public Worked<Length> runsIn() {
    return Worked.called("how far the cut runs in")
        .by("over × tan(angle), to 0.001 mm")
        .with("over", over)
        .with("angle", angle)
        .is(runsIn(angle.value(), Rounding.NEAREST));
  }

  /** What a cut may run in for an angle off by so much either way; rounded to the strict side. */
  Band within(Angle tolerance) {
    return new Band(
        runsIn(angle.value().minus(tolerance), Rounding.UP),
        runsIn(angle.value().plus(tolerance), Rounding.DOWN));
  }

  /** How far a cut runs in at the angle that the machine can be set to. */
  Length asSet(AngleSetting setting) {
    return runsIn(setting.set().value(), Rounding.NEAREST);
  }

  /** What the angle has to change by, on this step, when a proof runs in by so much. */
  public Worked<Angle> correction(Length found, Angle step, Rounding rounding) {
    var is =
        Worked.called("angle that the proof was cut at")
            .by("the angle whose tangent is found ÷ over, to 0.01 arc second")
            .with("found", Worked.measured("how far the proof runs in", found))
            .with("over", over)
            .is(angleOf(found));
    return Worked.called("correction of the angle")
        .by("angle aimed at − angle found, to a step of " + step)
        .with("angle aimed at", angle)
        .with("angle found", is)
        .is(angle.value().minus(is.value()).roundedTo(step, rounding));
  }

  /** How far a cut runs in that ran in by {@code found}, once the angle is changed. */
  public Length afterTurning(Length found, Angle by) {
    return runsIn(angleOf(found).plus(by), Rounding.NEAREST);
  }

  private Length runsIn(Angle at, Rounding rounding) {
    return over.value().times(at.tangent(), STEP, rounding);
  }

  private Angle angleOf(Length found) {
    var tangent = found.abs().inMillimetres().divide(over.value().inMillimetres(), DIGITS);
    var size = Angle.ofTangent(tangent, Angle.FINEST, Rounding.NEAREST);
    return found.isNegative() ? size.negated() : size;
  }

  /** The measure of it on a proof cut. */
  Measure measure(Measure.Dimension dimension, String what, Band accepted, int readings) {
    return new Measure(
            dimension, what, runsIn(), accepted, readings, Optional.empty(), Optional.empty())
        .showing(this);
  }
}
