/**
 * How much of a day's noise, weight and dust reaches the person, by published formulas. Takes what
 * was measured or is kept in content; gives worked figures, or why there can be none. It knows no
 * machine and no job.
 */
@Room(
    step = 28,
    question = "How much noise, weight and dust reaches the person?",
    gives =
        "Worked doses, levels under a protector, weights that can be lifted; limits, airflow and masks"
            + " for dust; how easily a liquid takes fire; whether a cabinet tips",
    notHere = "levels of machines and limits of places (content), what to wear (safety)",
    mayImport = {"core.measure", "core.measure.display", "core.evidence"})
package org.proofcut.core.exposure;

import org.proofcut.Room;
