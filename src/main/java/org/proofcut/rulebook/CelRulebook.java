package org.proofcut.rulebook;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.proofcut.core.evidence.Citation;
import org.proofcut.core.safety.Check;
import org.proofcut.core.safety.Control;
import org.proofcut.core.safety.Finding;
import org.proofcut.core.safety.GearNeed;
import org.proofcut.core.safety.Rulebook;
import org.proofcut.core.safety.SignalWord;
import org.proofcut.core.safety.StepFacts;

/**
 * The rules of the house. Judging takes no lock and changes nothing, so one rulebook serves all.
 *
 * @param rules given in any order; of equally grave findings, that of the rule for fewer machines
 *     and operations comes first, because it says more of this step. Two may have one id, where a
 *     shop has its own beside one that rests on law
 */
public record CelRulebook(Vocabulary vocabulary, List<Rule> rules) implements Rulebook {

  /** Stands as the rule's id when a step says a word that no rule can know. */
  public static final String UNKNOWN_WORD = "unknown-word";

  /** A stop before a caution, and the law before what is none. */
  private static final Comparator<Finding> WEIGHTIEST_FIRST =
      Comparator.comparing(Finding::effect)
          .thenComparing(Finding::restsOnLaw, Comparator.reverseOrder());

  public CelRulebook {
    rules = rules.stream().sorted(Rule.NARROWEST_FIRST).toList();
  }

  /**
   * This rulebook with rules that nothing in it can take back: they are judged with the limits that
   * they were compiled with.
   */
  public CelRulebook beside(List<Rule> others) {
    return new CelRulebook(vocabulary, Stream.concat(others.stream(), rules.stream()).toList());
  }

  @Override
  public List<Finding> judge(StepFacts step) {
    var strange = vocabulary.strangeWord(step);
    if (strange.isEmpty()) {
      return findings(rules, step);
    }
    // A list of words may have been changed to leave one out; the law is asked all the same.
    var findings = new ArrayList<Finding>();
    findings.add(unknownWord(strange.get()));
    findings.addAll(findings(rules.stream().filter(Rule::stopsByLaw).toList(), step));
    return List.copyOf(findings);
  }

  private static List<Finding> findings(List<Rule> rules, StepFacts step) {
    var values = Condition.values(step);
    return withoutRepeats(
        rules.stream()
            .map(rule -> rule.judge(step, values))
            .flatMap(Optional::stream)
            .sorted(Finding.GRAVEST_FIRST)
            .toList());
  }

  /** Of two rules with one id that say the same words, the one that weighs more is told. */
  private static List<Finding> withoutRepeats(List<Finding> findings) {
    Set<String> ids = new HashSet<>();
    if (findings.stream().allMatch(finding -> ids.add(finding.rule()))) {
      return findings;
    }
    var told = new HashMap<Words, Finding>();
    for (var finding : findings) {
      told.merge(
          Words.of(finding),
          finding,
          (one, other) -> WEIGHTIEST_FIRST.compare(one, other) <= 0 ? one : other);
    }
    return findings.stream().filter(finding -> told.get(Words.of(finding)) == finding).toList();
  }

  /** All that a person is told to mind and do. */
  private record Words(
      String rule,
      SignalWord word,
      String hazard,
      List<Control> controls,
      List<GearNeed> gear,
      List<Check> checks,
      Optional<Check.Pause> at) {

    static Words of(Finding finding) {
      return new Words(
          finding.rule(),
          finding.word(),
          finding.hazard(),
          finding.controls(),
          finding.gear(),
          finding.checks(),
          finding.at());
    }
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
