package org.proofcut.web.api;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.proofcut.content.Content;
import org.proofcut.content.Trouble;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.LengthUnit;
import org.proofcut.core.safety.Check;
import org.proofcut.core.safety.Control;
import org.proofcut.core.safety.Finding;
import org.proofcut.core.safety.GearNeed;
import org.proofcut.core.safety.Ground;
import org.proofcut.core.safety.Harm;
import org.proofcut.rulebook.Condition;
import org.proofcut.rulebook.Limit;
import org.proofcut.rulebook.Rule;

/** Rules of the house, and what they find. */
final class RuleJson {

  private RuleJson() {}

  /** A rule. */
  @Schema(name = "Rule")
  @JsonInclude(JsonInclude.Include.NON_ABSENT)
  record Entry(
      @Schema(description = "names the hazard") String id,
      @Schema(description = "ids it had before") List<String> was,
      @Schema(description = "operations it is for; all if empty") List<String> operations,
      @Schema(description = "machines it is for; all if empty") List<String> machines,
      @Schema(description = "regions it holds in; everywhere if empty") List<String> regions,
      @Schema(description = "left out where it fires on every step that it is for")
          Optional<When> when,
      @Schema(description = "stop or caution") String effect,
      @Schema(description = "the way in which it hurts") String harm,
      String signalWord,
      String hazard,
      List<Measure> controls,
      List<Worn> gear,
      List<Look> checks,
      @Schema(description = "the pause at which it matters most; left out where it does not say")
          Optional<String> at,
      LengthJson.Cited because,
      @Schema(description = "what the source says, in our words") String says,
      @Schema(description = "all that it stands on, the first one first") List<Stands> grounds) {}

  /** One thing that a rule stands on. */
  @Schema(name = "Ground")
  @JsonInclude(JsonInclude.Include.NON_ABSENT)
  record Stands(
      LengthJson.Cited because,
      @Schema(description = "what the source says, in our words") String says,
      @Schema(description = "regions in which it is law; nowhere if empty") List<String> lawIn,
      @Schema(description = "how the words of the source are known; left out where there is none")
          Optional<String> known) {}

  /** Which rules speak of which harm, for each way of cutting. */
  @Schema(name = "HarmMatrix")
  record Matrix(List<Harmful> harms, List<Cut> cuts) {}

  /** A way of being hurt. */
  @Schema(name = "Harm")
  record Harmful(String id, String words) {}

  /** An operation on a kind of machine. */
  @Schema(name = "CutHarms")
  record Cut(
      String machine,
      String operation,
      @Schema(description = "one for each harm") List<Cell> cells) {}

  /** One harm of one cut. */
  @Schema(name = "CutHarm")
  @JsonInclude(JsonInclude.Include.NON_ABSENT)
  record Cell(
      String harm,
      @Schema(description = "ids of the rules that can speak there") List<String> rules,
      @Schema(description = "why none does; left out where rules do") Optional<String> why) {}

  /** When a rule fires. */
  @Schema(name = "Condition")
  record When(
      @Schema(description = "as the rule is written") String source,
      List<Asked> facts,
      List<Bound> limits) {}

  /** A fact that a condition asks for. */
  @Schema(name = "Fact")
  record Asked(String id, String says) {}

  /** A limit that a condition compares with. */
  @Schema(name = "Limit")
  record Bound(String id, String name, Seen value, LengthJson.Cited because) {}

  /** A value that a rule looked at: text, or for a length all of it. */
  @Schema(name = "SeenValue")
  @JsonInclude(JsonInclude.Include.NON_ABSENT)
  record Seen(
      String name,
      @Schema(description = "length, number, yes-no, text or list") String type,
      String text,
      Optional<LengthJson.Plain> length) {}

  /** One thing to do about a hazard. */
  @Schema(name = "Control")
  record Measure(
      @Schema(description = "its place in the hierarchy of controls") String kind, String action) {}

  /** Gear that a rule requires or forbids. */
  @Schema(name = "GearNeed")
  @JsonInclude(JsonInclude.Include.NON_ABSENT)
  record Worn(
      String kind,
      String state,
      @Schema(description = "the weakest class that will do") Optional<String> least,
      @Schema(description = "in a few words") Optional<String> why) {}

  /** Something to look at. */
  @Schema(name = "Check")
  record Look(String pause, String ask, String answer) {}

  /** What a rule says of one step. */
  @Schema(name = "Finding")
  record Found(
      String rule,
      @Schema(description = "stop or caution") String effect,
      String signalWord,
      String hazard,
      List<Measure> controls,
      List<Worn> gear,
      List<Look> checks,
      LengthJson.Cited because,
      String says,
      @Schema(description = "the facts and limits that made it fire") List<Seen> seen) {}

  /** What to do when something has gone wrong. */
  @Schema(name = "Trouble")
  record Help(String id, String title, List<String> steps) {}

  static Entry entry(Rule rule, Content content, LengthUnit unit) {
    return new Entry(
        rule.id(),
        rule.was(),
        rule.operations(),
        rule.machines(),
        rule.regions(),
        rule.when().map(condition -> when(condition, content, unit)),
        ShopJson.word(rule.effect()),
        ShopJson.word(rule.harm()),
        ShopJson.word(rule.word()),
        rule.hazard(),
        controls(rule.controls()),
        gear(rule.gear()),
        checks(rule.checks()),
        rule.at().map(ShopJson::word),
        LengthJson.cited(rule.because()),
        rule.sourceSays(),
        rule.grounds().stream().map(ground -> stands(ground, content)).toList());
  }

  private static Stands stands(Ground ground, Content content) {
    return new Stands(
        LengthJson.cited(ground.citation()),
        ground.says(),
        ground.regions().stream().filter(ground::isLawIn).toList(),
        content.known(ground.citation()));
  }

  static Matrix matrix(Content content) {
    return new Matrix(
        Arrays.stream(Harm.values())
            .map(harm -> new Harmful(ShopJson.word(harm), harm.words()))
            .toList(),
        content.matrix().rows().stream()
            .map(
                row ->
                    new Cut(
                        row.way().machine(),
                        row.way().kind().id(),
                        row.cells().entrySet().stream()
                            .map(
                                cell ->
                                    new Cell(
                                        ShopJson.word(cell.getKey()),
                                        cell.getValue().rules(),
                                        cell.getValue().why()))
                            .toList()))
            .toList());
  }

  private static When when(Condition condition, Content content, LengthUnit unit) {
    var limits = new ArrayList<Bound>();
    condition.limits().forEach((id, limit) -> limits.add(bound(id, limit, unit)));
    return new When(
        condition.text(),
        condition.facts().stream()
            .map(fact -> new Asked(fact.id(), content.facts().get(fact).says()))
            .toList(),
        limits);
  }

  private static Bound bound(String id, Limit limit, LengthUnit unit) {
    return new Bound(
        id, limit.name(), seen(id, limit.value(), unit), LengthJson.cited(limit.because()));
  }

  static Found found(Finding finding, LengthUnit unit) {
    return new Found(
        finding.rule(),
        ShopJson.word(finding.effect()),
        ShopJson.word(finding.word()),
        finding.hazard(),
        controls(finding.controls()),
        gear(finding.gear()),
        checks(finding.checks()),
        LengthJson.cited(finding.because()),
        finding.sourceSays(),
        finding.seen().stream().map(one -> seen(one.name(), one.value(), unit)).toList());
  }

  private static Seen seen(String name, Object value, LengthUnit unit) {
    if (value instanceof Length length) {
      var plain = LengthJson.plain(length, unit);
      return new Seen(name, "length", plain.shown(), Optional.of(plain));
    }
    if (value instanceof Collection<?> several) {
      var text = String.join(", ", several.stream().map(String::valueOf).toList());
      return new Seen(name, "list", text, Optional.empty());
    }
    if (value instanceof Boolean yes) {
      return new Seen(name, "yes-no", yes ? "yes" : "no", Optional.empty());
    }
    var type = value instanceof Number ? "number" : "text";
    return new Seen(name, type, value.toString(), Optional.empty());
  }

  static Help help(Trouble trouble) {
    return new Help(trouble.id(), trouble.title(), trouble.steps());
  }

  private static List<Measure> controls(List<Control> controls) {
    return controls.stream()
        .map(control -> new Measure(ShopJson.word(control.kind()), control.action()))
        .toList();
  }

  private static List<Worn> gear(List<GearNeed> gear) {
    return gear.stream()
        .map(need -> new Worn(need.kind(), ShopJson.word(need.state()), need.least(), need.why()))
        .toList();
  }

  private static List<Look> checks(List<Check> checks) {
    return checks.stream()
        .map(check -> new Look(ShopJson.word(check.pause()), check.ask(), check.answer()))
        .toList();
  }
}
