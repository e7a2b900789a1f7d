package org.proofcut.content;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.proofcut.core.checklist.Checklist;
import org.proofcut.core.evidence.Amount;
import org.proofcut.core.evidence.Citation;
import org.proofcut.core.measure.Length;
import org.proofcut.core.operation.OperationKind;
import org.proofcut.core.safety.Check;
import org.proofcut.core.safety.Control;
import org.proofcut.core.safety.Fact;
import org.proofcut.core.safety.Finding;
import org.proofcut.core.safety.Ground;
import org.proofcut.core.safety.SignalWord;
import org.proofcut.core.setup.RouterLimits;
import org.proofcut.core.setup.SpeedBand;
import org.proofcut.core.shop.GearClass;
import org.proofcut.core.shop.GearKind;
import org.proofcut.rulebook.Boundary;
import org.proofcut.rulebook.CelRulebook;
import org.proofcut.rulebook.Rule;

/** What holds for all content at once; each test lists everything that breaks it. */
class ContentHouseRulesTest {

  private static final Pattern NO_ANSWER =
      Pattern.compile("\\b(ok|okay|checked|done|set|complete|confirmed|yes|fine|good)\\b");
  private static final Pattern SHOUTED = Pattern.compile("\\b[A-Z]{4,}\\b");
  private static final int LONGEST_ACTION = 90;
  private static final int LONGEST_ASK = 60;
  private static final int LONGEST_ANSWER = 45;
  private static final int LONGEST_HAZARD = 130;
  private static final int CHECKS_A_PAUSE = 4;
  private static final int RULE_CHECKS_A_PAUSE = 3;
  private static final int DANGERS_A_SHEET = 2;

  private final Content content = Content.bundled();
  private final List<Rule> rules = content.rulebook().rules();
  private final List<String> broken = new ArrayList<>();

  @Test
  void rules_thirtyAtLeast_areReadAndNoFileIsSkipped() {
    assertTrue(rules.size() >= 30, content.summary());
    assertEquals(rules.size() + " rules from " + content.files() + " files", content.summary());
    // Each rule is two files, and there is more than rules.
    assertTrue(content.files() > 2 * rules.size(), content.summary());
  }

  @Test
  void citation_published_saysWhereInTheSource() {
    for (var rule : rules) {
      refuse(
          !rule.because().equals(Citation.COMMON_PRACTICE) && rule.because().place().isBlank(),
          rule.id() + " cites no place");
      refuse(
          !rule.because().equals(Citation.COMMON_PRACTICE) && rule.sourceSays().isBlank(),
          rule.id() + " does not say what its source says");
    }
    assertNoneBroken();
  }

  @Test
  void cases_ofEveryRule_fireAndStayQuietAndStandAtEachLimit() {
    for (var rule : rules) {
      var cases = content.cases().stream().filter(each -> each.rule().equals(rule.id())).toList();
      for (var then : RuleCase.Then.values()) {
        refuse(cases.stream().noneMatch(each -> each.then() == then), rule.id() + " never " + then);
      }
      rule.when()
          .ifPresent(
              when ->
                  when.limits()
                      .keySet()
                      .forEach(
                          limit ->
                              refuse(
                                  cases.stream()
                                      .noneMatch(
                                          each ->
                                              Boundary.isReached(
                                                  when, limit, NeutralStep.of(rule, each.given()))),
                                  rule.id() + " has no case exactly at limit." + limit)));
      var names = new HashSet<String>();
      cases.forEach(
          each -> refuse(!names.add(each.name()), each.rule() + ": twice " + each.name()));
      cases.forEach(each -> refuse(!each.name().endsWith("."), "no sentence: " + each.name()));
    }
    assertNoneBroken();
  }

  @Test
  void operations_named_haveTheirWording() {
    assertEquals(
        new TreeSet<>(words(Fact.OPERATION)),
        new TreeSet<>(content.wording().operations().keySet()));
    var machines = new TreeSet<>(words(Fact.MACHINE));
    machines.remove("none");
    assertEquals(machines, new TreeSet<>(content.wording().cutterChanges().keySet()));
    for (var operation : content.wording().operations().values()) {
      operation
          .hold()
          .forEach(
              hold ->
                  refuse(
                      !words(Fact.MACHINE).containsAll(hold.machines()),
                      operation.id() + " is held on an unknown machine"));
      var byHand = !OperationKind.valueOf(constant(operation.id())).cuts();
      refuse(byHand == operation.steps().isEmpty(), operation.id() + ": steps are for hand work");
      refuse(operation.hold().isEmpty(), operation.id() + " does not say how it is held");
    }
    assertNoneBroken();
  }

  /** A condition can't walk a table, so rules have these figures one by one. */
  @Test
  void speeds_ofRulesAndSetups_areTheSame() {
    var limits = content.rulebook().vocabulary().limits();
    var bands =
        Stream.of("small", "medium", "large", "largest")
            .map(
                size ->
                    new SpeedBand(
                        (Length) limits.get(size + "_cutter").value(),
                        Math.toIntExact((Long) limits.get(size + "_cutter_speed").value())))
            .toList();
    assertEquals(content.limits(RouterLimits.class).topSpeeds().value(), bands);
  }

  @Test
  void gear_putOn_hasOneOrder() {
    var orders = content.wording().gear().values().stream().map(GearKind::order).sorted().toList();
    // What is worn in the same place shares a number: either mask, either pair of gloves.
    var places = orders.stream().distinct().toList();
    assertEquals(IntStream.rangeClosed(1, places.size()).boxed().toList(), places);
  }

  @Test
  void words_ofAllContent_areShortAndPlainAndAnswersSayAState() {
    for (var rule : rules) {
      lint(rule.id(), rule.hazard(), LONGEST_HAZARD);
      rule.controls().forEach(control -> lint(rule.id(), control.action(), LONGEST_ACTION));
      rule.checks().forEach(check -> lint(rule.id(), check));
    }
    for (var operation : content.wording().operations().values()) {
      operation.checks().forEach(check -> lint(operation.id(), check));
      operation.steps().forEach(step -> lint(operation.id(), step, LONGEST_ACTION));
    }
    content.trouble().forEach((id, help) -> help.steps().forEach(s -> lint(id, s, LONGEST_ACTION)));
    content
        .wording()
        .cutterChanges()
        .forEach((id, change) -> change.steps().forEach(s -> lint(id, s, LONGEST_ACTION)));
    for (var kind : content.wording().gear().values()) {
      lint(kind.id(), kind.on().ask(), kind.on().answer());
      lint(kind.id(), kind.off().ask(), kind.off().answer());
    }
    content.wording().aids().values().forEach(aid -> lint(aid.id(), aid.ask(), aid.answer()));
    assertNoneBroken();
  }

  @Test
  void trouble_anyKind_fitsOnePause() {
    content.trouble().forEach((id, help) -> refuse(help.steps().size() > 9, id));
    content
        .wording()
        .cutterChanges()
        .forEach((id, change) -> refuse(change.steps().size() > 9, id));
    assertNoneBroken();
  }

  /** Every operation on every machine it is done on, at its most talkative. */
  @Test
  void sheet_ofAnyOperation_asksFewThingsAtEachPause() {
    typicalSteps()
        .forEach(
            step -> {
              var findings = step.findings(content.rulebook());
              var wording = content.wording().operations().get(step.operation()).checks();
              for (var pause : Check.Pause.values()) {
                var byRules =
                    findings.stream()
                        .flatMap(finding -> finding.checks().stream())
                        .filter(check -> check.pause() == pause)
                        .count();
                var all = byRules + wording.stream().filter(c -> c.pause() == pause).count();
                // The machine itself is looked at once, and nothing else is asked there.
                boolean once = pause == Check.Pause.MACHINE;
                refuse(
                    byRules > (once ? Checklist.MOST : RULE_CHECKS_A_PAUSE),
                    step + " " + pause + " " + byRules);
                refuse(
                    all > (once ? Checklist.MOST : CHECKS_A_PAUSE), step + " " + pause + " " + all);
              }
              refuse(
                  findings.stream().filter(f -> f.word() == SignalWord.DANGER).count()
                      > DANGERS_A_SHEET,
                  step + " shouts danger");
              refuse(
                  findings.stream().anyMatch(f -> f.effect() == Finding.Effect.STOP),
                  step + " is stopped");
            });
    assertNoneBroken();
  }

  @Test
  void gear_ofAnyOperation_wantedAndForbiddenAtOnce_saysWhyOfBoth() {
    typicalSteps()
        .forEach(
            step -> {
              var needs =
                  step.findings(content.rulebook()).stream()
                      .flatMap(finding -> finding.gear().stream())
                      .toList();
              for (var need : needs) {
                boolean contradicted =
                    needs.stream()
                        .anyMatch(
                            other ->
                                other.kind().equals(need.kind()) && other.state() != need.state());
                refuse(contradicted && need.why().isEmpty(), step + " " + need.kind());
              }
            });
    assertNoneBroken();
  }

  @Test
  void gearClasses_haveIdsAndMarksOfTheirOwn() {
    for (var kind : content.wording().gear().values()) {
      var ids = kind.classes().stream().map(GearClass::id).toList();
      var marks = kind.classes().stream().map(GearClass::name).toList();
      refuse(ids.stream().distinct().count() < ids.size(), kind.id() + ": " + ids);
      refuse(marks.stream().distinct().count() < marks.size(), kind.id() + ": " + marks);
      // Marks are what they are; they may shout.
      marks.forEach(mark -> refuse(mark.length() > LONGEST_ANSWER, mark));
      kind.classes().forEach(one -> lint(kind.id(), one.goodFor(), LONGEST_ACTION));
    }
    assertNoneBroken();
  }

  /** A figure is no class: how much it takes is not told by having one. */
  @Test
  void gearKinds_judgedByFigure_haveOneClass() {
    content.wording().gear().values().stream()
        .filter(kind -> kind.judgedBy() == GearKind.Judged.BY_FIGURE)
        .forEach(kind -> assertEquals(1, kind.classes().size(), kind.id()));
  }

  @Test
  void gearPairs_nameTwoKinds_inTheOrderOfPuttingOn() {
    var gear = content.wording().gear();
    for (var pair : content.wording().gearPairs().values()) {
      int first = gear.get(pair.first()).order();
      int second = gear.get(pair.second()).order();
      refuse(first >= second, pair.id());
      lint(pair.id(), pair.together(), LONGEST_HAZARD);
    }
    assertNoneBroken();
  }

  @Test
  void rules_onGearAlone_areNone() {
    rules.forEach(
        rule ->
            refuse(
                rule.controls().stream().allMatch(c -> c.kind() == Control.Kind.GEAR), rule.id()));
    assertNoneBroken();
  }

  private record Step(String operation, String machine, Map<Fact, Object> given) {

    List<Finding> findings(CelRulebook rulebook) {
      var scope =
          new Rule(
              "",
              List.of(),
              List.of(operation),
              List.of(machine),
              List.of(),
              Optional.empty(),
              null,
              null,
              null,
              "",
              List.of(),
              List.of(),
              List.of(),
              Optional.empty(),
              List.of(Ground.COMMON_PRACTICE));
      return rulebook.judge(NeutralStep.of(scope, given));
    }

    @Override
    public String toString() {
      return operation + " on " + machine;
    }
  }

  private static Stream<Step> typicalSteps() {
    var saws = List.of("rough-strips", "rip", "crosscut", "final-length");
    var housings = List.of("rabbet", "dado", "back-rabbet");
    return Stream.of(
            saws.stream().map(id -> new Step(id, "table-saw", saw(id.startsWith("r")))),
            saws.stream().map(id -> new Step(id, "track-saw", saw(false))),
            Stream.of("step-flat", "step-on-edge").map(id -> new Step(id, "table-saw", blind())),
            Stream.of(new Step("thin-strip", "table-saw", saw(true))),
            Stream.of(new Step("taper", "table-saw", onCarrier())),
            housings.stream().map(id -> new Step(id, "table-saw", blind())),
            Stream.of(new Step("dado", "table-saw", stacked())),
            housings.stream().map(id -> new Step(id, "router-table", router("fence"))),
            housings.stream().map(id -> new Step(id, "hand-held-router", router("straightedge"))),
            alongAnEdge(),
            Stream.of("flatten", "straighten").map(id -> new Step(id, "jointer", knives("fence"))),
            Stream.of(new Step("plane", "planer", knives("rollers"))),
            Stream.of("dry-fit", "fasten").map(id -> new Step(id, "none", hand(id))),
            byHand())
        .flatMap(steps -> steps);
  }

  /** Each at its most talkative; what a rule stops is not typical. */
  private static Stream<Step> byHand() {
    return Stream.of(
        new Step(
            "carry",
            "none",
            Map.of(
                Fact.LOAD_WEIGHT, new Amount(new BigDecimal("38"), "kg"),
                Fact.LOAD_LONGEST, Length.of("2440 mm"),
                Fact.WHOLE_SHEET, true,
                Fact.ALONE, false,
                Fact.STAIRS, true)),
        new Step("sand", "none", Map.of(Fact.BY_MACHINE, true)),
        new Step("finish", "none", finish("2", true)),
        new Step("finish", "none", finish("3", false)),
        new Step("fasten", "none", wet("2", Map.of(Fact.GLUE, true, Fact.NAILS, true))),
        new Step("clean-up", "none", Map.of(Fact.CLEANED, "dust")),
        new Step("clean-up", "none", Map.of(Fact.CLEANED, "compressed-air", Fact.REGION, "us")),
        new Step("clean-up", "none", wet("2", Map.of(Fact.CLEANED, "rags"))),
        new Step("clean-up", "none", wet("2", Map.of(Fact.CLEANED, "solvent"))));
  }

  private static Map<Fact, Object> finish(String flammable, boolean outdoors) {
    return wet(
        flammable,
        Map.of(
            Fact.SPRAYED,
            outdoors,
            Fact.OUTDOORS,
            outdoors,
            Fact.WET_ROOM,
            true,
            Fact.STANDS_WET,
            false));
  }

  /** A liquid that does all but set by isocyanate, which nobody may spray. */
  private static Map<Fact, Object> wet(String flammable, Map<Fact, Object> task) {
    var given = new EnumMap<Fact, Object>(task);
    given.put(Fact.FLAMMABLE, flammable);
    given.put(Fact.HEATS_ITSELF, true);
    given.put(Fact.LIQUID_HARMS, List.of("vapour", "irritates", "sensitises", "corrosive"));
    given.put(Fact.DATA_SHEET_ON_FILE, false);
    return given;
  }

  private static Stream<Step> alongAnEdge() {
    return Stream.of(
        new Step("centred-groove", "table-saw", onEdge()),
        new Step("centred-groove", "router-table", onEdge()),
        new Step("tongue", "router-table", withoutStrip()),
        new Step("template-recess", "hand-held-router", byBearing("template", true)),
        new Step("edge-trim", "router-table", byBearing("fence", false)),
        new Step("edge-profile", "router-table", byBearing("fence", false)),
        new Step("edge-profile", "router-table", byBearing("bearing-with-pin", false)),
        new Step("edge-profile", "hand-held-router", byBearing("bearing", false)),
        new Step("edge-profile", "hand-held-router", byBearing("bearing", true)),
        new Step("flush-trim", "hand-held-router", byBearing("bearing", false)));
  }

  private static Map<Fact, Object> withoutStrip() {
    var given = router("fence");
    given.put(Fact.USES_STRIP, false);
    return given;
  }

  private static Map<Fact, Object> onEdge() {
    var given = withoutStrip();
    // It reaches out no farther than it is thick.
    given.put(Fact.OVERHANG, Length.of("18 mm"));
    return given;
  }

  private static Map<Fact, Object> byBearing(String guide, boolean inside) {
    var given = router(guide);
    given.put(Fact.USES_STRIP, false);
    given.put(Fact.CUTTER_HAS_BEARING, true);
    given.put(Fact.INSIDE_OPENING, inside);
    given.put(Fact.MATERIALS, List.of("hardwood"));
    return given;
  }

  private static Map<Fact, Object> saw(boolean fence) {
    var given = new EnumMap<Fact, Object>(Fact.class);
    given.put(Fact.GUIDE, fence ? "fence" : "sled");
    given.put(Fact.THROUGH_CUT, true);
    given.put(Fact.MATERIALS, List.of("plywood"));
    sizes(given, "24 mm");
    given.put(Fact.OVERHANG, Length.of("400 mm"));
    return given;
  }

  private static Map<Fact, Object> onCarrier() {
    var given = saw(true);
    given.put(Fact.GUIDE, "carrier");
    return given;
  }

  private static Map<Fact, Object> blind() {
    var given = saw(false);
    given.put(Fact.THROUGH_CUT, false);
    sizes(given, "6 mm");
    return given;
  }

  private static Map<Fact, Object> stacked() {
    var given = blind();
    given.put(Fact.STACKED_CUTTER, true);
    return given;
  }

  private static Map<Fact, Object> router(String guide) {
    var given = blind();
    given.put(Fact.GUIDE, guide);
    given.put(Fact.USES_STRIP, guide.equals("fence"));
    given.put(Fact.SPINDLE_SPEED, 18_000L);
    given.put(Fact.OVERHANG, Length.of("1500 mm"));
    return given;
  }

  private static Map<Fact, Object> knives(String guide) {
    var given = blind();
    given.put(Fact.GUIDE, guide);
    given.put(Fact.MATERIALS, List.of("hardwood"));
    given.put(Fact.MACHINE_HAS_KICKBACK_FINGERS, true);
    given.put(Fact.TABLE_LENGTH, Length.of("1400 mm"));
    return given;
  }

  private static Map<Fact, Object> hand(String operation) {
    return Map.of(Fact.GLUE, operation.equals("fasten"), Fact.SCREWS, operation.equals("fasten"));
  }

  private static void sizes(Map<Fact, Object> given, String depth) {
    var lengths =
        Map.of(
            Fact.CUTTER_DIAMETER, "12 mm",
            Fact.CUT_DEPTH, depth,
            Fact.DEEPEST_PASS, "6 mm",
            Fact.SHORTEST_WORK, "400 mm",
            Fact.NARROWEST_WORK, "300 mm",
            Fact.LONGEST_WORK, "1800 mm",
            Fact.WIDEST_WORK, "400 mm",
            Fact.THICKEST_WORK, "18 mm",
            Fact.THINNEST_WORK, "17.5 mm",
            Fact.GUIDE_CONTACT, "300 mm");
    lengths.forEach((fact, text) -> given.put(fact, Length.of(text)));
  }

  private static String constant(String id) {
    return id.toUpperCase(Locale.ROOT).replace('-', '_');
  }

  private List<String> words(Fact fact) {
    return content.facts().get(fact).words();
  }

  private void lint(String where, Check check) {
    lint(where, check.ask(), check.answer());
  }

  private void lint(String where, String ask, String answer) {
    lint(where, ask, LONGEST_ASK);
    lint(where, answer, LONGEST_ANSWER);
    refuse(NO_ANSWER.matcher(answer.toLowerCase(Locale.ROOT)).find(), where + ": " + answer);
  }

  private void lint(String where, String text, int longest) {
    refuse(text.length() > longest, "%s: %d letters: %s".formatted(where, text.length(), text));
    refuse(SHOUTED.matcher(text).find(), where + " shouts: " + text);
  }

  private void refuse(boolean wrong, String what) {
    if (wrong) {
      broken.add(what);
    }
  }

  private void assertNoneBroken() {
    assertTrue(broken.isEmpty(), () -> String.join("\n", broken));
  }
}
