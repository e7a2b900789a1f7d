/** How tightly one part goes into another, judged at both ends of the readings. */
@Room(
    step = 65,
    question = "How much room does a joint need?",
    gives = "SlotFit, FlushFit: target, accepted band, or why there is none; Tightness",
    notHere = "where a housing lies (casework), which cutter makes it (method)",
    mayImport = {"core.measure", "core.evidence", "core.readings"})
package org.proofcut.core.fit;

import org.proofcut.Room;
