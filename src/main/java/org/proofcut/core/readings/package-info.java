/**
 * What the caliper really said: every reading is kept, and the ends, the mean and the spread are
 * worked out from them, never from a label.
 */
@Room(
    step = 30,
    question = "What does the caliper say?",
    gives = "Readings with minimum, maximum, mean and spread",
    notHere = "what a reading means for a joint (casework, method) or for a proof cut (proof)",
    mayImport = {"core.measure", "core.evidence"})
package org.proofcut.core.readings;

import org.proofcut.Room;
