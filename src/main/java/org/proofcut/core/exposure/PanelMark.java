package org.proofcut.core.exposure;

import org.proofcut.core.evidence.Citation;

/**
 * A mark on a panel that tells how much formaldehyde it may give off.
 *
 * @param says what it stands for, in a sentence
 */
public record PanelMark(String id, String name, String says, Citation because) {}
