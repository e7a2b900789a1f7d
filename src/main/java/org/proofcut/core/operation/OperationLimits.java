package org.proofcut.core.operation;

import org.proofcut.core.evidence.Worked;
import org.proofcut.core.measure.Length;

/**
 * What is left over for a later cut, and how large a proof piece is. From {@code
 * content/operation/limits}.
 *
 * @param stripOver how much wider than the finished part a rough strip is
 * @param lengthOver how much longer than designed a housed part stays until its housings are proven
 * @param proofPieceLength least length of a proof piece along the guide
 * @param proofPieceBeyond how far a proof piece reaches beyond its cut
 */
public record OperationLimits(
    Worked<Length> stripOver,
    Worked<Length> lengthOver,
    Worked<Length> proofPieceLength,
    Worked<Length> proofPieceBeyond) {}
