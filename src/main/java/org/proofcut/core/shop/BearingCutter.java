package org.proofcut.core.shop;

import java.util.Optional;
import org.proofcut.core.measure.Length;

/**
 * A router cutter with a bearing at its free end, which rides an edge and so decides how far the
 * cutter reaches over the face.
 *
 * @param bearing outside diameter of the bearing
 * @param diameter largest diameter of the cutter, without the bearing
 * @param cuttingLength length of its edges, from the bearing up
 * @param shank diameter of the shank, which has to fit the collet
 */
public record BearingCutter(
    String id,
    String name,
    Profile profile,
    Length bearing,
    Length diameter,
    Length cuttingLength,
    int edges,
    Length shank,
    Optional<Integer> markedTopSpeed)
    implements Cutter, RouterCutter {

  /** What it leaves on an edge, as the trade calls it. */
  public enum Profile {
    ROUND_OVER("round-over"),
    COVE("cove"),
    CHAMFER("chamfer"),
    OGEE("ogee"),
    RABBET("rabbet"),
    /** As wide as its bearing: it takes off what stands beyond the edge that the bearing rides. */
    FLUSH_TRIM("flush trim");

    private final String words;

    Profile(String words) {
      this.words = words;
    }

    public String words() {
      return words;
    }

    /** As forms and addresses write it. */
    public String id() {
      return name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
    }

    /**
     * Whether a cut as deep as it is wide shows all of it. Geometry for a quarter circle and for
     * 45°; a rabbet is as wide at any depth, an ogee's shape is its maker's own.
     */
    public boolean isAsDeepAsWide() {
      return switch (this) {
        case ROUND_OVER, COVE, CHAMFER -> true;
        case OGEE, RABBET, FLUSH_TRIM -> false;
      };
    }
  }

  /** From the edge that the bearing rides to where the cut ends on the face. */
  @Override
  public Length cutWidth() {
    return diameter.minus(bearing).half();
  }
}
