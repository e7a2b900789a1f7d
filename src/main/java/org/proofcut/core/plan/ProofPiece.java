package org.proofcut.core.plan;

import org.proofcut.core.measure.Length;

/**
 * A piece of scrap that a proof is cut in, or tried with.
 *
 * @param sheet what it is cut from
 * @param alongGuide at least so long where it rides the guide
 * @param acrossGuide at least so far out from the guide
 * @param purpose what it is for, in words
 */
public record ProofPiece(String sheet, Length alongGuide, Length acrossGuide, String purpose) {}
