package org.proofcut.web.reading;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.proofcut.core.checklist.PauseCautions;
import org.proofcut.core.drawing.Sign;
import org.proofcut.core.measure.Length;
import org.proofcut.core.plan.OperationSheet;
import org.proofcut.core.safety.Check.Pause;
import org.proofcut.core.safety.Control;
import org.proofcut.core.safety.Finding;
import org.proofcut.core.safety.SignalWord;

/**
 * The cautions of a sheet as they are read.
 *
 * @param first those that stand in full, the gravest first
 * @param more the others, by the pause at which they matter
 */
public record Cautions(List<Caution> first, List<Group> more) {

  /**
   * What can hurt, and what to do about it.
   *
   * @param changed since when it is new; null where it was heard before
   */
  public record Caution(
      SignalWord word,
      String hazard,
      List<String> actions,
      String source,
      String why,
      Sign sign,
      String changed) {}

  /** Cautions of one pause. */
  public record Group(String title, List<Caution> cautions) {}

  /** All of them. */
  public int count() {
    return first.size() + moreCount();
  }

  /** How many are one tap away. */
  public int moreCount() {
    return more.stream().mapToInt(group -> group.cautions().size()).sum();
  }

  /** Of a sheet that is worked, at a pause. */
  static Cautions at(
      Pause now, OperationSheet sheet, Optional<OperationSheet> before, Shows shows) {
    var known = before.map(Cautions::rules).orElse(Set.of());
    var since = before.map(one -> "new since sheet " + one.number()).orElse(null);
    int asked = sheet.checklist().at(now).size();
    return read(
        PauseCautions.at(now, sheet.findings(), known, asked),
        shows,
        finding -> known.contains(finding.rule()) ? null : since);
  }

  /** Of a cut that is only looked up, where nothing is asked yet. */
  static Cautions of(List<Finding> findings, Shows shows) {
    return read(PauseCautions.gravest(findings), shows, finding -> null);
  }

  /** What forbids the operation as planned. */
  static List<Caution> stops(List<Finding> findings, Shows shows) {
    return findings.stream()
        .filter(finding -> finding.effect() == Finding.Effect.STOP)
        .map(finding -> caution(finding, shows, null))
        .toList();
  }

  private interface Since {
    String of(Finding finding);
  }

  private static Cautions read(PauseCautions cautions, Shows shows, Since since) {
    var more = new ArrayList<Group>();
    cautions
        .later()
        .forEach(
            (pause, findings) ->
                more.add(
                    new Group(
                        title(pause),
                        findings.stream()
                            .map(finding -> caution(finding, shows, since.of(finding)))
                            .toList())));
    return new Cautions(
        cautions.open().stream()
            .map(finding -> caution(finding, shows, since.of(finding)))
            .toList(),
        more);
  }

  private static Set<String> rules(OperationSheet sheet) {
    return sheet.findings().stream().map(Finding::rule).collect(Collectors.toSet());
  }

  private static String title(Pause pause) {
    return switch (pause) {
      case SET -> "While you set it";
      case MACHINE -> "The machine itself";
      case BEFORE_POWER -> "Before power";
      case PROOF -> "While it is cut";
      case LEAVE_SAFE -> "When you leave it";
    };
  }

  private static Caution caution(Finding finding, Shows shows, String changed) {
    boolean gearAlone =
        finding.controls().stream().allMatch(control -> control.kind() == Control.Kind.GEAR);
    var seen =
        finding.seen().stream()
            .map(
                one ->
                    one.name().replace('_', ' ')
                        + " "
                        + seen(one.value(), shows)
                        + one.own().map(own -> " (" + own + ")").orElse(""))
            .toList();
    return new Caution(
        finding.word(),
        finding.hazard() + (gearAlone ? " Only gear stands between it and you." : ""),
        finding.controls().stream().map(Control::action).toList(),
        source(finding),
        "Rule " + finding.rule() + (seen.isEmpty() ? "" : ": " + String.join(", ", seen)),
        Sign.GENERAL_WARNING,
        changed);
  }

  private static String source(Finding finding) {
    var written =
        finding.sourceSays().isEmpty()
            ? finding.because().text()
            : finding.sourceSays() + " (" + finding.because().text() + ")";
    return finding.restsOnLaw() ? written + ". It is the law where this shop stands." : written;
  }

  private static String seen(Object value, Shows shows) {
    if (value instanceof Boolean so) {
      return so ? "yes" : "no";
    }
    if (value instanceof Collection<?> some) {
      return some.isEmpty()
          ? "none"
          : some.stream()
              .map(one -> String.valueOf(one).replace('-', ' '))
              .collect(Collectors.joining(", "));
    }
    return value instanceof Length length ? shows.text(length) : String.valueOf(value);
  }
}
