package org.proofcut.core.storage;

import org.proofcut.core.measure.Band;
import org.proofcut.core.measure.Length;

/**
 * A door that shuts over some of a cabinet.
 *
 * @param number from 1, on the left
 * @param across what of the inside it shuts
 * @param hingedLeft whether its hinges are on its left, seen from the front
 * @param thickness of the panel that hooks are screwed to
 */
public record Door(int number, Band across, boolean hingedLeft, Length thickness) {}
