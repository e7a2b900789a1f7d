package org.proofcut.bench;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.proofcut.core.evidence.Problem;
import org.proofcut.core.intake.Field;
import org.proofcut.core.measure.LengthUnit;
import org.proofcut.core.operation.HandTask;
import org.proofcut.core.plan.SinglePlan;

/**
 * A task without a cutter as typed, and what it comes to.
 *
 * @param unit that figures are shown in
 * @param task empty while something can't be read
 * @param plan of that task
 * @param problems what is wrong with what was typed
 */
public record HandDraft(
    List<Field> fields,
    Map<String, String> typed,
    LengthUnit unit,
    Optional<HandTask> task,
    Optional<SinglePlan> plan,
    List<Problem> problems) {

  public HandDraft {
    fields = List.copyOf(fields);
    typed = Map.copyOf(typed);
    problems = List.copyOf(problems);
  }

  /** Whether there is a task, and no rule stops it. */
  public boolean isSound() {
    return plan.isPresent() && !plan.get().sheet().isStopped();
  }
}
