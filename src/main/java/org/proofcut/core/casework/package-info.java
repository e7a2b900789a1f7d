/**
 * From a wanted case to its parts: every size worked out from the joinery and the readings, and a
 * second check that knows none of those formulas and puts the parts together in space.
 */
@Room(
    step = 70,
    question = "What parts make this case?",
    gives =
        "Case: parts, housings, problems; SpaceCheck, which also says where each part is Seated",
    notHere = "cutters and machines (method)",
    mayImport = {
      "core.measure",
      "core.measure.display",
      "core.evidence",
      "core.readings",
      "core.stock",
      "core.part",
      "core.fit"
    })
package org.proofcut.core.casework;

import org.proofcut.Room;
