package org.proofcut.core.method;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.statistics.Statistics;
import org.junit.jupiter.api.Test;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.measure.Band;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.LengthUnit;
import org.proofcut.core.setup.Conditions;
import org.proofcut.core.setup.CutAsked;
import org.proofcut.core.setup.RandomCuts;
import org.proofcut.core.setup.RandomCuts.Trial;
import org.proofcut.core.setup.Setup;
import org.proofcut.core.setup.ShopsForTests;
import org.proofcut.core.setup.Work;
import org.proofcut.core.shop.Cutter;
import org.proofcut.core.shop.Machine;
import org.proofcut.core.shop.RouterTable;
import org.proofcut.core.shop.Shop;
import org.proofcut.core.shop.StackedCutter;
import org.proofcut.core.shop.StackedCutter.Layer;
import org.proofcut.core.shop.StraightCutter;
import org.proofcut.core.shop.TableSaw.BlindCuts;

class MethodsTest {

  private static final Length WIDTH = Length.of("17.87 mm");

  @Test
  void slot_takesTheCutterThatFits_atTheTable() {
    var shop = shopWith(ShopsForTests.SIXTEEN, ShopsForTests.straight("fits", "17.87 mm"));
    var choice = choose(shop, slot("100 mm"));
    assertMade("router table", "fits mm cutter", choice);
    assertEquals(List.of(), choice.refused());
  }

  @Test
  void slot_thatNoCutterFits_isWidenedWithTheWidestNarrowerOne() {
    var choice = choose(ShopsForTests.shop(), slot("100 mm"));
    assertMade("router table", "16 mm cutter", choice);
    assertEquals(List.of("router table, 18 mm cutter: CUTTER_TOO_WIDE"), refused(choice));
  }

  @Test
  void slot_beyondTheFence_goesToTheHandRouter_andKeepsEveryReason() {
    var choice = choose(ShopsForTests.shop(), slot("480 mm"));
    assertMade("hand router", "16 mm cutter", choice);
    assertEquals(
        List.of(
            "router table, 18 mm cutter: CUTTER_TOO_WIDE",
            "router table, 16 mm cutter: OUT_OF_REACH",
            "router table, 12 mm cutter: OUT_OF_REACH",
            "router table, 4.5 mm cutter: CUTTER_TOO_NARROW",
            "hand router, 18 mm cutter: CUTTER_TOO_WIDE"),
        refused(choice));
  }

  @Test
  void slot_thatNoRouterMakes_goesToTheSaw_aStackBeforeSeveralPasses() {
    var saw = ShopsForTests.sawWith(new BlindCuts(true, Optional.of(Length.of("20 mm"))));
    var stack =
        new StackedCutter(
            "stack",
            "stack",
            Length.of("200 mm"),
            24,
            Length.of("3.2 mm"),
            List.of(new Layer(Length.of("3.2 mm"), 3), new Layer(Length.of("1.9 mm"), 1)),
            List.of(),
            Optional.of(6_000));
    var cutters = List.<Cutter>of(ShopsForTests.EIGHTEEN, ShopsForTests.RIP_BLADE, stack);
    var all =
        new Shop(
            "all",
            List.of(saw, ShopsForTests.TABLE, ShopsForTests.HAND),
            cutters,
            List.of(),
            List.of("featherboard", "straightedge", "clamps"));
    var choice =
        new Methods(all, new Conditions(ShopsForTests.LIMITS, all.aids(), LengthUnit.MILLIMETRE))
            .choose(slot("100 mm"));
    // 2 × 3.2 + 3 × 3.2 + 1.9 = 17.9
    assertMade("table saw", "stack, 2 outer blades; chippers 3 × 3.20 mm, 1 × 1.90 mm", choice);
    assertEquals(
        List.of(
            "router table, 18 mm cutter: CUTTER_TOO_WIDE",
            "hand router, 18 mm cutter: CUTTER_TOO_WIDE"),
        refused(choice));
    var forbidden = new Shop("all", List.of(ShopsForTests.SAW), cutters, List.of(), all.aids());
    assertEquals(
        List.of("table saw, stack: NOT_ALLOWED", "table saw, 250 mm blade: NOT_ALLOWED"),
        refused(choose(forbidden, slot("100 mm"))));
  }

  @Test
  void rabbet_takesTheWidestCutterFirst() {
    var shop = shopWith(ShopsForTests.SIXTEEN, ShopsForTests.straight("wide", "30 mm"));
    assertMade("router table", "wide mm cutter", choose(shop, rabbet()));
  }

  @Test
  void wholeSheet_isBrokenDownAlongTheTrack_sizedPiecesGoToTheTableSaw() {
    var choice = choose(ShopsForTests.shop(), parting(false, true));
    assertMade("track saw", "160 mm blade", choice);
    assertMade("table saw", "250 mm blade", choose(ShopsForTests.shop(), parting(true, true)));
    assertMade("table saw", "250 mm blade", choose(ShopsForTests.shop(), parting(true, false)));
  }

  @Test
  void shopWithoutMachines_offersNothing_andHasNothingToRefuse() {
    var empty = new Shop("empty", List.of(), List.of(), List.of(), List.of());
    for (var asked : List.of(slot("100 mm"), rabbet(), parting(true, true))) {
      var choice = choose(empty, asked);
      assertTrue(choice.setup().isEmpty());
      assertEquals(List.of(), choice.refused());
    }
  }

  @Provide
  Arbitrary<List<Trial>> trials() {
    return RandomCuts.trials().list().ofMinSize(1).ofMaxSize(4);
  }

  /**
   * A shop of random machines and cutters, against every pair of them: what is chosen is the first
   * that works in the stated order, and none means that no pair works.
   */
  @Property(tries = 1_500, edgeCases = EdgeCasesMode.NONE)
  void choice_isTheFirstPairThatWorks(@ForAll("trials") List<Trial> trials) {
    var asked = trials.get(0).asked();
    var across = trials.get(0).across();
    var machines = new ArrayList<Machine>();
    var cutters = new ArrayList<Cutter>();
    for (int i = 0; i < trials.size(); i++) {
      machines.add(trials.get(i).machine());
      cutters.add(named("c" + i, trials.get(i).cutter()));
    }
    var shop = new Shop("random", machines, cutters, List.of(), ShopsForTests.CONDITIONS.aids());
    var choice = choose(shop, asked);
    var works = new ArrayList<Setup>();
    for (var machine : machines) {
      for (var cutter : cutters) {
        if (new Trial(asked, across, machine, (StraightCutter) cutter).answer()
            instanceof Setup setup) {
          works.add(setup);
        }
      }
    }
    Statistics.label("some pair works")
        .collect(!works.isEmpty())
        .coverage(
            coverage -> {
              coverage.check(true).percentage(share -> share > 20);
              coverage.check(false).percentage(share -> share > 2);
            });
    assertEquals(works.isEmpty(), choice.setup().isEmpty());
    if (works.isEmpty()) {
      assertEquals(machines.size() * cutters.size(), choice.refused().size());
      return;
    }
    assertEquals(works.stream().min(statedOrder(asked, machines)), choice.setup());
    assertTrue(choice.refused().size() < machines.size() * cutters.size());
  }

  /** Table before hand; then the order of the shop; then nearest to the width, or widest. */
  private static Comparator<Setup> statedOrder(CutAsked asked, List<Machine> machines) {
    Comparator<Setup> byMachine =
        Comparator.comparing((Setup setup) -> !(setup.machine() instanceof RouterTable))
            .thenComparing(setup -> machines.indexOf(setup.machine()));
    if (asked instanceof CutAsked.Slot slot) {
      return byMachine
          .thenComparing(setup -> setup.cutter().diameter().minus(slot.width().value()).abs())
          .thenComparing(setup -> setup.cutter().id());
    }
    return byMachine
        .thenComparing(setup -> setup.cutter().diameter(), Comparator.reverseOrder())
        .thenComparing(setup -> setup.cutter().id());
  }

  private static StraightCutter named(String id, StraightCutter cutter) {
    return new StraightCutter(
        id,
        id,
        cutter.diameter(),
        cutter.cuttingLength(),
        cutter.edges(),
        cutter.shank(),
        cutter.markedTopSpeed());
  }

  private static Choice choose(Shop shop, CutAsked asked) {
    return new Methods(shop, ShopsForTests.CONDITIONS).choose(asked);
  }

  private static Shop shopWith(Cutter... cutters) {
    var shop = ShopsForTests.shop();
    return new Shop(shop.name(), shop.machines(), List.of(cutters), shop.gear(), shop.aids());
  }

  private static void assertMade(String machine, String cutter, Choice choice) {
    var setup = choice.setup().orElseThrow(() -> new AssertionError(refused(choice).toString()));
    assertEquals(machine, setup.machine().name());
    assertEquals(cutter, setup.cutter().name());
  }

  private static List<String> refused(Choice choice) {
    return choice.refused().stream()
        .map(one -> one.machine() + ", " + one.cutter() + ": " + one.why().reason())
        .toList();
  }

  private static CutAsked.Slot slot(String distance) {
    return new CutAsked.Slot(
        Worked.entered("width", WIDTH),
        band("17.83 mm", "17.91 mm"),
        Worked.entered("depth", Length.of("6 mm")),
        Worked.entered("distance", Length.of(distance)),
        side());
  }

  private static CutAsked.Rabbet rabbet() {
    return new CutAsked.Rabbet(
        Worked.entered("width", Length.of("17.82 mm")),
        band("17.78 mm", "17.86 mm"),
        Worked.entered("depth", Length.of("6 mm")),
        side());
  }

  private static CutAsked.Parting parting(boolean toSize, boolean along) {
    return new CutAsked.Parting(Worked.entered("size", Length.of("400 mm")), toSize, along, side());
  }

  private static Work side() {
    return new Work(
        band("400 mm", "400 mm"), band("600 mm", "600 mm"), band("17.66 mm", "17.78 mm"));
  }

  private static Band band(String least, String most) {
    return new Band(Length.of(least), Length.of(most));
  }
}
