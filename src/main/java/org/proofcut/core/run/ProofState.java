package org.proofcut.core.run;

import java.util.List;
import org.proofcut.core.plan.Marks;

/** What is known of the proof of a set-up. */
public sealed interface ProofState {

  /** Nothing is cut to a size: there is nothing to prove. */
  record NotNeeded() implements ProofState {}

  /** No proof yet. */
  record NotYet() implements ProofState {}

  /** Proven, and the set-up still stands. */
  record Proven() implements ProofState {}

  /** Proven on an earlier day: one reading of the first setting is asked before it counts. */
  record ReadAgainFirst() implements ProofState {}

  /** Opened without a proof. */
  record Overridden(String reason) implements ProofState {}

  /**
   * There was a proof, and it no longer holds.
   *
   * @param because in words; empty where the plan changed
   * @param changed what changed in the plan
   */
  record Lost(String because, List<Marks.Difference> changed) implements ProofState {
    public Lost {
      changed = List.copyOf(changed);
    }
  }

  /** Whether the real cut is open. */
  default boolean opensTheCut() {
    return this instanceof NotNeeded || this instanceof Proven || this instanceof Overridden;
  }
}
