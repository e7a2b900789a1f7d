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
 */
public record Handling(
    String face, Edge rides, Edge leads, Edge trails, Optional<String> breakout) {}
