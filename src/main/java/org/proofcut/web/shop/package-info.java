/** Pages of the shop: what stands in it, and the forms to enter, change and remove a thing. */
@Room(
    step = 310,
    question = "What does the maker have?",
    gives = "pages of machines, cutters, gear, liquids and work aids",
    notHere = "what may be typed into a form (core.intake)",
    mayImport = {
      "core.measure",
      "core.measure.display",
      "core.evidence",
      "core.exposure",
      "core.shop",
      "core.storage",
      "core.habit",
      "core.checklist",
      "core.intake",
      "content",
      "logbook",
      "bench",
      "web.part"
    })
package org.proofcut.web.shop;

import org.proofcut.Room;
