package org.proofcut.web.handbook;

import java.util.List;
import org.proofcut.bench.OwnShelf;
import org.proofcut.content.Change;
import org.proofcut.content.Faulty;
import org.proofcut.core.evidence.Problem;

/**
 * What of the content is the shop's own, and what is wrong with it.
 *
 * @param count of all faults
 * @param more faults than are listed
 */
record OwnPage(
    String folder, boolean there, List<Change> changes, List<Problem> faults, int count, int more) {

  static OwnPage of(OwnShelf own) {
    return new OwnPage(
        own.folder().toString(),
        own.there(),
        own.changes(),
        own.refused().map(Faulty::problems).orElse(List.of()),
        own.faults(),
        own.refused().map(Faulty::more).orElse(0));
  }
}
