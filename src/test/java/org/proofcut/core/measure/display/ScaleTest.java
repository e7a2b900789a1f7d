package org.proofcut.core.measure.display;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.LengthUnit;

class ScaleTest {

  @ParameterizedTest
  @CsvSource({
    "TENTH_MILLIMETRE,     600 mm,      600 mm,      0 mm",
    "TENTH_MILLIMETRE,     101.94 mm,   101.9 mm,    0.04 mm",
    "TENTH_MILLIMETRE,     101.96 mm,   102 mm,      -0.04 mm",
    "TENTH_MILLIMETRE,     -5.25 mm,    −5.2 mm,     -0.05 mm",
    "TENTH_MILLIMETRE,     -0.04 mm,    0 mm,        -0.04 mm",
    "HUNDREDTH_MILLIMETRE, 18 mm,       18.00 mm,    0 mm",
    "HUNDREDTH_MILLIMETRE, 18.25625 mm, 18.26 mm,    -0.00375 mm",
    "SIXTY_FOURTH_INCH,    23/32 in,    23/32 in,    0 mm",
    "SIXTY_FOURTH_INCH,    4 1/64 in,   4 1/64 in,   0 mm",
    "SIXTY_FOURTH_INCH,    63/64 in,    63/64 in,    0 mm",
    "SIXTY_FOURTH_INCH,    127/128 in,  1 in,        -0.1984375 mm",
    "SIXTY_FOURTH_INCH,    0 in,        0 in,        0 mm",
    "SIXTY_FOURTH_INCH,    -1 1/2 in,   −1 1/2 in,   0 mm",
    "SIXTY_FOURTH_INCH,    18 mm,       45/64 in,    0.140625 mm",
    "THOUSANDTH_INCH,      0.705 in,    0.705 in,    0 mm",
    "THOUSANDTH_INCH,      23/32 in,    0.719 in,    -0.00635 mm"
  })
  void show_onEachScale_writesTheNearestStepAndKeepsTheRest(
      Scale scale, String length, String text, String leftover) {
    var shown = scale.show(Length.of(length));
    assertEquals(text, shown.text());
    assertEquals(text, shown.toString());
    assertEquals(leftover, shown.leftover().toString());
    assertEquals(leftover.equals("0 mm"), shown.isExact());
  }

  @Test
  void show_fractions_tellHowTheyAreSet() {
    var lone = Scale.SIXTY_FOURTH_INCH.show(Length.of("23/32 in"));
    assertTrue(lone.hasFraction() && lone.isLoneFraction());
    assertEquals(23, lone.numerator());
    assertEquals(32, lone.denominator());
    var mixed = Scale.SIXTY_FOURTH_INCH.show(Length.of("1 1/2 in"));
    assertTrue(mixed.hasFraction());
    assertFalse(mixed.isLoneFraction());
    assertFalse(Scale.SIXTY_FOURTH_INCH.show(Length.of("2 in")).hasFraction());
  }

  @Test
  void rule_and_caliper_followTheUnit() {
    assertEquals(Scale.TENTH_MILLIMETRE, Scale.rule(LengthUnit.MILLIMETRE));
    assertEquals(Scale.SIXTY_FOURTH_INCH, Scale.rule(LengthUnit.INCH));
    assertEquals(Scale.HUNDREDTH_MILLIMETRE, Scale.caliper(LengthUnit.MILLIMETRE));
    assertEquals(Scale.THOUSANDTH_INCH, Scale.caliper(LengthUnit.INCH));
  }
}
