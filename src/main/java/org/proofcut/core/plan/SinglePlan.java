package org.proofcut.core.plan;

import java.util.List;
import org.proofcut.core.evidence.Problem;

/**
 * The plan of one cut that belongs to no job.
 *
 * @param problems why no machine and cutter in the shop can make it; empty where one can
 */
public record SinglePlan(OperationSheet sheet, List<Problem> problems) {

  public SinglePlan {
    problems = List.copyOf(problems);
  }
}
