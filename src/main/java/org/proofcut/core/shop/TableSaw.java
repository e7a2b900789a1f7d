package org.proofcut.core.shop;

import java.util.List;
import java.util.Optional;
import org.proofcut.core.measure.Band;
import org.proofcut.core.measure.Length;

/**
 * A table saw with a rip fence, and a sled or mitre gauge.
 *
 * @param fenceReach widest that the fence stands from the blade
 * @param fenceStep smallest change of the fence that can be set and read
 * @param heightStep smallest change of the blade's height that can be set
 * @param greatestHeight of the blade above the table
 * @param blades diameters of blade that the saw takes
 * @param sledStopReach longest piece that the sled's stop can set; zero without a sled
 * @param sledDepth widest work that the sled carries across the blade; zero without a sled
 * @param blindCuts what it allows of cuts that don't come out above; empty where that was never
 *     entered, and then it allows none
 * @param tilt how its blade tilts, to one side; empty where that was never entered, and then it is
 *     not tilted
 * @param leftReach widest that the fence stands on the left of the blade; empty where it can't
 * @param gauge its mitre gauge, set square; empty where none was entered
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
    boolean hasExtraction,
    Optional<BlindCuts> blindCuts,
    Optional<Tilt> tilt,
    Optional<Length> leftReach,
    Optional<Gauge> gauge)
    implements Machine {

  /**
   * What a saw allows of cuts that don't come out above, where its usual guard can't stay.
   *
   * @param knifeStays whether the riving knife stands below the top tooth, so that it can stay
   * @param widestStack widest stacked cutter that fits on the arbor with its nut fully on; empty
   *     where the saw's manual, its guarding or a local rule allow none
   */
  public record BlindCuts(boolean knifeStays, Optional<Length> widestStack) {}

  /**
   * A mitre gauge with a long facing that has a stop.
   *
   * @param stopReach longest piece that the stop can set
   * @param widestWork widest work that it carries across the blade from a stand on the table
   */
  public record Gauge(Length stopReach, Length widestWork) {}

  public TableSaw {
    speeds = List.copyOf(speeds);
  }

  public boolean knifeStaysInBlindCuts() {
    return hasRivingKnife && blindCuts.map(BlindCuts::knifeStays).orElse(false);
  }

  /** Widest stacked cutter that it takes; empty where it may take none. */
  public Optional<Length> widestStack() {
    return blindCuts.flatMap(BlindCuts::widestStack);
  }

  @Override
  public String kind() {
    return "table-saw";
  }
}
