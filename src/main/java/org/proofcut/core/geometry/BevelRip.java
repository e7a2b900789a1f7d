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
 * A rip with the blade tilted away from the fence, so that the piece kept is never trapped under
 * it. At the table the blade stands nearest to the fence: the narrow face lies down, the wide one
 * up, and they differ by {@code thickness · tan(bevel)}.
 *
 * @param bevel of the blade from upright, between 0° and 90°
 * @param thickness of the stock
 * @param goodFace width wanted on the good face
 * @param goodIsWide whether the good face is the wider one
 */
public record BevelRip(
    Worked<Angle> bevel, Worked<Length> thickness, Worked<Length> goodFace, boolean goodIsWide) {

  public BevelRip {
    if (!bevels(bevel.value())) {
      throw new IllegalArgumentException("no bevel: " + bevel.value());
    }
    thickness.value().requirePositive(thickness.name());
    goodFace.value().requirePositive(goodFace.name());
  }

  /**
   * Width of the face that was not asked for.
   *
   * @throws IllegalArgumentException if {@link #problems} stops it
   */
  public Worked<Length> otherFace() {
    return Worked.called(goodIsWide ? "width of the narrow face" : "width of the wide face")
        .by(
            goodIsWide
                ? "good face − thickness × tan(bevel), to 0.01 mm upward"
                : "good face + thickness × tan(bevel), to 0.01 mm upward")
        .with("good face", goodFace)
        .with("thickness", thickness)
        .with("bevel", bevel)
        .is(otherWidth().requirePositive("width of the narrow face"));
  }

  /** From the fence to the blade's teeth, measured at the table: the narrow face lies there. */
  public Worked<Length> fence() {
    return (goodIsWide ? otherFace() : goodFace).as("fence to the blade, at the table");
  }

  /** Whether the good face is up while it is cut; else it lies on the table. */
  public boolean goodFaceIsUp() {
    return goodIsWide;
  }

  /** How wide the sloping face is that the cut leaves. */
  public Worked<Length> slope() {
    return Worked.called("width of the sloping face")
        .by("thickness ÷ cos(bevel), to 0.01 mm upward")
        .with("thickness", thickness)
        .with("bevel", bevel)
        .is(alongTheBlade());
  }

  /**
   * How far the blade stands out of the table, measured along the blade: the stock is thicker that
   * way.
   *
   * @param beyond how far the teeth come out of the stock, along the blade
   */
  public Worked<Length> bladeOut(Worked<Length> beyond) {
    return Worked.called("blade out of the table, along the blade")
        .by("thickness ÷ cos(bevel) + how far the blade goes beyond it, to 0.01 mm upward")
        .with("thickness", thickness)
        .with("bevel", bevel)
        .with("how far the blade goes beyond it", beyond)
        .from(beyond.source())
        .is(alongTheBlade().plus(beyond.value()));
  }

  /** What is wrong with the width; names {@code good-face}. */
  public List<Problem> problems(LengthUnit unit) {
    if (otherWidth().isPositive()) {
      return List.of();
    }
    var scale = Scale.rule(unit);
    var least = lostAcross(Rounding.UP);
    return List.of(
        Problem.stops(
            "good-face",
            "The bevel runs in by "
                + scale.show(least).text()
                + ": nothing is left of the other face",
            "more than " + scale.show(least).text(),
            "Make the piece wider, or tilt the blade less"));
  }

  /** What is wrong with an angle that was entered for a bevel; names {@code bevel}. */
  public static List<Problem> problems(Angle bevel) {
    if (bevels(bevel)) {
      return List.of();
    }
    return List.of(
        Problem.stops(
            "bevel",
            "A blade can't be tilted by " + bevel + " for a bevel",
            "more than 0° and less than 90°, from upright",
            "Enter the tilt of the blade from upright"));
  }

  private static boolean bevels(Angle bevel) {
    return bevel.isPositive() && bevel.isLessThan(Angle.RIGHT);
  }

  /** Upward either way: a strip that is a little wide can be cut again. */
  private Length otherWidth() {
    return goodIsWide
        ? goodFace.value().minus(lostAcross(Rounding.DOWN))
        : goodFace.value().plus(lostAcross(Rounding.UP));
  }

  private Length lostAcross(Rounding rounding) {
    return thickness.value().times(bevel.value().tangent(), Length.HUNDREDTH, rounding);
  }

  private Length alongTheBlade() {
    return thickness.value().times(bevel.value().secant(), Length.HUNDREDTH, Rounding.UP);
  }
}
