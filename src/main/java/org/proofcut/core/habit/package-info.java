/**
 * What machine and cutter really do, learned from the proof cuts of the shop: how wide a cutter
 * cuts, how far a scale is off, how well it repeats. Takes observations and what the maker has
 * ruled about them; gives what the next set-up should reckon with, with its interval. Nothing is
 * learned from a proof that lies far from the others until the maker was asked.
 */
@Room(
    step = 85,
    question = "What do machine and cutter really do?",
    gives = "Observations from a proof; Habits: estimate, interval, Advice for the next set-up",
    notHere =
        "whether a proof is good (proof), where observations are kept, quantiles (statistics)",
    mayImport = {
      "core.measure",
      "core.measure.display",
      "core.evidence",
      "core.shop",
      "core.setup"
    })
package org.proofcut.core.habit;

import org.proofcut.Room;
