package org.proofcut.content;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.proofcut.rulebook.Rule;

/** Every case beside a rule, by its own sentence. */
class ContentCasesTest {

  private final Content content = Content.bundled();

  @TestFactory
  Stream<DynamicTest> cases() {
    var rules =
        content.rulebook().rules().stream().collect(Collectors.toMap(Rule::id, rule -> rule));
    return content.cases().stream()
        .map(
            each ->
                dynamicTest(
                    each.rule() + " › " + each.name(), () -> judge(rules.get(each.rule()), each)));
  }

  private void judge(Rule rule, RuleCase each) {
    var findings =
        content.rulebook().judge(NeutralStep.of(rule, each.given())).stream()
            .filter(finding -> finding.rule().equals(rule.id()))
            .toList();
    for (var finding : findings) {
      assertEquals(rule.hazard(), finding.hazard(), "the case leaves out a fact");
      assertTrue(rule.when().isEmpty() || !finding.seen().isEmpty(), "it must say what it saw");
    }
    assertEquals(
        each.then(), findings.isEmpty() ? RuleCase.Then.QUIET : RuleCase.Then.FIRES, each.name());
  }
}
