/** Pages of set-ups that belong to no job: a few fields, and the answer while they are typed. */
@Room(
    step = 310,
    question = "What is the machine set to, now?",
    gives = "pages below /setups",
    notHere = "sheets of a job, with their checklist and record (web.sheet)",
    mayImport = {
      "core.measure",
      "core.measure.display",
      "core.evidence",
      "core.part",
      "core.setup",
      "core.shop",
      "core.operation",
      "core.fit",
      "core.checklist",
      "core.plan",
      "core.intake",
      "content",
      "bench",
      "web.part",
      "web.reading"
    })
package org.proofcut.web.setup;

import org.proofcut.Room;
