package org.proofcut.core.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.proofcut.core.geometry.Sizes.entered;
import static org.proofcut.core.geometry.Sizes.mm;

import java.util.List;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.LengthUnit;

class BladeAtTableTest {

  /** A 3-4-5 triangle: radius 5 in, 1 in above the table. */
  @Test
  void tenInchBlade_oneInchHigh_isExposedOverSixInches() {
    var blade = new BladeAtTable(entered("10 in"), entered("1 in"));
    assertEquals(Length.of("6 in"), blade.exposed().value());
    assertEquals(Length.of("4 in"), blade.arborBelow().value());
  }

  @Test
  void height_upToHalfTheBlade_isAllowed() {
    var half = new BladeAtTable(entered("250 mm"), entered("125 mm"));
    assertEquals(List.of(), half.problems(LengthUnit.MILLIMETRE));
    assertEquals(Length.of("250 mm"), half.exposed().value());
    var more = new BladeAtTable(entered("250 mm"), entered("125.1 mm"));
    assertEquals("height", more.problems(LengthUnit.MILLIMETRE).get(0).where());
    assertThrows(IllegalArgumentException.class, more::exposed);
    assertThrows(
        IllegalArgumentException.class, () -> new BladeAtTable(entered("250 mm"), entered("0 mm")));
  }

  /** Turns a tooth down from the top until it dips into the table, before and behind. */
  @Property
  void exposed_isAsLongAsATeethsWayAboveTheTable(
      @ForAll("diameters") Worked<Length> diameter,
      @ForAll @IntRange(min = 20, max = 1_000) int perMille) {
    var height = entered(new Length(diameter.value().half().picometres() / 1000 * perMille));
    var blade = new BladeAtTable(diameter, height);
    double radius = mm(diameter) / 2;
    double above = 0;
    double below = Math.PI / 2;
    for (int i = 0; i < 60; i++) {
      double turned = (above + below) / 2;
      if (radius - radius * Math.cos(turned) < mm(height)) {
        above = turned;
      } else {
        below = turned;
      }
    }
    double walked = 2 * radius * Math.sin(above);
    double found = mm(blade.exposed());
    assertTrue(found >= walked - 1e-6, found + " is less than " + walked);
    assertEquals(walked, found, 0.0101);
  }

  @Provide
  Arbitrary<Worked<Length>> diameters() {
    return Sizes.hundredths(10_000, 40_000);
  }
}
