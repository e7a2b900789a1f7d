package org.proofcut.content;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.proofcut.content.yaml.Faults;
import org.proofcut.content.yaml.Located;
import org.proofcut.content.yaml.Spot;
import org.proofcut.core.operation.OperationKind;
import org.proofcut.core.operation.Way;
import org.proofcut.core.safety.Fact;
import org.proofcut.core.safety.Harm;
import org.proofcut.core.setup.Guide;
import org.proofcut.rulebook.CelRulebook;
import org.proofcut.rulebook.Rule;
import org.proofcut.rulebook.Vocabulary;

/**
 * Lays the rules out by way of cutting and by harm, and holds what they leave open to the lines
 * that say why: each open cell has one, and no line stands where there are rules.
 */
final class MatrixReader {

  static final String FOLDER = "safety/none-here/";

  private final Vocabulary vocabulary;
  private final List<Rule> rules;
  private final Map<String, List<RuleCase>> firing;
  private final Faults faults;

  MatrixReader(Vocabulary vocabulary, List<Rule> rules, List<RuleCase> cases, Faults faults) {
    this.vocabulary = vocabulary;
    this.rules = rules;
    this.firing =
        cases.stream()
            .filter(each -> each.then() == RuleCase.Then.FIRES)
            .collect(Collectors.groupingBy(RuleCase::rule));
    this.faults = faults;
  }

  HarmMatrix read(List<Way> ways, Map<String, Located<NoneHere>> lines) {
    var rows = new ArrayList<HarmMatrix.Row>();
    for (var way : ways) {
      var cells = new EnumMap<Harm, HarmMatrix.Cell>(Harm.class);
      for (var harm : Harm.values()) {
        cells.put(harm, cell(way, harm, lines));
      }
      rows.add(new HarmMatrix.Row(way, cells));
    }
    lines.values().forEach(line -> refuseIdle(line.value(), ways));
    return new HarmMatrix(rows);
  }

  private HarmMatrix.Cell cell(Way way, Harm harm, Map<String, Located<NoneHere>> lines) {
    var speaking =
        rules.stream()
            .filter(rule -> rule.harm() == harm && canSpeak(rule, way))
            .map(Rule::id)
            .toList();
    var saying =
        lines.values().stream()
            .filter(line -> line.value().harms().contains(harm))
            .filter(line -> line.value().isFor(way.kind().id(), way.machine()))
            .toList();
    var where = "%s on %s, %s".formatted(way.kind().id(), way.machine(), harm.words());
    if (!speaking.isEmpty()) {
      saying.forEach(line -> refuseStale(line, where, speaking));
    } else if (saying.isEmpty()) {
      refuseHole(where, way, harm);
    } else if (saying.size() > 1) {
      refuseSecond(saying.get(0), saying.get(1), where);
    }
    return new HarmMatrix.Cell(
        speaking,
        speaking.isEmpty()
            ? saying.stream().findFirst().map(line -> line.value().why())
            : Optional.empty());
  }

  private void refuseHole(String where, Way way, Harm harm) {
    faults.add(
        Spot.of(FOLDER + id(harm) + ".yaml"),
        "no rule speaks of " + where,
        "a rule for it, or a line that says why there is none",
        "Write the rule, or \"operations: [%s], machines: [%s], harms: [%s]\" with its why."
            .formatted(way.kind().id(), way.machine(), id(harm)));
  }

  private void refuseStale(Located<NoneHere> line, String where, List<String> speaking) {
    faults.add(
        line.spot(),
        "\"%s\" says that there is no rule for %s".formatted(line.value().id(), where),
        "only what no rule speaks of; here does " + String.join(", ", speaking),
        "Take this place out of the line.");
  }

  private void refuseSecond(Located<NoneHere> one, Located<NoneHere> other, String where) {
    faults.add(
        other.spot(),
        "\"%s\" and \"%s\" both say why there is no rule for %s"
            .formatted(one.value().id(), other.value().id(), where),
        "one line for each place",
        "Take the place out of one of the two.");
  }

  /** A name that stands for no cell: the operation is not done on the machines of the line. */
  private void refuseIdle(NoneHere line, List<Way> ways) {
    for (var operation : line.operations()) {
      refuseIdle(
          operation,
          line.id(),
          ways.stream()
              .filter(way -> way.kind().id().equals(operation.value()))
              .anyMatch(way -> line.isFor(way.kind().id(), way.machine())));
    }
    for (var machine : line.machines()) {
      refuseIdle(
          machine,
          line.id(),
          ways.stream()
              .filter(way -> way.machine().equals(machine.value()))
              .anyMatch(way -> line.isFor(way.kind().id(), way.machine())));
    }
  }

  private void refuseIdle(Located<String> name, String line, boolean stands) {
    if (!stands) {
      faults.add(
          name.spot(),
          "\"%s\" in \"%s\" stands for nothing that is done".formatted(name.value(), line),
          "operations on machines that make them",
          "Mend it, or take it out.");
    }
  }

  static String id(Harm harm) {
    return harm.name().toLowerCase(Locale.ROOT);
  }

  /**
   * Whether a rule is for this way and its condition can hold there: one of its own cases still
   * fires with what is always so in this way put in its place.
   */
  private boolean canSpeak(Rule rule, Way way) {
    if (!(rule.operations().isEmpty() || rule.operations().contains(way.kind().id()))
        || !(rule.machines().isEmpty() || rule.machines().contains(way.machine()))) {
      return false;
    }
    if (rule.when().isEmpty()) {
      return true;
    }
    var alone = new CelRulebook(vocabulary, List.of(rule));
    return firing.getOrDefault(rule.id(), List.of()).stream()
        .flatMap(each -> steps(each.given(), way))
        .map(step -> NeutralStep.of(rule, step))
        .flatMap(step -> alone.judge(step).stream())
        .anyMatch(finding -> finding.hazard().equals(rule.hazard()));
  }

  /** The facts of a case, with all that this way leaves open in every combination. */
  private static Stream<Map<Fact, Object>> steps(Map<Fact, Object> given, Way way) {
    var step = new EnumMap<Fact, Object>(Fact.class);
    step.putAll(given);
    step.put(Fact.OPERATION, way.kind().id());
    step.put(Fact.MACHINE, way.machine());
    if (way.kind() != OperationKind.FASTEN) {
      step.put(Fact.GLUE, false);
      step.put(Fact.SCREWS, false);
    }
    var steps = Stream.<Map<Fact, Object>>of(step);
    steps = each(steps, Fact.GUIDE, guides(way));
    steps = each(steps, Fact.THROUGH_CUT, way.through().answers());
    steps = each(steps, Fact.INSIDE_OPENING, way.inside().answers());
    steps = each(steps, Fact.CUTTER_HAS_BEARING, way.bearing().answers());
    steps = each(steps, Fact.USES_STRIP, way.strip().answers());
    return each(steps, Fact.STACKED_CUTTER, way.stacked().answers());
  }

  private static List<String> guides(Way way) {
    return way.guides().isEmpty() ? List.of("none") : way.guides().stream().map(Guide::id).toList();
  }

  private static Stream<Map<Fact, Object>> each(
      Stream<Map<Fact, Object>> steps, Fact fact, List<?> values) {
    return steps.flatMap(
        step ->
            values.stream()
                .map(
                    value -> {
                      Map<Fact, Object> other = new EnumMap<>(step);
                      other.put(fact, value);
                      return other;
                    }));
  }
}
