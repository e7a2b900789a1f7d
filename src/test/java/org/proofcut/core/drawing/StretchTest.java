package org.proofcut.core.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.proofcut.core.casework.CasesForTests.mm;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.proofcut.core.measure.Band;

class StretchTest {

  @Test
  void at_withinAPiece_keepsItsScale() {
    var stretch = Stretch.of(mm(10), new Band(mm(0), mm(50)), new Band(mm(400), mm(480)));
    assertEquals(mm(50), stretch.at(mm(50)));
    assertEquals(mm(60), stretch.at(mm(400)));
    assertEquals(mm(40), stretch.at(mm(440)).minus(stretch.at(mm(400))));
    assertEquals(mm(140), stretch.extent());
    assertEquals(List.of(mm(50)), stretch.breaks());
  }

  @Test
  void at_whatIsLeftOut_liesInTheMiddleOfTheBreak() {
    var stretch = Stretch.of(mm(10), new Band(mm(0), mm(50)), new Band(mm(400), mm(480)));
    assertEquals(mm(55), stretch.at(mm(200)));
  }

  @Test
  void of_piecesTooCloseForABreak_areOne() {
    var stretch = Stretch.of(mm(10), new Band(mm(60), mm(90)), new Band(mm(0), mm(45)));
    assertFalse(stretch.isBroken());
    assertEquals(mm(90), stretch.extent());
  }
}
