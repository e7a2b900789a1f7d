package org.proofcut.core.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.proofcut.core.geometry.Sizes.degrees;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.proofcut.core.measure.display.Degrees;

/** Figures that are printed elsewhere, each with how it is known. */
class GeometryPublishedTest {

  /**
   * Mitre and bevel for mouldings between wall and ceiling in a square corner, by their spring
   * angle. Tables beside compound mitre saws print 31.62 and 33.86 for 38°, 35.26 and 30.00 for
   * 45°: from memory.
   */
  @ParameterizedTest
  @CsvSource({"38, 31.62°, 33.86°", "45, 35.26°, 30.00°"})
  void crownMoulding_inASquareCorner(String spring, String mitre, String bevel) {
    var cut = new CompoundMitre(Corner.of(degrees("90")), degrees(spring));
    assertEquals(mitre, Degrees.text(cut.mitre().value(), 2));
    assertEquals(bevel, Degrees.text(cut.bevel().value(), 2));
  }

  /** Mitres of regular frames as school and shop tables print them, from memory. */
  @ParameterizedTest
  @CsvSource({"3, 60.0°", "4, 45.0°", "5, 36.0°", "6, 30.0°", "8, 22.5°", "10, 18.0°", "12, 15.0°"})
  void frame_ofEqualSides(int sides, String mitre) {
    assertEquals(mitre, Degrees.text(Corner.ofSides(sides).mitre().value(), 1));
  }
}
