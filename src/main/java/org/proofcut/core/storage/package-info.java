/**
 * Where each thing that keeps a person whole has its place. A cabinet is taken apart into places, a
 * plan puts things there, and a check that knows only geometry and the rules of keeping judges any
 * plan, whoever made it.
 */
@Room(
    step = 78,
    question = "Where does each piece of gear live?",
    gives =
        "Places of a Cabinet; a Placing to be solved; StoragePlan; StorageCheck; the smallest change",
    notHere = "how a placing is solved (solver), what gear a cut asks for (safety)",
    mayImport = {
      "core.measure",
      "core.measure.display",
      "core.evidence",
      "core.boring",
      "core.readings",
      "core.stock",
      "core.part",
      "core.casework",
      "core.shop"
    })
package org.proofcut.core.storage;

import org.proofcut.Room;
