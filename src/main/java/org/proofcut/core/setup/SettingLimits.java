package org.proofcut.core.setup;

import org.proofcut.core.evidence.Worked;
import org.proofcut.core.measure.Length;

/**
 * Limits of what every set-up sets and how near it must come. From {@code
 * content/setup/limits/settings}.
 *
 * @param depthTolerance how far a housing's depth may be off; final lengths follow what is proven
 * @param distanceTolerance how far a housing may be off its distance from the reference edge
 * @param sizeTolerance how far a part may be off its finished size
 * @param fineStep step of a setting that decides a width: set by strip, feeler or caliper
 * @param markStep step of a mark or straightedge laid by rule
 * @param leastStrip thinnest spacer strip that lies flat and stays where it is
 */
public record SettingLimits(
    Worked<Length> depthTolerance,
    Worked<Length> distanceTolerance,
    Worked<Length> sizeTolerance,
    Worked<Length> fineStep,
    Worked<Length> markStep,
    Worked<Length> leastStrip) {}
