package org.proofcut.core.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.proofcut.core.casework.CasesForTests.mm;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.proofcut.core.casework.CaseDesign;
import org.proofcut.core.casework.CaseDesign.Joinery;
import org.proofcut.core.casework.CaseDesign.Plinth;
import org.proofcut.core.casework.CasesForTests;
import org.proofcut.core.casework.ProvenDepths;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.LengthUnit;
import org.proofcut.core.plan.OperationSheet;
import org.proofcut.core.plan.PlansForTests;
import org.proofcut.core.setup.Guide;
import org.proofcut.core.setup.SawForTests;
import org.proofcut.core.setup.Setting;
import org.proofcut.core.setup.Setup;
import org.proofcut.core.setup.ShopsForTests;
import org.proofcut.core.shop.HandRouter;
import org.proofcut.core.shop.Machine;
import org.proofcut.core.shop.RouterTable;
import org.proofcut.core.shop.SawBlade;
import org.proofcut.core.shop.Shop;
import org.proofcut.core.shop.TableSaw;
import org.proofcut.core.shop.TrackSaw;

class MachinePlanTest {

  private static final double HALF_PIXEL = 0.51;

  /** With the plinth so low that the slot lies close to the fence and nothing has to be broken. */
  private static final CaseDesign LOW = withPlinth(CasesForTests.cupboard(), 40);

  private static final List<OperationSheet> ALL_MACHINES =
      PlansForTests.plan(LOW, ProvenDepths.NONE).sheets();
  private static final List<OperationSheet> BY_HAND = sheetsOf(LOW, ShopsForTests.HAND);

  @Test
  void of_everySheetUnitAndWidth_isLegible() {
    int drawn = 0;
    for (var sheet : cut()) {
      for (var unit : LengthUnit.values()) {
        for (int width : new int[] {600, 350}) {
          var what = sheet.id() + " " + unit + " " + width;
          Seen.in(MachinePlan.of(sheet.operation(), setup(sheet), unit, width)).isLegible(what);
          Seen.in(CutSection.of(sheet.operation(), setup(sheet), unit, width)).isLegible(what);
          drawn++;
        }
      }
    }
    assertTrue(drawn >= 80, drawn + " drawn");
  }

  @Test
  void cases_everyMachineIsAmongTheSheets() {
    assertTrue(cut().stream().anyMatch(sheet -> setup(sheet).machine() instanceof RouterTable));
    assertTrue(cut().stream().anyMatch(sheet -> setup(sheet).machine() instanceof HandRouter));
    assertTrue(cut().stream().anyMatch(sheet -> setup(sheet).machine() instanceof TrackSaw));
    assertTrue(cut().stream().anyMatch(sheet -> setup(sheet).guide() == Guide.SLED));
    assertTrue(
        cut().stream()
            .anyMatch(
                sheet ->
                    setup(sheet).machine() instanceof TableSaw
                        && setup(sheet).guide() == Guide.FENCE));
  }

  @Test
  void routerTable_slotCloseToTheFence_cutterStandsToScaleFromIt() {
    var sheet = find(ALL_MACHINES, "dado:bottom");
    var setup = setup(sheet);
    assertTrue(setup.machine() instanceof RouterTable, setup.machine().name());
    var seen = Seen.in(draw(sheet, 600));
    double perMm = seen.cutter().r() * 2 / mmOf(setup.cutter().diameter());
    double face = fenceFace(seen);
    double fence = mmOf(setup.setting(Setting.Role.FENCE).orElseThrow().set().value());
    assertEquals(fence * perMm, seen.cutter().y() - seen.cutter().r() - face, HALF_PIXEL);
    assertFalse(seen.turnsClockwise());
    if (setup.usesStrip()) {
      double strip = mmOf(setup.setting(Setting.Role.STRIP).orElseThrow().set().value());
      double work =
          seen.boxes().stream()
              .filter(box -> box.fill().contains("wood"))
              .findFirst()
              .orElseThrow()
              .top();
      assertEquals(strip * perMm, work - face, HALF_PIXEL);
    }
  }

  @Test
  void routerTable_rabbet_farEdgeOfTheCutterIsItsWidthFromTheFence() {
    for (var id : List.of("rabbet:top", "back-rabbet")) {
      var sheet = find(ALL_MACHINES, id);
      var setup = setup(sheet);
      assertTrue(setup.machine() instanceof RouterTable, setup.machine().name());
      var seen = Seen.in(draw(sheet, 600));
      double perMm = seen.cutter().r() * 2 / mmOf(setup.cutter().diameter());
      var fence = setup.setting(Setting.Role.FENCE).orElseThrow().set().value();
      assertEquals(
          mmOf(fence) * perMm,
          seen.cutter().y() + seen.cutter().r() - fenceFace(seen),
          HALF_PIXEL,
          id);
    }
  }

  @Test
  void handRouter_baseTouchesStripAndCutterStandsInItsMiddle() {
    for (var id : List.of("rabbet:top", "dado:bottom", "dado:shelf-1", "back-rabbet")) {
      var sheet = find(BY_HAND, id);
      var setup = setup(sheet);
      var seen = Seen.in(draw(sheet, 600));
      double perMm = seen.cutter().r() * 2 / mmOf(setup.cutter().diameter());
      double toCentre = mmOf(((HandRouter) setup.machine()).baseEdgeToCentre());
      var base = seen.boxes().stream().filter(box -> box.stroke().equals("4")).findFirst();
      assertEquals(toCentre * perMm, seen.cutter().x() - base.orElseThrow().left(), HALF_PIXEL, id);
      assertTrue(seen.turnsClockwise(), id);
      // The straightedge is the hatched box left of the base; with a strip between them.
      double strip =
          setup.setting(Setting.Role.STRIP).map(setting -> mmOf(setting.set().value())).orElse(0.0);
      double left = base.orElseThrow().left();
      assertTrue(
          seen.boxes().stream()
              .anyMatch(
                  box ->
                      Math.abs(box.right() - (left - strip * perMm)) < HALF_PIXEL
                          && Math.abs(box.width() - 40) < 0.01),
          id);
    }
  }

  @Test
  void saws_bladeIsAsWideAsItsKerfAndAsLongAsItStandsOut() {
    for (var sheet : ALL_MACHINES) {
      var setup = sheet.operation().setup();
      if (setup.isEmpty() || !(setup.get().machine() instanceof TableSaw)) {
        continue;
      }
      var blade = (SawBlade) setup.get().cutter();
      double h = mmOf(setup.get().setting(Setting.Role.HEIGHT).orElseThrow().set().value());
      double exposed = 2 * Math.sqrt(mmOf(blade.diameter()) * h - h * h);
      var drawn =
          Seen.in(draw(sheet, 600)).boxes().stream()
              .filter(box -> box.fill().contains("ink"))
              .findFirst()
              .orElseThrow();
      assertEquals(exposed / mmOf(blade.kerf()), drawn.height() / drawn.width(), 0.01, sheet.id());
    }
  }

  @Test
  void sawWithoutGuardAndKnife_drawsNoneAndSaysSo() {
    var bare = new SawForTests().withoutGuardAndKnife().made();
    var sheet = find(ALL_MACHINES, "rip:left-side");
    var with = setup(sheet);
    var without =
        new Setup(
            with.asked(),
            bare,
            with.cutter(),
            with.guide(),
            with.settings(),
            with.passes(),
            with.speed(),
            with.feed(),
            with.measures());
    var picture = MachinePlan.of(sheet.operation(), without, LengthUnit.MILLIMETRE, 600);
    assertTrue(picture.words().contains("no guard and no riving knife"), picture.words());
    assertEquals(Seen.in(draw(sheet, 600)).boxes().size() - 2, Seen.in(picture).boxes().size());
  }

  @Test
  void exposed_bladeOf250At25_standsOut150() {
    // 2 · √(250 · 25 − 25²) = 2 · √5625 = 150
    assertEquals(mm(150), SawPlan.exposed(mm(250), mm(25)));
  }

  @Test
  void words_everySheet_sayFiguresEdgesAndPasses() {
    for (var sheet : cut()) {
      var setup = setup(sheet);
      var words = draw(sheet, 350).words();
      assertEquals(words, draw(sheet, 600).words());
      assertTrue(words.contains(setup.feed().words()), words);
      for (var setting : setup.settings()) {
        assertTrue(words.contains(setting.from()), words);
      }
      for (var part : sheet.operation().parts()) {
        var handling = part.handling().orElseThrow();
        assertTrue(words.contains(part.name()), words);
        assertTrue(words.contains(handling.leads().words() + " leads"), words);
        handling.breakout().ifPresent(what -> assertTrue(words.contains(what), words));
        assertTrue(words.contains(handling.face()), words);
      }
      for (var pass : setup.passes()) {
        if (setup.passes().size() > 1) {
          assertTrue(
              words.contains("Pass " + pass.number() + ": strip " + (pass.stripOn() ? "on" : "off"))
                  || !setup.usesStrip() && words.contains("Pass " + pass.number() + ":"),
              words);
        }
      }
    }
  }

  @Test
  void words_mirrorPair_eachSideHasItsOwnLeadingEdge() {
    var words = draw(find(ALL_MACHINES, "dado:bottom"), 600).words();
    assertTrue(words.contains("left side: front edge leads."), words);
    assertTrue(
        words.contains("right side: rear edge leads. Back up the front edge with scrap"), words);
  }

  @Test
  void section_slot_depthAndWoodLeftToScale() {
    var sheet = find(ALL_MACHINES, "dado:bottom");
    var words = CutSection.of(sheet.operation(), setup(sheet), LengthUnit.MILLIMETRE, 600).words();
    // Thinnest reading 17.66, 6 deep.
    assertTrue(words.contains("11.66 mm of the thinnest 17.66 mm is left"), words);
    assertTrue(words.contains("drawn 10 times"), words);
  }

  private static double fenceFace(Seen seen) {
    // The fence is the first hatched box: the lower edge of the first box drawn.
    return seen.boxes().get(0).bottom();
  }

  private static Picture draw(OperationSheet sheet, int width) {
    return MachinePlan.of(sheet.operation(), setup(sheet), LengthUnit.MILLIMETRE, width);
  }

  private static Setup setup(OperationSheet sheet) {
    return sheet.operation().setup().orElseThrow();
  }

  private static List<OperationSheet> cut() {
    var cut = new ArrayList<OperationSheet>();
    var high = PlansForTests.plan();
    for (var sheets :
        List.of(ALL_MACHINES, BY_HAND, high.sheets(), sheetsOf(LOW, ShopsForTests.TABLE))) {
      sheets.stream().filter(sheet -> sheet.operation().setup().isPresent()).forEach(cut::add);
    }
    return cut;
  }

  /** The same shop with only this router, and every aid. */
  private static List<OperationSheet> sheetsOf(CaseDesign design, Machine router) {
    var shop =
        new Shop(
            "one router",
            List.of(router, ShopsForTests.SAW, ShopsForTests.TRACK),
            List.of(
                ShopsForTests.TWELVE,
                ShopsForTests.SIXTEEN,
                ShopsForTests.RIP_BLADE,
                ShopsForTests.TRACK_BLADE),
            List.of(),
            List.of("straightedge", "clamps", "square-block"));
    return PlansForTests.planner().plan(design, shop, ProvenDepths.NONE).sheets();
  }

  private static OperationSheet find(List<OperationSheet> sheets, String id) {
    return sheets.stream().filter(sheet -> sheet.id().equals(id)).findFirst().orElseThrow();
  }

  private static CaseDesign withPlinth(CaseDesign design, long height) {
    return new CaseDesign(
        design.name(),
        design.unit(),
        design.outside(),
        design.sheets(),
        new Joinery(mm(6), mm(6), mm(6), mm(6), Length.ZERO),
        new Plinth(mm(height), mm(40)),
        design.shelves());
  }

  private static double mmOf(Length length) {
    return length.inMillimetres().doubleValue();
  }
}
