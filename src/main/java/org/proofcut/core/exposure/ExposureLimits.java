package org.proofcut.core.exposure;

import org.proofcut.core.evidence.Worked;
import org.proofcut.core.measure.Length;

/**
 * What a day's noise is worked out with, where nothing was measured. From {@code
 * content/exposure/limits/noise}.
 *
 * @param handFeed length that is fed by hand in a minute, slow rather than fast
 * @param secondsAroundCut seconds that a machine runs before and after each pass
 * @param secondsEachPlunge seconds for each plunge of a bit, with what lies around it
 * @param proofCuts how many proof cuts a set-up takes
 * @param dbcOverDba how much more a level may be in dBC than in dBA, in dB
 * @param snrDerating what is taken off an SNR for wear at work, in dB
 * @param tooQuiet level under a protector, in dBA, below which too little is heard
 */
public record ExposureLimits(
    Worked<Length> handFeed,
    Worked<Integer> secondsAroundCut,
    Worked<Integer> secondsEachPlunge,
    Worked<Integer> proofCuts,
    Worked<Integer> dbcOverDba,
    Worked<Integer> snrDerating,
    Worked<Integer> tooQuiet) {}
