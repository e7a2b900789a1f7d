package org.proofcut.core.geometry;

import java.util.List;
import org.proofcut.core.evidence.Problem;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.measure.Angle;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.LengthUnit;
import org.proofcut.core.measure.Rounding;
import org.proofcut.core.measure.display.Scale;

/**
 * A flat piece with a mitre at each end, as in a frame.
 *
 * <p>At each end the cut runs across the width and along the piece by {@code width · tan(mitre)}:
 * the long point lies so much farther out than the short one. For example, a piece 50 mm wide in a
 * square frame is 100 mm longer outside than inside.
 *
 * @param corner at both ends
 * @param width across the piece, in the plane of the frame
 */
public record FrameMitre(Corner corner, Worked<Length> width) {

  public FrameMitre {
    width.value().requirePositive(width.name());
  }

  /** What the saw is turned to, from square. */
  public Worked<Angle> mitre() {
    return corner.mitre();
  }

  /** The same cut on a scale that counts from the edge of the piece. */
  public Worked<Angle> fromTheEdge() {
    return Worked.called("cut, from the edge of the piece")
        .by("90° − mitre")
        .with("mitre", mitre())
        .is(Angle.RIGHT.minus(mitre().value()));
  }

  /** How far the long point lies beyond the short one at one end. */
  public Worked<Length> pointBeyond() {
    return Worked.called("long point beyond the short point, at one end")
        .by("width × tan(mitre), to 0.01 mm upward")
        .with("width", width)
        .with("mitre", mitre())
        .is(alongside(width.value(), Rounding.UP));
  }

  /** Between the long points, for a size between the short ones. A little long can be trimmed. */
  public Worked<Length> longPoint(Worked<Length> inside) {
    inside.value().requirePositive(inside.name());
    return Worked.called("length between the long points")
        .by("inside + 2 × width × tan(mitre), to 0.01 mm upward")
        .with("inside", inside)
        .with("width", width)
        .with("mitre", mitre())
        .is(inside.value().plus(bothMitres(Rounding.UP)));
  }

  /**
   * Between the short points, for a size between the long ones.
   *
   * @throws IllegalArgumentException if {@link #problems} stops it
   */
  public Worked<Length> shortPoint(Worked<Length> outside) {
    var value = outside.value().minus(bothMitres(Rounding.DOWN));
    return Worked.called("length between the short points")
        .by("outside − 2 × width × tan(mitre), to 0.01 mm upward")
        .with("outside", outside)
        .with("width", width)
        .with("mitre", mitre())
        .is(value.requirePositive("length between the short points"));
  }

  /** What is wrong with a size between the long points; names {@code outside}. */
  public List<Problem> problems(Length outside, LengthUnit unit) {
    var both = bothMitres(Rounding.DOWN);
    if (outside.isGreaterThan(both)) {
      return List.of();
    }
    var scale = Scale.rule(unit);
    return List.of(
        Problem.stops(
            "outside",
            "The mitres at both ends take "
                + scale.show(both).text()
                + ": nothing is left of "
                + scale.show(outside).text(),
            "more than " + scale.show(both).text(),
            "Make the piece longer or narrower"));
  }

  private Length bothMitres(Rounding rounding) {
    return alongside(width.value().times(2), rounding);
  }

  private Length alongside(Length across, Rounding rounding) {
    return across.times(mitre().value().tangent(), Length.HUNDREDTH, rounding);
  }
}
