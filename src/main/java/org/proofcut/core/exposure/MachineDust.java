package org.proofcut.core.exposure;

import org.proofcut.core.evidence.Worked;
import org.proofcut.core.measure.Length;

/**
 * What a kind of machine does to the air.
 *
 * @param name as a page offers it
 * @param strength of its dust in solid wood
 * @param port diameter that its hood usually has
 * @param hood where dust is caught, in a sentence
 */
public record MachineDust(
    String id, String name, Worked<DustStrength> strength, Worked<Length> port, String hood) {}
