package org.proofcut.core.shop;

import java.util.List;
import org.proofcut.core.measure.Band;
import org.proofcut.core.measure.Length;

/**
 * A table saw with a rip fence and a sled.
 *
 * @param fenceReach widest that the fence stands from the blade
 * @param fenceStep smallest change of the fence that can be set and read
 * @param heightStep smallest change of the blade's height that can be set
 * @param greatestHeight of the blade above the table
 * @param blades diameters of blade that the saw takes
 * @param sledStopReach longest piece that the sled's stop can set; zero without a sled
 * @param sledDepth widest work that the sled carries across the blade; zero without a sled
 */
public record TableSaw(
    String id,
    String name,
    List<SpeedStep> speeds,
    Length fenceReach,
    Length fenceStep,
    Length heightStep,
    Length greatestHeight,
    Band blades,
    Length sledStopReach,
    Length sledDepth,
    boolean hasGuard,
    boolean hasRivingKnife,
    boolean hasExtraction)
    implements Machine {

  public TableSaw {
    speeds = List.copyOf(speeds);
  }

  @Override
  public String kind() {
    return "table-saw";
  }
}
