/**
 * From a wanted case and a shop to the operation sheets, in one readable line of steps. A plan is a
 * value: kept when work begins, and shown from what was kept.
 */
@Room(
    step = 150,
    question = "What are all the sheets of this job?",
    gives = "Plan: parts, operation sheets in order, what is wrong",
    notHere = "what has been done so far (run)",
    mayImport = {
      "core.measure",
      "core.measure.display",
      "core.evidence",
      "core.exposure",
      "core.readings",
      "core.stock",
      "core.shop",
      "core.part",
      "core.fit",
      "core.casework",
      "core.setup",
      "core.method",
      "core.operation",
      "core.safety",
      "core.checklist"
    })
package org.proofcut.core.plan;

import org.proofcut.Room;
