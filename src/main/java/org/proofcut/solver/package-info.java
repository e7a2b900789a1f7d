/**
 * Placers that the core asks for. One is our own and finds good placings fast; the other proves how
 * good they are, with the CP-SAT solver of OR-Tools. Floating point stays in here: whole numbers
 * come in, and what goes out is counted anew by the core's own {@code Placing}.
 */
@Room(
    step = 195,
    question = "How is a placing solved, and is there a better one?",
    gives = "ProvingPlacer and AnnealedPlacer, each a core.storage.Placer",
    notHere = "what is to be placed, and what it costs (core.storage)",
    mayImport = {"core.storage"})
package org.proofcut.solver;

import org.proofcut.Room;
