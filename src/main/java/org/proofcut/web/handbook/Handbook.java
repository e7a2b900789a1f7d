package org.proofcut.web.handbook;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.proofcut.content.Content;
import org.proofcut.core.drawing.Sign;
import org.proofcut.core.intake.ShopForms;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.LengthUnit;
import org.proofcut.core.measure.display.Scale;
import org.proofcut.core.safety.Control;
import org.proofcut.core.safety.Fact;
import org.proofcut.core.safety.Finding;
import org.proofcut.core.safety.SignalWord;
import org.proofcut.rulebook.Condition;
import org.proofcut.rulebook.Rule;

/**
 * The rules by machine, gravest first. A rule for several machines stands at each of them, one for
 * all before them.
 */
record Handbook(List<Chapter> chapters, int found, int all) {

  private static final String NO_MACHINE = "none";

  /** Rules of one machine. */
  record Chapter(String id, String title, List<Entry> entries) {}

  /**
   * One rule.
   *
   * @param on what it is for and when it comes up, in words
   */
  record Entry(
      SignalWord word, String hazard, List<String> actions, String source, String on, Sign sign) {}

  /**
   * The rules that speak of all these words, in whatever order.
   *
   * @param sought words with spaces between; none finds all
   */
  static Handbook of(Content content, String sought) {
    var words = Arrays.stream(sought.strip().toLowerCase(Locale.ROOT).split("\\s+")).toList();
    var all = content.rulebook().rules();
    var found = all.stream().filter(rule -> speaksOf(rule, words, content)).toList();
    var machines = content.facts().get(Fact.MACHINE).words();
    var chapters =
        Stream.concat(
                Stream.of(
                    chapter(
                        "all",
                        "At every machine, and by hand",
                        found,
                        of -> of.isEmpty(),
                        content)),
                machines.stream()
                    .map(
                        machine ->
                            chapter(
                                machine,
                                title(machine),
                                found,
                                of -> of.contains(machine),
                                content)))
            .filter(chapter -> !chapter.entries().isEmpty())
            .toList();
    return new Handbook(chapters, found.size(), all.size());
  }

  private static Chapter chapter(
      String id,
      String title,
      List<Rule> rules,
      Predicate<List<String>> machines,
      Content content) {
    return new Chapter(
        id,
        title,
        rules.stream()
            .filter(rule -> machines.test(rule.machines()))
            .sorted(Comparator.comparing(Rule::word).thenComparing(Rule::id))
            .map(rule -> entry(rule, content))
            .toList());
  }

  private static String title(String machine) {
    return machine.equals(NO_MACHINE)
        ? "By hand"
        : ShopForms.of(machine).map(form -> form.title()).orElse(machine);
  }

  private static boolean speaksOf(Rule rule, List<String> words, Content content) {
    var text =
        Stream.of(
                Stream.of(rule.id(), rule.hazard(), rule.sourceSays(), rule.because().text()),
                rule.controls().stream().map(Control::action),
                rule.machines().stream().map(Handbook::title),
                operations(rule, content))
            .flatMap(part -> part)
            .collect(Collectors.joining(" "))
            .toLowerCase(Locale.ROOT);
    return words.stream().allMatch(text::contains);
  }

  private static Entry entry(Rule rule, Content content) {
    boolean stops = rule.effect() == Finding.Effect.STOP;
    var says = rule.sourceSays();
    var on =
        Stream.of(
                Stream.of("Rule " + rule.id()),
                Stream.of(stops ? "it stops the step" : ""),
                Stream.of(operations(rule, content).collect(Collectors.joining(", "))),
                rule.when().stream().flatMap(Handbook::when))
            .flatMap(part -> part)
            .filter(part -> !part.isEmpty())
            .collect(Collectors.joining("; "));
    return new Entry(
        rule.word(),
        rule.hazard(),
        rule.controls().stream().map(Control::action).toList(),
        says.isEmpty() ? rule.because().text() : says + " (" + rule.because().text() + ")",
        on,
        Sign.GENERAL_WARNING);
  }

  private static Stream<String> operations(Rule rule, Content content) {
    return rule.operations().stream().map(id -> content.wording().operations().get(id).title());
  }

  /** As it is written, and each limit that it names with its value and source. */
  private static Stream<String> when(Condition when) {
    return Stream.concat(
        Stream.of("when " + when.text()),
        when.limits().entrySet().stream()
            .map(
                limit ->
                    limit.getKey()
                        + " = "
                        + shown(limit.getValue().value())
                        + ", "
                        + limit.getValue().because().text()));
  }

  private static String shown(Object value) {
    return value instanceof Length length
        ? Scale.caliper(LengthUnit.MILLIMETRE).show(length).text()
        : String.valueOf(value);
  }
}
