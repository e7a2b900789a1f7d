package org.proofcut.core.shop;

import java.util.List;
import org.proofcut.core.measure.Length;

/**
 * A router hung under a table, with a fence behind the cutter.
 *
 * @param fenceReach farthest that the fence can stand from the nearest cutting edge
 * @param fenceStep smallest change of the fence that can be set and read
 * @param heightStep smallest change of the cutter's height that can be set and read
 * @param largestCutter largest cutter diameter that the table's opening and the router take
 */
public record RouterTable(
    String id,
    String name,
    List<SpeedStep> speeds,
    Length fenceReach,
    Length fenceStep,
    Length heightStep,
    Length largestCutter,
    boolean hasGuard,
    boolean hasExtraction)
    implements Machine {

  public RouterTable {
    speeds = List.copyOf(speeds);
  }

  @Override
  public String kind() {
    return "router-table";
  }
}
