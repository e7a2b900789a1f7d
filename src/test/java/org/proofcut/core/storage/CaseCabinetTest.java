package org.proofcut.core.storage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.proofcut.core.casework.Case;
import org.proofcut.core.casework.CasesForTests;
import org.proofcut.core.casework.Casework;
import org.proofcut.core.measure.Length;
import org.proofcut.core.storage.Fitting.Shelf;

class CaseCabinetTest {

  /** Worked out from the design by hand: outside less what the parts take. */
  @Test
  void inside_isWhatThePartsLeave() {
    var design = CasesForTests.cupboard();
    var made = Casework.derive(design, CasesForTests.CASE, CasesForTests.FIT);
    var cabinet = CaseCabinet.of(made, "job", "cupboard", 15_000);
    var left = thickness(made, "left-side");
    var right = thickness(made, "right-side");
    near(design.outside().width().minus(left).minus(right), cabinet.inside().wide());
    near(design.plinth().height().plus(thickness(made, "bottom")), cabinet.raised());
    near(
        design.outside().height().minus(thickness(made, "top")).minus(cabinet.raised()),
        cabinet.inside().high());
    near(
        design.outside().depth().minus(design.joinery().backSetIn()).minus(thickness(made, "back")),
        cabinet.inside().deep());
  }

  @Test
  void shelves_lieWhereTheyAreDesigned() {
    var design = CasesForTests.cupboard();
    var made = Casework.derive(design, CasesForTests.CASE, CasesForTests.FIT);
    var cabinet = CaseCabinet.of(made, "job", "cupboard", 15_000);
    var shelves = cabinet.fittings(Shelf.class).toList();
    assertEquals(design.shelves().size(), shelves.size());
    assertTrue(shelves.size() > 0, "no shelf");
    for (int i = 0; i < shelves.size(); i++) {
      near(
          design.shelves().get(i).plus(thickness(made, "shelf-" + (i + 1))),
          shelves.get(i).top().plus(cabinet.raised()));
      assertTrue(shelves.get(i).deep().isAtMost(cabinet.inside().deep()));
      assertTrue(shelves.get(i).deep().isGreaterThan(Length.ZERO));
    }
  }

  private static Length thickness(Case made, String part) {
    return made.part(part).sheet().thickness().mean().value();
  }

  /** Tongues are let into their housings with a little room, so that parts seat by tenths. */
  private static void near(Length expected, Length found) {
    assertTrue(
        expected.minus(found).abs().isAtMost(Length.of("0.5 mm")), expected + ", not " + found);
  }
}
