package org.proofcut.core.geometry;

import java.util.List;
import org.proofcut.core.evidence.Problem;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.measure.Angle;
import org.proofcut.core.measure.Rounding;

/**
 * The end of a piece whose face leans, as of a moulding between wall and ceiling or of a tray with
 * sloping sides, cut while its face lies flat on the saw's table.
 *
 * <p>Put the piece so that it runs along {@code u = (1, 0, 0)} and leans from upright by {@code s}:
 * up its face goes {@code v = (0, sin s, cos s)}, square out of it {@code n = (0, −cos s, sin s)}.
 * Both pieces end in the upright plane that halves the corner {@code c}. It makes {@code c/2} with
 * {@code u}, so what stands square on it is {@code N = (sin c/2, cos c/2, 0)}. Seen on the piece:
 *
 * <ul>
 *   <li>In the face, the cut turns from square by {@code tan(mitre) = N·v ÷ N·u = sin s · cos c/2 ÷
 *       sin c/2}.
 *   <li>Against the face, it tilts from square by {@code sin(bevel) = |N·n| = cos s · cos c/2}.
 * </ul>
 *
 * Written with the flat mitre {@code m = 90° − c/2}: {@code tan(mitre) = sin s · tan m} and {@code
 * sin(bevel) = cos s · sin m}. Upright ({@code s = 0}) all of it is bevel, lying ({@code s = 90°})
 * all of it is mitre. For a square corner at 38° that is 31.62° and 33.86°.
 *
 * @param corner seen from above
 * @param lean of the face from upright, 0° to 90°; a moulding's spring angle
 */
public record CompoundMitre(Corner corner, Worked<Angle> lean) {

  /** The field that {@link #problems} names. */
  public static final String FIELD = "lean";

  public CompoundMitre {
    if (!leans(lean.value())) {
      throw new IllegalArgumentException("no lean: " + lean.value());
    }
  }

  /** What the saw is turned to, from square. */
  public Worked<Angle> mitre() {
    return Worked.called("mitre, from a square cut")
        .by("the angle whose tangent is sin(lean) × tan(flat mitre), to 0.001°")
        .with("lean", lean)
        .with("flat mitre", flat())
        .is(
            Angle.ofTangent(
                lean.value().sine().multiply(flat().value().tangent()),
                Angle.THOUSANDTH,
                Rounding.NEAREST));
  }

  /** What the blade is tilted to, from upright. */
  public Worked<Angle> bevel() {
    return Worked.called("bevel, from an upright blade")
        .by("the angle whose sine is cos(lean) × sin(flat mitre), to 0.001°")
        .with("lean", lean)
        .with("flat mitre", flat())
        .is(
            Angle.ofSine(
                lean.value().cosine().multiply(flat().value().sine()),
                Angle.THOUSANDTH,
                Rounding.NEAREST));
  }

  /**
   * The other way to the same end: the piece stands at its lean between table and fence, the blade
   * upright, and only the mitre is turned.
   */
  public Worked<Angle> mitreStanding() {
    return corner.mitre();
  }

  /** What is wrong with an angle that was entered for a lean. */
  public static List<Problem> problems(Angle lean) {
    if (leans(lean)) {
      return List.of();
    }
    return List.of(
        Problem.stops(
            FIELD,
            "A face can't lean from upright by " + lean,
            "0° (upright) to 90° (lying flat)",
            "Measure the lean between the piece's back and the wall and enter that"));
  }

  private Worked<Angle> flat() {
    return corner.mitre().as("mitre of the corner, seen from above");
  }

  private static boolean leans(Angle lean) {
    return !lean.isLessThan(Angle.ZERO) && !lean.isGreaterThan(Angle.RIGHT);
  }
}
