/** Pages on lifting, on what the parts of a job weigh, and on whether a finished case tips. */
@Room(
    step = 310,
    question = "What does it weigh, can one person lift it, does it stand?",
    gives = "/lifting; pages below /jobs/{job}/weights and /jobs/{job}/standing",
    notHere = "the figures (core.exposure, core.weight), the form of a job (web.job)",
    mayImport = {
      "core.measure",
      "core.measure.display",
      "core.evidence",
      "core.exposure",
      "core.stock",
      "core.part",
      "core.casework",
      "core.weight",
      "core.drawing",
      "core.intake",
      "logbook",
      "bench",
      "web.part"
    })
package org.proofcut.web.weight;

import org.proofcut.Room;
