package org.proofcut.bench;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.proofcut.core.evidence.Problem;
import org.proofcut.core.plan.Plan;

/**
 * A job as typed so far.
 *
 * @param plan what it comes to; empty while a field can't be read
 * @param problems everything that is wrong, each at its field
 */
public record Draft(Map<String, String> typed, Optional<Plan> plan, List<Problem> problems) {

  public Draft {
    problems = List.copyOf(problems);
  }

  /** Whether work could begin. */
  public boolean isSound() {
    return plan.map(Plan::isSound).orElse(false);
  }
}
