package org.proofcut.core.stock;

import org.proofcut.core.measure.Length;
import org.proofcut.core.readings.Readings;

/**
 * A sheet or board that parts are cut from.
 *
 * @param id stable within the job
 * @param name what the maker calls it
 * @param length along the grain of the face
 * @param width across the grain of the face
 * @param thickness what the caliper says; there is no nominal thickness here on purpose
 */
public record Sheet(
    String id, String name, Material material, Length length, Length width, Readings thickness) {}
