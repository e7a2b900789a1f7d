package org.proofcut.content;

import java.util.List;
import java.util.stream.Collectors;
import org.proofcut.core.safety.StepFacts;
import org.proofcut.rulebook.Rule;

/** Steps as the cases of our rules give them. */
final class StepsForTests {

  private StepsForTests() {}

  static List<StepFacts> ofOurCases(Content content) {
    var rules =
        content.rulebook().rules().stream().collect(Collectors.toMap(Rule::id, rule -> rule));
    return content.cases().stream()
        .map(each -> NeutralStep.of(rules.get(each.rule()), each.given()))
        .toList();
  }
}
