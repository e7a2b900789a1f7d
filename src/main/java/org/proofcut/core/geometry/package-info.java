/**
 * Figures that lines and angles alone decide: mitres, bevels, tapers, the blade above the table, a
 * bush in a template. Takes exact sizes and angles; gives worked figures, or what is wrong with
 * what was asked. It knows no machine and no part.
 */
@Room(
    step = 22,
    question = "What follows from lines and angles?",
    gives =
        "Worked figures of mitres, compound mitres, bevels, tapers, template guides and the exposed"
            + " blade",
    notHere = "what a machine can be set to (setup), holes (boring), feeds and passes (feeding)",
    mayImport = {"core.measure", "core.measure.display", "core.evidence"})
package org.proofcut.core.geometry;

import org.proofcut.Room;
