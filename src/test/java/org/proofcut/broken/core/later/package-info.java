/** Imports an earlier room, which imports it back; lists itself. */
@Room(
    step = 20,
    question = "What is wrong?",
    gives = "a fault to find",
    mayImport = {"core.earlier", "core.later"})
package org.proofcut.broken.core.later;

import org.proofcut.Room;
