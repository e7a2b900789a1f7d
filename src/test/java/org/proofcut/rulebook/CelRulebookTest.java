package org.proofcut.rulebook;

import static org.junit.jupiter.api.Assertions.assertEquals;
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
  class TooMuch {

    /** As long as a condition may be, and each part of it is looked at. */
    @Test
    void longestCondition_isJudgedInLessThanAMillisecond() {
      var text = new StringBuilder("fact.glue");
      while (text.length() + 13 <= Conditions.LONGEST) {
        text.append(" || fact.glue");
      }
      assertTrue(text.length() > Conditions.LONGEST - 13);
      var book = book(rule("long", text.toString()));
      var step = step("router-table").build();
      long best = Long.MAX_VALUE;
      for (int round = 0; round < 50; round++) {
        long begun = System.nanoTime();
        for (int n = 0; n < 100; n++) {
          assertEquals(List.of(), book.judge(step));
        }
        best = Math.min(best, (System.nanoTime() - begun) / 100);
      }
      assertTrue(best < 1_000_000, best + " ns");
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
