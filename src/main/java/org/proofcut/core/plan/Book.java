package org.proofcut.core.plan;

import org.proofcut.core.casework.CaseLimits;
import org.proofcut.core.checklist.Wording;
import org.proofcut.core.fit.FitLimits;
import org.proofcut.core.operation.OperationLimits;
import org.proofcut.core.safety.Rulebook;
import org.proofcut.core.setup.SetupLimits;

/** All that the house knows beforehand: limits, rules and words. Handed in, never fetched. */
public record Book(
    CaseLimits caseLimits,
    FitLimits fitLimits,
    SetupLimits setupLimits,
    OperationLimits operationLimits,
    Rulebook rules,
    Wording wording) {}
