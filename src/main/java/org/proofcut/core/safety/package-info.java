/** What can hurt in one step, and what to do about it. */
@Room(
    step = 120,
    question = "What can hurt in this step?",
    gives = "StepFacts; a Rulebook's Findings: stops, cautions, gear, checks",
    notHere = "conditions and their language (rulebook), sums over a day (exposure)",
    mayImport = {"core.measure", "core.evidence"})
package org.proofcut.core.safety;

import org.proofcut.Room;
