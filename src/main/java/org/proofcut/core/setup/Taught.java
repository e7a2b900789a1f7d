package org.proofcut.core.setup;

import org.proofcut.core.evidence.Worked;
import org.proofcut.core.measure.Length;

/**
 * A figure that proof cuts have taught.
 *
 * @param use the figure to reckon with
 * @param words how it is known, for a page
 */
public record Taught(Worked<Length> use, String words) {}
