package org.proofcut.content;

import java.util.Optional;
import org.proofcut.core.evidence.Citation;

/**
 * Why a rule or limit stands.
 *
 * @param says what the source says, in our words; empty where none is quoted
 */
record Because(Citation citation, String says) {

  /** As it stands in a file: the id of a source, and where in it. */
  record Entry(String source, Optional<String> place, Optional<String> says) {}
}
