package org.proofcut.core.setup;

import java.util.Optional;
import org.proofcut.core.evidence.Amount;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.shop.SpeedStep;

/**
 * How fast the cutter turns.
 *
 * @param step what the dial is set to
 * @param limit the highest speed for this cutter, in revolutions a minute
 * @param rim speed of the cutting edges
 * @param feed how fast to move, for a router cutter; empty for others, and for what was kept before
 *     it was told
 */
public record Speed(
    SpeedStep step, Worked<Integer> limit, Worked<Amount> rim, Optional<FeedBand> feed) {}
