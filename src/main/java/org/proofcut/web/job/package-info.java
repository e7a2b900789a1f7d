/** The page of a job: its form, and beside it what the typed case comes to. */
@Room(
    step = 310,
    question = "What is to be made?",
    gives = "the form of a job and its live answer",
    notHere = "the sheets of a job in work (web.sheet)",
    mayImport = {
      "core.measure",
      "core.measure.display",
      "core.evidence",
      "core.readings",
      "core.stock",
      "core.part",
      "core.casework",
      "core.method",
      "core.operation",
      "core.drawing",
      "core.plan",
      "core.setup",
      "core.shop",
      "core.intake",
      "logbook",
      "bench",
      "web.part"
    })
package org.proofcut.web.job;

import org.proofcut.Room;
