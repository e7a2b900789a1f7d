/**
 * What has been done and what may be done now. Takes a plan, the record of acts and the time; gives
 * a progress, which is always worked out anew and never kept.
 */
@Room(
    step = 160,
    question = "How far is the work, and what is open?",
    gives =
        "Act and Entry for the record; Progress: confirmed, proven, lost because, locked because",
    notHere = "where the record is kept (logbook)",
    mayImport = {
      "core.measure",
      "core.measure.display",
      "core.evidence",
      "core.shop",
      "core.part",
      "core.casework",
      "core.shop",
      "core.setup",
      "core.operation",
      "core.proof",
      "core.safety",
      "core.checklist",
      "core.plan"
    })
package org.proofcut.core.run;

import org.proofcut.Room;
