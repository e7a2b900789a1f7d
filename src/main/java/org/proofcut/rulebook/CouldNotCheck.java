package org.proofcut.rulebook;

import java.util.List;
import java.util.Optional;
import org.proofcut.core.evidence.Citation;
import org.proofcut.core.safety.Control;
import org.proofcut.core.safety.Finding;
import org.proofcut.core.safety.SignalWord;

/**
 * What can't be judged is no less dangerous for it: it stops the step, and says what is missing.
 */
final class CouldNotCheck {

  private CouldNotCheck() {}

  static Finding finding(
      String rule,
      SignalWord word,
      String hazard,
      String missing,
      Citation because,
      List<Finding.Seen> seen) {
    var known = missing.isEmpty() ? "a figure is out of range" : "not known: " + missing;
    return new Finding(
        rule,
        Finding.Effect.STOP,
        word,
        "Could not check (%s). %s".formatted(known, hazard),
        List.of(
            new Control(
                Control.Kind.WORK_PRACTICE,
                "Do not go on until the shop and the job say what is missing.")),
        List.of(),
        List.of(),
        because,
        "",
        seen,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty());
  }
}
