/** The first page, the demo and how to be rid of it, and the page of who has lost the way. */
@Room(
    step = 310,
    question = "What is there to go on with?",
    gives = "the first page; pages for an unknown address and for a fault of the program",
    notHere = "a job's own page (web.job), its sheets (web.sheet)",
    mayImport = {
      "core.measure",
      "core.measure.display",
      "core.evidence",
      "core.casework",
      "core.shop",
      "core.storage",
      "core.plan",
      "core.run",
      "core.intake",
      "logbook",
      "bench"
    })
package org.proofcut.web.home;

import org.proofcut.Room;
