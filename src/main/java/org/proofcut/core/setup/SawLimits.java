package org.proofcut.core.setup;

import org.proofcut.core.evidence.Worked;
import org.proofcut.core.measure.Length;

/**
 * Limits of a saw's cuts: table saw, track saw and mitre saw. From {@code
 * content/setup/limits/saw}.
 *
 * @param bladeAbove how far a saw blade stands above the stock in a through cut
 * @param trackBelow how far a track saw's blade reaches below the stock
 * @param mostPassesAtSaw most passes side by side that a slot at the saw is shared into
 * @param shortestAtSaw shortest piece ripped along the saw's fence
 * @param narrowestAtSaw narrowest piece that goes between blade and fence, or stays there
 * @param shortestHeldAcross shortest piece held by hand in a crosscut at the table saw
 * @param narrowestUnderTrack least of the piece that is kept, to carry the track
 * @param shortestAtMitreSaw shortest piece held by hand at a mitre saw
 * @param shortestOnCarrier shortest piece that stops and clamps of a carrier hold
 * @param narrowestEnd narrowest end that the heel of a carrier pushes
 * @param leastStopsApart least distance between the two stops of a carrier
 * @param behindStops least of a carrier that lies behind its stops
 * @param steepestTaper how many times as long as it runs in a taper is at least
 * @param lastJointOpen how far the last joint of a ring of mitres may stand open
 */
public record SawLimits(
    Worked<Length> bladeAbove,
    Worked<Length> trackBelow,
    Worked<Integer> mostPassesAtSaw,
    Worked<Length> shortestAtSaw,
    Worked<Length> narrowestAtSaw,
    Worked<Length> shortestHeldAcross,
    Worked<Length> narrowestUnderTrack,
    Worked<Length> shortestAtMitreSaw,
    Worked<Length> shortestOnCarrier,
    Worked<Length> narrowestEnd,
    Worked<Length> leastStopsApart,
    Worked<Length> behindStops,
    Worked<Integer> steepestTaper,
    Worked<Length> lastJointOpen) {}
