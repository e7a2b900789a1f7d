package org.proofcut.bench;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.proofcut.core.casework.Case;
import org.proofcut.core.evidence.Problem;
import org.proofcut.core.intake.CutForm;
import org.proofcut.core.measure.LengthUnit;
import org.proofcut.core.weight.CaseBody;
import org.proofcut.core.weight.CaseOnFloor;

/**
 * A finished case on the floor, as typed so far.
 *
 * @param made the case as designed
 * @param onFloor empty while something can't be read
 * @param problems what is wrong with what was typed
 */
public record StandDraft(
    List<CutForm.Group> groups,
    Map<String, String> typed,
    Case made,
    Optional<CaseOnFloor> onFloor,
    CaseBody body,
    List<Problem> problems) {

  public StandDraft {
    groups = List.copyOf(groups);
    typed = Map.copyOf(typed);
    problems = List.copyOf(problems);
  }

  /** The unit that the job is worked in. */
  public LengthUnit unit() {
    return made.design().unit();
  }
}
