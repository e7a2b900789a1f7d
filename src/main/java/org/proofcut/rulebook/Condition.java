package org.proofcut.rulebook;

import dev.cel.runtime.CelEvaluationException;
import dev.cel.runtime.CelRuntime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import org.proofcut.core.safety.Fact;
import org.proofcut.core.safety.Finding.Seen;
import org.proofcut.core.safety.StepFacts;

/** A compiled condition, and which facts and limits it speaks of. */
public final class Condition {

  private final String text;
  private final CelRuntime.Program program;
  private final Set<Fact> facts;
  private final SortedMap<String, Limit> limits;
  private final Map<String, Long> limitNumbers = new HashMap<>();

  Condition(
      String text, CelRuntime.Program program, Set<Fact> facts, SortedMap<String, Limit> limits) {
    this.text = text;
    this.program = program;
    this.facts = facts;
    this.limits = limits;
    limits.forEach((id, limit) -> limitNumbers.put(id, limit.number()));
  }

  /** As it is written in the rule. */
  public String text() {
    return text;
  }

  /** The facts that it speaks of. */
  public Set<Fact> facts() {
    return facts;
  }

  /** The limits that it speaks of, by id. */
  public SortedMap<String, Limit> limits() {
    return limits;
  }

  /** Whether it asks the same of the same facts, with the same limits. */
  boolean asksTheSameAs(Condition other) {
    return text.equals(other.text) && limits.equals(other.limits);
  }

  /**
   * Whether it holds.
   *
   * @throws CelEvaluationException if a fact that it needs is not there
   */
  boolean holds(Map<String, Object> factValues) throws CelEvaluationException {
    return (Boolean) program.eval(Map.of("fact", factValues, "limit", limitNumbers));
  }

  /** What it looks at in this step. */
  List<Seen> seen(StepFacts step) {
    var seen = new ArrayList<Seen>();
    for (var fact : facts) {
      step.value(fact).ifPresent(value -> seen.add(new Seen(fact.id(), value)));
    }
    limits.forEach((id, limit) -> seen.add(new Seen(id, limit.value(), limit.because().own())));
    return seen;
  }

  /** The facts of a step as a condition sees them: a measure is a whole number. */
  static Map<String, Object> values(StepFacts step) {
    var values = new HashMap<String, Object>();
    for (var fact : Fact.values()) {
      step.value(fact).ifPresent(value -> values.put(fact.id(), Scaled.of(value)));
    }
    return values;
  }
}
