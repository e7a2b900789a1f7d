package org.proofcut.content;

import java.util.List;
import org.proofcut.content.yaml.AtLeastOne;
import org.proofcut.core.evidence.Citation;

/**
 * The steps of changing the cutter of a machine, in their order.
 *
 * @param id the kind of machine
 */
public record CutterChange(String id, @AtLeastOne List<String> steps, Citation because) {}
