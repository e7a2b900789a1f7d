package org.proofcut.core.setup;

import org.proofcut.core.evidence.Worked;
import org.proofcut.core.measure.Length;

/**
 * Limits of what goes over or under knives. From {@code content/setup/limits/knives}.
 *
 * @param deepestKnifePass most that knives take in one pass
 * @param lightKnifePass what the last pass on a face takes
 * @param shortestAtKnives shortest piece that goes over or under knives
 * @param thinnestAtKnives thinnest that a piece may be there, or become
 * @param snipe length at each end that a planer cuts too thin
 * @param thicknessTolerance how far a planed piece may be off its thickness
 * @param tableLengths how many times as long as a jointer's tables together a piece may be
 * @param leastKnifeMarks knife marks to the inch that a finished face wants at least
 */
public record KnifeLimits(
    Worked<Length> deepestKnifePass,
    Worked<Length> lightKnifePass,
    Worked<Length> shortestAtKnives,
    Worked<Length> thinnestAtKnives,
    Worked<Length> snipe,
    Worked<Length> thicknessTolerance,
    Worked<Integer> tableLengths,
    Worked<Integer> leastKnifeMarks) {}
