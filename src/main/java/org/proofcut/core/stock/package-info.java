/** What stays in the cabinet: the sheets that parts are cut from, as they were measured. */
@Room(
    step = 40,
    question = "What is it made from?",
    gives = "Sheets with their readings; what a flat piece weighs",
    notHere = "machines, cutters and gear (shop)",
    mayImport = {"core.measure", "core.evidence", "core.readings"})
package org.proofcut.core.stock;

import org.proofcut.Room;
