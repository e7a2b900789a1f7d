/**
 * What a person typed, read into a shop or a design, or into problems that name their field. Forms
 * on pages and bodies of the API are the same fields, so both are read here.
 */
@Room(
    step = 130,
    question = "What did the person type?",
    gives =
        "Shop, CaseDesign, SingleCut, HandTask, LiftTask, CaseOnFloor, Cabinet, DayAsked, Ruling, Length: or"
            + " Problems that name the field",
    notHere = "whether a design is sound (casework), where typed text is kept (logbook)",
    mayImport = {
      "core.measure",
      "core.measure.display",
      "core.evidence",
      "core.exposure",
      "core.geometry",
      "core.exposure",
      "core.readings",
      "core.stock",
      "core.shop",
      "core.part",
      "core.fit",
      "core.boring",
      "core.casework",
      "core.weight",
      "core.storage",
      "core.setup",
      "core.habit",
      "core.operation"
    })
package org.proofcut.core.intake;

import org.proofcut.Room;
