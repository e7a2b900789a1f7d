/**
 * What happens when a person does something: reads what is kept, asks the core, keeps what came of
 * it. Pages and the API both come through here, so that neither can do what the other may not.
 */
@Room(
    step = 230,
    question = "What happens on a tap?",
    gives =
        "ShopFloor, JobDesk, WorkBench, HabitDesk, GearDesk, NoiseDesk, DustDesk, HandDesk, LoadDesk,"
            + " StorageDesk; House, the content that the service runs on, the shop's own over ours",
    notHere = "how it looks (web), where it is kept (logbook), what is right (core)",
    mayImport = {
      "core.measure",
      "core.evidence",
      "core.exposure",
      "core.stock",
      "core.shop",
      "core.part",
      "core.stock",
      "core.casework",
      "core.storage",
      "core.weight",
      "core.boring",
      "core.setup",
      "core.habit",
      "core.operation",
      "core.fit",
      "core.proof",
      "core.safety",
      "core.checklist",
      "core.storage",
      "core.intake",
      "core.plan",
      "core.noise",
      "core.run",
      "statistics",
      "solver",
      "rulebook",
      "content",
      "logbook"
    })
package org.proofcut.bench;

import org.proofcut.Room;
