package org.proofcut.core.plan;

import java.util.List;
import org.proofcut.core.evidence.Problem;
import org.proofcut.core.setup.StackChoice;

/**
 * The plan of one cut, or of one task without a cutter, that belongs to no job.
 *
 * @param stacks the best few stacks, the one that is set up first; empty where none is used
 * @param problems why no machine and cutter in the shop can make it; empty where one can
 */
public record SinglePlan(OperationSheet sheet, List<StackChoice> stacks, List<Problem> problems) {

  public SinglePlan {
    stacks = List.copyOf(stacks);
    problems = List.copyOf(problems);
  }
}
