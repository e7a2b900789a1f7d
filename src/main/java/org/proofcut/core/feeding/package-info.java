/**
 * How fast the wood goes past the cutting edges and what each of them takes: chip, knife marks,
 * passes to a thickness. Takes speeds, counts and sizes; gives worked figures, or what is wrong
 * with what was asked. It knows no machine.
 */
@Room(
    step = 26,
    question = "How fast does the wood go by, and what does each edge and pass take?",
    gives = "Worked chip, feed and knife marks; the passes to a thickness",
    notHere = "how fast a cutter may turn (setup)",
    mayImport = {"core.measure", "core.measure.display", "core.evidence"})
package org.proofcut.core.feeding;

import org.proofcut.Room;
