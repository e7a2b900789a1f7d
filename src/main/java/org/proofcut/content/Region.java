package org.proofcut.content;

import java.util.Optional;
import org.proofcut.content.yaml.Located;

/**
 * A part of the world with laws of its own.
 *
 * @param name as a form offers it
 * @param within the larger region whose law holds there too
 */
public record Region(String id, String name, Optional<Located<String>> within) {}
