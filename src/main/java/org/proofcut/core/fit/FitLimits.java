package org.proofcut.core.fit;

import org.proofcut.core.evidence.Worked;
import org.proofcut.core.measure.Length;

/**
 * How much room a joint may have. From {@code content/fit/limits}.
 *
 * @param leastRoom least room that glue can be worked with; under it the joint seizes
 * @param rightFrom from here it is right for glue, up to it snug
 * @param mostRoom most room for a glued joint
 * @param mostRoomScrewed most room where screws alone hold
 * @param targetRoom room aimed at, over the middle of the readings
 * @param mostProud most that a part may stand proud of another that it covers, to be trimmed
 */
public record FitLimits(
    Worked<Length> leastRoom,
    Worked<Length> rightFrom,
    Worked<Length> mostRoom,
    Worked<Length> mostRoomScrewed,
    Worked<Length> targetRoom,
    Worked<Length> mostProud) {}
