package org.proofcut.core.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.proofcut.content.Content;
import org.proofcut.core.boring.BoringLimits;
import org.proofcut.core.casework.CasesForTests;
import org.proofcut.core.fit.FitLimits;
import org.proofcut.core.intake.CutForm;
import org.proofcut.core.intake.CutForms;
import org.proofcut.core.intake.CutsTyped;
import org.proofcut.core.intake.Field;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.LengthUnit;
import org.proofcut.core.operation.OperationKind;
import org.proofcut.core.operation.Way;
import org.proofcut.core.operation.Ways;
import org.proofcut.core.safety.Fact;
import org.proofcut.core.safety.StepFacts;
import org.proofcut.core.setup.Guide;
import org.proofcut.core.setup.SawForTests;
import org.proofcut.core.setup.ShopsForTests;
import org.proofcut.core.shop.HandDrill;
import org.proofcut.core.shop.Machine;
import org.proofcut.core.shop.MitreSaw;
import org.proofcut.core.shop.Shop;
import org.proofcut.core.shop.StackedCutter;
import org.proofcut.core.shop.TableSaw.BlindCuts;

/**
 * The list of ways is exactly what comes out when every cut is asked of every machine alone: each
 * form as a person types it, each of its fields smaller, larger or chosen otherwise, and a whole
 * case, in shops whose saws, drills and cutters differ.
 */
class WaysTest {

  /** What was seen of one operation on one machine. */
  private record Seen(Map<Fact, Set<Object>> values) {
    Seen() {
      this(new TreeMap<>());
    }

    void add(StepFacts step, Fact fact) {
      values.computeIfAbsent(fact, any -> new TreeSet<>()).add(step.value(fact).orElseThrow());
    }
  }

  private static final Set<Fact> FIXED =
      EnumSet.of(
          Fact.GUIDE,
          Fact.THROUGH_CUT,
          Fact.INSIDE_OPENING,
          Fact.CUTTER_HAS_BEARING,
          Fact.USES_STRIP,
          Fact.STACKED_CUTTER,
          Fact.GLUE,
          Fact.SCREWS);

  private static final Map<String, Seen> SEEN = new TreeMap<>();

  @BeforeAll
  static void makeThemAll() {
    for (var shop : shops()) {
      for (var machine : shop.machines()) {
        var alone = shop.with(Optional.of(machine.id()), Optional.empty());
        PlansForTests.planner()
            .plan(CasesForTests.cupboard(), alone)
            .sheets()
            .forEach(sheet -> see(sheet, alone));
        forms()
            .filter(form -> form.machines().stream().anyMatch(kind -> kind.isInstance(machine)))
            .forEach(form -> typed(form, alone).forEach(typed -> see(form, typed, alone)));
      }
    }
  }

  @Test
  void ways_areThoseThatTheEngineMakes() {
    assertEquals(new TreeSet<>(cuts().map(WaysTest::name).toList()), new TreeSet<>(SEEN.keySet()));
  }

  @Test
  void ways_sayWhatCanBeSo_noMoreAndNoLess() {
    var said = new TreeMap<String, Map<Fact, Set<Object>>>();
    for (var way : cuts().toList()) {
      var values = new TreeMap<Fact, Set<Object>>();
      values.put(Fact.GUIDE, new TreeSet<>(way.guides().stream().map(Guide::id).toList()));
      values.put(Fact.THROUGH_CUT, answers(way.through()));
      values.put(Fact.INSIDE_OPENING, answers(way.inside()));
      values.put(Fact.CUTTER_HAS_BEARING, answers(way.bearing()));
      values.put(Fact.USES_STRIP, answers(way.strip()));
      values.put(Fact.STACKED_CUTTER, answers(way.stacked()));
      values.put(Fact.GLUE, Set.of(false));
      values.put(Fact.SCREWS, Set.of(false));
      said.put(name(way), values);
    }
    var wrong = new ArrayList<String>();
    SEEN.forEach(
        (name, seen) -> {
          if (!seen.values().equals(said.get(name))) {
            wrong.add(name + ": the engine says " + seen.values() + ", the list " + said.get(name));
          }
        });
    assertEquals("", String.join("\n", wrong));
  }

  @Test
  void ways_haveOneForEveryOperation_andByHandWhereNothingCuts() {
    for (var kind : OperationKind.values()) {
      var ways = Ways.all().stream().filter(way -> way.kind() == kind).toList();
      assertFalse(ways.isEmpty(), kind.id());
      assertEquals(kind.cuts(), ways.stream().noneMatch(way -> way.machine().equals(Ways.BY_HAND)));
    }
  }

  private static Stream<Way> cuts() {
    return Ways.all().stream().filter(way -> !way.machine().equals(Ways.BY_HAND));
  }

  private static Set<Object> answers(Way.So so) {
    return new TreeSet<>(so.answers());
  }

  private static String name(Way way) {
    return way.machine() + " " + way.kind().id();
  }

  private static void see(CutForm form, Map<String, String> typed, Shop shop) {
    form.read(typed, shop)
        .value()
        .ifPresent(
            wanted ->
                see(
                    PlansForTests.planner()
                        .plan(wanted.cut(), wanted.shop(), wanted.unit())
                        .sheet(),
                    shop));
  }

  private static void see(OperationSheet sheet, Shop shop) {
    sheet
        .operation()
        .setup()
        .ifPresent(
            setup -> {
              var step = Facts.of(sheet.operation(), shop, Content.bundled().dust());
              var name = setup.machine().kind() + " " + sheet.operation().kind().id();
              var seen = SEEN.computeIfAbsent(name, any -> new Seen());
              FIXED.forEach(fact -> seen.add(step, fact));
            });
  }

  private static Stream<CutForm> forms() {
    var content = Content.bundled();
    return CutForms.all(content.limits(FitLimits.class), content.limits(BoringLimits.class))
        .stream();
  }

  /** As typed, with one field after the other otherwise, and with other readings. */
  private static Collection<Map<String, String>> typed(CutForm form, Shop shop) {
    var usual = CutForm.filledIn(CutsTyped.byKind().get(form.kind()), LengthUnit.MILLIMETRE);
    var all = new ArrayList<Map<String, String>>();
    all.add(usual);
    for (var field : form.fields(shop)) {
      if (!field.name().startsWith(CutForm.FOUND)) {
        otherwise(field, usual.getOrDefault(field.name(), ""))
            .forEach(text -> all.add(with(usual, Map.of(field.name(), text))));
      }
    }
    if (usual.containsKey("entering-thinnest")) {
      for (var readings : List.of("4.3", "5", "11.85")) {
        all.add(with(usual, Map.of("entering-thinnest", readings, "entering-thickest", readings)));
      }
    }
    if (usual.containsKey("now")) {
      all.add(with(usual, Map.of("now", "2002", "size", "2000")));
    }
    return all;
  }

  private static Map<String, String> with(Map<String, String> usual, Map<String, String> others) {
    var other = new LinkedHashMap<>(usual);
    other.putAll(others);
    return other;
  }

  private static Stream<String> otherwise(Field field, String text) {
    return switch (field.entry()) {
      case CHOICE, YES_NO -> field.choices().stream().map(Field.Choice::value);
      case LENGTH ->
          text.matches("[0-9.]+")
              ? Stream.of("0.25", "0.5", "2", "4", "8", "20")
                  .map(factor -> new BigDecimal(text).multiply(new BigDecimal(factor)))
                  .map(BigDecimal::toPlainString)
              : Stream.of("4", "40");
      case ANGLE, COUNT, NUMBER, TEXT, SPEEDS, DATE -> Stream.empty();
    };
  }

  private static List<Shop> shops() {
    return List.of(
        with(CutsTyped.SHOP, WIDE_MITRE_SAW, drill("0 mm")),
        with(CutsTyped.SHOP, withGaugeAlone(), drill("25 mm")),
        with(CutsTyped.SHOP, withStack()));
  }

  /** With these machines in place of those alike, a stack, and every aid. */
  private static Shop with(Shop shop, Machine... others) {
    var machines = new LinkedHashMap<String, Machine>();
    shop.machines().forEach(one -> machines.put(one.id(), one));
    Stream.of(others).forEach(one -> machines.put(one.id(), one));
    return new Shop(
        shop.name(),
        List.copyOf(machines.values()),
        Stream.concat(shop.cutters().stream(), Stream.of(STACK)).toList(),
        shop.gear(),
        List.copyOf(Content.bundled().wording().aids().keySet()));
  }

  /** It reaches across the test cupboard's parts. */
  private static final MitreSaw WIDE_MITRE_SAW =
      new MitreSaw(
          ShopsForTests.MITRE.id(),
          ShopsForTests.MITRE.name(),
          ShopsForTests.MITRE.speeds(),
          ShopsForTests.MITRE.greatestMitre(),
          ShopsForTests.MITRE.mitreStep(),
          ShopsForTests.MITRE.tilt(),
          Length.of("700 mm"),
          ShopsForTests.MITRE.cutHeight(),
          ShopsForTests.MITRE.tiltedHeight(),
          ShopsForTests.MITRE.stopReach(),
          ShopsForTests.MITRE.stopStep(),
          ShopsForTests.MITRE.blades(),
          ShopsForTests.MITRE.hasGuard(),
          ShopsForTests.MITRE.hasExtraction());

  private static final StackedCutter STACK =
      new StackedCutter(
          "stack",
          "stack",
          Length.ofMillimetres(200),
          24,
          Length.of("3.2 mm"),
          List.of(layer("3.2 mm", 4), layer("1.6 mm", 2)),
          List.of(layer("0.3 mm", 2), layer("0.1 mm", 4), layer("0.05 mm", 2)),
          Optional.of(6_000));

  private static StackedCutter.Layer layer(String thickness, int count) {
    return new StackedCutter.Layer(Length.of(thickness), count);
  }

  private static Machine withStack() {
    return ShopsForTests.sawWith(new BlindCuts(true, Optional.of(Length.of("22 mm"))));
  }

  private static Machine withGaugeAlone() {
    return new SawForTests()
        .sledReach(Length.ZERO)
        .gauge("1500 mm", "600 mm")
        .blindCuts(new BlindCuts(true, Optional.empty()))
        .tilt(ShopsForTests.SAW.tilt())
        .made();
  }

  private static Machine drill(String guideHeight) {
    var drill = ShopsForTests.DRILL;
    return new HandDrill(
        drill.id(),
        drill.name(),
        drill.speeds(),
        drill.collarStep(),
        Length.of(guideHeight),
        Length.of("40 mm"),
        drill.hasExtraction());
  }
}
