package org.proofcut.core.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.proofcut.core.casework.CasesForTests.mm;

import org.junit.jupiter.api.Test;
import org.proofcut.core.casework.CasesForTests;
import org.proofcut.core.casework.Casework;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.LengthUnit;

class CaseOnFeetTest {

  private static Picture of(Length behind, Length high, LengthUnit unit, int width) {
    return CaseOnFeet.of(
        Casework.derive(CasesForTests.cupboard(), CasesForTests.CASE, CasesForTests.FIT),
        behind,
        high,
        unit,
        width);
  }

  @Test
  void case_isDrawnToScale() {
    var outline = Seen.in(of(mm(205), mm(430), LengthUnit.MILLIMETRE, 600)).boxes().get(0);
    assertEquals(400.0 / 900, outline.width() / outline.height(), 0.001);
  }

  @Test
  void words_sayWhereTheMiddleLies() {
    for (int width : new int[] {600, 350}) {
      var words = of(mm(205), mm(430), LengthUnit.MILLIMETRE, width).words();
      assertTrue(words.contains("205 mm behind the front edges, 430 mm above the floor"), words);
      assertTrue(words.contains("400 mm deep"), words);
    }
  }
}
