/** The page on dust: what it does, what draws it off, and the mask as the last thing. */
@Room(
    step = 310,
    question = "What does the dust of this do, and what keeps it out?",
    gives = "the page below /dust",
    notHere = "figures of air and masks (core.exposure), cautions of a step (web.reading)",
    mayImport = {
      "core.measure",
      "core.measure.display",
      "core.evidence",
      "core.exposure",
      "core.intake",
      "logbook",
      "content",
      "bench",
      "web.part"
    })
package org.proofcut.web.dust;

import org.proofcut.Room;
