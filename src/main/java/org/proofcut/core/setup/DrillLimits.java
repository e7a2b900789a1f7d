package org.proofcut.core.setup;

import java.util.List;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.measure.Length;

/**
 * Limits of holes, at the drill press, by hand and in a pocket jig. From {@code
 * content/setup/limits/drill}.
 *
 * @param rimSpeeds how fast the rims of bits may run
 * @param diametersToLift most times its diameter that a bit goes in before it is lifted for the
 *     chips
 * @param holeTolerance how far a hole may be off its diameter
 * @param beyondHole how far a bit goes into the waste board below a through hole
 * @param leastUnderPoint least wood below the point of a bit in a hole that does not go through
 * @param shortestAtDrill shortest piece bored while it is held by a fence and by hand
 * @param mostStops most holes in a row that a stop is set for; more are marked
 * @param leastBite least length of a pocket screw in the part that it holds
 * @param leastBeyondTip least wood beyond its tip
 * @param pocketTolerance how far the tip of a pocket screw may be off
 */
public record DrillLimits(
    Worked<List<RimSpeed>> rimSpeeds,
    Worked<Integer> diametersToLift,
    Worked<Length> holeTolerance,
    Worked<Length> beyondHole,
    Worked<Length> leastUnderPoint,
    Worked<Length> shortestAtDrill,
    Worked<Integer> mostStops,
    Worked<Length> leastBite,
    Worked<Length> leastBeyondTip,
    Worked<Length> pocketTolerance) {}
