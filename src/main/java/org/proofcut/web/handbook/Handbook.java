package org.proofcut.web.handbook;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.proofcut.content.Content;
import org.proofcut.core.drawing.Sign;
import org.proofcut.core.evidence.Citation;
import org.proofcut.core.intake.ShopForms;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.LengthUnit;
import org.proofcut.core.measure.display.Scale;
import org.proofcut.core.safety.Control;
import org.proofcut.core.safety.Fact;
import org.proofcut.core.safety.Finding;
import org.proofcut.core.safety.Ground;
import org.proofcut.core.safety.SignalWord;
import org.proofcut.rulebook.Condition;
import org.proofcut.rulebook.Rule;

/**
 * The rules by machine, gravest first. A rule for several machines stands at each of them, one for
 * all before them; where one cut was asked for, all stand at its machine.
 *
 * @param ways to the rules of one machine alone; none where one cut was asked for
 * @param cut what one harm of one cut is called; null where all rules were looked through
 */
record Handbook(List<Chapter> chapters, List<Way> ways, int found, int all, String cut) {

  private static final String NO_MACHINE = "none";

  /** Rules of one machine. */
  record Chapter(String id, String title, List<Entry> entries) {}

  /**
   * A way to the rules of one machine, among those that speak of the words.
   *
   * @param href keeps the words
   * @param here whether these alone are shown
   */
  record Way(String title, int count, String href, boolean here) {}

  /**
   * One rule.
   *
   * @param on what it is for and when it comes up, in words
   * @param source what it stands on first
   * @param also how it hurts, and all else that it stands on
   */
  record Entry(
      SignalWord word,
      String hazard,
      List<String> actions,
      String source,
      String on,
      List<String> also,
      Sign sign) {}

  /** The rules that were asked for. */
  static Handbook of(Content content, Sought sought) {
    return sought.cut().isPresent()
        ? ofCut(content, sought.words(), sought.cut().get())
        : ofAll(content, sought);
  }

  /** The rules of one harm in one way of cutting; none where no such cut is made. */
  private static Handbook ofCut(Content content, List<String> words, Sought.Cut cut) {
    var ids =
        content
            .matrix()
            .row(cut.operation(), cut.machine())
            .map(row -> row.cell(cut.harm()).rules())
            .orElse(List.of());
    var all = content.rulebook().rules();
    var found =
        all.stream()
            .filter(rule -> ids.contains(rule.id()) && speaksOf(rule, words, content))
            .toList();
    return new Handbook(
        Stream.of(chapter(cut.machine(), title(cut.machine()), found, machines -> true, content))
            .filter(chapter -> !chapter.entries().isEmpty())
            .toList(),
        List.of(),
        found.size(),
        all.size(),
        "%s, %s: %s"
            .formatted(
                title(cut.machine()), operation(cut.operation(), content), cut.harm().words()));
  }

  /**
   * The rules that speak of all these words, in whatever order; without words, all of them. Those
   * of one machine where it is one that we know.
   */
  private static Handbook ofAll(Content content, Sought sought) {
    var all = content.rulebook().rules();
    var found = all.stream().filter(rule -> speaksOf(rule, sought.words(), content)).toList();
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
            .toList();
    var one = chapters.stream().filter(chapter -> chapter.id().equals(sought.machine())).toList();
    return new Handbook(
        (one.isEmpty() ? chapters : one)
            .stream().filter(chapter -> !chapter.entries().isEmpty()).toList(),
        chapters.stream()
            .filter(chapter -> !chapter.entries().isEmpty() || one.contains(chapter))
            .map(chapter -> way(chapter, sought.words(), one.contains(chapter)))
            .toList(),
        one.isEmpty() ? found.size() : one.get(0).entries().size(),
        all.size(),
        null);
  }

  private static Way way(Chapter chapter, List<String> words, boolean here) {
    var typed = String.join(" ", words);
    return new Way(
        chapter.title(),
        chapter.entries().size(),
        "/rules?machine="
            + chapter.id()
            + (typed.isEmpty() ? "" : "&words=" + URLEncoder.encode(typed, StandardCharsets.UTF_8)),
        here);
  }

  /** Whether the rules of one machine, or of one cut, are shown instead of all. */
  public boolean isPart() {
    return cut != null || ways.stream().anyMatch(Way::here);
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

  static String title(String machine) {
    return machine.equals(NO_MACHINE)
        ? "By hand"
        : ShopForms.of(machine).map(form -> form.title()).orElse(machine);
  }

  /** What an operation is called; its id where content has no words for it. */
  static String operation(String id, Content content) {
    var wording = content.wording().operations().get(id);
    return wording == null ? id : wording.title();
  }

  private static boolean speaksOf(Rule rule, List<String> words, Content content) {
    var text =
        Stream.of(
                Stream.of(rule.id(), rule.hazard(), rule.harm().words()),
                rule.controls().stream().map(Control::action),
                rule.machines().stream().map(Handbook::title),
                operations(rule, content),
                only(rule, content),
                rule.grounds().stream().map(ground -> ground(ground, content)))
            .flatMap(part -> part)
            .collect(Collectors.joining(" "))
            .toLowerCase(Locale.ROOT);
    return words.stream().allMatch(text::contains);
  }

  private static Entry entry(Rule rule, Content content) {
    boolean stops = rule.effect() == Finding.Effect.STOP;
    var on =
        Stream.of(
                Stream.of("Rule " + rule.id()),
                Stream.of(stops ? "it stops the step" : ""),
                Stream.of(operations(rule, content).collect(Collectors.joining(", "))),
                rule.when().stream().flatMap(Handbook::when))
            .flatMap(part -> part)
            .filter(part -> !part.isEmpty())
            .collect(Collectors.joining("; "));
    var also =
        Stream.of(
                Stream.of("Harm: " + rule.harm().words()),
                only(rule, content),
                rule.grounds().stream().skip(1).map(ground -> "Also: " + ground(ground, content)))
            .flatMap(part -> part)
            .toList();
    return new Entry(
        rule.word(),
        rule.hazard(),
        rule.controls().stream().map(Control::action).toList(),
        ground(rule.grounds().get(0), content),
        on,
        also,
        Sign.GENERAL_WARNING);
  }

  /** Where a rule holds, if not everywhere. */
  private static Stream<String> only(Rule rule, Content content) {
    return rule.regions().isEmpty()
        ? Stream.empty()
        : Stream.of("Only in " + String.join(", ", content.names(rule.regions())));
  }

  /** What a source says, which it is, where it binds, and how its words are known. */
  private static String ground(Ground ground, Content content) {
    var cited = ground.citation().text();
    var text = new StringBuilder(ground.says());
    text.append(ground.says().isEmpty() ? cited : " (" + cited + ")");
    if (ground.citation().kind() == Citation.Kind.LAW) {
      text.append(" Binding in: ")
          .append(String.join(", ", content.names(ground.regions())))
          .append('.');
    }
    content
        .known(ground.citation())
        .ifPresent(known -> text.append(" How we know its words: ").append(known));
    return text.toString();
  }

  private static Stream<String> operations(Rule rule, Content content) {
    return rule.operations().stream().map(id -> operation(id, content));
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
