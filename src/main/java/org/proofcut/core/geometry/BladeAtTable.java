package org.proofcut.core.geometry;

import java.math.BigInteger;
import java.util.List;
import org.proofcut.core.evidence.Problem;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.LengthUnit;
import org.proofcut.core.measure.Rounding;
import org.proofcut.core.measure.display.Scale;

/**
 * An upright saw blade above the table.
 *
 * <p>The table cuts a circle of radius {@code R} at {@code R − h} from its centre; half the chord,
 * that distance and the radius are the sides of a right triangle, so the chord is {@code 2·√(R² −
 * (R − h)²) = 2·√(h·(2R − h))}.
 *
 * @param diameter of the blade
 * @param height of its highest tooth above the table
 */
public record BladeAtTable(Worked<Length> diameter, Worked<Length> height) {

  public BladeAtTable {
    diameter.value().requirePositive(diameter.name());
    height.value().requirePositive(height.name());
  }

  /**
   * How long an opening in the table the blade stands out of: what a piece must span so as not to
   * dip into it.
   *
   * @throws IllegalArgumentException if {@link #problems} stops it
   */
  public Worked<Length> exposed() {
    arborBelow();
    var inside =
        BigInteger.valueOf(height.value().picometres())
            .multiply(BigInteger.valueOf(diameter.value().minus(height.value()).picometres()))
            .shiftLeft(2);
    return Worked.called("blade exposed along the table")
        .by("2 × √(height × (diameter − height)), to 0.01 mm upward")
        .with("height", height)
        .with("diameter", diameter)
        .is(Length.rootOf(inside, Length.HUNDREDTH, Rounding.UP));
  }

  /** How deep the arbor's centre lies below the table. */
  public Worked<Length> arborBelow() {
    var radius = diameter.value().half();
    if (height.value().isGreaterThan(radius)) {
      throw new IllegalArgumentException(
          "a blade of " + diameter.value() + " can't stand " + height.value() + " high");
    }
    return Worked.called("arbor below the table")
        .by("diameter ÷ 2 − height")
        .with("diameter", diameter)
        .with("height", height)
        .is(radius.minus(height.value()));
  }

  /** What is wrong with the height; names {@code height}. */
  public List<Problem> problems(LengthUnit unit) {
    var radius = diameter.value().half();
    if (height.value().isAtMost(radius)) {
      return List.of();
    }
    var scale = Scale.rule(unit);
    return List.of(
        Problem.stops(
            "height",
            "A blade of "
                + scale.show(diameter.value()).text()
                + " can't stand "
                + scale.show(height.value()).text()
                + " out of the table: its arbor lies below",
            "less than half the blade, " + scale.show(radius).text(),
            "Lower the blade, or use a larger one if the saw takes it"));
  }
}
