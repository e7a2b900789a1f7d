/** Whether a proof cut proves its set-up, and if not, what to change, by how much and which way. */
@Room(
    step = 95,
    question = "Is the set-up proven?",
    gives = "Verdict on each measure, with a signed correction",
    notHere = "the record of readings (run)",
    mayImport = {"core.measure", "core.evidence", "core.setup"})
package org.proofcut.core.proof;

import org.proofcut.Room;
