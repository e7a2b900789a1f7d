/**
 * Lengths as a maker measures and writes them, exact in both units.
 *
 * <p>Takes text or whole numbers; gives a {@link org.proofcut.core.measure.Length}.
 */
@Room(
    step = 10,
    question = "How long is it, exactly?",
    gives = "Length, read from what a person wrote; Rounding said by name",
    notHere = "how a length is shown (measure.display); several readings of one thing (readings)")
package org.proofcut.core.measure;

import org.proofcut.Room;
