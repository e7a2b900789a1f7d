package org.proofcut.core.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
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
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.measure.Angle;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.LengthUnit;

class BevelRipTest {

  @Test
  void fortyFive_takesTheThicknessOffTheFaceOnTheTable() {
    var rip = new BevelRip(degrees("45"), entered("18 mm"), entered("100 mm"), true);
    assertEquals(Length.of("82 mm"), rip.otherFace().value());
    assertEquals(Length.of("82 mm"), rip.fence().value());
    assertTrue(rip.goodFaceIsUp());
    // 18 · √2 = 25.4558…
    assertEquals(Length.of("25.46 mm"), rip.slope().value());
    assertEquals(Length.of("30.46 mm"), rip.bladeOut(entered("5 mm")).value());
  }

  @Test
  void goodFaceThatIsTheNarrowOne_isSetAtTheTable() {
    var rip = new BevelRip(degrees("45"), entered("18 mm"), entered("100 mm"), false);
    assertEquals(Length.of("118 mm"), rip.otherFace().value());
    assertEquals(Length.of("100 mm"), rip.fence().value());
    assertFalse(rip.goodFaceIsUp());
  }

  @Test
  void stripThatTheBevelTakesUp_isAProblem_andNeverAFigure() {
    var gone = new BevelRip(degrees("45"), entered("18 mm"), entered("18 mm"), true);
    var problem = gone.problems(LengthUnit.MILLIMETRE).get(0);
    assertEquals("good-face", problem.where());
    assertEquals("more than 18 mm", problem.allowed());
    assertThrows(IllegalArgumentException.class, gone::fence);
    var left = new BevelRip(degrees("45"), entered("18 mm"), entered("18.01 mm"), true);
    assertEquals(List.of(), left.problems(LengthUnit.MILLIMETRE));
    assertEquals(Length.of("0.01 mm"), left.fence().value());
  }

  @ParameterizedTest
  @ValueSource(strings = {"0", "90", "-1", "180"})
  void angleThatIsNoBevel_isAProblem_andNeverACut(String angle) {
    assertEquals("bevel", BevelRip.problems(Angle.parse(angle)).get(0).where());
    assertThrows(
        IllegalArgumentException.class,
        () -> new BevelRip(degrees(angle), entered("18 mm"), entered("100 mm"), true));
  }

  /** Walks up the tilted blade from the table to the upper face of the stock. */
  @Property
  void blade_fromTheFencesFigureOnTheTable_leavesTheGoodFaceAsWideAsAsked(
      @ForAll("bevels") Worked<Angle> bevel,
      @ForAll("thicknesses") Worked<Length> thickness,
      @ForAll("widths") Worked<Length> width,
      @ForAll boolean goodIsWide) {
    var rip = new BevelRip(bevel, thickness, width, goodIsWide);
    double along = mm(rip.slope());
    double up = along * Math.cos(radians(bevel));
    assertEquals(mm(thickness), up, 0.011);
    double wide = mm(rip.fence()) + along * Math.sin(radians(bevel));
    double good = goodIsWide ? wide : mm(rip.fence());
    assertTrue(good >= mm(width) - 1e-9, "never too narrow: " + good);
    assertEquals(mm(width), good, 0.021);
    assertEquals(goodIsWide ? mm(rip.fence()) : wide, mm(rip.otherFace()), 0.011);
  }

  @Provide
  Arbitrary<Worked<Angle>> bevels() {
    return Sizes.thousandths(1, 60_000);
  }

  @Provide
  Arbitrary<Worked<Length>> thicknesses() {
    return Sizes.hundredths(300, 6_000);
  }

  @Provide
  Arbitrary<Worked<Length>> widths() {
    return Sizes.hundredths(10_500, 60_000);
  }
}
