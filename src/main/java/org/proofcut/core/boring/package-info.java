/**
 * Where holes go and what they leave: shelf pins, cup hinges, dowels, pocket screws, and how fast a
 * bit turns. Takes exact sizes; gives worked figures, or what is wrong with what was asked. It
 * knows no machine and no part.
 */
@Room(
    step = 24,
    question = "Where does each hole go, how deep, and what is left around it?",
    gives =
        "Worked positions and depths of holes, screw tips, drill speeds; Problems that name the field",
    notHere = "what a machine can be set to (setup), which hinge or screw to buy",
    mayImport = {"core.measure", "core.measure.display", "core.evidence"})
package org.proofcut.core.boring;

import org.proofcut.Room;
