package org.proofcut.bench;

import java.util.List;
import org.proofcut.core.evidence.Problem;
import org.proofcut.core.measure.LengthUnit;
import org.proofcut.core.plan.Plan;
import org.proofcut.core.run.Progress;
import org.proofcut.logbook.JobRecord;

/**
 * A job in work.
 *
 * @param revision of its plan, from 1
 * @param problems what has become wrong with design or shop since the plan was made; while there is
 *     any that stops, nothing may be done on its sheets
 */
public record Work(
    JobRecord job, int revision, Plan plan, Progress progress, List<Problem> problems) {

  public Work {
    problems = List.copyOf(problems);
  }

  /** The unit that the job is worked in. */
  public LengthUnit unit() {
    return plan.designed().design().unit();
  }

  public boolean isStopped() {
    return Problem.anyStops(problems);
  }
}
