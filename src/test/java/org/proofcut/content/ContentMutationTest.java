package org.proofcut.content;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.proofcut.core.evidence.Amount;
import org.proofcut.core.measure.Length;
import org.proofcut.core.safety.Fact;
import org.proofcut.rulebook.CelRulebook;
import org.proofcut.rulebook.Condition;
import org.proofcut.rulebook.Conditions;
import org.proofcut.rulebook.Limit;
import org.proofcut.rulebook.Rule;
import org.proofcut.rulebook.Vocabulary;

/**
 * Whether the cases beside a rule would notice if its condition were another: each comparison
 * flipped, each clause left out or turned round, each limit moved by a step.
 */
class ContentMutationTest {

  private final Content content = Content.bundled();
  private final Vocabulary vocabulary = content.rulebook().vocabulary();
  private final Conditions conditions = new Conditions(vocabulary);
  private final Map<String, List<RuleCase>> cases =
      content.cases().stream().collect(Collectors.groupingBy(RuleCase::rule));

  @TestFactory
  Stream<DynamicTest> cases_noticeEveryChangeOfTheirRule() {
    return content.rulebook().rules().stream()
        .filter(rule -> rule.when().isPresent())
        .map(
            rule ->
                dynamicTest(rule.id(), () -> assertEquals(List.of(), survivors(rule), rule.id())));
  }

  @Test
  void conditions_areUnderstoodAsTheyAreWritten() {
    for (var rule : content.rulebook().rules()) {
      rule.when()
          .ifPresent(
              when ->
                  assertTrue(
                      noticed(rule, compiled(rule, ConditionMutants.understood(when.text())).get())
                          .isEmpty(),
                      rule.id()));
    }
  }

  private List<String> survivors(Rule rule) {
    var when = rule.when().orElseThrow();
    var survivors = new ArrayList<String>();
    // What does not compile can't be written by mistake either.
    var mutants =
        ConditionMutants.of(when.text()).stream()
            .flatMap(mutant -> compiled(rule, mutant).stream())
            .toList();
    assertFalse(mutants.isEmpty(), "nothing was tried");
    mutants.stream()
        .filter(mutant -> noticed(rule, mutant).isEmpty())
        .forEach(mutant -> survivors.add(mutant.text()));
    when.limits()
        .forEach(
            (id, limit) -> {
              for (int step : List.of(-1, 1)) {
                var moved = moved(limit, step);
                var condition = compiledWith(rule, id, moved);
                if (noticed(rule, condition).isEmpty()) {
                  survivors.add(id + " " + limit.value() + " moved to " + moved.value());
                }
              }
            });
    return survivors;
  }

  /** The cases that come out another way with this condition. */
  private List<String> noticed(Rule rule, Condition condition) {
    var changed = rule.with(condition);
    var book = new CelRulebook(vocabulary, List.of(changed));
    return cases.getOrDefault(rule.id(), List.of()).stream()
        .filter(
            each -> {
              boolean fires =
                  book.judge(NeutralStep.of(rule, each.given())).stream()
                      .anyMatch(finding -> finding.rule().equals(rule.id()));
              return fires != (each.then() == RuleCase.Then.FIRES);
            })
        .map(RuleCase::name)
        .toList();
  }

  private Optional<Condition> compiled(Rule rule, String text) {
    return conditions.compile(text, rule.machines(), rule.operations(), fault -> {});
  }

  private Condition compiledWith(Rule rule, String id, Limit moved) {
    var limits = new HashMap<>(vocabulary.limits());
    limits.put(id, moved);
    return new Conditions(new Vocabulary(vocabulary.words(), vocabulary.alwaysOn(), limits))
        .compile(rule.when().orElseThrow().text(), rule.machines(), rule.operations(), fault -> {})
        .orElseThrow();
  }

  /**
   * By what the cases tell apart: a millimetre, a tenth where it is small, a tenth of a weight's
   * unit, one, or 100 turns.
   */
  private static Limit moved(Limit limit, int steps) {
    if (limit.value() instanceof Amount amount) {
      var tenths = BigDecimal.valueOf(steps, 1);
      var moved = new Amount(amount.value().add(tenths), amount.unit());
      return new Limit(limit.name(), limit.type(), moved, limit.because());
    }
    Object value =
        limit.value() instanceof Length length
            ? length.plus(
                Length.of(length.isLessThan(Length.of("20 mm")) ? "0.1 mm" : "1 mm").times(steps))
            : (Object) ((Long) limit.value() + steps * (limit.type() == Fact.Type.COUNT ? 1 : 100));
    return new Limit(limit.name(), limit.type(), value, limit.because());
  }
}
