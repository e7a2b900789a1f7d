package org.proofcut.content;

import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.proofcut.content.yaml.Binder;
import org.proofcut.content.yaml.Faults;
import org.proofcut.content.yaml.Located;
import org.proofcut.content.yaml.Spot;
import org.proofcut.content.yaml.Written;
import org.proofcut.content.yaml.YamlFile;
import org.proofcut.core.safety.Fact;
import org.proofcut.core.safety.Finding;
import org.proofcut.core.safety.GearNeed;
import org.proofcut.core.safety.Ground;
import org.proofcut.core.safety.SignalWord;
import org.proofcut.core.shop.GearClass;
import org.proofcut.core.shop.GearKind;
import org.proofcut.rulebook.CelRulebook;
import org.proofcut.rulebook.Condition;
import org.proofcut.rulebook.ConditionFault;
import org.proofcut.rulebook.Conditions;
import org.proofcut.rulebook.Rule;
import org.proofcut.rulebook.Vocabulary;

/** Reads rules and the cases that lie beside them. */
final class RuleReader {

  static final String CASES = ".cases.yaml";

  private final Binder binder;
  private final Faults faults;
  private final Vocabulary vocabulary;
  private final Map<String, GearKind> gear;
  private final Set<String> gearOfLaw;
  private final Regions regions;
  private final Conditions conditions;
  private final List<Rule> rules = new ArrayList<>();
  private final List<RuleCase> cases = new ArrayList<>();
  private final List<Tried> tried = new ArrayList<>();
  private final Map<String, Spot> names = new HashMap<>();

  /**
   * @param gearOfLaw kinds of gear that no rule may forbid
   */
  RuleReader(
      Binder binder,
      Faults faults,
      Vocabulary vocabulary,
      Map<String, GearKind> gear,
      Set<String> gearOfLaw,
      Regions regions) {
    this.gearOfLaw = gearOfLaw;
    this.regions = regions;
    this.binder = binder;
    this.faults = faults;
    this.vocabulary = vocabulary;
    this.gear = gear;
    conditions = new Conditions(vocabulary);
  }

  List<Rule> rules() {
    return List.copyOf(rules);
  }

  /**
   * A case to be tried.
   *
   * @param spot of its sentence
   */
  private record Tried(Spot spot, RuleCase each) {}

  /**
   * Tries rules on the cases of these files; what is not ours is proven by nothing else.
   *
   * @param own paths of the files
   */
  void tryCases(Set<String> own) {
    var byId = rules.stream().collect(Collectors.toMap(Rule::id, rule -> rule, (one, two) -> one));
    for (var one : tried) {
      var rule = byId.get(one.each.rule());
      if (rule == null || !own.contains(one.spot.file())) {
        continue;
      }
      boolean fires =
          !new CelRulebook(vocabulary, List.of(rule))
              .judge(NeutralStep.of(rule, one.each.given()))
              .isEmpty();
      if (fires != (one.each.then() == RuleCase.Then.FIRES)) {
        faults.add(
            one.spot,
            "the rule \"%s\" %s here".formatted(rule.id(), fires ? "fires" : "stays quiet"),
            "what the case says: " + one.each.then().name().toLowerCase(Locale.ROOT),
            "Mend the rule or the case.");
      }
    }
  }

  List<RuleCase> cases() {
    return List.copyOf(cases);
  }

  /**
   * @param paths of all files, readable or not: a rule that can't be read still owns its cases
   */
  void read(List<YamlFile> files, Collection<String> paths) {
    var caseFiles = new TreeMap<String, YamlFile>();
    for (var file : files) {
      if (file.path().endsWith(CASES)) {
        caseFiles.put(file.path(), file);
      }
    }
    for (var file : files) {
      if (!file.path().endsWith(CASES)) {
        var beside = Optional.ofNullable(caseFiles.remove(casesBeside(file)));
        binder.one(file, RuleEntry.class).ifPresent(entry -> read(file, entry, beside));
      }
    }
    for (var orphan : caseFiles.values()) {
      if (paths.contains(orphan.path().replace(CASES, ".yaml"))) {
        continue;
      }
      faults.add(
          orphan.start(),
          "these cases belong to no rule",
          "<rule-id>.yaml and <rule-id>.cases.yaml side by side",
          "Rename the file as its rule, or delete it.");
    }
  }

  private static String casesBeside(YamlFile rule) {
    return rule.path().replaceFirst("\\.yaml$", CASES);
  }

  private void read(YamlFile file, RuleEntry entry, Optional<YamlFile> beside) {
    refuseOtherStem(file, entry.id().value(), entry.id().spot(), faults);
    refuseTaken(entry);
    if (beside.isEmpty()) {
      faults.add(
          file.start(),
          "the rule has no cases",
          casesBeside(file) + " with at least one that fires and one that is quiet",
          "Write the cases beside it.");
    }
    rule(entry).ifPresent(rules::add);
    beside
        .flatMap(cases -> binder.one(cases, RuleCase.File.class))
        .ifPresent(read -> read.cases().forEach(each -> add(entry.id().value(), each)));
  }

  static void refuseOtherStem(YamlFile file, String id, Spot spot, Faults faults) {
    if (!file.stem().equals(id)) {
      faults.add(
          spot,
          "the id \"%s\" is not the name of its file".formatted(id),
          "id: " + file.stem(),
          "Rename the file or the id.");
    }
  }

  private void refuseTaken(RuleEntry entry) {
    var own = new ArrayList<>(entry.was());
    own.add(entry.id().value());
    for (var name : own) {
      var other = names.putIfAbsent(name, entry.id().spot());
      if (other != null) {
        faults.add(
            entry.id().spot(),
            "\"%s\" is already the name of the rule at %s".formatted(name, other),
            "an id of its own",
            "Rename one of the two.");
      }
    }
  }

  private Optional<Rule> rule(RuleEntry entry) {
    var scope = entry.appliesTo().orElse(RuleEntry.Scope.ALL);
    var operations = known(scope.operations(), Fact.OPERATION);
    var machines = known(scope.machines(), Fact.MACHINE);
    entry.gear().forEach(this::refuse);
    var condition = entry.when().flatMap(when -> compiled(when, machines, operations));
    if (entry.when().isPresent() && condition.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new Rule(
            entry.id().value(),
            entry.was(),
            operations,
            machines,
            regions(scope.regions()),
            condition,
            entry.effect().orElse(Finding.Effect.CAUTION),
            entry.harm(),
            SignalWord.of(entry.severity(), entry.likelihood()),
            entry.hazard(),
            entry.doThis(),
            entry.gear().stream()
                .map(
                    need ->
                        new GearNeed(
                            need.kind().value(),
                            need.state(),
                            need.least().map(Located::value),
                            need.why()))
                .toList(),
            entry.checks(),
            entry.at(),
            grounds(entry)));
  }

  private void refuse(RuleEntry.Gear need) {
    faults.refuseUnknown(need.kind(), "kind of gear", gear.keySet());
    if (need.state() == GearNeed.State.FORBIDDEN && gearOfLaw.contains(need.kind().value())) {
      faults.add(
          need.kind().spot(),
          "law asks for \"%s\"".formatted(need.kind().value()),
          "gear that no law asks for may be forbidden",
          "Take it out.");
    }
    var kind = gear.get(need.kind().value());
    if (kind == null || need.least().isEmpty()) {
      return;
    }
    var least = need.least().get();
    if (need.state() == GearNeed.State.FORBIDDEN) {
      faults.add(
          least.spot(),
          "what is forbidden has no least class",
          "least where the state is required",
          "Take it out.");
    } else {
      faults.refuseUnknown(
          least, "class of " + kind.id(), kind.classes().stream().map(GearClass::id).toList());
    }
  }

  /** What binds in a region binds within it too. */
  private List<String> regions(List<Located<String>> named) {
    return regions.spread(known(named, Fact.REGION));
  }

  private static List<Ground> grounds(RuleEntry entry) {
    return Stream.concat(Stream.of(entry.because()), entry.also().stream())
        .map(Because::ground)
        .toList();
  }

  private List<String> known(List<Located<String>> names, Fact fact) {
    var words = vocabulary.words().getOrDefault(fact, List.of());
    names.forEach(name -> faults.refuseUnknown(name, fact.id(), words));
    return names.stream().map(Located::value).toList();
  }

  private Optional<Condition> compiled(
      Located<String> when, List<String> machines, List<String> operations) {
    return conditions.compile(when.value(), machines, operations, fault -> add(when, fault));
  }

  private void add(Located<String> when, ConditionFault fault) {
    var spot = when.spot().within(when.value(), fault.column());
    if (fault instanceof ConditionFault.UnknownName unknown) {
      faults.addUnknown(spot, unknown.kind(), unknown.name(), unknown.known());
    } else if (fault instanceof ConditionFault.Wrong wrong) {
      faults.add(spot, wrong.what(), wrong.allowed(), "Mend the condition.");
    }
  }

  private void add(String rule, RuleCase.Entry entry) {
    var given = new EnumMap<Fact, Object>(Fact.class);
    entry
        .given()
        .forEach((fact, written) -> value(fact, written).ifPresent(v -> given.put(fact, v)));
    var each = new RuleCase(rule, entry.name().value(), given, entry.then());
    cases.add(each);
    tried.add(new Tried(entry.name().spot(), each));
  }

  /** What is written for a fact, as the fact's type has it. */
  private Optional<Object> value(Fact fact, Written written) {
    try {
      var value = FactValue.read(fact.type(), written);
      if (value.isPresent()) {
        return value;
      }
    } catch (IllegalArgumentException e) {
      // Said below, with what would be right.
    }
    faults.add(
        written.spot(),
        "%s can't be \"%s\"".formatted(fact.id(), written),
        FactValue.shape(fact.type()),
        "Write it so.");
    return Optional.empty();
  }
}
