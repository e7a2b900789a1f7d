package org.proofcut.core.habit;

import org.proofcut.core.evidence.Worked;
import org.proofcut.core.measure.Length;

/**
 * What the next set-up should reckon with.
 *
 * @param use the width, or distance, to reckon with; for a scale, what to add to the figure that is
 *     set, negative where less is to be set
 * @param isLearned whether something learned is in it; else it is the mark, or nothing to add
 * @param words what was learned and what is made of it, for a page
 */
public record Advice(Worked<Length> use, boolean isLearned, String words) {}
