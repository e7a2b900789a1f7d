package org.proofcut.core.part;

import org.proofcut.core.evidence.Worked;
import org.proofcut.core.measure.Length;

/**
 * A slot or step in one part that takes the edge of another. It runs the whole way across or along.
 *
 * @param id stable within the job, such as {@code left-side:bottom}
 * @param cut id of the part that it is cut in
 * @param entering id of the part that goes in
 * @param width the design width across the housing
 * @param depth into the thickness of the cut part
 * @param reference the edge that all distances are taken from
 * @param distance from the reference edge to the near edge of the housing; zero for a rabbet
 */
public record Housing(
    String id,
    Kind kind,
    String cut,
    String entering,
    Worked<Length> width,
    Worked<Length> depth,
    Edge reference,
    Worked<Length> distance) {

  public enum Kind {
    /** Across the grain, away from the ends. */
    DADO,
    /** A step across an end. */
    END_RABBET,
    /** A step along an edge. */
    EDGE_RABBET
  }
}
