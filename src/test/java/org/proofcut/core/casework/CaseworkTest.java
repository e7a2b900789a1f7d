package org.proofcut.core.casework;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.proofcut.core.casework.CasesForTests.CASE;
import static org.proofcut.core.casework.CasesForTests.FIT;
import static org.proofcut.core.casework.CasesForTests.cupboard;
import static org.proofcut.core.casework.CasesForTests.mm;

import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.proofcut.core.casework.CaseDesign.Joinery;
import org.proofcut.core.casework.CaseDesign.Plinth;
import org.proofcut.core.evidence.Problem;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.measure.Length;

/** Worked by hand from a birch sheet of mean 17.72 mm and a back of mean 5.63 mm, thickest 5.66. */
class CaseworkTest {

  private static final Case CUPBOARD = Casework.derive(cupboard(), CASE, FIT);

  @Nested
  class Sizes {

    @Test
    void sides_areAsHighAndDeepAsTheCase() {
      assertSize("left-side", "900 mm", "400 mm");
      assertSize("right-side", "900 mm", "400 mm");
    }

    @Test
    void top_reachesTheFloorsOfBothRabbets() {
      // 600 − 2 × (17.72 − 6)
      assertSize("top", "576.56 mm", "400 mm");
    }

    @Test
    void bottomAndShelf_endAtTheBack() {
      // 400 − 5.66
      assertSize("bottom", "576.56 mm", "394.34 mm");
      assertSize("shelf-1", "576.56 mm", "394.34 mm");
    }

    @Test
    void back_isSmallerThanItsOpeningByTheEase() {
      // 600 − 2 × 11.72 − 1; 900 − 17.78 + 6 − 100 − 1
      assertSize("back", "787.22 mm", "575.56 mm");
    }

    @Test
    void plinth_buttsBetweenTheSides() {
      // 600 − 2 × 17.72
      assertSize("plinth", "564.56 mm", "100 mm");
    }

    @Test
    void slot_isAimedAtTheMiddleOfTheReadingsAndARoomOnTop() {
      assertEquals(Length.of("17.87 mm"), CUPBOARD.housing("left-side:bottom").width().value());
    }

    @Test
    void provenDepth_movesTheFinalLength() {
      var deeper = Worked.measured("depth found", Length.of("6.1 mm"));
      var proven =
          new ProvenDepths(Map.of("left-side:bottom", deeper, "right-side:bottom", deeper));
      var again = Casework.derive(cupboard(), CASE, FIT, proven);
      assertEquals(Length.of("576.76 mm"), again.part("bottom").length().value());
      assertEquals(Length.of("576.56 mm"), again.part("top").length().value());
    }

    private void assertSize(String part, String length, String width) {
      assertEquals(Length.of(length), CUPBOARD.part(part).length().value(), part + " length");
      assertEquals(Length.of(width), CUPBOARD.part(part).width().value(), part + " width");
    }
  }

  @Nested
  class Working {

    @Test
    void length_opensToTheReadingsItStandsOn() {
      var lines = CUPBOARD.part("top").length().lines();
      var names = lines.stream().map(Worked::name).toList();
      assertTrue(names.contains("reading 2 of birch sheet"), names.toString());
      assertTrue(names.contains("mean thickness of the left side"), names.toString());
      assertEquals("length of the top", names.get(names.size() - 1));
    }
  }

  @Nested
  class Problems {

    @Test
    void soundDesign_hasNone() {
      assertEquals(List.of(), CUPBOARD.problems());
    }

    @Test
    void dado_overTwoThirds_stops() {
      // Two thirds of the thinnest reading, 17.66: 11.7733…
      assertStops("bottom-dado", depth("11.78 mm"));
      assertWarns("bottom-dado", depth("11.77 mm"));
    }

    @Test
    void dado_atAHalf_isFine_overIt_warns() {
      assertNone("bottom-dado", depth("8.83 mm"));
      assertWarns("bottom-dado", depth("8.84 mm"));
    }

    @Test
    void dado_underAQuarter_warns() {
      assertNone("bottom-dado", depth("4.415 mm"));
      assertWarns("bottom-dado", depth("4.41 mm"));
    }

    @Test
    void backRabbet_otherThanTopRabbet_warnsOfTheHole() {
      assertWarns(
          "back-rabbet",
          design -> with(design, new Joinery(mm(6), mm(6), mm(6), mm(7), Length.ZERO)));
    }

    @Test
    void shelf_inThePlaceOfTheBottom_stops() {
      assertStops("shelf-1", design -> withShelves(design, List.of(mm(110))));
    }

    @Test
    void plinth_tooLow_stops() {
      assertStops("plinth-height", design -> withPlinth(design, new Plinth(mm(19), mm(0))));
      assertNone("plinth-height", design -> withPlinth(design, new Plinth(mm(20), mm(0))));
    }

    @Test
    void unevenSheet_stops() {
      var uneven = CasesForTests.sheet("uneven", "17.5 mm", "17.71 mm", "17.6 mm", "17.6 mm");
      var found = problems(design -> withShelfSheet(design, uneven));
      assertTrue(
          found.stream().anyMatch(p -> p.where().equals("sheet:uneven") && p.stops()),
          found.toString());
      var justServes = CasesForTests.sheet("even", "17.5 mm", "17.70 mm", "17.6 mm", "17.6 mm");
      assertEquals(List.of(), problems(design -> withShelfSheet(design, justServes)));
    }

    @Test
    void threeReadings_warn() {
      var few = CasesForTests.sheet("few", "17.7 mm", "17.7 mm", "17.7 mm");
      var found = problems(design -> withShelfSheet(design, few));
      assertEquals(1, found.size(), found.toString());
      assertTrue(found.get(0).doThis().contains("1 more"), found.toString());
    }

    private void assertStops(String where, UnaryOperator<CaseDesign> change) {
      var found = at(where, change);
      assertTrue(found.stream().anyMatch(Problem::stops), found.toString());
    }

    private void assertWarns(String where, UnaryOperator<CaseDesign> change) {
      var found = at(where, change);
      assertTrue(found.stream().anyMatch(p -> !p.stops()), found.toString());
      assertTrue(found.stream().noneMatch(Problem::stops), found.toString());
    }

    private void assertNone(String where, UnaryOperator<CaseDesign> change) {
      assertEquals(List.of(), at(where, change));
    }

    private List<Problem> at(String where, UnaryOperator<CaseDesign> change) {
      return problems(change).stream().filter(p -> p.where().equals(where)).toList();
    }

    private List<Problem> problems(UnaryOperator<CaseDesign> change) {
      return Casework.derive(change.apply(cupboard()), CASE, FIT).problems();
    }

    /** The depth of the bottom's dado, with rabbets deep enough that no notch shows. */
    private UnaryOperator<CaseDesign> depth(String dado) {
      return design ->
          with(design, new Joinery(mm(11), Length.of(dado), mm(6), mm(12), Length.ZERO));
    }
  }

  private static CaseDesign with(CaseDesign d, Joinery joinery) {
    return new CaseDesign(
        d.name(), d.unit(), d.outside(), d.sheets(), joinery, d.plinth(), d.shelves());
  }

  private static CaseDesign withShelves(CaseDesign d, List<Length> shelves) {
    return new CaseDesign(
        d.name(), d.unit(), d.outside(), d.sheets(), d.joinery(), d.plinth(), shelves);
  }

  private static CaseDesign withPlinth(CaseDesign d, Plinth plinth) {
    return new CaseDesign(
        d.name(), d.unit(), d.outside(), d.sheets(), d.joinery(), plinth, d.shelves());
  }

  private static CaseDesign withShelfSheet(CaseDesign d, org.proofcut.core.stock.Sheet shelfSheet) {
    var s = d.sheets();
    return new CaseDesign(
        d.name(),
        d.unit(),
        d.outside(),
        new CaseDesign.Sheets(
            s.leftSide(), s.rightSide(), s.top(), s.bottom(), shelfSheet, s.back(), s.plinth()),
        d.joinery(),
        d.plinth(),
        d.shelves());
  }
}
