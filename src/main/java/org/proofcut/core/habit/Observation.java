package org.proofcut.core.habit;

import java.time.Instant;
import java.util.Objects;
import org.proofcut.core.measure.Length;

/**
 * What one proof cut told of one trait.
 *
 * @param proof id of the proof; with the trait it names the observation
 * @param set what was set or marked
 * @param found what the caliper found: the mean of the readings of this proof
 * @param at when it was measured
 */
public record Observation(String proof, Trait trait, Length set, Length found, Instant at) {

  public Observation {
    Objects.requireNonNull(proof);
    Objects.requireNonNull(trait);
    Objects.requireNonNull(set);
    Objects.requireNonNull(found);
    Objects.requireNonNull(at);
  }

  /** What it says of the trait. */
  public Length value() {
    return trait.valueOf(set, found);
  }

  /** How far it is off what was set or marked; positive where larger. */
  public Length off() {
    return found.minus(set);
  }

  boolean isOf(String otherProof, Trait otherTrait) {
    return proof.equals(otherProof) && trait.equals(otherTrait);
  }
}
