package org.proofcut.content;

import java.util.List;
import java.util.Optional;
import org.proofcut.content.yaml.Located;
import org.proofcut.core.evidence.AtLeastOne;
import org.proofcut.core.evidence.Citation;

/**
 * A published source.
 *
 * @param kind how far it binds
 * @param jurisdiction ids of the regions where it binds; elsewhere it is advice
 * @param known how its words are known to us; shown with it, so that nobody takes a memory for a
 *     quotation
 * @param link where it can be read
 */
public record Source(
    String id,
    String title,
    Optional<String> edition,
    String publisher,
    Citation.Kind kind,
    @AtLeastOne List<Located<String>> jurisdiction,
    String known,
    Optional<String> link) {

  /** Title with its edition, as it is cited. */
  public String cited() {
    return edition.map(words -> title + " (" + words + ")").orElse(title);
  }
}
