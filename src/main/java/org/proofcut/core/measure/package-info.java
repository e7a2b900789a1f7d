/**
 * Lengths and angles as a maker measures and writes them, exact in every unit.
 *
 * <p>Takes text or whole numbers; gives a {@link org.proofcut.core.measure.Length} or an {@link
 * org.proofcut.core.measure.Angle}.
 */
@Room(
    step = 10,
    question = "How long is it, or how steep, exactly?",
    gives = "Length and Angle, read from what a person wrote; Rounding said by name",
    notHere = "how a measure is shown (measure.display); several readings of one thing (readings)")
package org.proofcut.core.measure;

import org.proofcut.Room;
