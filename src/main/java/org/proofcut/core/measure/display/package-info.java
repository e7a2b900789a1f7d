/**
 * Lengths and angles as shown to a person, with what rounding left over.
 *
 * <p>Takes a {@link org.proofcut.core.measure.Length} and a scale; gives a {@link
 * org.proofcut.core.measure.display.Shown}, which cannot be turned back into arithmetic.
 */
@Room(
    step = 11,
    question = "How is a length or an angle written for a person to read?",
    gives = "Shown: whole, fraction, unit, and what rounding left over; Degrees",
    notHere = "what a machine can be set to (setup): that is a length, judged as set",
    mayImport = "core.measure")
package org.proofcut.core.measure.display;

import org.proofcut.Room;
