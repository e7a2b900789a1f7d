package org.proofcut.bench;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.proofcut.core.evidence.Problem;
import org.proofcut.core.intake.CutForm;
import org.proofcut.core.measure.LengthUnit;
import org.proofcut.core.plan.SinglePlan;

/**
 * A single cut as typed, and what it comes to.
 *
 * @param groups its fields, with the machines and cutters that the shop has for it
 * @param unit that figures are shown in
 * @param plan empty while something can't be read
 * @param problems what is wrong with what was typed
 */
public record CutDraft(
    List<CutForm.Group> groups,
    Map<String, String> typed,
    LengthUnit unit,
    Optional<SinglePlan> plan,
    List<Problem> problems) {

  public CutDraft {
    groups = List.copyOf(groups);
    typed = Map.copyOf(typed);
    problems = List.copyOf(problems);
  }

  /** Whether there is a set-up, and no rule stops it. */
  public boolean isSound() {
    return plan.isPresent() && plan.get().problems().isEmpty() && !plan.get().sheet().isStopped();
  }

  /** All that is wrong: with what was typed, or with the shop. */
  public List<Problem> allProblems() {
    return Stream.concat(problems.stream(), plan.stream().flatMap(one -> one.problems().stream()))
        .toList();
  }
}
