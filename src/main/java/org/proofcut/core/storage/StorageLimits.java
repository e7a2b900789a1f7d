package org.proofcut.core.storage;

import org.proofcut.core.evidence.Worked;
import org.proofcut.core.measure.Length;

/**
 * Room and load that kept things are given, and what is reckoned where a wish is not met. From
 * {@code content/storage/limits}.
 *
 * @param besideStanding room between two things that stand side by side
 * @param besideHanging room between two things on hooks
 * @param above room over a thing, for the hand that lifts it out
 * @param untouched room that a thing that nothing may press on has more, on all sides
 * @param behindDoor room between a shut door, with all that hangs on it, and what is behind it
 * @param doorStile width of the door's edges that no hook is screwed into
 * @param belowHanging room under what hangs: a hook holds lower than its screw, and cloth stretches
 * @param hookDeep how far a hook stands out from what it is screwed to
 * @param hookFactor how many times a thing's weight its hook carries
 * @param seatedLow lowest reach from a chair
 * @param seatedHigh highest reach from a chair
 * @param seatedHighOver highest reach from a chair over something deep
 * @param seatedNear depth up to which something reached over is not deep
 * @param seatedFar depth over which nothing is reached from a chair
 * @param roomToGrow share of each place that is wished to stay free, in per cent
 * @param perCentimetre cost of each centimetre away from hand height, times the weight of the use
 * @param perCentimetreAndKilogram cost of each centimetre and kilogram away from where heavy things
 *     go
 * @param heavyGrams from which a thing is heavy
 * @param otherPosture cost of a posture that is not the best
 * @param apart cost of each further place that things used together are spread over
 * @param outOfTurn cost of two things that hang against the order of dressing
 * @param perPercentCrowded cost of each per cent of a place that room to grow is short of
 * @param moved cost of a thing that is moved from where it is
 */
public record StorageLimits(
    Worked<Length> besideStanding,
    Worked<Length> besideHanging,
    Worked<Length> above,
    Worked<Length> untouched,
    Worked<Length> behindDoor,
    Worked<Length> doorStile,
    Worked<Length> belowHanging,
    Worked<Length> hookDeep,
    Worked<Integer> hookFactor,
    Worked<Length> seatedLow,
    Worked<Length> seatedHigh,
    Worked<Length> seatedHighOver,
    Worked<Length> seatedNear,
    Worked<Length> seatedFar,
    Worked<Integer> roomToGrow,
    Worked<Integer> perCentimetre,
    Worked<Integer> perCentimetreAndKilogram,
    Worked<Integer> heavyGrams,
    Worked<Integer> otherPosture,
    Worked<Integer> apart,
    Worked<Integer> outOfTurn,
    Worked<Integer> perPercentCrowded,
    Worked<Integer> moved) {}
