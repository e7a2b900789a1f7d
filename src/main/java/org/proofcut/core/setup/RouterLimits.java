package org.proofcut.core.setup;

import java.util.List;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.measure.Length;

/**
 * Limits of a router's cuts, on the table and by hand. From {@code content/setup/limits/router}.
 *
 * @param deepestPass deepest single pass of a router cutter; half its diameter and its cutting
 *     length may say less
 * @param lightPass depth left for the last pass where a cut takes several
 * @param leastOverlap least that two passes side by side overlap
 * @param shortestAtRouter shortest edge that rides the router table's fence
 * @param overhangToContact most times longer that the overhang may be than the edge on the fence
 * @param narrowestAtRouter narrowest piece that is fed past a router table's cutter
 * @param leastCheek thinnest wood left on each side of a groove in an edge
 * @param leastTongue thinnest tongue along an edge
 * @param leastBearingEdge least of an edge that a bearing rides
 * @param clampRoom what clamps need of a piece beside a hand-held router's base
 * @param mostOverhang most that is trimmed flush at once
 * @param mostTrim most that a pass takes off an edge along a split fence
 * @param leastChip thinnest chip that a router cutter's edge takes before it rubs
 * @param mostChip thickest chip that a router cutter's edge takes, fed by hand
 * @param topSpeeds highest speed of router cutters by diameter, smallest first
 */
public record RouterLimits(
    Worked<Length> deepestPass,
    Worked<Length> lightPass,
    Worked<Length> leastOverlap,
    Worked<Length> shortestAtRouter,
    Worked<Integer> overhangToContact,
    Worked<Length> narrowestAtRouter,
    Worked<Length> leastCheek,
    Worked<Length> leastTongue,
    Worked<Length> leastBearingEdge,
    Worked<Length> clampRoom,
    Worked<Length> mostOverhang,
    Worked<Length> mostTrim,
    Worked<Length> leastChip,
    Worked<Length> mostChip,
    Worked<List<SpeedBand>> topSpeeds) {}
