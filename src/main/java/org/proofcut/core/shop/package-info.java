/** What stays in the shop: machines and what they can be set to, cutters, aids, gear, liquids. */
@Room(
    step = 50,
    question = "What is there to cut it with?",
    gives = "Shop: machines, cutters, work aids, protective gear, liquids",
    notHere = "what a machine is set to for one cut (setup)",
    mayImport = {"core.measure", "core.evidence", "core.exposure"})
package org.proofcut.core.shop;

import org.proofcut.Room;
