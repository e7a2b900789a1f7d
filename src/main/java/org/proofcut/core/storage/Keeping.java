package org.proofcut.core.storage;

import org.proofcut.core.evidence.Citation;

/**
 * One thing that is asked of the place of a kind of gear.
 *
 * @param why in a sentence
 */
public record Keeping(Need need, String why, Citation because) {}
