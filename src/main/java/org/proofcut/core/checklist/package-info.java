/**
 * What is looked at and confirmed at the pauses of an operation: figures, gear, checks. Nothing is
 * ticked beforehand, and nothing is ticked for all.
 */
@Room(
    step = 140,
    question = "What is confirmed, and when?",
    gives = "Checklist: the items of each pause; the words they are asked in",
    notHere = "who confirmed what (run)",
    mayImport = {"core.evidence", "core.shop", "core.setup", "core.operation", "core.safety"})
package org.proofcut.core.checklist;

import org.proofcut.Room;
