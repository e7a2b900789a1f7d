package org.proofcut.core.method;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.proofcut.core.setup.Refusal;
import org.proofcut.core.setup.Setup;

/**
 * The way a cut is made.
 *
 * @param setup the first way that works; empty where none does
 * @param refused every way tried before it, with why it was refused
 */
public record Choice(Optional<Setup> setup, List<Refused> refused) {

  /** A way that was tried and refused. */
  public record Refused(String machine, String cutter, Refusal why) {}

  /**
   * The refusal that tells the maker most: the first that is of the work or the way, rather than of
   * a cutter that another would do in place of. Empty where nothing was tried.
   */
  public Optional<Refused> telling() {
    return refused.stream().min(Comparator.comparingInt(one -> ofCutter(one.why().reason())));
  }

  private static int ofCutter(Refusal.Reason reason) {
    return switch (reason) {
      case CUTTER_DOES_NOT_FIT_MACHINE -> 2;
      case CUTTER_TOO_WIDE, CUTTER_TOO_NARROW, CUTTER_TOO_SHORT, NO_STACK_FITS -> 1;
      case TOO_FAST,
          OUT_OF_REACH,
          TOO_DEEP,
          WORK_TOO_SMALL,
          END_TOO_SHORT_ON_FENCE,
          AID_MISSING,
          STEP_TOO_COARSE,
          STRIP_TOO_THIN,
          NOT_ALLOWED ->
          0;
    };
  }

  public Choice {
    refused = List.copyOf(refused);
  }
}
