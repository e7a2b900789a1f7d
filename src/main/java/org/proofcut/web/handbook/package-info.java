/** All cautions, by machine, to be read when nothing is cut. */
@Room(
    step = 310,
    question = "What can hurt, and where is it written?",
    gives =
        "the page of all rules, that of each harm of each cut, and that of the shop's own content",
    notHere = "which of them a step brings up (web.reading)",
    mayImport = {
      "core.measure",
      "core.measure.display",
      "core.evidence",
      "core.operation",
      "core.checklist",
      "core.safety",
      "core.drawing",
      "core.intake",
      "rulebook",
      "content",
      "bench"
    })
package org.proofcut.web.handbook;

import org.proofcut.Room;
