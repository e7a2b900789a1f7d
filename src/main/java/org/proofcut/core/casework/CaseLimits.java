package org.proofcut.core.casework;

import org.proofcut.core.evidence.Worked;
import org.proofcut.core.measure.Length;

/**
 * Limits of case design. From {@code content/casework/limits}.
 *
 * @param backEase how much smaller than its opening the back is, in all
 * @param leastReadings fewest caliper readings of a sheet that count
 * @param leastBetweenHousings least wood between two housings, or between one and an end
 * @param smallestSide smallest outer size of a case
 * @param largestSide largest outer size of a case
 */
public record CaseLimits(
    Worked<Length> backEase,
    Worked<Integer> leastReadings,
    Worked<Length> leastBetweenHousings,
    Worked<Length> smallestSide,
    Worked<Length> largestSide) {}
