package org.proofcut.core.run;

import java.util.List;
import org.proofcut.core.measure.Length;
import org.proofcut.core.proof.Verdict.Correction;
import org.proofcut.core.setup.Measure;

/** Something that a person did at the bench. Acts are only ever added to the record. */
public sealed interface Act {

  /** An item of the checklist was confirmed, with the answer given. */
  record Confirmed(String item, String answer) implements Act {}

  /** Gear is not worn, or a look was passed over, for a reason that was written down. */
  record WentWithout(String item, String reason) implements Act {}

  /** A caliper reading of a proof cut. */
  record ReadingTaken(int attempt, Measure.Dimension dimension, Length found) implements Act {}

  /** The readings of one measure are thrown away, to be taken again on the same cut. */
  record ReadingsDropped(int attempt, Measure.Dimension dimension) implements Act {}

  /** Settings were moved as the proof said; the next proof cut begins. */
  record Corrected(List<Correction> corrections) implements Act {
    public Corrected {
      corrections = List.copyOf(corrections);
    }
  }

  /** The real cut was opened without a proof, for a reason that was written down. */
  record Overridden(String reason) implements Act {}

  /** The first setting was read again before a proof of an earlier day counts. */
  record ReadAgain(Length found) implements Act {}

  /** Something was moved or knocked: the proof is lost. */
  record Disturbed(String what) implements Act {}

  /** A real part was cut. */
  record PartCut(String part) implements Act {}

  /** A part ticked by mistake is not cut after all. */
  record PartNotCut(String part) implements Act {}

  /** Work was put down; the page says what state the machine should be in. */
  record Held() implements Act {}

  /** The operation is done and the machine left safe. */
  record SignedOff() implements Act {}
}
