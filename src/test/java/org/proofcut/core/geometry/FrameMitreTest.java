package org.proofcut.core.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.proofcut.core.geometry.Sizes.degrees;
import static org.proofcut.core.geometry.Sizes.entered;
import static org.proofcut.core.geometry.Sizes.mm;
import static org.proofcut.core.geometry.Sizes.radians;

import java.util.List;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.measure.Angle;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.LengthUnit;
import org.proofcut.core.measure.Rounding;
import org.proofcut.core.measure.display.Degrees;

class FrameMitreTest {

  @ParameterizedTest
  @CsvSource({
    "3, 60.000°",
    "4, 45.000°",
    "5, 36.000°",
    "6, 30.000°",
    "7, 25.714°",
    "8, 22.500°",
    "12, 15.000°"
  })
  void mitre_ofEqualSides_sharesOneTurn(int sides, String mitre) {
    assertEquals(mitre, Degrees.text(Corner.ofSides(sides).mitre().value(), 3));
  }

  @Test
  void squareFrame_isLongerOutsideByTwiceItsWidth() {
    var piece = new FrameMitre(Corner.ofSides(4), entered("50 mm"));
    assertEquals(Length.of("50 mm"), piece.pointBeyond().value());
    assertEquals(Length.of("400 mm"), piece.longPoint(entered("300 mm")).value());
    assertEquals(Length.of("300 mm"), piece.shortPoint(entered("400 mm")).value());
    assertEquals("45°", piece.fromTheEdge().value().toString());
  }

  @Test
  void longPoint_showsItsWorking() {
    var piece = new FrameMitre(Corner.ofSides(8), entered("2 in"));
    var lines = piece.longPoint(entered("10 in")).lines();
    var last = lines.get(lines.size() - 1);
    assertEquals("inside + 2 × width × tan(mitre), to 0.01 mm upward", last.formula());
    assertTrue(lines.stream().anyMatch(line -> line.formula().startsWith("180° ÷ sides")));
    // 254 + 2 · 50.8 · 0.414214 = 296.0841…
    assertEquals(Length.of("296.09 mm"), last.value());
  }

  @Test
  void pieceThatTheMitresTakeUp_isAProblem_andNeverAFigure() {
    var piece = new FrameMitre(Corner.ofSides(4), entered("50 mm"));
    assertEquals(List.of(), piece.problems(Length.of("100.01 mm"), LengthUnit.MILLIMETRE));
    var problem = piece.problems(Length.of("100 mm"), LengthUnit.MILLIMETRE).get(0);
    assertEquals("outside", problem.where());
    assertEquals("The mitres at both ends take 100 mm: nothing is left of 100 mm", problem.what());
    assertThrows(IllegalArgumentException.class, () -> piece.shortPoint(entered("100 mm")));
  }

  @ParameterizedTest
  @ValueSource(strings = {"0", "180", "-90", "0.999", "179.001"})
  void angleThatIsNoCorner_isAProblem_andNeverACorner(String angle) {
    assertEquals("corner", Corner.problems(Angle.parse(angle)).get(0).where());
    assertThrows(IllegalArgumentException.class, () -> Corner.of(degrees(angle)));
  }

  @Test
  void anglesNextToTheEnds_areCorners() {
    assertEquals(List.of(), Corner.problems(Angle.parse("1")));
    assertEquals(List.of(), Corner.problems(Angle.parse("179")));
    assertThrows(IllegalArgumentException.class, () -> Corner.ofSides(2));
    assertThrows(
        IllegalArgumentException.class, () -> new FrameMitre(Corner.ofSides(4), entered("0 mm")));
  }

  /** Lays the pieces end to end, each turned on by the corner, and comes back to the start. */
  @Property
  void pieces_laidRound_closeTheFrame_andTheirEndsLieOnEachOther(
      @ForAll @IntRange(min = 3, max = 40) int sides,
      @ForAll("widths") Worked<Length> width,
      @ForAll("insides") Worked<Length> inside) {
    var piece = new FrameMitre(Corner.ofSides(sides), width);
    double outer = mm(piece.longPoint(inside));
    assertEquals(0, gap(sides, mm(width), outer, mm(inside)), 0.01 * sides);
    // A tenth too much shows, however many sides.
    assertTrue(gap(sides, mm(width), outer + 0.3, mm(inside)) > 0.1);
  }

  /** How far apart the short points of neighbours come to lie, and the last from the first. */
  private static double gap(int sides, double width, double outer, double inner) {
    double x = 0;
    double y = 0;
    double turned = 0;
    double worst = 0;
    double back = (outer - inner) / 2;
    double[] shortEnd = null;
    for (int i = 0; i <= sides; i++) {
      double cos = Math.cos(turned);
      double sin = Math.sin(turned);
      double[] start = {x + back * cos - width * sin, y + back * sin + width * cos};
      if (shortEnd != null) {
        worst = Math.max(worst, Math.hypot(start[0] - shortEnd[0], start[1] - shortEnd[1]));
      }
      shortEnd = new double[] {start[0] + inner * cos, start[1] + inner * sin};
      if (i < sides) {
        x += outer * cos;
        y += outer * sin;
        turned += 2 * Math.PI / sides;
      }
    }
    return Math.max(worst, Math.hypot(x, y));
  }

  /** Any corner: both cut faces are equally long, and the long points are never short. */
  @Property
  void corner_ofAnyAngle_isHalvedByTheCut(
      @ForAll("corners") Worked<Angle> corner, @ForAll("widths") Worked<Length> width) {
    var piece = new FrameMitre(Corner.of(corner), width);
    double wanted = mm(width) / Math.tan(radians(corner) / 2);
    double over = mm(piece.pointBeyond()) - wanted;
    assertTrue(over > -1e-4 && over < 0.0101, corner.value() + ": " + over);
    // The short side is never told shorter than it comes out.
    double outside = 2.5 * wanted + 1;
    double shorter =
        mm(piece.shortPoint(entered(Length.HUNDREDTH.times((long) (outside * 100)))))
            - Math.floor(outside * 100) / 100
            + 2 * wanted;
    assertTrue(shorter > -1e-4 && shorter < 0.0101, corner.value() + ": " + shorter);
    assertEquals(
        corner.value(),
        Angle.STRAIGHT.minus(
            piece.mitre().value().times(2).roundedTo(Angle.THOUSANDTH, Rounding.NEAREST)));
  }

  @Provide
  Arbitrary<Worked<Length>> widths() {
    return Sizes.hundredths(500, 20_000);
  }

  @Provide
  Arbitrary<Worked<Length>> insides() {
    return Sizes.hundredths(1_000, 200_000);
  }

  @Provide
  Arbitrary<Worked<Angle>> corners() {
    return Sizes.thousandths(10_000, 179_000);
  }
}
