package org.proofcut.core.casework;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.proofcut.core.evidence.Citation;
import org.proofcut.core.measure.Length;

class CaseFigureTest {

  private static final Case CUPBOARD =
      Casework.derive(CasesForTests.cupboard(), CasesForTests.CASE, CasesForTests.FIT);

  @Test
  void outside_wholeCase_isWhatWasEntered() {
    assertEquals(
        List.of("Width 600 mm", "Height 900 mm", "Depth 400 mm"),
        CaseFigure.outside(CUPBOARD).stream().map(one -> one.name() + " " + value(one)).toList());
  }

  @Test
  void outside_width_isAddedUpFromThePartsAsCut() {
    // 17.72 mean of the sides, 6 of it in the dado: 576.56 + 2 × 11.72.
    var width = CaseFigure.outside(CUPBOARD).get(0).value();
    assertEquals(
        List.of("576.56 mm", "11.72 mm", "11.72 mm"),
        width.inputs().stream().map(input -> input.value().value().toString()).toList());
  }

  @Test
  void screwLines_middleOfEachHousing_fromItsReferenceEdge() {
    // Slots: 17.72 between the ends 17.66 and 17.78, and 0.15 room; the rabbet: thickest 17.78.
    assertEquals(
        List.of(
            "bottom, lower end: 108.935 mm",
            "shelf 1, lower end: 488.935 mm",
            "top, top end: 8.89 mm"),
        CaseFigure.screwLines(CUPBOARD).stream()
            .map(
                one ->
                    one.name().replace("Screw line, ", "")
                        + one.from().replaceAll(".*from the", ",")
                        + ": "
                        + value(one))
            .toList());
    CaseFigure.screwLines(CUPBOARD)
        .forEach(one -> assertEquals(Citation.COMMON_PRACTICE, one.value().source()));
  }

  private static Length value(CaseFigure one) {
    return one.value().value();
  }
}
