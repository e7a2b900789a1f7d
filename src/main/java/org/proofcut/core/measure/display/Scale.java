package org.proofcut.core.measure.display;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.LengthUnit;
import org.proofcut.core.measure.Rounding;

/** The ways a length is written: on a tape or rule, or by caliper. */
public enum Scale {
  /** Millimetres to 0.1, as a good rule is read. */
  TENTH_MILLIMETRE(LengthUnit.MILLIMETRE, Length.ofMicrometres(100), 1),
  /** Millimetres to 0.01, as a caliper is read. */
  HUNDREDTH_MILLIMETRE(LengthUnit.MILLIMETRE, Length.ofMicrometres(10), 2),
  /** Inches in 64ths, reduced, as a rule is read. */
  SIXTY_FOURTH_INCH(LengthUnit.INCH, Length.ofInches(1, 64), 0),
  /** Inches to 0.001, as a caliper is read. */
  THOUSANDTH_INCH(LengthUnit.INCH, Length.ofInches(1, 1000), 3);

  private final LengthUnit unit;
  private final Length step;
  private final int decimals;

  Scale(LengthUnit unit, Length step, int decimals) {
    this.unit = unit;
    this.step = step;
    this.decimals = decimals;
  }

  /** The scale on which a rule or tape in this unit is read. */
  public static Scale rule(LengthUnit unit) {
    return unit == LengthUnit.INCH ? SIXTY_FOURTH_INCH : TENTH_MILLIMETRE;
  }

  /** The scale on which a caliper in this unit is read. */
  public static Scale caliper(LengthUnit unit) {
    return unit == LengthUnit.INCH ? THOUSANDTH_INCH : HUNDREDTH_MILLIMETRE;
  }

  public LengthUnit unit() {
    return unit;
  }

  /** The smallest difference this scale can show. */
  public Length step() {
    return step;
  }

  /** Writes the length to the nearest step and keeps what that left over. */
  public Shown show(Length length) {
    var nearest = length.roundedTo(step, Rounding.NEAREST);
    var leftover = length.minus(nearest);
    var sign = nearest.isNegative() ? "−" : "";
    var size = nearest.abs();
    if (this == SIXTY_FOURTH_INCH) {
      long steps = size.dividedBy(step, Rounding.NEAREST);
      long whole = steps / 64;
      long over = steps % 64;
      int shift = over == 0 ? 6 : Long.numberOfTrailingZeros(over);
      return new Shown(sign, Long.toString(whole), over >> shift, 64L >> shift, unit, leftover);
    }
    var amount =
        BigDecimal.valueOf(size.picometres()).divide(BigDecimal.valueOf(unit.picometres()));
    var text = amount.setScale(decimals, RoundingMode.UNNECESSARY).toPlainString();
    return new Shown(sign, trimmed(text), 0, 1, unit, leftover);
  }

  /** A tape is not read to the tenth when it stands on a whole millimetre; a caliper always is. */
  private String trimmed(String text) {
    return this == TENTH_MILLIMETRE && text.endsWith(".0")
        ? text.substring(0, text.length() - 2)
        : text;
  }
}
