/** The page of a day's noise, with a job or without one. */
@Room(
    step = 310,
    question = "How loud is the day?",
    gives = "pages at /noise and /jobs/{job}/noise",
    notHere = "what it comes to (core.noise)",
    mayImport = {
      "core.measure",
      "core.measure.display",
      "core.evidence",
      "core.exposure",
      "core.noise",
      "core.drawing",
      "core.intake",
      "logbook",
      "bench",
      "web.part"
    })
package org.proofcut.web.noise;

import org.proofcut.Room;
