/**
 * Rules with conditions in CEL, the Common Expression Language, compiled once and judged fast.
 *
 * <p>A condition speaks of {@code fact.<id>} and {@code limit.<id>} alone. What could be wrong with
 * it is found when it is compiled: an unknown fact, a type that does not fit, a word that the fact
 * never says, a measured number written into it, an optional fact that is not asked for. What can
 * still go wrong later, a fact that should be there and is not, stops the step.
 */
@Room(
    step = 200,
    question = "Which rules speak of this step?",
    gives = "CelRulebook, a core.safety.Rulebook; faults of a condition",
    notHere = "the rules themselves and the files they stand in (content)",
    mayImport = {"core.measure", "core.evidence", "core.safety"})
package org.proofcut.rulebook;

import org.proofcut.Room;
