package org.proofcut.core.setup;

import org.proofcut.core.measure.Length;

/**
 * Highest speed for router cutters up to a diameter.
 *
 * @param upTo largest diameter of the band, included
 * @param perMinute highest speed in revolutions a minute
 */
public record SpeedBand(Length upTo, int perMinute) {}
