package org.proofcut.core.intake;

import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.LengthUnit;
import org.proofcut.core.measure.display.Scale;

/** A length as it would be typed: exactly, with its unit. */
public final class LengthTyped {

  private LengthTyped() {}

  /**
   * In inches where that is a whole number of 64ths ({@code 17 3/4 in}), else in millimetres.
   *
   * @param unit that is worked in
   */
  public static String of(Length length, LengthUnit unit) {
    var inSixtyFourths = Scale.rule(LengthUnit.INCH).show(length);
    return unit == LengthUnit.INCH && inSixtyFourths.isExact()
        ? inSixtyFourths.text()
        : length.toString();
  }
}
