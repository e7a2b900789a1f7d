/**
 * Why a figure may be believed: every computed number carries its working and its source, and
 * everything that is wrong says where, what, what is allowed and what to do.
 */
@Room(
    step = 20,
    question = "How was this worked out, and where is it written?",
    gives = "Worked figures, Citations, Problems",
    notHere = "the words of a rule (safety), reading of files (content)",
    mayImport = {})
package org.proofcut.core.evidence;

import org.proofcut.Room;
