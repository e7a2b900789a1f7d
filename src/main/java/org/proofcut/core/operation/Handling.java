package org.proofcut.core.operation;

import java.util.Optional;
import org.proofcut.core.part.Edge;

/**
 * How one part lies at the machine.
 *
 * @param face which face looks where, such as "inside face down"
 * @param rides the edge that rides the guide
 * @param leads the edge that meets the cutter first
 * @param trails the edge where the cutter comes out, and where it breaks fibres
 * @param breakout what to do about that; empty where nothing is needed
 * @param end where the end lies that lengths are taken from, such as "lower end on your left"; only
 *     where nothing leads and nothing trails
 */
public record Handling(
    String face,
    Edge rides,
    Edge leads,
    Edge trails,
    Optional<String> breakout,
    Optional<String> end) {

  /** A part that moves past the cutter, or is passed by it. */
  public Handling(String face, Edge rides, Edge leads, Edge trails, Optional<String> breakout) {
    this(face, rides, leads, trails, breakout, Optional.empty());
  }

  /** Where the edge lies that leads the work. */
  public String led() {
    if (rides == Edge.STRAIGHT || rides == Edge.CUT_FIRST) {
      return rides.words() + " against both stops";
    }
    return rides.words() + (end.isPresent() ? " away from you" : " on the guide");
  }

  /** What meets the cutter first, or where the end lies that a row of holes begins at. */
  public String first() {
    return end.orElseGet(() -> leads.words() + " leads");
  }
}
