package org.proofcut.logbook;

import java.time.Instant;
import java.util.Objects;
import org.proofcut.core.plan.Plan;

/**
 * A plan that work was begun with.
 *
 * @param revision from 1 within the job
 * @param at when work began with it
 */
public record PlanRecord(int revision, Instant at, Plan plan) {

  public PlanRecord {
    Objects.requireNonNull(at);
    Objects.requireNonNull(plan);
  }
}
