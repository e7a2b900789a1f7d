package org.proofcut.core.plan;

import org.proofcut.core.casework.CaseLimits;
import org.proofcut.core.checklist.Wording;
import org.proofcut.core.exposure.DustBook;
import org.proofcut.core.fit.FitLimits;
import org.proofcut.core.operation.OperationLimits;
import org.proofcut.core.safety.Rulebook;
import org.proofcut.core.setup.SetupLimits;

/**
 * All that the house knows beforehand: limits, rules, words and woods. Handed in, never fetched.
 */
public record Book(
    CaseLimits caseLimits,
    FitLimits fitLimits,
    SetupLimits setupLimits,
    OperationLimits operationLimits,
    Rulebook rules,
    Wording wording,
    DustBook dust) {

  /** A house that knows nothing of dust. */
  public Book(
      CaseLimits caseLimits,
      FitLimits fitLimits,
      SetupLimits setupLimits,
      OperationLimits operationLimits,
      Rulebook rules,
      Wording wording) {
    this(caseLimits, fitLimits, setupLimits, operationLimits, rules, wording, DustBook.EMPTY);
  }
}
