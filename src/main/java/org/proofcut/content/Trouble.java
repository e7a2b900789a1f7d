package org.proofcut.content;

import java.util.List;
import org.proofcut.core.evidence.AtLeastOne;

/** What to do when something has gone wrong, in steps short enough to be read then. */
public record Trouble(String id, String title, @AtLeastOne List<String> steps) {}
