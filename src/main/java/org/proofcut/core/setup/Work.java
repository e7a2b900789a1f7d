package org.proofcut.core.setup;

import org.proofcut.core.measure.Band;

/**
 * The pieces of one batch, as they lie at the machine.
 *
 * @param alongGuide from the shortest to the longest edge that rides the guide
 * @param acrossGuide how far the pieces reach out from the guide, least to most
 * @param thickness thinnest to thickest reading
 */
public record Work(Band alongGuide, Band acrossGuide, Band thickness) {}
