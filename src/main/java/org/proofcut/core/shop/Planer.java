package org.proofcut.core.shop;

import org.proofcut.core.measure.Length;

/**
 * A planer, or thicknesser: rollers draw the work between a bed and a head of knives above it.
 *
 * @param feed length of wood that its rollers draw through in a minute
 * @param bedLength of the bed with its extensions, before and behind the head together
 * @param thickestWork that goes under the head
 * @param step smallest change of the height that can be set and read
 * @param hasGuard whether the head is covered on all sides
 * @param hasKickbackFingers whether pawls before the rollers hold back what the knives would throw
 */
public record Planer(
    String id,
    String name,
    Head knives,
    Length feed,
    Length widestWork,
    Length bedLength,
    Length thickestWork,
    Length deepestPass,
    Length step,
    Length shortestWork,
    Length thinnestWork,
    boolean hasGuard,
    boolean hasKickbackFingers,
    boolean hasExtraction)
    implements KnifeMachine {

  @Override
  public String kind() {
    return "planer";
  }
}
