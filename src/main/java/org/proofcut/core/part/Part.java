package org.proofcut.core.part;

import org.proofcut.core.evidence.Worked;
import org.proofcut.core.measure.Length;
import org.proofcut.core.stock.Sheet;

/**
 * One part of a design at its finished size.
 *
 * @param id stable within the job, such as {@code left-side}; entries in the record refer to it
 * @param name what the sheet calls it, such as "left side"
 * @param role what it is in the case
 * @param sheet what it is cut from
 * @param length the size along the grain of the sheet's face
 * @param width the size across it
 */
public record Part(
    String id,
    String name,
    PartRole role,
    Sheet sheet,
    Worked<Length> length,
    Worked<Length> width) {}
