/**
 * What one machine is set to for one cut. Takes what the cut must come to, a machine and a cutter;
 * gives the figures to set, the passes, the speed, the feed, and how a proof cut will be judged. It
 * knows no part and no job.
 */
@Room(
    step = 80,
    question = "What is the machine set to?",
    gives = "Setup, or a Refusal that says why",
    notHere = "choice among machines and cutters (method), the parts (operation)",
    mayImport = {
      "core.measure",
      "core.measure.display",
      "core.evidence",
      "core.geometry",
      "core.boring",
      "core.stock",
      "core.feeding",
      "core.shop"
    })
package org.proofcut.core.setup;

import org.proofcut.Room;
