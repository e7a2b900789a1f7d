package org.proofcut.core.shop;

import java.util.Optional;
import org.proofcut.core.measure.Length;

/**
 * A bit that a drill turns to make a hole.
 *
 * @param diameter of the hole it makes, as marked
 * @param length from its outer edges up to the chuck: no hole is deeper
 * @param point how far spur, point, cone or nose stands out beyond the outer edges; zero if nothing
 *     does
 * @param edges number of cutting edges
 */
public record Bit(
    String id,
    String name,
    Kind kind,
    Length diameter,
    Length length,
    Length point,
    int edges,
    Optional<Integer> markedTopSpeed)
    implements Cutter {

  /** What a bit's end looks like, and so what floor it leaves. */
  public enum Kind {
    BRAD_POINT("brad point"),
    TWIST("twist"),
    /** For the cups of hinges and other wide holes with a flat floor. */
    CUP("cup, with a flat floor"),
    COUNTERSINK("countersink"),
    /** A pilot's nose below a wider body, for pocket holes. */
    STEPPED("stepped, for pocket holes");

    private final String words;

    Kind(String words) {
      this.words = words;
    }

    public String words() {
      return words;
    }

    /** As content and forms write it. */
    public String id() {
      return name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
    }
  }

  @Override
  public Length cutWidth() {
    return diameter;
  }
}
