package org.proofcut.core.shop;

import java.util.List;
import org.proofcut.core.measure.Length;

/**
 * A router held in the hands and led along a straightedge.
 *
 * @param baseEdgeToCentre from the base edge that rides the guide to the centre of the cutter
 * @param depthStep smallest change of depth that can be set and read
 * @param largestCutter largest cutter diameter that the base and the router take
 */
public record HandRouter(
    String id,
    String name,
    List<SpeedStep> speeds,
    Length baseEdgeToCentre,
    Length depthStep,
    Length largestCutter,
    boolean hasGuard,
    boolean hasExtraction)
    implements Machine {

  public HandRouter {
    speeds = List.copyOf(speeds);
  }

  @Override
  public String kind() {
    return "hand-held-router";
  }
}
