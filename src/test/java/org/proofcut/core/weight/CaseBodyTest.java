package org.proofcut.core.weight;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.proofcut.core.casework.CasesForTests.mm;

import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.proofcut.core.casework.Case;
import org.proofcut.core.casework.CaseDesign;
import org.proofcut.core.casework.CaseDesign.Outside;
import org.proofcut.core.casework.CaseDesign.Plinth;
import org.proofcut.core.casework.CasesForTests;
import org.proofcut.core.casework.Casework;

class CaseBodyTest {

  /** As dense as water may be, so that a kilogram is a litre of wood. */
  private static final Densities LITRES = DensitiesForTests.alike(1000, 1000);

  /**
   * The cupboard as rooms in a block: a point is wood unless it lies in a room. It knows parts,
   * housings and where they are seated not at all; four million points are thrown into it.
   */
  @Test
  void of_cupboard_isWhatPointsThrownIntoItSay() {
    var random = new Random(20_261_126);
    int points = 4_000_000;
    double wood = 0;
    double deep = 0;
    double high = 0;
    double t = 17.72;
    double back = 400 - 5.63;
    for (int i = 0; i < points; i++) {
      double x = random.nextDouble() * 600;
      double y = random.nextDouble() * 400;
      double z = random.nextDouble() * 900;
      boolean between = x > t && x < 600 - t;
      boolean under = between && z < 100 && !(y > 40 && y < 40 + t);
      boolean lower = between && y < back && z > 100 + t && z < 480;
      boolean upper = between && y < back && z > 480 + t && z < 900 - t;
      if (!under && !lower && !upper) {
        wood++;
        deep += y;
        high += z;
      }
    }
    var body = CaseBody.of(cupboard(900, 400), LITRES);
    var litres = wood / points * 600 * 400 * 900 / 1_000_000;
    // What is left open behind the back's edges, its ease and its rabbet, is under a hundredth.
    assertEquals(litres, body.weight().most().value().value().doubleValue(), litres * 0.01);
    assertEquals(deep / wood, body.behind().value().inMillimetres().doubleValue(), 2);
    assertEquals(high / wood, body.high().value().inMillimetres().doubleValue(), 3);
  }

  /** Housings are cut out of parts that weigh more before. */
  @Test
  void of_partsWithHousings_weighLessThanUncut() {
    var made = cupboard(900, 400);
    for (var piece : CaseBody.of(made, LITRES).pieces()) {
      var uncut = Weight.of(piece.part(), LITRES).most().value().value();
      var cut = piece.weight().most().value().value();
      boolean housed = !made.housingsIn(piece.part().id()).isEmpty();
      assertEquals(housed ? 1 : 0, Integer.signum(uncut.compareTo(cut)), piece.part().name());
    }
  }

  @Property(tries = 200)
  void middle_liesWithinTheCase(
      @ForAll @IntRange(min = 500, max = 2000) int high,
      @ForAll @IntRange(min = 200, max = 900) int deep) {
    var body = CaseBody.of(cupboard(high, deep), DensitiesForTests.ALIKE);
    assertTrue(body.behind().value().isPositive() && body.behind().value().isLessThan(mm(deep)));
    assertTrue(body.high().value().isPositive() && body.high().value().isLessThan(mm(high)));
    // The back is behind everything: the middle lies in the rear half.
    assertTrue(body.behind().value().times(2).isAtLeast(mm(deep).minus(mm(1))));
  }

  static Case cupboard(int high, int deep) {
    var d = CasesForTests.cupboard();
    return Casework.derive(
        new CaseDesign(
            d.name(),
            d.unit(),
            new Outside(mm(600), mm(high), mm(deep)),
            d.sheets(),
            d.joinery(),
            new Plinth(mm(100), mm(40)),
            List.of(mm(high / 2 + 30))),
        CasesForTests.CASE,
        CasesForTests.FIT);
  }
}
