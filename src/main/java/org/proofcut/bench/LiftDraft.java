package org.proofcut.bench;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.proofcut.core.evidence.Problem;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.exposure.LiftTask;
import org.proofcut.core.intake.CutForm;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.LengthUnit;
import org.proofcut.core.weight.PartAtTheSaw;

/**
 * A lift as typed so far.
 *
 * @param part the part of a job that it began with, if any
 * @param task empty while something can't be read
 * @param estimatedOut how far out the hands are, while that was not measured
 * @param tooLarge whether the sizes alone rule a figure out
 * @param problems what is wrong with what was typed
 */
public record LiftDraft(
    List<CutForm.Group> groups,
    Map<String, String> typed,
    LengthUnit unit,
    Optional<PartAtTheSaw> part,
    Optional<LiftTask> task,
    Optional<Worked<Length>> estimatedOut,
    boolean tooLarge,
    List<Problem> problems) {

  public LiftDraft {
    groups = List.copyOf(groups);
    typed = Map.copyOf(typed);
    problems = List.copyOf(problems);
  }
}
