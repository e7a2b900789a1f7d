package org.proofcut.content;

import java.util.List;
import java.util.Optional;
import org.proofcut.content.yaml.Located;
import org.proofcut.core.evidence.AtLeastOne;
import org.proofcut.core.safety.Check;
import org.proofcut.core.safety.Control;
import org.proofcut.core.safety.Finding;
import org.proofcut.core.safety.GearNeed;
import org.proofcut.core.safety.Harm;
import org.proofcut.core.safety.SignalWord;

/** A rule as its file says it; {@link org.proofcut.rulebook.Rule} is what becomes of it. */
record RuleEntry(
    Located<String> id,
    List<String> was,
    Optional<Scope> appliesTo,
    Optional<Located<String>> when,
    Optional<Finding.Effect> effect,
    Harm harm,
    SignalWord.Severity severity,
    SignalWord.Likelihood likelihood,
    String hazard,
    @AtLeastOne List<Control> doThis,
    List<Gear> gear,
    List<Check> checks,
    Optional<Check.Pause> at,
    Because because,
    List<Because> also) {

  /** The steps that a rule is for; all operations, machines or regions where none is named. */
  record Scope(
      List<Located<String>> operations,
      List<Located<String>> machines,
      List<Located<String>> regions) {

    static final Scope ALL = new Scope(List.of(), List.of(), List.of());
  }

  record Gear(
      Located<String> kind,
      GearNeed.State state,
      Optional<Located<String>> least,
      Optional<String> why) {}
}
