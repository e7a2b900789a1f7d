package org.proofcut.core.shop;

import java.util.Optional;
import org.proofcut.core.measure.Length;

/**
 * The turning head of a jointer or planer, with straight knives. It belongs to its machine, and is
 * derived from what is entered there.
 *
 * @param diameter of the circle that the knives' edges run on
 * @param edges how many knives
 * @param width of the knives
 * @param perMinute the one speed that its machine turns it at
 */
public record KnifeHead(
    String id, String name, Length diameter, int edges, Length width, int perMinute)
    implements Cutter {

  @Override
  public Length cutWidth() {
    return width;
  }

  /** What the plate on its machine says: its maker built the head for that speed. */
  @Override
  public Optional<Integer> markedTopSpeed() {
    return Optional.of(perMinute);
  }
}
