package org.proofcut.content;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.proofcut.core.safety.Fact;
import org.proofcut.core.safety.Finding;
import org.proofcut.rulebook.Rule;

/** A fact can be counted on with named machines and in named operations, and nowhere else. */
class AlwaysOnTest {

  private static final String FACTS = "facts.yaml";

  private static Loaded with(String was, String is) {
    var files = new TreeMap<>(ContentSource.bundled().files());
    var text = new String(files.get(FACTS), StandardCharsets.UTF_8);
    assertTrue(text.contains(was), was);
    files.put(FACTS, text.replace(was, is).getBytes(StandardCharsets.UTF_8));
    return ContentReader.read(new ContentSource(files), LimitFolder.ALL);
  }

  @Test
  void load_strangeOperation_isToldWithTheNearest() {
    var faulty = assertInstanceOf(Faulty.class, with("always-on: [sand]", "always-on: [sandd]"));
    assertTrue(
        faulty.printed().contains("\"sandd\" is no known machine or operation"), faulty.printed());
    assertTrue(faulty.printed().contains("Write sand."), faulty.printed());
  }

  /** Nobody may count on what a step need not say. */
  @Test
  void load_operationTakenOut_namesTheConditionsThatCountOnIt() {
    var faulty = assertInstanceOf(Faulty.class, with("always-on: [sand]", "always-on: [carry]"));
    assertTrue(faulty.printed().contains("fact.by_machine may be missing"), faulty.printed());
  }

  /** The one that is left out is asked for by each of these; none may stay quiet. */
  @Test
  void judge_stepThatDoesNotSayIt_isStopped() {
    var step = NeutralStep.of(rule("sander-noise"), Map.of(Fact.MACHINE_HAS_EXTRACTION, false));
    var stopped =
        Content.bundled().rulebook().judge(step).stream()
            .filter(finding -> finding.effect() == Finding.Effect.STOP)
            .map(Finding::rule)
            .sorted()
            .toList();
    assertEquals(
        List.of(
            "sander-jumps",
            "sander-noise",
            "sander-shakes-the-hand",
            "sander-starts-in-the-hand",
            "sander-without-extraction",
            "sanding-dust-takes-fire"),
        stopped);
  }

  private static Rule rule(String id) {
    return Content.bundled().rulebook().rules().stream()
        .filter(one -> one.id().equals(id))
        .findFirst()
        .orElseThrow();
  }
}
