package org.proofcut.core.shop;

import java.util.List;
import java.util.Optional;
import org.proofcut.core.measure.Band;
import org.proofcut.core.measure.Length;

/**
 * A plunge saw led along a track whose edge lies on the cut.
 *
 * @param trackLength longest cut along the track
 * @param depthStep smallest change of depth that can be set
 * @param greatestDepth of cut
 * @param blades diameters of blade that the saw takes
 * @param tilt how its blade tilts, its lower side in under the track; empty where that was never
 *     entered, and then it is not tilted
 */
public record TrackSaw(
    String id,
    String name,
    List<SpeedStep> speeds,
    Length trackLength,
    Length depthStep,
    Length greatestDepth,
    Band blades,
    boolean hasGuard,
    boolean hasRivingKnife,
    boolean hasExtraction,
    Optional<Tilt> tilt)
    implements Machine {

  /** A saw whose blade is not tilted. */
  public TrackSaw(
      String id,
      String name,
      List<SpeedStep> speeds,
      Length trackLength,
      Length depthStep,
      Length greatestDepth,
      Band blades,
      boolean hasGuard,
      boolean hasRivingKnife,
      boolean hasExtraction) {
    this(
        id,
        name,
        speeds,
        trackLength,
        depthStep,
        greatestDepth,
        blades,
        hasGuard,
        hasRivingKnife,
        hasExtraction,
        Optional.empty());
  }

  public TrackSaw {
    speeds = List.copyOf(speeds);
  }

  @Override
  public String kind() {
    return "track-saw";
  }
}
