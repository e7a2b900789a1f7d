package org.proofcut.content;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.proofcut.core.measure.Length;
import org.proofcut.core.safety.Fact;
import org.proofcut.core.safety.Finding;
import org.proofcut.core.safety.StepFacts;
import org.proofcut.rulebook.Rule;

/** What stops by law in ours stops whatever is laid over it. */
class OwnContentLawTest {

  private static final long SEED = 20_261_126;
  private static final int STEPS = 4_000;

  private static final String PUSH_BLOCK = "safety/knives/no-push-block.yaml";
  private static final String EYES = "safety/person/chips-in-the-eye.yaml";
  private static final String AMERICA = "sources/united-states.yaml";

  /** None of ours that rests on law has a limit: one more, so that a limit can be tried. */
  private static final String NARROW =
      """
      id: narrow-by-law
      applies-to: {machines: [router-table, table-saw]}
      when: fact.narrowest_work < limit.narrowest_by_law
      effect: stop
      harm: cut
      severity: kill-or-maim
      likelihood: could
      hazard: The hand comes too near.
      do-this:
        - {kind: replace, action: Cut it from wider work.}
      because: {source: osha-1910-213, place: (a), says: A rule made up for this test.}
      """;

  private static final String NARROW_CASES =
      """
      cases:
        - name: Narrower.
          given: {machine: table-saw, narrowest_work: 99 mm}
          then: fires
        - name: At the limit.
          given: {machine: table-saw, narrowest_work: 100 mm}
          then: quiet
      """;

  private static final String NARROWEST =
      """
      narrowest_by_law:
        name: narrowest piece
        value: 100 mm
        because: {source: osha-1910-213, place: (a)}
      """;

  @TestFactory
  Stream<DynamicTest> tricks_thatCanBeRead_openNothing() {
    var tricks = new TreeMap<String, Consumer<LaidOver>>();
    tricks.put(
        "every such rule never fires",
        laid -> lawful().forEach((path, text) -> laid.own(path, quiet(text))));
    tricks.put(
        "every such rule cautions",
        laid ->
            lawful()
                .forEach(
                    (path, text) ->
                        laid.own(path, text.replace("effect: stop", "effect: caution"))));
    tricks.put(
        "every such rule is for somewhere else",
        laid -> lawful().forEach((path, text) -> laid.own(path, elsewhere(text))));
    tricks.put(
        "a rule is for another machine",
        laid ->
            laid.own(
                PUSH_BLOCK,
                LaidOver.text(PUSH_BLOCK)
                    .replace(
                        "{operations: [flatten], machines: [jointer]}", "{machines: [planer]}")));
    tricks.put(
        "every such rule is common practice",
        laid ->
            lawful()
                .forEach(
                    (path, text) ->
                        laid.own(
                            path,
                            text.replaceAll(
                                "(?s)because:.*", "because: {source: common-practice}\n"))));
    tricks.put(
        "law is a handbook",
        laid -> laid.own(AMERICA, LaidOver.text(AMERICA).replace("kind: law", "kind: handbook")));
    tricks.put(
        "law binds elsewhere",
        laid ->
            laid.own(
                AMERICA,
                LaidOver.text(AMERICA)
                    .replaceAll("jurisdiction: \\[us.*?\\]", "jurisdiction: [elsewhere]")));
    tricks.put(
        "a region lies elsewhere",
        laid ->
            laid.own("regions.yaml", "us-washington:\n  name: Washington State\n  within: gb\n"));
    tricks.put(
        "a limit of such a rule is changed",
        laid -> laid.own("safety/limits/law.yaml", NARROWEST.replace("100 mm", "1 mm")));
    tricks.put(
        "all of it at once",
        laid -> {
          lawful().forEach((path, text) -> laid.own(path, quiet(elsewhere(text))));
          laid.own(AMERICA, LaidOver.text(AMERICA).replace("kind: law", "kind: handbook"));
          laid.own("regions.yaml", "us-washington:\n  name: Washington State\n  within: gb\n");
          laid.own("safety/limits/law.yaml", NARROWEST.replace("100 mm", "1 mm"));
        });
    return tricks.entrySet().stream()
        .map(
            trick -> DynamicTest.dynamicTest(trick.getKey(), () -> opensNothing(trick.getValue())));
  }

  private static void opensNothing(Consumer<LaidOver> trick) {
    var laid = withALimit();
    var ours = laid.below();
    trick.accept(laid);
    var now = laid.content();
    var random = new Random(SEED);
    var stopped = new HashSet<String>();
    for (int n = 0; n < STEPS; n++) {
      var step = step(ours, random);
      var before = stopsByLaw(ours, step);
      var after = stopsByLaw(now, step);
      assertTrue(after.containsAll(before), () -> before + " became " + after + " for " + step);
      stopped.addAll(before);
    }
    // All of them were tried, or nothing was shown.
    assertEquals(ids(ours), stopped);
    assertTrue(
        laid.laid().changes().stream().anyMatch(Change::oursStays),
        "it is told that ours stays in force");
  }

  @TestFactory
  Stream<DynamicTest> tricks_thatAreRefused_leaveOurs() {
    var rule = LaidOver.text(PUSH_BLOCK);
    var cases = LaidOver.text(PUSH_BLOCK.replace(".yaml", ".cases.yaml"));
    var other = "safety/knives/a-push-block.yaml";
    return Stream.of(
            Map.entry("an empty file", new LaidOver().own(PUSH_BLOCK, "")),
            Map.entry(
                "a file of nothing but a comment", new LaidOver().own(PUSH_BLOCK, "# gone\n")),
            Map.entry(
                "another id in the file",
                new LaidOver()
                    .own(PUSH_BLOCK, rule.replace("id: no-push-block", "id: a-push-block"))),
            Map.entry(
                "a rule that was ours",
                new LaidOver()
                    .own(
                        other,
                        quiet(rule)
                            .replace("id: no-push-block", "id: a-push-block\nwas: [no-push-block]"))
                    .own(other.replace(".yaml", ".cases.yaml"), cases)),
            Map.entry(
                "the id of ours in another folder",
                new LaidOver()
                    .own("safety/edge/no-push-block.yaml", quiet(rule))
                    .own("safety/edge/no-push-block.cases.yaml", cases)),
            Map.entry(
                "a word less",
                new LaidOver()
                    .own("facts.yaml", LaidOver.text("facts.yaml").replace(", jointer", ""))),
            Map.entry(
                "a source without its law",
                new LaidOver().own(AMERICA, "osha-1910-213: {title: none}\n")))
        .map(
            trick ->
                DynamicTest.dynamicTest(
                    trick.getKey(),
                    () -> {
                      var faulty = assertInstanceOf(Faulty.class, trick.getValue().laid().loaded());
                      assertFalse(faulty.faults().isEmpty());
                    }));
  }

  @Test
  void gearThatLawAsksFor_isAskedFor_whateverIsLaidOver() {
    var text = LaidOver.text(EYES);
    for (var trick :
        List.of(
            text.replaceAll("(?s)gear:.*?because", "because"),
            text.replace("asks-for-gear: true", "asks-for-gear: false"),
            text.replace("router-table, hand-held-router, ", ""))) {
      var laid = new LaidOver().own(EYES, trick);
      assertTrue(
          laid.content().rulebook().judge(atRouterTable()).stream()
              .filter(finding -> finding.gearLaw().isPresent())
              .flatMap(finding -> finding.gear().stream())
              .anyMatch(gear -> gear.kind().equals("eye-protection")),
          trick);
      assertTrue(
          laid.changes()
              .contains("chips-in-the-eye rests on law: ours stays in force beside this shop's"),
          laid.changes().toString());
    }
  }

  @Test
  void gearThatLawAsksFor_isNotForbidden() {
    var forbidding =
        LaidOver.text(EYES).replaceAll("state: required, least: impact", "state: forbidden");
    var problem = new LaidOver().own(EYES, forbidding).problems().get(0);
    assertTrue(problem.where().startsWith(EYES + ":"), problem.where());
    assertEquals("law asks for \"eye-protection\"", problem.what());
  }

  private static StepFacts atRouterTable() {
    var rule =
        Content.bundled().rulebook().rules().stream()
            .filter(one -> one.id().equals("chips-in-the-eye"))
            .findFirst()
            .orElseThrow();
    return NeutralStep.of(rule, Map.of(Fact.MACHINE, "router-table", Fact.REGION, "us"));
  }

  @Test
  void ownRegion_withinOneOfOurs_isUnderItsLaw() {
    var laid = withALimit().own("regions.yaml", "us-of-our-own:\n  name: Our own\n  within: us\n");
    lawful().forEach((path, text) -> laid.own(path, quiet(text)));
    var step =
        NeutralStep.of(
            laid.below().rulebook().rules().stream()
                .filter(rule -> rule.id().equals("saw-without-guard"))
                .findFirst()
                .orElseThrow(),
            Map.of(
                Fact.REGION, "us-of-our-own",
                Fact.THROUGH_CUT, true,
                Fact.MACHINE_HAS_GUARD, false));

    assertTrue(stopsByLaw(laid.content(), step).contains("saw-without-guard"));
  }

  @Test
  void stricterLimit_addsToTheLaw_andIsToldOnce() {
    var laid = withALimit().own("safety/limits/law.yaml", NARROWEST.replace("100 mm", "150 mm"));
    var now = laid.content();

    assertEquals(1, stops(now, "120 mm").size());
    assertEquals(0, stops(laid.below(), "120 mm").size());
    var both = stops(now, "90 mm");
    assertEquals(1, both.size(), both.toString());
    assertTrue(both.get(0).restsOnLaw());
    assertTrue(
        laid.changes()
            .contains("narrow-by-law rests on law: ours stays in force beside this shop's"),
        laid.changes().toString());
  }

  private static List<Finding> stops(Content content, String narrowest) {
    var rule =
        content.rulebook().rules().stream()
            .filter(one -> one.id().equals("narrow-by-law"))
            .findFirst()
            .orElseThrow();
    var step =
        NeutralStep.of(
            rule, Map.of(Fact.NARROWEST_WORK, Length.of(narrowest), Fact.REGION, "us-washington"));
    return content.rulebook().judge(step).stream()
        .filter(finding -> finding.rule().equals(rule.id()))
        .toList();
  }

  private static LaidOver withALimit() {
    return new LaidOver()
        .ours("safety/work/narrow-by-law.yaml", NARROW)
        .ours("safety/work/narrow-by-law.cases.yaml", NARROW_CASES)
        .ours("safety/limits/law.yaml", NARROWEST);
  }

  private static Set<String> ids(Content content) {
    return content.rulebook().rules().stream()
        .filter(Rule::stopsByLaw)
        .map(Rule::id)
        .collect(Collectors.toSet());
  }

  /** The files of our rules that stop by law. */
  private static Map<String, String> lawful() {
    var ids = ids(Content.bundled());
    var files = new TreeMap<String, String>();
    for (var path : ContentSource.bundled().files().keySet()) {
      var name = path.substring(path.lastIndexOf('/') + 1).replace(".yaml", "");
      if (path.startsWith("safety/") && ids.contains(name)) {
        files.put(path, LaidOver.text(path));
      }
    }
    assertEquals(ids.size(), files.size());
    return files;
  }

  private static String quiet(String rule) {
    return rule.replaceFirst(
        "(?ms)^when: (>-\\n(  .*?\\n)+|.*?\\n)", "when: fact.glue && !fact.glue\n");
  }

  private static String elsewhere(String rule) {
    return rule.replaceFirst("applies-to: \\{", "applies-to: {regions: [elsewhere], ");
  }

  private static Set<String> stopsByLaw(Content content, StepFacts step) {
    return content.rulebook().judge(step).stream()
        .filter(finding -> finding.effect() == Finding.Effect.STOP && finding.restsOnLaw())
        .map(Finding::rule)
        .collect(Collectors.toSet());
  }

  /** Any step that the words allow. */
  private static StepFacts step(Content content, Random random) {
    var words = content.rulebook().vocabulary().words();
    var lawful = content.rulebook().rules().stream().filter(Rule::stopsByLaw).toList();
    var rule = lawful.get(random.nextInt(lawful.size()));
    var near = random.nextBoolean();
    var step = StepFacts.builder();
    for (var fact : Fact.values()) {
      if (fact.isOptional() && random.nextInt(10) == 0) {
        continue;
      }
      var known = words.getOrDefault(fact, List.of("something"));
      // Half of the steps are ones that such a rule speaks of.
      if (near && fact == Fact.MACHINE && !rule.machines().isEmpty()) {
        known = rule.machines();
      } else if (near && fact == Fact.OPERATION && !rule.operations().isEmpty()) {
        known = rule.operations();
      } else if (near && fact == Fact.REGION) {
        known = List.of("us-washington");
      }
      switch (fact.type()) {
        case TEXT -> step.with(fact, known.get(random.nextInt(known.size())));
        case TEXTS -> {
          var some = new ArrayList<String>();
          for (var word : known) {
            if (random.nextBoolean()) {
              some.add(word);
            }
          }
          step.with(fact, some);
        }
        case YES_NO -> step.with(fact, random.nextBoolean());
        case COUNT -> step.with(fact, 1L + random.nextInt(20));
        case SPEED -> step.with(fact, 1_000L * (1 + random.nextInt(30)));
        case LENGTH -> step.with(fact, Length.ofMicrometres(random.nextInt(300_000)));
        case WEIGHT, LEVEL -> {}
      }
    }
    return step.build();
  }
}
