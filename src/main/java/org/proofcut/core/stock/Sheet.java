package org.proofcut.core.stock;

import java.util.Optional;
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
 * @param wood what it is made from, in the maker's words, such as iroko; empty where not told
 */
public record Sheet(
    String id,
    String name,
    Material material,
    Length length,
    Length width,
    Readings thickness,
    Optional<String> wood) {

  /** A sheet whose wood was not told. */
  public Sheet(
      String id, String name, Material material, Length length, Length width, Readings thickness) {
    this(id, name, material, length, width, thickness, Optional.empty());
  }
}
