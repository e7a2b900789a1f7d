package org.proofcut.core.casework;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.proofcut.core.casework.CasesForTests.CASE;
import static org.proofcut.core.casework.CasesForTests.FIT;
import static org.proofcut.core.casework.CasesForTests.mm;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.proofcut.core.casework.CaseDesign.Joinery;
import org.proofcut.core.casework.CaseDesign.Outside;
import org.proofcut.core.casework.CaseDesign.Plinth;
import org.proofcut.core.casework.CaseDesign.Sheets;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.LengthUnit;
import org.proofcut.core.measure.Rounding;
import org.proofcut.core.part.Part;
import org.proofcut.core.readings.Readings;
import org.proofcut.core.stock.Material;
import org.proofcut.core.stock.Sheet;

class SpaceCheckTest {

  /** Room that any accepted fit may leave. */
  private static final Length CLEARANCE = FIT.mostRoom().value();

  @Property(tries = 10_000, edgeCases = EdgeCasesMode.NONE)
  void anySoundDesign_goesTogetherExactly(@ForAll("soundDesigns") CaseDesign design) {
    var parts = Casework.derive(design, CASE, FIT);
    assertTrue(parts.problems().stream().noneMatch(p -> p.stops()), parts.problems().toString());
    var found = assemble(parts);
    assertEquals(List.of(), found.faults());
    assertEquals(design.outside(), new Outside(found.width(), found.height(), found.depth()));
    assertEquals(
        List.of(found.width(), found.height(), found.depth()),
        CaseFigure.outside(parts).stream().map(figure -> figure.value().value()).toList());
  }

  @Property(tries = 2_000, edgeCases = EdgeCasesMode.NONE)
  void rabbetsOfUnequalDepth_leaveAHoleThatTheDesignWarnsOf(
      @ForAll("soundDesigns") CaseDesign design, @ForAll boolean deeper) {
    var j = design.joinery();
    // More than the clearance apart, else the corner counts as closed.
    var back = deeper ? j.backRabbet().plus(mm(2)) : j.backRabbet().minus(mm(2));
    var flush = Length.ZERO;
    var uneven = with(design, new Joinery(j.topRabbet(), mm(4), mm(4), back, flush));
    var parts = Casework.derive(uneven, CASE, FIT);
    assertFalse(assemble(parts).faults().isEmpty());
    assertTrue(parts.problems().stream().anyMatch(p -> p.where().equals("back-rabbet")));
  }

  @Test
  void dadoDeeperThanTheBackRabbet_leavesANotch() {
    var d = CasesForTests.cupboard();
    var notched = with(d, new Joinery(mm(6), mm(8), mm(6), mm(6), Length.ZERO));
    assertFalse(assemble(Casework.derive(notched, CASE, FIT)).faults().isEmpty());
  }

  /** A check that can't fail proves nothing: every part made 1 mm wrong either way is caught. */
  @Test
  void anyPartOfTheWrongSize_isCaught() {
    var sound = Casework.derive(CasesForTests.cupboard(), CASE, FIT);
    assertEquals(List.of(), assemble(sound).faults());
    for (var part : sound.parts()) {
      for (long by : new long[] {-2, 2}) {
        assertCaught(sound, part, p -> resized(p, mm(by), Length.ZERO));
        assertCaught(sound, part, p -> resized(p, Length.ZERO, mm(by)));
      }
    }
  }

  private void assertCaught(Case sound, Part wrong, UnaryOperator<Part> change) {
    var parts = new ArrayList<>(sound.parts());
    parts.replaceAll(part -> part.id().equals(wrong.id()) ? change.apply(part) : part);
    var spoilt = new Case(sound.design(), parts, sound.housings(), List.of());
    var found = assemble(spoilt);
    var size = new Outside(found.width(), found.height(), found.depth());
    assertTrue(
        !found.faults().isEmpty() || !size.equals(sound.design().outside()),
        wrong.id() + " of the wrong size went unseen");
  }

  private static Part resized(Part part, Length longer, Length wider) {
    return new Part(
        part.id(),
        part.name(),
        part.role(),
        part.sheet(),
        Worked.entered("length", part.length().value().plus(longer)),
        Worked.entered("width", part.width().value().plus(wider)));
  }

  private static SpaceCheck.Found assemble(Case parts) {
    return SpaceCheck.assemble(parts, CLEARANCE, CASE.backEase().value());
  }

  @Provide
  Arbitrary<CaseDesign> soundDesigns() {
    var sheets = Arbitraries.longs().between(14_000, 25_000).flatMap(SpaceCheckTest::sheet);
    var backs = Arbitraries.longs().between(3_000, 9_000).flatMap(SpaceCheckTest::sheet);
    var outside =
        Combinators.combine(micrometres(250, 2200), micrometres(400, 2400), micrometres(150, 1100))
            .as(Outside::new);
    var allSheets =
        Combinators.combine(sheets, sheets, sheets, sheets, sheets, backs, sheets).as(Sheets::new);
    var thousandths = Arbitraries.integers().between(0, 1000);
    return Combinators.combine(outside, allSheets, thousandths.list().ofSize(8))
        .as(SpaceCheckTest::design);
  }

  /** Depths and heights as shares of what the sheets and the height allow. */
  private static CaseDesign design(Outside outside, Sheets sheets, List<Integer> shares) {
    var thinnest =
        List.of(sheets.leftSide(), sheets.rightSide(), sheets.top()).stream()
            .map(sheet -> sheet.thickness().ends().least())
            .min(Length::compareTo)
            .orElseThrow();
    long deepest = thinnest.times(2).dividedBy(mm(3), Rounding.DOWN);
    var rabbet = share(mm(6), mm(deepest), shares.get(0));
    var bottomDado = share(mm(3), rabbet, shares.get(1));
    var shelfDado = share(mm(3), rabbet, shares.get(2));
    var setIn = share(Length.ZERO, mm(10), shares.get(3));
    var plinth = share(mm(40), mm(150), shares.get(4));
    var setBack = share(Length.ZERO, mm(80), shares.get(5));
    var room = outside.height().minus(plinth).minus(mm(120));
    var shelves = new ArrayList<Length>();
    int count = shares.get(6) % 4;
    for (int i = 1; i <= count && room.isGreaterThan(mm(80L * (count + 1))); i++) {
      var step = new Length(room.picometres() / (count + 1));
      shelves.add(plinth.plus(step.times(i)));
    }
    return new CaseDesign(
        "any",
        LengthUnit.MILLIMETRE,
        outside,
        sheets,
        new Joinery(rabbet, bottomDado, shelfDado, rabbet, setIn),
        new Plinth(plinth, setBack),
        shelves);
  }

  private static Length share(Length least, Length most, int thousandths) {
    var extent = most.minus(least).picometres() / 1000 * thousandths;
    return least.plus(new Length(extent));
  }

  private static Arbitrary<Length> micrometres(int fromMm, int toMm) {
    return Arbitraries.longs().between(fromMm * 1000L, toMm * 1000L).map(Length::ofMicrometres);
  }

  /** A sheet whose four readings lie within what a joint can take. */
  private static Arbitrary<Sheet> sheet(long aboutMicrometres) {
    return Arbitraries.longs()
        .between(0, 200)
        .list()
        .ofSize(4)
        .map(
            offs ->
                new Sheet(
                    "s" + aboutMicrometres,
                    "sheet",
                    Material.PLYWOOD,
                    mm(2500),
                    mm(2500),
                    new Readings(
                        "sheet",
                        offs.stream()
                            .map(off -> Length.ofMicrometres(aboutMicrometres + off))
                            .toList())));
  }

  private static CaseDesign with(CaseDesign d, Joinery joinery) {
    return new CaseDesign(
        d.name(), d.unit(), d.outside(), d.sheets(), joinery, d.plinth(), d.shelves());
  }
}
