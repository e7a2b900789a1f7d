package org.proofcut.core.setup;

import java.util.List;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.measure.Length;

/**
 * Limits of set-ups. From {@code content/setup/limits}.
 *
 * @param deepestPass deepest single pass of a router cutter; half its diameter and its cutting
 *     length may say less
 * @param lightPass depth left for the last pass where a cut takes several
 * @param leastOverlap least that two passes side by side overlap
 * @param mostPassesAtSaw most passes side by side that a slot at the saw is shared into
 * @param leastStrip thinnest spacer strip that lies flat and stays where it is
 * @param fineStep step of a setting that decides a width: set by strip, feeler or caliper
 * @param markStep step of a mark or straightedge laid by rule
 * @param depthTolerance how far a housing's depth may be off; final lengths follow what is proven
 * @param distanceTolerance how far a housing may be off its distance from the reference edge
 * @param sizeTolerance how far a part may be off its finished size
 * @param bladeAbove how far a saw blade stands above the stock in a through cut
 * @param trackBelow how far a track saw's blade reaches below the stock
 * @param lastJointOpen how far the last joint of a ring of mitres may stand open
 * @param shortestAtMitreSaw shortest piece held by hand at a mitre saw
 * @param shortestAtSaw shortest piece ripped along the saw's fence
 * @param narrowestAtSaw narrowest piece that goes between blade and fence, or stays there
 * @param shortestAtRouter shortest edge that rides the router table's fence
 * @param overhangToContact most times longer that the overhang may be than the edge on the fence
 * @param leastCheek thinnest wood left on each side of a groove in an edge
 * @param leastBearingEdge least of an edge that a bearing rides
 * @param narrowestAtRouter narrowest piece that is fed past a router table's cutter
 * @param clampRoom what clamps need of a piece beside a hand-held router's base
 * @param mostOverhang most that is trimmed flush at once
 * @param mostTrim most that a pass takes off an edge along a split fence
 * @param leastChip thinnest chip that a router cutter's edge takes before it rubs
 * @param mostChip thickest chip that a router cutter's edge takes, fed by hand
 * @param deepestKnifePass most that knives take in one pass
 * @param lightKnifePass what the last pass on a face takes
 * @param shortestAtKnives shortest piece that goes over or under knives
 * @param thinnestAtKnives thinnest that a piece may be there, or become
 * @param snipe length at each end that a planer cuts too thin
 * @param thicknessTolerance how far a planed piece may be off its thickness
 * @param tableLengths how many times as long as a jointer's tables together a piece may be
 * @param leastKnifeMarks knife marks to the inch that a finished face wants at least
 * @param topSpeeds highest speed of router cutters by diameter, smallest first
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
public record SetupLimits(
    Worked<Length> deepestPass,
    Worked<Length> lightPass,
    Worked<Length> leastOverlap,
    Worked<Integer> mostPassesAtSaw,
    Worked<Length> leastStrip,
    Worked<Length> fineStep,
    Worked<Length> markStep,
    Worked<Length> depthTolerance,
    Worked<Length> distanceTolerance,
    Worked<Length> sizeTolerance,
    Worked<Length> bladeAbove,
    Worked<Length> trackBelow,
    Worked<Length> lastJointOpen,
    Worked<Length> shortestAtMitreSaw,
    Worked<Length> shortestAtSaw,
    Worked<Length> narrowestAtSaw,
    Worked<Length> shortestAtRouter,
    Worked<Integer> overhangToContact,
    Worked<Length> deepestKnifePass,
    Worked<Length> lightKnifePass,
    Worked<Length> shortestAtKnives,
    Worked<Length> thinnestAtKnives,
    Worked<Length> snipe,
    Worked<Length> thicknessTolerance,
    Worked<Integer> tableLengths,
    Worked<Integer> leastKnifeMarks,
    Worked<Length> leastCheek,
    Worked<Length> leastBearingEdge,
    Worked<Length> narrowestAtRouter,
    Worked<Length> clampRoom,
    Worked<Length> mostOverhang,
    Worked<Length> mostTrim,
    Worked<Length> leastChip,
    Worked<Length> mostChip,
    Worked<List<SpeedBand>> topSpeeds,
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
