/**
 * Pages on where each piece of gear lives: cabinets with their plans, what is out and what falls
 * due, and the papers for the door and the bench.
 */
@Room(
    step = 310,
    question = "Where does each piece of gear live?",
    gives = "/storage and all pages below it",
    notHere = "the plan (core.storage), what is kept of it (bench), the forms of gear (web.shop)",
    mayImport = {
      "core.measure",
      "core.measure.display",
      "core.evidence",
      "core.boring",
      "core.shop",
      "core.checklist",
      "core.storage",
      "core.drawing",
      "core.intake",
      "content",
      "logbook",
      "bench",
      "web.part"
    })
package org.proofcut.web.storage;

import org.proofcut.Room;
