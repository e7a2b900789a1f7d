package org.proofcut.content;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.proofcut.core.evidence.Citation;
import org.proofcut.core.evidence.Problem;
import org.proofcut.core.measure.Length;
import org.proofcut.core.safety.Fact;
import org.proofcut.core.safety.Finding;
import org.proofcut.core.safety.Finding.Seen;
import org.proofcut.core.safety.StepFacts;
import org.proofcut.core.setup.RouterLimits;
import org.proofcut.rulebook.Rule;

/** A shop's own files laid over ours, one by one. */
class OwnContentTest {

  private static final String PASSES = "setup/limits/router/passes.yaml";
  private static final String DEEP_PASS = "safety/cutter/deep-pass.yaml";

  private static final String SHALLOWER =
      """
      deepest-pass:
        name: deepest single pass of a router cutter
        value: 4 mm
        because: {source: own-choice}
      """;

  private static final String OWN_RULE =
      """
      id: long-work-alone
      applies-to: {machines: [router-table]}
      when: fact.longest_work > limit.longest_alone
      harm: strain
      severity: minor-or-moderate
      likelihood: could
      hazard: Long work is not held by one person.
      do-this:
        - {kind: work-practice, action: Ask a second person.}
      because: {source: own-choice}
      """;

  private static final String OWN_CASES =
      """
      cases:
        - name: Longer than the limit.
          given: {machine: router-table, longest_work: 2001 mm}
          then: fires
        - name: Exactly at the limit.
          given: {machine: router-table, longest_work: 2000 mm}
          then: quiet
      """;

  private static final String OWN_LIMIT =
      """
      longest_alone:
        name: longest piece that one person feeds
        value: 2000 mm
        because: {source: own-choice}
      """;

  @Test
  void nothingLaidOver_isOurs() {
    var laid = new LaidOver().laid();

    var content = laid.loaded().orThrow();
    assertEquals(Content.bundled().summary(), content.summary());
    assertEquals(Content.bundled().limits(RouterLimits.class), content.limits(RouterLimits.class));
    assertEquals(List.of(), laid.changes());
    for (var rule : content.rulebook().rules()) {
      assertEquals(Optional.empty(), rule.because().own(), rule.id());
    }
  }

  @Nested
  class OneLimit {

    private final LaidOver laid = new LaidOver().own(PASSES, SHALLOWER);

    @Test
    void theOthersOfTheFile_stayOurs() {
      var limits = laid.content().limits(RouterLimits.class);

      assertEquals(Length.of("4 mm"), limits.deepestPass().value());
      assertEquals(Content.bundled().limits(RouterLimits.class).lightPass(), limits.lightPass());
    }

    @Test
    void itsSource_saysWhatItStandsInsteadOf() {
      assertEquals(
          "this shop: 4 mm instead of 6.5 mm; our own choice",
          laid.content().limits(RouterLimits.class).deepestPass().source().text());
      assertEquals(
          List.of(
              "deepest single pass of a router cutter (deepest-pass): this shop: 4 mm instead of"
                  + " 6.5 mm"),
          laid.changes());
    }

    @Test
    void aRuleThatAsksForIt_judgesByIt_andSaysSo() {
      var content = laid.content();
      var step =
          NeutralStep.of(
              rule(content, "deep-pass"),
              Map.of(
                  Fact.DEEPEST_PASS, Length.of("5 mm"),
                  Fact.CUTTER_DIAMETER, Length.of("12 mm")));

      var seen = finding(content, "deep-pass", step).orElseThrow().seen();

      assertTrue(
          seen.contains(
              new Seen(
                  "deepest_pass",
                  Length.of("4 mm"),
                  Optional.of("this shop: 4 mm instead of 6.5 mm"))),
          seen.toString());
      assertEquals(Optional.empty(), finding(Content.bundled(), "deep-pass", step));
    }

    @Test
    void aTenthOrTenTimesOurs_isTheFarthest() {
      for (var near : List.of("0.65 mm", "65 mm")) {
        assertEquals(
            Length.of(near),
            new LaidOver()
                .own(PASSES, SHALLOWER.replace("4 mm", near))
                .content()
                .limits(RouterLimits.class)
                .deepestPass()
                .value());
      }
      for (var far : List.of("0.649 mm", "65.001 mm", "0 mm", "-4 mm")) {
        var problems = new LaidOver().own(PASSES, SHALLOWER.replace("4 mm", far)).problems();
        assertEquals(1, problems.size(), far + problems);
        assertEquals(PASSES + ":3:10", problems.get(0).where());
        assertEquals(
            "from a tenth of ours to ten times it; ours is 6.5 mm", problems.get(0).allowed());
      }
    }

    @Test
    void theSameValue_saysItIsTheShopsOwn() {
      var same = new LaidOver().own(PASSES, SHALLOWER.replace("4 mm", "6.5 mm"));
      assertEquals(
          "this shop's own, 6.5 mm as ours; our own choice",
          same.content().limits(RouterLimits.class).deepestPass().source().text());
    }

    @Test
    void inAFileOfAnotherName_standsTwice() {
      var problems = new LaidOver().own("setup/limits/router/ours-too.yaml", SHALLOWER).problems();
      assertEquals(List.of("\"deepest-pass\" stands here twice"), what(problems));
    }

    @Test
    void ofARule_inAFileOfAnotherName_saysWhereOursStands() {
      var problems =
          new LaidOver()
              .own("safety/limits/more.yaml", OWN_LIMIT.replace("longest_alone", "largest_cutter"))
              .problems();
      assertEquals(
          List.of("\"largest_cutter\" stands already in ours: safety/limits/cutter.yaml:14:1"),
          problems.stream()
              .map(one -> one.what())
              .filter(what -> what.contains("already"))
              .map(what -> what.replaceFirst("more.yaml:1:1", "more.yaml"))
              .map(OwnContentTest::asOurs)
              .toList());
    }
  }

  /** Which of the two is met first is nothing that a shop cares for. */
  private static String asOurs(String what) {
    return what.contains("safety/limits/more.yaml")
        ? "\"largest_cutter\" stands already in ours: safety/limits/cutter.yaml:14:1"
        : what;
  }

  @Nested
  class OneRule {

    @Test
    void new_isAdded_andSaysThatItIsTheShopsOwn() {
      var laid =
          new LaidOver()
              .own("safety/person/long-work-alone.yaml", OWN_RULE)
              .own("safety/person/long-work-alone.cases.yaml", OWN_CASES)
              .own("safety/limits/person.yaml", OWN_LIMIT);

      var content = laid.content();
      var rule = rule(content, "long-work-alone");
      assertEquals("this shop's own; our own choice", rule.because().text());
      assertEquals(
          List.of(
              "longest piece that one person feeds (longest_alone): this shop's own",
              "long-work-alone: this shop's own"),
          laid.changes());
      assertEquals(
          Content.bundled().rulebook().rules().size() + 1, content.rulebook().rules().size());
    }

    @Test
    void thatDoesNotDoWhatItsCasesSay_isRefused_withTheCase() {
      var problems =
          new LaidOver()
              .own("safety/person/long-work-alone.yaml", OWN_RULE.replace(" > ", " >= "))
              .own("safety/person/long-work-alone.cases.yaml", OWN_CASES)
              .own("safety/limits/person.yaml", OWN_LIMIT)
              .problems();
      assertEquals(List.of("the rule \"long-work-alone\" fires here"), what(problems));
      assertEquals("safety/person/long-work-alone.cases.yaml:5:11", problems.get(0).where());
    }

    @Test
    void withoutCases_isRefused() {
      var problems =
          new LaidOver()
              .own("safety/person/long-work-alone.yaml", OWN_RULE)
              .own("safety/limits/person.yaml", OWN_LIMIT)
              .problems();
      assertEquals(List.of("the rule has no cases"), what(problems));
    }

    @Test
    void thatIsOurs_isReplacedAsAWhole_andKeepsOurCases() {
      var laid =
          new LaidOver()
              .own(DEEP_PASS, LaidOver.text(DEEP_PASS).replace("effect: stop", "effect: caution"));

      var rules =
          laid.content().rulebook().rules().stream()
              .filter(rule -> rule.id().equals("deep-pass"))
              .toList();
      assertEquals(1, rules.size());
      assertEquals(Finding.Effect.CAUTION, rules.get(0).effect());
      assertEquals(
          "this shop's own instead of ours; common practice", rules.get(0).because().text());
      assertEquals(List.of("deep-pass: this shop's own instead of ours"), laid.changes());
    }

    @Test
    void casesAlone_overOurs_areRefused() {
      var path = "safety/cutter/deep-pass.cases.yaml";
      var problems = new LaidOver().own(path, LaidOver.text(path)).problems();
      assertEquals(
          List.of("these cases are laid over those of a rule that is ours"), what(problems));
    }

    @Test
    void aLimitThatNothingUsesAnyMore_isNoFaultOfTheShop_butOneOfItsOwnIs() {
      var blind =
          LaidOver.text(DEEP_PASS)
              .replaceAll("(?s)when: >-.*?effect", "when: fact.glue\neffect")
              .replace("effect: stop", "effect: caution");
      assertFalse(
          rule(new LaidOver().own(DEEP_PASS, blind).content(), "deep-pass")
              .when()
              .orElseThrow()
              .limits()
              .containsKey("deepest_pass"));
      assertEquals(
          List.of("the limit \"longest_alone\" is used by nothing"),
          what(new LaidOver().own("safety/limits/person.yaml", OWN_LIMIT).problems()));
    }
  }

  @Test
  void gearAndSources_areLaidOverEntryByEntry() {
    var before = Content.bundled();
    var id = before.wording().gear().keySet().iterator().next();
    var text = LaidOver.text("shop/gear.yaml");
    var entry = text.substring(text.indexOf(id + ":"));
    var own =
        new LaidOver()
            .own("shop/gear.yaml", firstEntry(entry).replaceFirst("name: .*", "name: our own name"))
            .content();
    assertEquals("our own name", own.wording().gear().get(id).name());
    assertEquals(before.wording().gear().keySet(), own.wording().gear().keySet());
  }

  /** Up to the next line that begins at the margin. */
  private static String firstEntry(String text) {
    var lines = text.lines().toList();
    var entry = new StringBuilder(lines.get(0)).append('\n');
    for (var line : lines.subList(1, lines.size())) {
      if (!line.startsWith(" ")) {
        break;
      }
      entry.append(line).append('\n');
    }
    return entry.toString();
  }

  @Test
  void faults_ofTheShop_andOnesThatItCausesInOurs_areToldApart() {
    var problems =
        new LaidOver().own(PASSES, SHALLOWER.replace("deepest-pass", "deepest-paas")).problems();
    assertEquals(List.of(PASSES + ":1:1"), problems.stream().map(one -> one.where()).toList());
    assertTrue(problems.get(0).doThis().contains("deepest-pass"), problems.toString());
  }

  @Test
  void unpublishedSource_ofTheShop_isCitedAsSuch() {
    var citation = Citation.OWN_CHOICE.forOwn("this shop: 4 mm instead of 6 mm");
    assertEquals("this shop: 4 mm instead of 6 mm; our own choice", citation.text());
    assertEquals(
        "this shop's own; Rule book, § 3 (law)",
        new Citation(Citation.Kind.LAW, "Rule book", "§ 3").forOwn("this shop's own").text());
  }

  private static List<String> what(List<Problem> problems) {
    return problems.stream().map(one -> one.what()).toList();
  }

  private static Rule rule(Content content, String id) {
    return content.rulebook().rules().stream()
        .filter(rule -> rule.id().equals(id))
        .findFirst()
        .orElseThrow();
  }

  private static Optional<Finding> finding(Content content, String id, StepFacts step) {
    return content.rulebook().judge(step).stream()
        .filter(finding -> finding.rule().equals(id))
        .findFirst();
  }
}
