package org.proofcut.core.shop;

import org.proofcut.core.evidence.Citation;

/**
 * Two kinds of gear that disturb each other.
 *
 * @param first id of the kind that is put on first
 * @param second id of the other
 * @param together how they go together
 */
public record GearPair(String id, String first, String second, String together, Citation because) {}
