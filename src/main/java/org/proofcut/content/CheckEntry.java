package org.proofcut.content;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.proofcut.content.yaml.Faults;
import org.proofcut.content.yaml.Located;
import org.proofcut.content.yaml.Spot;
import org.proofcut.core.safety.Check;

/** Something to look at as its file says it. */
record CheckEntry(Check.Pause pause, String ask, String answer, List<Located<String>> aids) {

  /**
   * What becomes of it.
   *
   * @param known ids of all kinds of work aid
   */
  Check check(Map<String, Spot> known, Faults faults) {
    aids.forEach(aid -> faults.refuseUnknown(aid, "work aid", known.keySet()));
    return new Check(
        pause,
        ask,
        answer,
        aids.isEmpty()
            ? Optional.empty()
            : Optional.of(aids.stream().map(Located::value).toList()));
  }
}
