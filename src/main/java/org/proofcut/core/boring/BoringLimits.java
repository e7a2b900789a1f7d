package org.proofcut.core.boring;

import org.proofcut.core.evidence.Worked;
import org.proofcut.core.measure.Length;

/**
 * How much room holes have, and what is left under them. From {@code content/boring/limits}.
 *
 * @param screwPlay play that a shank is given in its clearance hole
 * @param mostScrewPlay most play that it may have there
 * @param pilotTolerance how far a pilot may be off, as bits come in steps
 * @param headUnderFace how far a screw's head is sunk below the face
 * @param leastUnderCup least wood under a hinge's cup
 * @param leastUnderDowel least wood under a dowel's hole in a face
 */
public record BoringLimits(
    Worked<Length> screwPlay,
    Worked<Length> mostScrewPlay,
    Worked<Length> pilotTolerance,
    Worked<Length> headUnderFace,
    Worked<Length> leastUnderCup,
    Worked<Length> leastUnderDowel) {}
