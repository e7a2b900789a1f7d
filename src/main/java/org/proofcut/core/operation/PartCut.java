package org.proofcut.core.operation;

import java.util.Optional;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.measure.Length;
import org.proofcut.core.part.Edge;

/**
 * One piece to run through an operation and tick.
 *
 * @param id of the part, or of the strip for rough strips; stable within the job
 * @param size what this cut brings it to, where that differs from piece to piece or is worth
 *     telling
 * @param reference the edge that distances are taken from
 * @param handling how it lies; empty for work without a cutter
 */
public record PartCut(
    String id,
    String name,
    Optional<Worked<Length>> size,
    Edge reference,
    Optional<Handling> handling) {}
