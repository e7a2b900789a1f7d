package org.proofcut.core.measure.display;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.proofcut.core.measure.Angle;

/** An angle as a scale in degrees is read. It feeds nothing. */
public final class Degrees {

  private static final int MOST_DECIMALS = 4;

  private Degrees() {}

  /** How many decimals a scale with this step is read to, at most 4. */
  public static int decimals(Angle step) {
    int decimals = 0;
    var whole = step;
    while (decimals < MOST_DECIMALS && !whole.equals(Angle.ofDegrees(1).times(degrees(whole)))) {
      whole = whole.times(10);
      decimals++;
    }
    return decimals;
  }

  private static long degrees(Angle angle) {
    return angle.hundredthsOfAnArcSecond() / Angle.ofDegrees(1).hundredthsOfAnArcSecond();
  }

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
