package org.proofcut.core.exposure;

import org.proofcut.core.evidence.Amount;
import org.proofcut.core.evidence.Worked;

/**
 * Limits of extraction and masks.
 *
 * @param transportVelocity that keeps chips and dust moving in a duct, in m/s
 * @param captureVelocity at the mouth of a hood where a cutter throws dust at it, in m/s
 * @param factorForLittleDust least factor of a mask where nothing was measured and little or some
 *     fine dust is made
 * @param factorForMuchDust the same where much or the most is made
 * @throws IllegalArgumentException if air stands still, or goes at anything but m/s
 */
public record ExtractionLimits(
    Worked<Amount> transportVelocity,
    Worked<Amount> captureVelocity,
    Worked<Integer> factorForLittleDust,
    Worked<Integer> factorForMuchDust) {

  public ExtractionLimits {
    requireMoving(transportVelocity);
    requireMoving(captureVelocity);
  }

  private static void requireMoving(Worked<Amount> velocity) {
    var air = velocity.value();
    if (!air.unit().equals("m/s") || air.value().signum() <= 0) {
      throw new IllegalArgumentException(
          "\"%s\" is a velocity of more than 0 m/s, not %s".formatted(velocity.name(), air));
    }
  }
}
