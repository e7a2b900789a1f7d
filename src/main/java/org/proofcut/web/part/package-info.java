/**
 * What the page around every page and its parts need beside plain values. The parts themselves are
 * the tags in {@code templates/tags} and what {@code templates/part} has to include; each says its
 * parameters at its head.
 */
@Room(
    step = 300,
    question = "What do the parts of a page show?",
    gives =
        "forms whose answer follows while they are typed, lines of working as text, the maker's"
            + " choice of ground and hand",
    notHere = "what a page is about (web and the room's name)",
    mayImport = {"core.measure", "core.measure.display", "core.evidence", "core.intake"})
package org.proofcut.web.part;

import org.proofcut.Room;
