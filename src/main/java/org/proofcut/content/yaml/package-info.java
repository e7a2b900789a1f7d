/**
 * Reads YAML into records, by the names of their components, and says everything that is wrong with
 * a file at once, each fault with its line.
 *
 * <p>Takes the text of a file and a record class; gives the record, or {@link
 * org.proofcut.content.yaml.Faults}.
 */
@Room(
    step = 205,
    question = "What does this file say, and where is it wrong?",
    gives = "records bound from YAML; Faults with file, line and caret",
    notHere = "which files there are and what they mean (content)",
    mayImport = {"core.measure", "core.evidence"})
package org.proofcut.content.yaml;

import org.proofcut.Room;
