package org.proofcut.rulebook;

import dev.cel.runtime.CelEvaluationException;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.proofcut.core.evidence.Citation;
import org.proofcut.core.safety.Check;
import org.proofcut.core.safety.Control;
import org.proofcut.core.safety.Fact;
import org.proofcut.core.safety.Finding;
import org.proofcut.core.safety.GearNeed;
import org.proofcut.core.safety.SignalWord;
import org.proofcut.core.safety.StepFacts;

/**
 * A rule, ready to be asked.
 *
 * @param id names the hazard, not the remedy
 * @param was ids it had before; a record of work may still hold them
 * @param operations the operations it is for; all if empty
 * @param machines the machines it is for; all if empty
 * @param when empty if it fires on every step that it is for
 */
public record Rule(
    String id,
    List<String> was,
    List<String> operations,
    List<String> machines,
    Optional<Condition> when,
    Finding.Effect effect,
    SignalWord word,
    String hazard,
    List<Control> controls,
    List<GearNeed> gear,
    List<Check> checks,
    Citation because,
    String sourceSays) {

  /** The rule for fewer machines first, then for fewer operations; by id where that is the same. */
  static final Comparator<Rule> NARROWEST_FIRST =
      Comparator.comparingInt((Rule rule) -> breadth(rule.machines))
          .thenComparingInt(rule -> breadth(rule.operations))
          .thenComparing(Rule::id);

  public Rule {
    was = List.copyOf(was);
    operations = List.copyOf(operations);
    machines = List.copyOf(machines);
    controls = controls.stream().sorted(Comparator.comparing(Control::kind)).toList();
    gear = List.copyOf(gear);
    checks = List.copyOf(checks);
  }

  /**
   * @param values the same facts as a condition sees them
   */
  Optional<Finding> judge(StepFacts step, Map<String, Object> values) {
    if (!isFor(operations, step, Fact.OPERATION) || !isFor(machines, step, Fact.MACHINE)) {
      return Optional.empty();
    }
    try {
      return when.isEmpty() || when.get().holds(values)
          ? Optional.of(finding(step))
          : Optional.empty();
    } catch (CelEvaluationException | RuntimeException e) {
      return Optional.of(couldNotCheck(step, values));
    }
  }

  /** Naming none means all. */
  private static int breadth(List<String> scope) {
    return scope.isEmpty() ? Integer.MAX_VALUE : scope.size();
  }

  private static boolean isFor(List<String> scope, StepFacts step, Fact fact) {
    return scope.isEmpty() || step.value(fact).filter(scope::contains).isPresent();
  }

  private Finding finding(StepFacts step) {
    var seen = when.map(condition -> condition.seen(step)).orElse(List.of());
    return new Finding(id, effect, word, hazard, controls, gear, checks, because, sourceSays, seen);
  }

  private Finding couldNotCheck(StepFacts step, Map<String, Object> values) {
    var condition = when.orElseThrow();
    var missing =
        condition.facts().stream().map(Fact::id).filter(id -> !values.containsKey(id)).toList();
    return CouldNotCheck.finding(
        id, word, hazard, String.join(", ", missing), because, condition.seen(step));
  }
}
