/**
 * What is kept from one day to the next: the shop and the jobs as typed, the plans that work was
 * begun with, the record of what was done, and what proof cuts have shown. Records cross its
 * border, entities never.
 *
 * <p>The record is only ever added to: the database itself refuses to change an entry, and to
 * delete one unless its whole job is discarded. A plan is kept as it was shown and read back from
 * that; one that can no longer be read is reported, never rebuilt.
 */
@Room(
    step = 220,
    question = "What was typed, planned and done, on any day before?",
    gives =
        "Logbook: shop items, jobs, plans, entries, observations, rulings; a back-up of them all;"
            + " StorageLog: cabinets, people, homes, pins, acts on gear",
    notHere = "what typed words mean (web), how far the work is (core.run)",
    mayImport = {
      "core.measure",
      "core.evidence",
      "core.safety",
      "core.storage",
      "core.setup",
      "core.habit",
      "core.plan",
      "core.run"
    })
package org.proofcut.logbook;

import org.proofcut.Room;
