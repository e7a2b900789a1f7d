package org.proofcut.bench;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.proofcut.content.Change;
import org.proofcut.content.Faulty;

/**
 * The shop's own content, which is laid over ours.
 *
 * @param folder where it lies, or would
 * @param there whether there is such a folder
 * @param files what of it is in force, by the paths below the folder
 * @param changes what those change in ours
 * @param refused why what lies there now can't be used; what was in force before stays so
 */
public record OwnShelf(
    Path folder,
    boolean there,
    List<String> files,
    List<Change> changes,
    Optional<Faulty> refused) {

  /** How many faults keep what lies there from being used. */
  public int faults() {
    return refused.map(Faulty::count).orElse(0);
  }
}
