package org.proofcut.core.shop;

import java.util.List;
import org.proofcut.core.measure.Length;

/**
 * A drill held in the hands; a collar on the bit stops it.
 *
 * @param collarStep smallest change of the collar that can be set
 * @param guideHeight height of the guide that is clamped on the work and keeps the bit square; zero
 *     without one
 * @param largestBit largest diameter that it turns in wood
 */
public record HandDrill(
    String id,
    String name,
    List<SpeedStep> speeds,
    Length collarStep,
    Length guideHeight,
    Length largestBit,
    boolean hasExtraction)
    implements Machine {

  public HandDrill {
    speeds = List.copyOf(speeds);
  }

  public boolean hasGuide() {
    return guideHeight.isPositive();
  }

  @Override
  public String kind() {
    return "hand-drill";
  }

  /** Nothing covers a bit in the hands. */
  @Override
  public boolean hasGuard() {
    return false;
  }
}
