package org.proofcut.core.exposure;

import org.proofcut.core.evidence.Worked;
import org.proofcut.core.measure.Length;

/**
 * What is taken for granted where it is judged whether a case tips. From {@code
 * content/exposure/limits/standing}.
 *
 * @param contentsPerSquareMetre what usually stands on a shelf, in kg per square metre
 * @param hungKilograms what hangs on the front
 * @param hungBefore how far before the front it hangs
 * @param pullKilograms how hard somebody pulls at the front, as a spring balance shows it
 */
public record StandingLimits(
    Worked<Integer> contentsPerSquareMetre,
    Worked<Integer> hungKilograms,
    Worked<Length> hungBefore,
    Worked<Integer> pullKilograms) {}
