package org.proofcut.core.geometry;

import java.util.List;
import org.proofcut.core.evidence.Citation;
import org.proofcut.core.evidence.Problem;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.measure.Angle;
import org.proofcut.core.measure.Rounding;

/**
 * The corner in which two like pieces meet, seen from above. Each is cut to the line that halves
 * it.
 *
 * @param angle on the inside of the corner, from 1° to 179°
 * @param mitre between a square cut and the cut that halves the corner: {@code 90° − angle ÷ 2}
 */
public record Corner(Worked<Angle> angle, Worked<Angle> mitre) {

  /** The field that {@link #problems} names. */
  public static final String FIELD = "corner";

  /** Beyond these the cut would run along the piece, or not be there. */
  private static final Angle SHARPEST = Angle.ofDegrees(1);

  private static final Angle FLATTEST = Angle.ofDegrees(179);

  public Corner {
    if (!isCorner(angle.value())) {
      throw new IllegalArgumentException("no corner: " + angle.value());
    }
  }

  /**
   * The corners of a frame with so many equal sides.
   *
   * <p>Going once round turns by 360° in {@code n} equal steps, so each corner is {@code 180° −
   * 360° ÷ n}, and half of it lacks {@code 180° ÷ n} to square.
   *
   * @throws IllegalArgumentException under three sides
   */
  public static Corner ofSides(int sides) {
    if (sides < 3) {
      throw new IllegalArgumentException("a frame of " + sides + " sides");
    }
    var count = Worked.given("sides of the frame", sides, Citation.ENTERED);
    var mitre =
        Worked.called("mitre, from a square cut")
            .by("180° ÷ sides, to 0.01 arc second")
            .with("sides", count)
            .is(Angle.STRAIGHT.dividedBy(sides, Angle.FINEST, Rounding.NEAREST));
    var angle =
        Worked.called("corner of the frame")
            .by("180° − 2 × mitre")
            .with("mitre", mitre)
            .is(Angle.STRAIGHT.minus(mitre.value().times(2)));
    return new Corner(angle, mitre);
  }

  /** A corner of this angle, measured on its inside. */
  public static Corner of(Worked<Angle> angle) {
    var mitre =
        Worked.called("mitre, from a square cut")
            .by("90° − corner ÷ 2, to 0.01 arc second")
            .with(FIELD, angle)
            .is(Angle.STRAIGHT.minus(angle.value()).dividedBy(2, Angle.FINEST, Rounding.NEAREST));
    return new Corner(angle, mitre);
  }

  /** What is wrong with an angle that was entered for a corner. */
  public static List<Problem> problems(Angle angle) {
    if (isCorner(angle)) {
      return List.of();
    }
    return List.of(
        Problem.stops(
            FIELD,
            "Two pieces that meet at " + angle + " make no corner",
            "from " + SHARPEST + " to " + FLATTEST,
            "Measure the corner on its inside and enter that"));
  }

  private static boolean isCorner(Angle angle) {
    return !angle.isLessThan(SHARPEST) && !angle.isGreaterThan(FLATTEST);
  }
}
