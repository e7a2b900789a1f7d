/**
 * Pictures as SVG text, made from the same numbers as the figures: a piece of the maker's rule, the
 * bar that shows how a fit lies in its band, safety signs, and the strokes that a drawing of a
 * machine is made of.
 *
 * <p>Takes exact lengths; they become drawing units at the last step and never come back.
 */
@Room(
    step = 180,
    question = "What does this look like, to scale?",
    gives = "Pictures: SVG text with the same thing said in words",
    notHere = "how big a picture stands on a page, and its ink and paper (proofcut.css)",
    mayImport = {
      "core.measure",
      "core.measure.display",
      "core.evidence",
      "core.readings",
      "core.stock",
      "core.shop",
      "core.boring",
      "core.part",
      "core.casework",
      "core.storage",
      "core.setup",
      "core.operation",
      "core.safety"
    })
package org.proofcut.core.drawing;

import org.proofcut.Room;
