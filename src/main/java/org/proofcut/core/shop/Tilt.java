package org.proofcut.core.shop;

import java.util.List;
import org.proofcut.core.measure.Angle;

/**
 * How a saw's blade tilts from upright.
 *
 * @param sides to which side its upper edge can lean, the preferred one first; one or both
 * @param greatest tilt, the same to each side
 * @param step smallest change that can be set and read
 */
public record Tilt(List<Side> sides, Angle greatest, Angle step) {

  public Tilt {
    sides = List.copyOf(sides);
    if (sides.isEmpty()) {
      throw new IllegalArgumentException("a blade that tilts to no side");
    }
  }
}
