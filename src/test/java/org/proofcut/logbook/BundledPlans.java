package org.proofcut.logbook;

import org.proofcut.content.Content;
import org.proofcut.core.casework.CaseDesign;
import org.proofcut.core.casework.CaseLimits;
import org.proofcut.core.casework.CasesForTests;
import org.proofcut.core.fit.FitLimits;
import org.proofcut.core.operation.OperationLimits;
import org.proofcut.core.plan.Book;
import org.proofcut.core.plan.Plan;
import org.proofcut.core.plan.Planner;
import org.proofcut.core.setup.ShopsForTests;

/** Whole plans with the rules, limits and words that are really shipped. */
final class BundledPlans {

  static final Content CONTENT = Content.bundled();

  private static final Planner PLANNER =
      new Planner(
          new Book(
              CONTENT.limits(CaseLimits.class),
              CONTENT.limits(FitLimits.class),
              CONTENT.setupLimits(),
              CONTENT.limits(OperationLimits.class),
              CONTENT.rulebook(),
              CONTENT.wording()));

  private BundledPlans() {}

  static Plan cupboard() {
    return plan(CasesForTests.cupboard());
  }

  static Plan plan(CaseDesign design) {
    return PLANNER.plan(design, ShopsForTests.shop());
  }
}
