package org.proofcut.rulebook;

import java.util.List;
import java.util.Optional;
import org.proofcut.core.evidence.Citation;
import org.proofcut.core.safety.Finding;
import org.proofcut.core.safety.Rulebook;
import org.proofcut.core.safety.SignalWord;
import org.proofcut.core.safety.StepFacts;

/**
 * The rules of the house. Judging takes no lock and changes nothing, so one rulebook serves all.
 *
 * @param rules given in any order; of equally grave findings, that of the rule for fewer machines
 *     and operations comes first, because it says more of this step
 */
public record CelRulebook(Vocabulary vocabulary, List<Rule> rules) implements Rulebook {

  /** Stands as the rule's id when a step says a word that no rule can know. */
  public static final String UNKNOWN_WORD = "unknown-word";

  public CelRulebook {
    rules = rules.stream().sorted(Rule.NARROWEST_FIRST).toList();
  }

  @Override
  public List<Finding> judge(StepFacts step) {
    var strange = vocabulary.strangeWord(step);
    if (strange.isPresent()) {
      return List.of(unknownWord(strange.get()));
    }
    var values = Condition.values(step);
    return rules.stream()
        .map(rule -> rule.judge(step, values))
        .flatMap(Optional::stream)
        .sorted(Finding.GRAVEST_FIRST)
        .toList();
  }

  private static Finding unknownWord(String word) {
    return CouldNotCheck.finding(
        UNKNOWN_WORD,
        SignalWord.WARNING,
        "No rule was written for this, so none would speak.",
        word,
        Citation.ENTERED,
        List.of());
  }
}
