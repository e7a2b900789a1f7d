/**
 * What any design is made of: parts, their named faces and edges, the housings cut into them, and
 * how a part lies when it meets a machine.
 */
@Room(
    step = 60,
    question = "What are the parts, and which way round does each lie?",
    gives = "Part, Housing, Edge, Lie",
    notHere = "how big a part is (casework), how it is cut (method)",
    mayImport = {"core.measure", "core.evidence", "core.stock"})
package org.proofcut.core.part;

import org.proofcut.Room;
