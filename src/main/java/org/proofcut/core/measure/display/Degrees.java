package org.proofcut.core.measure.display;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.proofcut.core.measure.Angle;

/** An angle as a scale in degrees is read. It feeds nothing. */
public final class Degrees {

  private Degrees() {}

  /** To so many decimals, from 0 to 4, half up; for example {@code 31.62°}. */
  public static String text(Angle angle, int decimals) {
    var degrees =
        BigDecimal.valueOf(angle.hundredthsOfAnArcSecond())
            .divide(
                BigDecimal.valueOf(Angle.ofDegrees(1).hundredthsOfAnArcSecond()),
                decimals,
                RoundingMode.HALF_UP);
    return (degrees.signum() < 0 ? "−" : "") + degrees.abs().toPlainString() + "°";
  }
}
