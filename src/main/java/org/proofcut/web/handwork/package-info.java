/** Pages of work without a cutter that belongs to no job: a few fields, and the answer at once. */
@Room(
    step = 310,
    question = "What is looked out for in work by hand?",
    gives = "pages below /hand-work",
    notHere = "set-ups of machines (web.setup), what the rules say (core.safety)",
    mayImport = {
      "core.measure",
      "core.measure.display",
      "core.evidence",
      "core.operation",
      "core.safety",
      "core.checklist",
      "core.plan",
      "core.intake",
      "content",
      "bench",
      "web.part",
      "web.reading"
    })
package org.proofcut.web.handwork;

import org.proofcut.Room;
