/**
 * How heavy parts, sheets and the finished case are, between the lightest and the heaviest that
 * their material may be, and whether the case stays on its feet.
 */
@Room(
    step = 75,
    question = "What does it weigh, and does it stand?",
    gives = "Weight of a piece, from its sizes; CaseBody, with its middle of gravity; CaseOnFloor",
    notHere = "how much can be lifted and when something tips (exposure), densities (content)",
    mayImport = {
      "core.measure",
      "core.evidence",
      "core.exposure",
      "core.readings",
      "core.stock",
      "core.part",
      "core.casework"
    })
package org.proofcut.core.weight;

import org.proofcut.Room;
