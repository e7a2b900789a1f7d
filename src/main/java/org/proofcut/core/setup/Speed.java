package org.proofcut.core.setup;

import org.proofcut.core.evidence.Amount;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.shop.SpeedStep;

/**
 * How fast the cutter turns.
 *
 * @param step what the dial is set to
 * @param limit the highest speed for this cutter, in revolutions a minute
 * @param rim speed of the cutting edges
 */
public record Speed(SpeedStep step, Worked<Integer> limit, Worked<Amount> rim) {}
