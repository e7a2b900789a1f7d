package org.proofcut.core.shop;

import java.util.List;
import java.util.Optional;
import org.proofcut.core.measure.Angle;
import org.proofcut.core.measure.Band;
import org.proofcut.core.measure.Length;

/**
 * A saw whose blade comes down on work that lies still against a fence; it turns on its table for a
 * mitre, the same to both sides, and may tilt for a bevel.
 *
 * @param greatestMitre farthest that it turns from a square cut
 * @param mitreStep smallest change of the mitre that can be set and read
 * @param tilt how the blade tilts; empty where it stands upright always
 * @param cutWidth widest work that it cuts square
 * @param cutHeight highest work that it cuts with the blade upright
 * @param tiltedHeight highest work that it cuts with the blade tilted all the way; zero where it
 *     does not tilt
 * @param stopReach longest piece that its stop can set; zero without a stop
 * @param stopStep smallest change of the stop that can be set and read
 * @param blades diameters of blade that the saw takes
 */
public record MitreSaw(
    String id,
    String name,
    List<SpeedStep> speeds,
    Angle greatestMitre,
    Angle mitreStep,
    Optional<Tilt> tilt,
    Length cutWidth,
    Length cutHeight,
    Length tiltedHeight,
    Length stopReach,
    Length stopStep,
    Band blades,
    boolean hasGuard,
    boolean hasExtraction)
    implements Machine {

  public MitreSaw {
    speeds = List.copyOf(speeds);
  }

  @Override
  public String kind() {
    return "mitre-saw";
  }
}
