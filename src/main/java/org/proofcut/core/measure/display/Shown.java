package org.proofcut.core.measure.display;

import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.LengthUnit;

/**
 * A length as written for a person: {@code 101.9 mm}, {@code 23/32 in}, {@code 4 1/64 in}.
 *
 * @param sign empty or a minus sign
 * @param whole the whole number, or the whole decimal; {@code 0} before a lone fraction
 * @param numerator upper half of the fraction, 0 where there is none
 * @param denominator lower half of the fraction, 1 where there is none
 * @param unit the unit it is written in
 * @param leftover true length less the length shown; feeds nothing, is only told
 */
public record Shown(
    String sign, String whole, long numerator, long denominator, LengthUnit unit, Length leftover) {

  /** Whether a fraction has to be set beside the whole number. */
  public boolean hasFraction() {
    return numerator != 0;
  }

  /** Whether the whole number is left out, as in {@code 23/32}. */
  public boolean isLoneFraction() {
    return hasFraction() && whole.equals("0");
  }

  /** Whether what is shown is exactly the length. */
  public boolean isExact() {
    return leftover.isZero();
  }

  /** The number without its unit: {@code 101.9}, {@code 23/32}, {@code 4 1/64}. */
  public String number() {
    if (!hasFraction()) {
      return sign + whole;
    }
    var fraction = numerator + "/" + denominator;
    return isLoneFraction() ? sign + fraction : sign + whole + " " + fraction;
  }

  /** The number with its unit. */
  public String text() {
    return number() + " " + unit.symbol();
  }

  @Override
  public String toString() {
    return text();
  }
}
