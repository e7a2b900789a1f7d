package org.proofcut.core.boring;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.proofcut.core.evidence.Amount;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.measure.Angle;
import org.proofcut.core.measure.Length;

/** How fast a bit may turn, from what its rim may run at. */
public final class DrillSpeed {

  private DrillSpeed() {}

  /**
   * The highest speed of a bit: {@code n = v ÷ (π · D)}, as the rim goes {@code π · D} in one turn.
   *
   * @param diameter of the bit
   * @param metresPerMinute that the rim of this kind of bit may run at in this wood
   */
  public static Worked<Integer> highest(Worked<Length> diameter, Worked<Amount> metresPerMinute) {
    diameter.value().requirePositive(diameter.name());
    var speed = metresPerMinute.value();
    if (!speed.unit().equals("m/min") || speed.value().signum() <= 0) {
      throw new IllegalArgumentException("no speed of a rim in m/min: " + speed);
    }
    var perMinute =
        speed
            .value()
            .movePointRight(3)
            .divide(Angle.PI.multiply(diameter.value().inMillimetres()), 0, RoundingMode.FLOOR)
            .min(BigDecimal.valueOf(Integer.MAX_VALUE));
    return Worked.called("highest speed of the bit, a minute")
        .by("speed of the rim ÷ (π × diameter), whole turns downward")
        .with("speed of the rim", metresPerMinute)
        .with("diameter", diameter)
        .from(metresPerMinute.source())
        .is(perMinute.intValueExact());
  }
}
