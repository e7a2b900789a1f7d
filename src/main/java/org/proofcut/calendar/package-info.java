/** What falls due, as a calendar that other programs read (RFC 5545, with the name of RFC 7986). */
@Room(
    step = 215,
    question = "What falls due, for a calendar?",
    gives = "DueCalendar: the text of an iCalendar file",
    notHere = "what falls due, and when (core.storage)",
    mayImport = {"core.evidence", "core.storage"})
package org.proofcut.calendar;

import org.proofcut.Room;
