package org.proofcut.rulebook;

import dev.cel.runtime.CelEvaluationException;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.proofcut.core.evidence.Citation;
import org.proofcut.core.safety.Check;
import org.proofcut.core.safety.Control;
import org.proofcut.core.safety.Fact;
import org.proofcut.core.safety.Finding;
import org.proofcut.core.safety.GearNeed;
import org.proofcut.core.safety.Ground;
import org.proofcut.core.safety.Harm;
import org.proofcut.core.safety.SignalWord;
import org.proofcut.core.safety.StepFacts;

/**
 * A rule, ready to be asked.
 *
 * @param id names the hazard, not the remedy
 * @param was ids it had before; a record of work may still hold them
 * @param operations the operations it is for; all if empty
 * @param machines the machines it is for; all if empty
 * @param regions where it holds, those within named ones included; everywhere if empty
 * @param when empty if it fires on every step that it is for
 * @param at the pause at which it matters most; where its checks are asked, if it does not say
 * @param grounds what it stands on, the first one first; at least one
 */
public record Rule(
    String id,
    List<String> was,
    List<String> operations,
    List<String> machines,
    List<String> regions,
    Optional<Condition> when,
    Finding.Effect effect,
    Harm harm,
    SignalWord word,
    String hazard,
    List<Control> controls,
    List<GearNeed> gear,
    List<Check> checks,
    Optional<Check.Pause> at,
    List<Ground> grounds) {

  /** The rule for fewer machines first, then for fewer operations; by id where that is the same. */
  static final Comparator<Rule> NARROWEST_FIRST =
      Comparator.comparingInt((Rule rule) -> breadth(rule.machines))
          .thenComparingInt(rule -> breadth(rule.operations))
          .thenComparing(Rule::id);

  public Rule {
    was = List.copyOf(was);
    operations = List.copyOf(operations);
    machines = List.copyOf(machines);
    regions = List.copyOf(regions);
    controls = controls.stream().sorted(Comparator.comparing(Control::kind)).toList();
    gear = List.copyOf(gear);
    checks = List.copyOf(checks);
    grounds = List.copyOf(grounds);
  }

  /** The first of its grounds, which stands where none is law. */
  public Citation because() {
    return grounds.get(0).citation();
  }

  /** What the first of its grounds says. */
  public String sourceSays() {
    return grounds.get(0).says();
  }

  /** The law where the shop stands, if it is one of its grounds; else the first. */
  private Ground groundIn(String region) {
    return grounds.stream()
        .filter(ground -> ground.isLawIn(region))
        .findFirst()
        .orElse(grounds.get(0));
  }

  /** The same rule with another condition. */
  public Rule with(Condition other) {
    return with(Optional.of(other), regions, grounds);
  }

  /**
   * The same rule where regions have been added.
   *
   * @param within all regions that lie within some
   */
  public Rule spread(UnaryOperator<List<String>> within) {
    return with(
        when,
        both(regions, within),
        grounds.stream()
            .map(
                ground ->
                    new Ground(
                        ground.citation(),
                        ground.says(),
                        ground.asksForGear(),
                        both(ground.regions(), within)))
            .toList());
  }

  private static List<String> both(List<String> regions, UnaryOperator<List<String>> within) {
    return Stream.concat(regions.stream(), within.apply(regions).stream()).distinct().toList();
  }

  private Rule with(
      Optional<Condition> otherCondition, List<String> otherRegions, List<Ground> otherGrounds) {
    return new Rule(
        id,
        was,
        operations,
        machines,
        otherRegions,
        otherCondition,
        effect,
        harm,
        word,
        hazard,
        controls,
        gear,
        checks,
        at,
        otherGrounds);
  }

  /** Whether it stops a step, and is the law in some region. */
  public boolean stopsByLaw() {
    return effect == Finding.Effect.STOP
        && grounds.stream().anyMatch(ground -> ground.citation().kind() == Citation.Kind.LAW);
  }

  /** Whether a law of some region asks for its gear. */
  public boolean asksForGearByLaw() {
    return !gear.isEmpty()
        && grounds.stream()
            .anyMatch(
                ground -> ground.asksForGear() && ground.citation().kind() == Citation.Kind.LAW);
  }

  /**
   * Whether it is this rule in every word, and its condition asks the same with the same limits.
   */
  public boolean isTheSameAs(Rule other) {
    boolean sameCondition =
        when.isEmpty() || other.when.isEmpty()
            ? when.isEmpty() && other.when.isEmpty()
            : when.get().asksTheSameAs(other.when.get());
    return sameCondition
        && with(Optional.empty(), regions, grounds)
            .equals(other.with(Optional.empty(), other.regions, other.grounds));
  }

  /**
   * @param values the same facts as a condition sees them
   */
  Optional<Finding> judge(StepFacts step, Map<String, Object> values) {
    if (!isFor(operations, step, Fact.OPERATION)
        || !isFor(machines, step, Fact.MACHINE)
        || !isFor(regions, step, Fact.REGION)) {
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
    var region = (String) step.value(Fact.REGION).orElseThrow();
    var ground = groundIn(region);
    return new Finding(
        id,
        effect,
        word,
        hazard,
        controls,
        gear,
        checks,
        ground.citation(),
        ground.says(),
        seen,
        Optional.of(harm),
        at,
        Optional.of(ground.isLawIn(region)),
        gearLaw(region));
  }

  private Optional<Citation> gearLaw(String region) {
    return grounds.stream()
        .filter(ground -> ground.asksForGear() && ground.isLawIn(region))
        .findFirst()
        .map(Ground::citation);
  }

  private Finding couldNotCheck(StepFacts step, Map<String, Object> values) {
    var condition = when.orElseThrow();
    var missing =
        condition.facts().stream().map(Fact::id).filter(id -> !values.containsKey(id)).toList();
    return CouldNotCheck.finding(
        id, word, hazard, String.join(", ", missing), because(), condition.seen(step));
  }
}
