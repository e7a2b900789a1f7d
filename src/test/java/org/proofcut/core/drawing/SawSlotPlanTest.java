package org.proofcut.core.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.proofcut.core.casework.CasesForTests.mm;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.proofcut.core.casework.CasesForTests;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.fit.SlotFit;
import org.proofcut.core.measure.Band;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.LengthUnit;
import org.proofcut.core.operation.Operation;
import org.proofcut.core.operation.OperationKind;
import org.proofcut.core.operation.SingleCut;
import org.proofcut.core.plan.PlansForTests;
import org.proofcut.core.setup.CutAsked;
import org.proofcut.core.setup.Guide;
import org.proofcut.core.setup.Setting;
import org.proofcut.core.setup.Setup;
import org.proofcut.core.setup.ShopsForTests;
import org.proofcut.core.setup.Work;
import org.proofcut.core.shop.Cutter;
import org.proofcut.core.shop.Shop;
import org.proofcut.core.shop.StackedCutter;
import org.proofcut.core.shop.StackedCutter.Layer;
import org.proofcut.core.shop.TableSaw.BlindCuts;

/** Slots at the saw, drawn. */
class SawSlotPlanTest {

  private static final double HALF_PIXEL = 0.51;

  private static final StackedCutter STACK =
      new StackedCutter(
          "stack",
          "stack of 200",
          mm(200),
          24,
          Length.of("3.2 mm"),
          List.of(new Layer(Length.of("3.2 mm"), 3), new Layer(Length.of("1.6 mm"), 1)),
          List.of(new Layer(Length.of("0.3 mm"), 2)),
          Optional.of(6_000));

  /** Each by what it is called in a failure. */
  static Map<String, Operation> all() {
    var all = new LinkedHashMap<String, Operation>();
    all.put("groove near the fence", groove("8 mm", "9 mm", 900, 400));
    all.put("groove far from the fence", groove("8 mm", "300 mm", 900, 600));
    all.put("two passes", groove("4.3 mm", "12 mm", 1_800, 300));
    all.put("dado on the sled", groove("8 mm", "60 mm", 250, 900));
    all.put("dado far along the sled", groove("8 mm", "500 mm", 250, 1_000));
    all.put("stack on the fence", cut("17.72 mm", "90 mm", 400, 900, STACK));
    all.put("stack on the sled", cut("17.72 mm", "300 mm", 250, 900, STACK));
    all.put("narrow piece", cut("17.72 mm", "20 mm", 400, 60, STACK));
    return all;
  }

  private static Operation groove(String entering, String distance, int along, int across) {
    return cut(entering, distance, along, across, ShopsForTests.RIP_BLADE);
  }

  private static Operation cut(
      String entering, String distance, int along, int across, Cutter cutter) {
    var shop =
        new Shop(
            "saw alone",
            List.of(ShopsForTests.sawWith(new BlindCuts(true, Optional.of(mm(20))))),
            List.of(cutter),
            List.of(),
            List.of("featherboard", "sled"));
    var goesIn = CasesForTests.sheet("goes in", entering, entering);
    var fit = SlotFit.of(goesIn.thickness(), CasesForTests.FIT);
    var asked =
        new CutAsked.Slot(
            fit.target(),
            fit.accepted().orElseThrow(),
            Worked.entered("depth", mm(6)),
            Worked.entered("distance", Length.of(distance)),
            new Work(
                at(along), at(across), new Band(Length.of("17.66 mm"), Length.of("17.78 mm"))));
    var single =
        new SingleCut(
            OperationKind.DADO,
            "Dado or groove",
            asked,
            CasesForTests.sheet("piece", "17.66 mm", "17.78 mm"),
            Optional.of(goesIn));
    return PlansForTests.planner().plan(single, shop, LengthUnit.MILLIMETRE).sheet().operation();
  }

  private static Band at(int millimetres) {
    return new Band(mm(millimetres), mm(millimetres));
  }

  private static Setup setup(Operation operation) {
    return operation
        .setup()
        .orElseThrow(() -> new AssertionError(operation.choice().orElseThrow().refused()));
  }

  @Test
  void cases_bothGuidesAndBothCutters_areAmongThem() {
    var setups = all().values().stream().map(SawSlotPlanTest::setup).toList();
    for (var guide : List.of(Guide.FENCE, Guide.SLED)) {
      for (boolean stacked : List.of(true, false)) {
        assertTrue(
            setups.stream()
                .anyMatch(
                    one ->
                        one.guide() == guide && one.cutter() instanceof StackedCutter == stacked),
            guide + " " + stacked);
      }
    }
  }

  @Test
  void of_everySlotUnitAndWidth_isLegible() {
    all()
        .forEach(
            (name, operation) -> {
              for (var unit : LengthUnit.values()) {
                for (int width : new int[] {600, 350}) {
                  var what = name + " " + unit + " " + width;
                  var setup = setup(operation);
                  Seen.in(MachinePlan.of(operation, setup, unit, width)).isLegible(what);
                  Seen.in(CutSection.of(operation, setup, unit, width)).isLegible(what);
                }
              }
            });
  }

  @Test
  void blade_isAsWideAsItCuts_andAsLongAsItStandsOut() {
    all()
        .forEach(
            (name, operation) -> {
              var setup = setup(operation);
              var drawn = blade(seen(operation));
              double h = 6;
              double exposed = 2 * Math.sqrt(mmOf(setup.cutter().diameter()) * h - h * h);
              assertEquals(
                  exposed / mmOf(setup.cutter().cutWidth()),
                  drawn.height() / drawn.width(),
                  0.01,
                  name);
            });
  }

  /** Work of one piece whose guide is not broken away: strip and fence stand to scale. */
  @Test
  void strips_lieBetweenFenceAndWork_asThickAsThePack() {
    var operation = all().get("groove near the fence");
    var setup = setup(operation);
    var seen = seen(operation);
    var blade = blade(seen);
    double perMm = blade.width() / mmOf(setup.cutter().cutWidth());
    double pack = mmOf(setup.setting(Setting.Role.STRIP).orElseThrow().set().value());
    double fence = mmOf(setup.setting(Setting.Role.FENCE).orElseThrow().set().value());
    var work =
        seen.boxes().stream().filter(box -> box.fill().contains("wood")).findFirst().orElseThrow();
    assertEquals(pack * perMm, blade.right() + fence * perMm - work.right(), HALF_PIXEL);
    assertTrue(
        seen.boxes().stream()
            .anyMatch(
                box ->
                    Math.abs(box.width() - pack * perMm) < HALF_PIXEL
                        && Math.abs(box.left() - work.right()) < HALF_PIXEL),
        "a box for the strips");
  }

  @Test
  void words_sayTheStripsOfEachPass_andThatTheGuardIsOff() {
    var words = words("groove near the fence");
    assertTrue(words.contains("Pass 1: 3 strips on, 6 mm deep."), words);
    assertTrue(words.contains("Pass 3: 1 strip on, 6 mm deep."), words);
    assertTrue(words.contains("Pass 4: all strips off, 6 mm deep."), words);
    assertTrue(words.contains("The usual guard can't stay here"), words);
    assertTrue(words.contains("The riving knife stays"), words);
    assertFalse(words.contains("guard covers"), words);
    assertTrue(words("stack on the fence").contains("riving knife is off"));
    assertTrue(words("dado on the sled").contains("the fence is off the table"));
  }

  private static String words(String name) {
    var operation = all().get(name);
    return MachinePlan.of(operation, setup(operation), LengthUnit.MILLIMETRE, 600).words();
  }

  private static Seen.Box blade(Seen seen) {
    return seen.boxes().stream()
        .filter(box -> box.fill().contains("ink"))
        .findFirst()
        .orElseThrow();
  }

  private static Seen seen(Operation operation) {
    return Seen.in(MachinePlan.of(operation, setup(operation), LengthUnit.MILLIMETRE, 600));
  }

  private static double mmOf(Length length) {
    return length.inMillimetres().doubleValue();
  }
}
