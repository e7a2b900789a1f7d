package org.proofcut.content;

import java.util.List;
import org.proofcut.content.yaml.Located;
import org.proofcut.core.evidence.AtLeastOne;
import org.proofcut.core.safety.Harm;

/**
 * Why no rule speaks of a harm where these operations are done on these machines.
 *
 * @param operations all where none is named
 * @param machines all where none is named
 * @param why true of every place that it stands for
 */
record NoneHere(
    String id,
    List<Located<String>> operations,
    List<Located<String>> machines,
    @AtLeastOne List<Harm> harms,
    String why) {

  boolean isFor(String operation, String machine) {
    return isNamed(operations, operation) && isNamed(machines, machine);
  }

  private static boolean isNamed(List<Located<String>> names, String name) {
    return names.isEmpty() || names.stream().anyMatch(one -> one.value().equals(name));
  }
}
