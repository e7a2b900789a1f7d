package org.proofcut.core.setup;

import java.util.Optional;

/**
 * Why a machine and a cutter can't make a cut.
 *
 * @param reason the kind of reason
 * @param what what is wrong, with the figures
 * @param instead what would help
 */
public record Refusal(Reason reason, String what, String instead) implements Answer {

  /** A refusal for this reason, where a check may also find none. */
  static Optional<Refusal> because(Reason reason, String what, String instead) {
    return Optional.of(new Refusal(reason, what, instead));
  }

  /** The first that stands in the way, in the order that a maker would find them. */
  @SafeVarargs
  static Optional<Refusal> firstOf(Optional<Refusal>... refusals) {
    for (var refusal : refusals) {
      if (refusal.isPresent()) {
        return refusal;
      }
    }
    return Optional.empty();
  }

  /** The kinds of reason, by what would have to change. */
  public enum Reason {
    CUTTER_TOO_WIDE,
    CUTTER_TOO_NARROW,
    CUTTER_TOO_SHORT,
    CUTTER_DOES_NOT_FIT_MACHINE,
    TOO_FAST,
    OUT_OF_REACH,
    TOO_DEEP,
    WORK_TOO_SMALL,
    END_TOO_SHORT_ON_FENCE,
    AID_MISSING,
    STEP_TOO_COARSE,
    STRIP_TOO_THIN,
    /** No choice of chippers and shims comes to the width. */
    NO_STACK_FITS,
    /** The saw's manual, its guarding or a local rule stand against it. */
    NOT_ALLOWED
  }
}
