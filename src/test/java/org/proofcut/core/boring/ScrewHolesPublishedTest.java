package org.proofcut.core.boring;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.Rounding;

/** Screws and their holes, as printed. */
class ScrewHolesPublishedTest {

  private static final BoringLimits LIMITS = HolesForTests.LIMITS;

  /** ASME B18.6.1, diameters by gauge, found in a secondary copy, to 0.0005 in. */
  @ParameterizedTest
  @CsvSource({"4, .112, 2.84", "6, .138, 3.51", "8, .164, 4.17", "10, .190, 4.83"})
  void shank_byGauge(int gauge, String inches, String millimetres) {
    var shank = ScrewHoles.ofGauge(gauge).shank().value();
    assertEquals(Length.of("0" + inches + " in"), shank);
    assertEquals(
        Length.of(millimetres + " mm"), shank.roundedTo(Length.HUNDREDTH, Rounding.NEAREST));
  }

  /**
   * Table of pilots after the American Wood Council, found in a secondary copy: nearest 1/64 in.
   */
  @ParameterizedTest
  @CsvSource({"4, 3/64, 1/16", "6, 1/16, 5/64", "8, 5/64, 3/32", "10, 3/32, 7/64"})
  void pilot_ofSoftwoodAndHardwood(int gauge, String softwood, String hardwood) {
    var screw = ScrewHoles.ofGauge(gauge);
    var sixtyFourth = Length.ofInches(1, 64);
    assertEquals(
        Length.of(softwood + " in"),
        screw.pilot(ScrewHoles.Wood.SOFTWOOD).value().roundedTo(sixtyFourth, Rounding.NEAREST));
    assertEquals(
        Length.of(hardwood + " in"),
        screw.pilot(ScrewHoles.Wood.HARDWOOD).value().roundedTo(sixtyFourth, Rounding.NEAREST));
    // The printed bits are among those that we take.
    assertTrue(
        screw
            .pilotAccepted(ScrewHoles.Wood.SOFTWOOD, LIMITS)
            .contains(Length.of(softwood + " in")));
    assertTrue(
        screw
            .pilotAccepted(ScrewHoles.Wood.HARDWOOD, LIMITS)
            .contains(Length.of(hardwood + " in")));
  }

  /** An older table of clearance holes, found in a secondary copy. */
  @ParameterizedTest
  @CsvSource({"6, 9/64", "8, 11/64"})
  void clearance_asPrinted(int gauge, String inches) {
    assertTrue(
        ScrewHoles.ofGauge(gauge).clearanceAccepted(LIMITS).contains(Length.of(inches + " in")));
  }

  /** The same table gives 3/16 in for No. 10, less than its 0.190 in: there we ask for more. */
  @Test
  void clearance_printedNarrowerThanTheScrew_isNotTaken() {
    assertFalse(ScrewHoles.ofGauge(10).clearanceAccepted(LIMITS).contains(Length.of("3/16 in")));
  }
}
