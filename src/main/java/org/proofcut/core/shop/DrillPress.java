package org.proofcut.core.shop;

import java.util.List;
import org.proofcut.core.measure.Length;

/**
 * A drill on a column over a table, with a fence behind the bit.
 *
 * @param fenceReach farthest that the fence can stand from the centre of the bit, toward the column
 * @param fenceStep smallest change of the fence that can be set and read
 * @param stopReach farthest that a stop on the fence can stand from the centre of the bit; zero
 *     without a stop
 * @param travel how far the bit can be brought down in one stroke
 * @param underChuck from the table at its lowest up to the chuck
 * @param depthStep smallest change of the depth stop that can be set and read
 * @param largestBit largest diameter that it turns in wood
 */
public record DrillPress(
    String id,
    String name,
    List<SpeedStep> speeds,
    Length fenceReach,
    Length fenceStep,
    Length stopReach,
    Length travel,
    Length underChuck,
    Length depthStep,
    Length largestBit,
    boolean hasGuard,
    boolean hasExtraction)
    implements Machine {

  public DrillPress {
    speeds = List.copyOf(speeds);
  }

  @Override
  public String kind() {
    return "drill-press";
  }
}
