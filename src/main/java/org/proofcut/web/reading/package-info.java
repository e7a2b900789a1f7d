/** What stands on a sheet to be read, whatever is done with it. */
@Room(
    step = 305,
    question = "What is read off a sheet?",
    gives = "SheetReads: figures, facts, drawings, cautions; Shows: how lengths are written there",
    notHere = "what is confirmed and measured on it (web.sheet), what is asked first (web.setup)",
    mayImport = {
      "core.measure",
      "core.measure.display",
      "core.evidence",
      "core.shop",
      "core.setup",
      "core.method",
      "core.operation",
      "core.fit",
      "core.proof",
      "core.safety",
      "core.checklist",
      "core.casework",
      "core.plan",
      "core.drawing",
      "web.part"
    })
package org.proofcut.web.reading;

import org.proofcut.Room;
