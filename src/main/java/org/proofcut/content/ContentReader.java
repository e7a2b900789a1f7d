package org.proofcut.content;

import java.math.BigDecimal;
import java.time.Period;
import java.util.Arrays;
import java.util.Collection;
import java.util.Collections;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.proofcut.content.yaml.Binder;
import org.proofcut.content.yaml.Faults;
import org.proofcut.content.yaml.Located;
import org.proofcut.content.yaml.Spot;
import org.proofcut.content.yaml.YamlFile;
import org.proofcut.core.checklist.CutterChange;
import org.proofcut.core.checklist.OperationWording;
import org.proofcut.core.checklist.Wording;
import org.proofcut.core.evidence.Amount;
import org.proofcut.core.evidence.Citation;
import org.proofcut.core.exposure.ExtractionLimits;
import org.proofcut.core.exposure.MachineDust;
import org.proofcut.core.exposure.MachineNoise;
import org.proofcut.core.exposure.NoiseLaw;
import org.proofcut.core.exposure.PanelMark;
import org.proofcut.core.exposure.Wood;
import org.proofcut.core.operation.Ways;
import org.proofcut.core.safety.Check;
import org.proofcut.core.safety.Fact;
import org.proofcut.core.shop.GearKind;
import org.proofcut.core.shop.GearPair;
import org.proofcut.core.shop.LiquidKind;
import org.proofcut.core.shop.WorkAid;
import org.proofcut.core.storage.ThingKind;
import org.proofcut.rulebook.CelRulebook;
import org.proofcut.rulebook.Limit;
import org.proofcut.rulebook.Rule;
import org.proofcut.rulebook.Vocabulary;

/**
 * Reads a content folder from its facts and sources to its rules. Nothing is thrown and nothing is
 * skipped: whatever is wrong is noted, and at the end there is either content or a list of faults.
 */
final class ContentReader {

  private static final String GEAR = "shop/gear.yaml";
  private static final String AIDS = "shop/aids.yaml";

  private final Faults faults = new Faults();
  private final Binder binder;
  private final Map<String, YamlFile> files = new TreeMap<>();
  private final Set<String> unread = new HashSet<>();
  private final Set<String> paths = new TreeSet<>();
  private final OwnMarks marks;
  private final Optional<Content> ours;
  private final SourceReader sources;
  private final LimitReader limitReader;
  private Regions regions = new Regions(Map.of());

  static Loaded read(ContentSource source, List<LimitFolder> limitFolders) {
    return new ContentReader(source, new ContentSource(new TreeMap<>()), Optional.empty())
        .read(limitFolders);
  }

  /**
   * Reads our content with a shop's own laid over it, file by file.
   *
   * @param ours what is read where nothing is laid over it
   */
  static Overlay read(ContentSource below, ContentSource own, Content ours) {
    var reader = new ContentReader(below, own, Optional.of(ours));
    return new Overlay(
        reader.read(LimitFolder.ALL), List.copyOf(own.files().keySet()), reader.marks.changes());
  }

  private ContentReader(ContentSource below, ContentSource own, Optional<Content> ours) {
    this.ours = ours;
    paths.addAll(below.files().keySet());
    paths.addAll(own.files().keySet());
    marks = new OwnMarks(own.files().keySet(), below.files().keySet());
    sources = new SourceReader(faults, marks);
    binder = binder(faults, sources::resolve, entry -> entry.value().check(keys(AIDS), faults));
    limitReader = new LimitReader(binder, faults);
    marks.refuse(faults);
    below.files().forEach((path, bytes) -> open(path, marks.shown(path), bytes));
    var laid = new TreeMap<String, YamlFile>();
    own.files()
        .forEach(
            (path, bytes) ->
                opened(path, path, bytes)
                    .map(file -> marks.lay(file, Optional.ofNullable(files.get(path))))
                    .ifPresent(file -> laid.put(path, file)));
    files.putAll(laid);
  }

  /** Knows every type that content is written in; resolves sources and reads checks as told. */
  static Binder binder(
      Faults faults,
      Function<Located<Because.Entry>, Optional<Because>> resolve,
      Function<Located<CheckEntry>, Check> check) {
    return new Binder(faults)
        .names(
            Fact.class,
            "fact",
            Arrays.stream(Fact.values()).collect(Collectors.toMap(Fact::id, Function.identity())))
        .text(
            Quantity.class,
            "a length (18 mm), a speed (18000 per minute), a weight (25 kg), a level (85 dBA) or a number (3)",
            Quantity::of)
        .text(Amount.class, AmountText.ANY, AmountText::read)
        .text(Period.class, PeriodText.ANY, PeriodText::read)
        .text(BigDecimal.class, AmountText.NUMBER, AmountText::number)
        .via(Because.Entry.class, Because.class, resolve)
        .via(
            Because.Entry.class,
            Citation.class,
            entry -> resolve.apply(entry).map(Because::citation))
        .via(CheckEntry.class, Check.class, check.andThen(Optional::of))
        .via(Quantity.Entry.class, Limit.class, entry -> Optional.of(entry.value().limit()));
  }

  private void open(String path, String shown, byte[] bytes) {
    opened(path, shown, bytes).ifPresent(file -> files.put(path, file));
  }

  private Optional<YamlFile> opened(String path, String shown, byte[] bytes) {
    if (path.equals("README.md")) {
      return Optional.empty();
    }
    unread.add(path);
    return path.endsWith(".yaml") ? YamlFile.read(path, shown, bytes, faults) : Optional.empty();
  }

  private Loaded read(List<LimitFolder> limitFolders) {
    var facts = facts();
    regions = Regions.of(byId("regions.yaml", Region.class), faults);
    under("sources/").forEach(file -> addById(file, Source.class, sources.read()));
    sources.areIn(regions);
    var law = new LawOfOurs(ours, regions, marks);
    var gear = byId(GEAR, GearKind.class);
    var pairs = gearPairs(gear);
    var aids = byId(AIDS, WorkAid.class);
    var changes = byId("shop/cutter-change.yaml", CutterChange.class);
    var liquids = byId("stock/liquids.yaml", LiquidKind.class);
    var trouble = byId("trouble.yaml", Trouble.class);
    var storage = storage();
    var noise = law.noise(noise(facts));
    var dust =
        new DustReader(
            byId("stock/species.yaml", Wood.class),
            byId("exposure/machines.yaml", MachineDust.class),
            byId(DustReader.AIR_LIMITS, DustReader.AirLimitEntry.class),
            byId("exposure/masks.yaml", DustReader.MaskEntry.class),
            byId("exposure/panel-marks.yaml", PanelMark.class));
    for (var limit : dust.limits().values()) {
      limit.woods().forEach(wood -> faults.refuseUnknown(wood, "wood", dust.woods().keySet()));
    }
    // First, because operation/limits lies below the folder of the operations' words.
    var limitRecords = limitReader.records(limitFolders, this::under);
    ours.ifPresent(
        content -> limitReader.refuseFarOff(limitFolders, limitRecords, content, files.values()));
    var operations = operations();
    var limits = new LinkedHashMap<String, Located<Limit>>();
    under("safety/limits/").forEach(file -> addById(file, Limit.class, limits));
    var vocabulary =
        vocabulary(
            facts, gear.keySet(), aids.keySet(), limitReader.all(limits, limitRecords.values()));
    var rules = new RuleReader(binder, faults, vocabulary, gear, law.gear(), regions);
    // First, because it lies below the folder of the rules.
    var noneHere = noneHere(facts);
    rules.read(under("safety/"), paths);
    if (faults.none()) {
      rules.tryCases(marks.own());
    }
    refuseUnread();
    // What was not understood may have used them, so this can be said only when all was.
    if (faults.none()) {
      refuseUnused(rules.rules(), facts, limits);
    }
    var matrix = matrix(vocabulary, rules, noneHere);
    // Whoever reads them mends the shop's files, not ours.
    faults.preferThoseIn(marks.own());
    return faults.none()
        ? new Content(
            new CelRulebook(vocabulary, rules.rules()).beside(law.rules(rules.rules())),
            values(sources.read()),
            regions.byId(),
            new Wording(operations, gear, aids, changes, pairs),
            liquids,
            storage,
            trouble,
            noise,
            law.dust(
                dust.book(
                    Optional.ofNullable(
                        (ExtractionLimits) limitRecords.get(ExtractionLimits.class)))),
            limitRecords,
            facts,
            rules.cases(),
            matrix,
            paths.size())
        : new Faulty(faults.all(), faults.more());
  }

  /**
   * Ours has no hole. A shop's own rules may close one that ours gives a reason for, or open one:
   * that is shown, and refuses nothing.
   */
  private HarmMatrix matrix(
      Vocabulary vocabulary, RuleReader rules, Map<String, Located<NoneHere>> noneHere) {
    // A rule that can't be read leaves holes that are none.
    return faults.none()
        ? new MatrixReader(
                vocabulary, rules.rules(), rules.cases(), ours.isEmpty() ? faults : new Faults())
            .read(Ways.all(), noneHere)
        : new HarmMatrix(List.of());
  }

  private Map<Fact, FactEntry> facts() {
    var facts = new EnumMap<Fact, FactEntry>(Fact.class);
    var known = Arrays.stream(Fact.values()).map(Fact::id).toList();
    var located = new LinkedHashMap<String, Located<FactEntry>>();
    only("facts.yaml").ifPresent(file -> addById(file, FactEntry.class, located));
    located.forEach(
        (id, entry) -> {
          if (known.contains(id)) {
            facts.put(Fact.values()[known.indexOf(id)], entry.value());
          } else {
            faults.addUnknown(entry.spot(), "fact", id, known);
          }
        });
    var scopes =
        Stream.of(Fact.MACHINE, Fact.OPERATION)
            .flatMap(fact -> Optional.ofNullable(facts.get(fact)).stream())
            .flatMap(entry -> entry.words().stream())
            .toList();
    for (var fact : facts.values()) {
      fact.alwaysOn().forEach(scope -> faults.refuseUnknown(scope, "machine or operation", scopes));
    }
    return facts;
  }

  private Map<String, Located<NoneHere>> noneHere(Map<Fact, FactEntry> facts) {
    var lines = new LinkedHashMap<String, Located<NoneHere>>();
    under(MatrixReader.FOLDER).forEach(file -> addById(file, NoneHere.class, lines));
    for (var line : lines.values()) {
      line.value().operations().forEach(name -> refuseUnknown(name, Fact.OPERATION, facts));
      line.value().machines().forEach(name -> refuseUnknown(name, Fact.MACHINE, facts));
    }
    return lines;
  }

  private void refuseUnknown(Located<String> name, Fact fact, Map<Fact, FactEntry> facts) {
    var known = facts.containsKey(fact) ? facts.get(fact).words() : List.<String>of();
    faults.refuseUnknown(name, fact.id(), known);
  }

  private NoiseContent noise(Map<Fact, FactEntry> facts) {
    var levels = new LinkedHashMap<String, Located<MachineNoise>>();
    only(NoiseReader.LEVELS).ifPresent(file -> addById(file, MachineNoise.class, levels));
    var laws = new LinkedHashMap<String, Located<NoiseLaw>>();
    only(NoiseReader.LAWS).ifPresent(file -> addById(file, NoiseLaw.class, laws));
    return new NoiseReader(regions, faults).read(NoiseContent.kinds(facts), levels, laws);
  }

  private Map<String, GearPair> gearPairs(Map<String, GearKind> gear) {
    var pairs = new LinkedHashMap<String, GearPair>();
    byId("shop/gear-pairs.yaml", GearPairEntry.class)
        .forEach(
            (id, entry) -> {
              faults.refuseUnknown(entry.first(), "kind of gear", gear.keySet());
              faults.refuseUnknown(entry.second(), "kind of gear", gear.keySet());
              pairs.put(id, entry.pair());
            });
    return Collections.unmodifiableMap(pairs);
  }

  private Map<String, ThingKind> storage() {
    var kinds = byId(StorageReader.KINDS, ThingKind.class);
    Optional.ofNullable(files.get(StorageReader.KINDS))
        .ifPresent(
            file ->
                new StorageReader(file, keys(GEAR), keys(AIDS), faults)
                    .judge(kinds, ours.map(Content::storage).orElse(Map.of())));
    return Collections.unmodifiableMap(kinds);
  }

  /** The ids that stand in a file, whether what stands under them can be read or not. */
  private Map<String, Spot> keys(String path) {
    return Optional.ofNullable(files.get(path)).map(YamlFile::keys).orElse(Map.of());
  }

  private Map<String, OperationWording> operations() {
    var operations = new LinkedHashMap<String, OperationWording>();
    for (var file : under("operation/")) {
      binder
          .one(file, OperationWording.class)
          .ifPresent(
              operation -> {
                RuleReader.refuseOtherStem(file, operation.id(), file.start(), faults);
                operations.put(operation.id(), operation);
              });
    }
    return operations;
  }

  private Vocabulary vocabulary(
      Map<Fact, FactEntry> facts,
      Collection<String> gear,
      Collection<String> aids,
      Map<String, Limit> limits) {
    var words = new HashMap<Fact, List<String>>();
    var alwaysOn = new HashMap<Fact, List<String>>();
    facts.forEach(
        (fact, entry) -> {
          if (!entry.words().isEmpty()) {
            words.put(fact, entry.words());
          }
          alwaysOn.put(fact, entry.alwaysOn().stream().map(Located::value).toList());
        });
    words.put(Fact.GEAR_AT_HAND, List.copyOf(gear));
    words.put(Fact.AIDS_AT_HAND, List.copyOf(aids));
    words.put(Fact.REGION, List.copyOf(regions.byId().keySet()));
    return new Vocabulary(words, alwaysOn, limits);
  }

  private <T> Map<String, T> byId(String path, Class<T> type) {
    return only(path).map(file -> binder.byId(file, type)).orElse(Map.of());
  }

  /** Adds what a file holds to what its neighbours hold; no two may have one id. */
  private <T> void addById(YamlFile file, Class<T> type, Map<String, Located<T>> all) {
    binder
        .locatedById(file, type)
        .forEach(
            (id, entry) -> {
              var other = all.putIfAbsent(id, entry);
              if (other != null) {
                faults.add(
                    entry.spot(),
                    "\"%s\" stands already in %s".formatted(id, other.spot()),
                    "an id of its own",
                    "Rename one of the two.");
              }
            });
  }

  private Optional<YamlFile> only(String path) {
    if (!unread.remove(path)) {
      faults.add(Spot.of(path), "the file is missing", "the file " + path, "Put it back.");
    }
    return Optional.ofNullable(files.get(path));
  }

  /** The files of a folder that nobody has read yet. */
  private List<YamlFile> under(String folder) {
    var found =
        files.values().stream()
            .filter(file -> file.path().startsWith(folder) && unread.contains(file.path()))
            .toList();
    unread.removeIf(path -> path.startsWith(folder));
    return found;
  }

  private void refuseUnread() {
    for (var path : unread) {
      faults.add(
          Spot.of(path),
          "nobody reads this file",
          "the places that content/README.md names",
          "Move it to where it belongs, or delete it.");
    }
  }

  private void refuseUnused(
      List<Rule> rules, Map<Fact, FactEntry> facts, Map<String, Located<Limit>> limits) {
    sources
        .read()
        .forEach((id, source) -> refuseUnless(sources.isCited(id), "source", id, source.spot()));
    var conditions = rules.stream().flatMap(rule -> rule.when().stream()).toList();
    limits.forEach(
        (id, limit) ->
            refuseUnless(
                conditions.stream().anyMatch(condition -> condition.limits().containsKey(id)),
                "limit",
                id,
                limit.spot()));
    // A shop can't add facts, and its rules may leave one of ours without any.
    if (!marks.nothing()) {
      return;
    }
    facts.forEach(
        (fact, entry) ->
            refuseUnless(
                entry.noRuleYet().isPresent()
                    || isScope(fact)
                    || conditions.stream().anyMatch(condition -> condition.facts().contains(fact)),
                "fact",
                fact.id(),
                Spot.of("facts.yaml")));
  }

  /** These are asked for by every rule's {@code applies-to}. */
  private static boolean isScope(Fact fact) {
    return fact == Fact.OPERATION || fact == Fact.MACHINE || fact == Fact.REGION;
  }

  private void refuseUnless(boolean used, String kind, String id, Spot spot) {
    // What is ours the shop can't take out.
    if (!used && !marks.isOurs(spot)) {
      faults.add(
          spot,
          "the %s \"%s\" is used by nothing".formatted(kind, id),
          "what a rule or a limit refers to",
          "Refer to it, or take it out.");
    }
  }

  private static <T> Map<String, T> values(Map<String, Located<T>> located) {
    var values = new LinkedHashMap<String, T>();
    located.forEach((id, entry) -> values.put(id, entry.value()));
    return Collections.unmodifiableMap(values);
  }
}
