/** What has to be done, in order: which cut, on which parts, how each lies, what breaks out. */
@Room(
    step = 100,
    question = "What is done, to which parts, which way round?",
    gives = "Operations in order, each with its parts and how they are handled",
    notHere = "the figures (setup), the cautions (safety)",
    mayImport = {
      "core.measure",
      "core.evidence",
      "core.readings",
      "core.stock",
      "core.shop",
      "core.part",
      "core.fit",
      "core.casework",
      "core.setup",
      "core.method"
    })
package org.proofcut.core.operation;

import org.proofcut.Room;
