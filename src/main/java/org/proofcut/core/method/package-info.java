/**
 * With which machine and cutter a cut is made. Asks the set-up calculators one after another, in
 * the order a careful maker would, and keeps why each earlier one was refused. Takes the limits
 * from the calculators themselves, so that nothing is offered that could not be set.
 */
@Room(
    step = 90,
    question = "With which machine and cutter?",
    gives = "Choice: a Setup, and why each earlier way was refused",
    notHere = "the figures (setup), the parts (operation)",
    mayImport = {"core.measure", "core.evidence", "core.shop", "core.setup"})
package org.proofcut.core.method;

import org.proofcut.Room;
