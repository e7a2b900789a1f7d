package org.proofcut.core.checklist;

import java.util.List;
import org.proofcut.core.evidence.AtLeastOne;
import org.proofcut.core.evidence.Citation;

/**
 * The steps of changing the cutter of a machine, in their order. From {@code content/operation}.
 *
 * @param id the kind of machine
 */
public record CutterChange(String id, @AtLeastOne List<String> steps, Citation because) {}
