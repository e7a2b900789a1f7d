package org.proofcut.rulebook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.proofcut.core.evidence.Citation;
import org.proofcut.core.measure.Length;
import org.proofcut.core.safety.Control;
import org.proofcut.core.safety.Fact;
import org.proofcut.core.safety.Finding;
import org.proofcut.core.safety.Finding.Effect;
import org.proofcut.core.safety.Finding.Seen;
import org.proofcut.core.safety.Ground;
import org.proofcut.core.safety.Harm;
import org.proofcut.core.safety.SignalWord;
import org.proofcut.core.safety.StepFacts;

class CelRulebookTest {

  private static final Limit SIX_MILLIMETRES =
      new Limit("deepest", Fact.Type.LENGTH, Length.of("6 mm"), Citation.COMMON_PRACTICE);

  private static final Vocabulary VOCABULARY =
      new Vocabulary(
          Map.of(
              Fact.OPERATION, List.of("dado", "rip"),
              Fact.MACHINE, List.of("router-table", "table-saw"),
              Fact.GUIDE, List.of("fence", "sled")),
          Map.of(Fact.CUT_DEPTH, List.of("router-table")),
          Map.of("deepest", SIX_MILLIMETRES));

  private static final String TOO_DEEP = "fact.cut_depth > limit.deepest";

  @Nested
  class Judge {

    @Test
    void judge_conditionHolds_saysWhatItSaw() {
      var step = step("router-table").with(Fact.CUT_DEPTH, Length.of("7 mm")).build();

      var findings = book(rule("deep", TOO_DEEP)).judge(step);

      assertEquals(
          List.of(new Seen("cut_depth", Length.of("7 mm")), new Seen("deepest", Length.of("6 mm"))),
          findings.get(0).seen());
    }

    @Test
    void judge_requiredFactMissing_stops() {
      var findings = book(rule("deep", TOO_DEEP)).judge(step("router-table").build());

      assertEquals(1, findings.size());
      assertEquals(Effect.STOP, findings.get(0).effect());
      assertEquals("deep", findings.get(0).rule());
      assertTrue(
          findings.get(0).hazard().startsWith("Could not check (not known: cut_depth)."),
          findings.get(0).hazard());
    }

    @Test
    void judge_sumOutOfRange_stops() {
      var huge = new Length(Long.MAX_VALUE);
      var step = step("router-table").with(Fact.CUT_DEPTH, huge).build();

      var findings =
          book(rule("deep", "fact.cut_depth + fact.cut_depth > limit.deepest")).judge(step);

      assertEquals(Effect.STOP, findings.get(0).effect());
    }

    @Test
    void judge_wordOnNoList_stopsBeforeAnyRuleIsSilent() {
      var step = step("lathe").build();

      var findings = book(rule("deep", TOO_DEEP)).judge(step);

      assertEquals(CelRulebook.UNKNOWN_WORD, findings.get(0).rule());
      assertEquals(Effect.STOP, findings.get(0).effect());
      assertTrue(findings.get(0).hazard().contains("machine \"lathe\""));
    }

    @Test
    void judge_otherMachine_isSilent() {
      var step = step("table-saw").with(Fact.CUT_DEPTH, Length.of("7 mm")).build();

      assertEquals(List.of(), book(rule("deep", TOO_DEEP)).judge(step));
    }

    @Test
    void judge_severalRules_givesTheGravestFirstAndThenByName() {
      var step = step("router-table").build();
      var book =
          book(
              always("b-notice", Effect.CAUTION, SignalWord.NOTICE),
              always("b-warning", Effect.CAUTION, SignalWord.WARNING),
              always("a-warning", Effect.CAUTION, SignalWord.WARNING),
              always("stop", Effect.STOP, SignalWord.NOTICE),
              always("danger", Effect.CAUTION, SignalWord.DANGER));

      assertEquals(
          List.of("stop", "danger", "a-warning", "b-warning", "b-notice"),
          book.judge(step).stream().map(Finding::rule).toList());
    }
  }

  @Test
  void judge_equallyGrave_givesTheNarrowerRuleFirst() {
    var wide = always("a-wide", Effect.CAUTION, SignalWord.WARNING);
    var narrow =
        new Rule(
            "z-narrow",
            List.of(),
            List.of("dado"),
            wide.machines(),
            List.of(),
            Optional.empty(),
            wide.effect(),
            wide.harm(),
            wide.word(),
            wide.hazard(),
            wide.controls(),
            List.of(),
            List.of(),
            Optional.empty(),
            wide.grounds());

    assertEquals(
        List.of("z-narrow", "a-wide"),
        book(wide, narrow).judge(step("router-table").build()).stream()
            .map(Finding::rule)
            .toList());
  }

  @Test
  void judge_ruleOfARegion_speaksThereAlone() {
    var here = inRegions(List.of("us", "us-washington"), List.of(Ground.COMMON_PRACTICE));
    assertEquals(1, book(here).judge(stepIn("us-washington")).size());
    assertEquals(List.of(), book(here).judge(stepIn("gb")));
  }

  @Test
  void judge_ruleWithALaw_namesItWhereItBindsAndElseItsFirstGround() {
    var law =
        new Ground(
            new Citation(Citation.Kind.LAW, "Rule of the place", "1"),
            "So be it.",
            false,
            List.of("us"));
    var both = inRegions(List.of(), List.of(Ground.COMMON_PRACTICE, law));

    var there = book(both).judge(stepIn("us")).get(0);
    assertEquals(law.citation(), there.because());
    assertEquals("So be it.", there.sourceSays());
    assertTrue(there.restsOnLaw());

    var elsewhere = book(both).judge(stepIn("gb")).get(0);
    assertEquals(Citation.COMMON_PRACTICE, elsewhere.because());
    assertFalse(elsewhere.restsOnLaw());
  }

  /** A handbook of the place is advice there too. */
  @Test
  void judge_ruleWithAHandbookOfThePlace_doesNotRestOnLaw() {
    var handbook =
        new Ground(
            new Citation(Citation.Kind.HANDBOOK, "Advice", "1"),
            "Better so.",
            false,
            List.of("us"));
    assertFalse(
        book(inRegions(List.of(), List.of(handbook))).judge(stepIn("us")).get(0).restsOnLaw());
  }

  @Nested
  class Compile {

    @Test
    void compile_optionalFactAskedForFirst_isAccepted() {
      for (var text :
          List.of(
              "has(fact.cutter_top_speed) && fact.cutter_top_speed > fact.cutter_top_speed",
              "!has(fact.passes) || fact.passes > 1",
              "!(!has(fact.passes) || fact.glue) && fact.passes > 1")) {
        assertEquals(List.of(), faults(text), text);
      }
    }

    @Test
    void compile_optionalFactAskedForInVain_isRefused() {
      for (var text :
          List.of(
              "fact.passes > 1",
              "fact.passes > 1 && has(fact.passes)",
              "has(fact.passes) || fact.passes > 1",
              "(has(fact.passes) || fact.glue) && fact.passes > 1",
              "!has(fact.passes) && fact.passes > 1",
              "has(fact.cutter_top_speed) && fact.passes > 1")) {
        assertTrue(faults(text).toString().contains("may be missing"), text);
      }
    }

    @Test
    void compile_factAlwaysOnTheMachine_needsNoAsking() {
      assertEquals(List.of(), faults(TOO_DEEP));
    }

    @Test
    void compile_wordHiddenInAList_isFound() {
      assertTrue(faults("fact.guide in [\"fence\", \"fense\"]").toString().contains("fense"));
    }

    /** Its rounding would hide in a rule. */
    @Test
    void compile_division_isRefused() {
      for (var text :
          List.of(
              "fact.parts / fact.parts == fact.parts", "fact.parts % fact.parts == fact.parts")) {
        assertTrue(faults(text).toString().contains("has no place in a condition"), text);
      }
    }

    @Test
    void compile_function_isRefused() {
      assertTrue(faults("fact.guide.startsWith(\"f\")").toString().contains("startsWith"));
    }
  }

  @Nested
  class AlwaysThere {

    private final Conditions conditions =
        new Conditions(
            new Vocabulary(
                Map.of(),
                Map.of(Fact.CUT_DEPTH, List.of("router-table", "rip", "dado")),
                Map.of("deepest", SIX_MILLIMETRES)));

    private boolean compiles(String text, List<String> machines, List<String> operations) {
      return conditions.compile(text, machines, operations, fault -> {}).isPresent();
    }

    @Test
    void compile_factOfTheOperations_needsNoQuestionFirst() {
      assertTrue(compiles(TOO_DEEP, List.of(), List.of("rip")));
      assertTrue(compiles(TOO_DEEP, List.of(), List.of("rip", "dado")));
      assertTrue(compiles(TOO_DEEP, List.of("table-saw"), List.of("rip")));
    }

    @Test
    void compile_anyOtherOperationToo_asksFirst() {
      assertFalse(compiles(TOO_DEEP, List.of(), List.of("rip", "plane")));
      assertFalse(compiles(TOO_DEEP, List.of(), List.of()));
      assertTrue(compiles("has(fact.cut_depth) && " + TOO_DEEP, List.of(), List.of("plane")));
    }

    @Test
    void compile_questionWhereItIsAlwaysThere_isRefused() {
      var asked = "has(fact.cut_depth) && " + TOO_DEEP;
      assertFalse(compiles(asked, List.of(), List.of("rip")));
    }
  }

  @Nested
  class TooMuch {

    /** Less than nothing is measured as much as more than one is. */
    @Test
    void compile_aBareNumber_isRefused_whateverItsSign() {
      for (var number : List.of("2", "-1", "-2", "-5000", "1000000000")) {
        assertTrue(faults("fact.parts > " + number).toString().contains("bare number"), number);
      }
      for (var number : List.of("0", "1")) {
        assertEquals(List.of(), faults("fact.parts > " + number), number);
      }
    }

    @Test
    void oneCharacterMore_isRefused() {
      var longest = "fact.glue" + " ".repeat(Conditions.LONGEST - 9);
      assertEquals(List.of(), faults(longest));
      assertTrue(faults(longest + " ").toString().contains("2,001 characters"));
    }

    @Test
    void oneBracketDeeper_isRefused() {
      var deepest = "(".repeat(Conditions.DEEPEST) + "fact.glue" + ")".repeat(Conditions.DEEPEST);
      assertEquals(List.of(), faults(deepest));
      assertTrue(faults("(" + deepest + ")").toString().contains("nested too deeply"));
    }

    @Test
    void manySigns_endInAnAnswer() {
      var most = Conditions.LONGEST - 20;
      assertEquals(List.of(), faults("!".repeat(most) + "fact.glue"));
      assertEquals(1, faults("-".repeat(most + 1) + "fact.glue").size());
      assertEquals(1, faults("fact" + ".glue".repeat(most / 5)).size());
    }
  }

  private static List<ConditionFault> faults(String text) {
    var faults = new ArrayList<ConditionFault>();
    var condition = new Conditions(VOCABULARY).compile(text, List.of("router-table"), faults::add);
    assertEquals(faults.isEmpty(), condition.isPresent());
    return faults;
  }

  private static CelRulebook book(Rule... rules) {
    return new CelRulebook(VOCABULARY, List.of(rules));
  }

  private static Rule rule(String id, String when) {
    var condition =
        new Conditions(VOCABULARY)
            .compile(
                when,
                List.of("router-table"),
                fault -> {
                  throw new AssertionError(fault);
                });
    return rule(id, condition, Effect.CAUTION, SignalWord.WARNING);
  }

  private static Rule always(String id, Effect effect, SignalWord word) {
    return rule(id, Optional.empty(), effect, word);
  }

  private static Rule rule(String id, Optional<Condition> when, Effect effect, SignalWord word) {
    return new Rule(
        id,
        List.of(),
        List.of(),
        List.of("router-table"),
        List.of(),
        when,
        effect,
        Harm.THROWN,
        word,
        "It hurts.",
        List.of(new Control(Control.Kind.REMOVE, "Take it away.")),
        List.of(),
        List.of(),
        Optional.empty(),
        List.of(Ground.COMMON_PRACTICE));
  }

  private static Rule inRegions(List<String> regions, List<Ground> grounds) {
    var rule = always("of-a-place", Effect.STOP, SignalWord.WARNING);
    return new Rule(
        rule.id(),
        rule.was(),
        rule.operations(),
        rule.machines(),
        regions,
        rule.when(),
        rule.effect(),
        rule.harm(),
        rule.word(),
        rule.hazard(),
        rule.controls(),
        rule.gear(),
        rule.checks(),
        rule.at(),
        grounds);
  }

  private static StepFacts stepIn(String region) {
    return step("router-table").with(Fact.REGION, region).build();
  }

  private static StepFacts.Builder step(String machine) {
    return StepFacts.builder()
        .with(Fact.OPERATION, "dado")
        .with(Fact.MACHINE, machine)
        .with(Fact.GUIDE, "fence")
        .with(Fact.THROUGH_CUT, false)
        .with(Fact.REGION, "elsewhere")
        .with(Fact.MATERIALS, List.of())
        .with(Fact.PARTS, 1)
        .with(Fact.USES_STRIP, false)
        .with(Fact.STACKED_CUTTER, false)
        .with(Fact.CUTTER_HAS_BEARING, false)
        .with(Fact.INSIDE_OPENING, false)
        .with(Fact.CUTTER_MARKED, true)
        .with(Fact.MACHINE_HAS_GUARD, true)
        .with(Fact.MACHINE_HAS_RIVING_KNIFE, true)
        .with(Fact.MACHINE_HAS_EXTRACTION, true)
        .with(Fact.AIDS_AT_HAND, List.of())
        .with(Fact.GEAR_AT_HAND, List.of())
        .with(Fact.GLUE, false)
        .with(Fact.SCREWS, false);
  }
}
