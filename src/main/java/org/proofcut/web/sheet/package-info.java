/** The pages of a job in work: its sheets, and one sheet from the first look to the sign-off. */
@Room(
    step = 310,
    question = "What does the maker see at the machine?",
    gives = "pages below /jobs/{job}/sheets, and what to do in trouble",
    notHere = "what may be done (core.run), what happens then (bench)",
    mayImport = {
      "core.measure",
      "core.measure.display",
      "core.evidence",
      "core.shop",
      "core.storage",
      "core.stock",
      "core.part",
      "core.fit",
      "core.casework",
      "core.setup",
      "core.method",
      "core.operation",
      "core.proof",
      "core.safety",
      "core.checklist",
      "core.intake",
      "core.plan",
      "core.run",
      "core.drawing",
      "content",
      "logbook",
      "bench",
      "web.part",
      "web.reading"
    })
package org.proofcut.web.sheet;

import org.proofcut.Room;
