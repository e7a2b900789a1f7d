package org.proofcut.core.checklist;

import java.util.List;
import org.proofcut.core.evidence.AtLeastOne;
import org.proofcut.core.safety.Check;

/**
 * The words of an operation's sheet that no figure changes. From {@code content/operation}.
 *
 * @param purpose one sentence
 * @param hold how the work is held and supported
 * @param checks for every machine alike; few, for rules add theirs
 * @param steps what is done, where no cutter does it
 */
public record OperationWording(
    String id,
    String title,
    String purpose,
    @AtLeastOne List<Hold> hold,
    @AtLeastOne List<Check> checks,
    List<String> steps) {

  /**
   * One sentence on holding the work.
   *
   * @param machines the machines it is for; all if empty
   */
  public record Hold(List<String> machines, String how) {}

  /** How the work is held and supported on a machine. */
  public List<String> holdOn(String machine) {
    return hold.stream()
        .filter(one -> one.machines().isEmpty() || one.machines().contains(machine))
        .map(Hold::how)
        .toList();
  }
}
