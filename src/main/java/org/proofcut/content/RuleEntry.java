package org.proofcut.content;

import java.util.List;
import java.util.Optional;
import org.proofcut.content.yaml.Located;
import org.proofcut.core.evidence.AtLeastOne;
import org.proofcut.core.safety.Check;
import org.proofcut.core.safety.Control;
import org.proofcut.core.safety.Finding;
import org.proofcut.core.safety.GearNeed;
import org.proofcut.core.safety.SignalWord;

/** A rule as its file says it; {@link org.proofcut.rulebook.Rule} is what becomes of it. */
record RuleEntry(
    Located<String> id,
    List<String> was,
    Optional<Scope> appliesTo,
    Optional<Located<String>> when,
    Optional<Finding.Effect> effect,
    SignalWord.Severity severity,
    SignalWord.Likelihood likelihood,
    String hazard,
    @AtLeastOne List<Control> doThis,
    List<Gear> gear,
    List<Check> checks,
    Because because) {

  /** The steps that a rule is for; all operations or machines where none is named. */
  record Scope(List<Located<String>> operations, List<Located<String>> machines) {

    static final Scope ALL = new Scope(List.of(), List.of());
  }

  record Gear(Located<String> kind, GearNeed.State state) {}
}
