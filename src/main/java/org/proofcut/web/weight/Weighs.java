package org.proofcut.web.weight;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.proofcut.core.evidence.Amount;
import org.proofcut.core.exposure.WeightUnit;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.LengthUnit;
import org.proofcut.core.measure.display.Scale;
import org.proofcut.core.weight.Weight;

/** How weights are written on these pages: in kg, and in lb too where the unit is the inch. */
record Weighs(LengthUnit unit) {

  private static final BigDecimal PER_METRE = BigDecimal.valueOf(1000);

  /** Upward to a tenth, as one who lifts it wants to know it. */
  String text(Amount weight) {
    return written(weight, RoundingMode.UP);
  }

  /** Downward to a tenth, as one who trusts in it wants to know it. */
  String atLeast(Amount weight) {
    return written(weight, RoundingMode.DOWN);
  }

  /** Both ends: {@code 18.2 to 29.1 kg}. */
  String band(Weight weight) {
    var least = weight.least().value();
    var most = weight.most().value();
    var kilograms = band(WeightUnit.KILOGRAM, least, most);
    return unit == LengthUnit.INCH
        ? kilograms + " (" + band(WeightUnit.POUND, least, most) + ")"
        : kilograms;
  }

  private static String band(WeightUnit in, Amount least, Amount most) {
    return in.amount(least, 1, RoundingMode.DOWN).value().toPlainString()
        + " to "
        + in.amount(most, 1, RoundingMode.UP);
  }

  private String written(Amount weight, RoundingMode rounding) {
    var kilograms = WeightUnit.KILOGRAM.amount(weight, 1, rounding).text();
    return unit == LengthUnit.INCH
        ? kilograms + " (" + WeightUnit.POUND.amount(weight, 1, rounding) + ")"
        : kilograms;
  }

  /** A turning of so many kg mm, as kg times a metre. */
  String turning(Amount turning) {
    return turning.value().divide(PER_METRE, 2, RoundingMode.FLOOR).toPlainString() + " kg m";
  }

  String length(Length length) {
    return Scale.rule(unit).show(length).text();
  }

  Scale scale() {
    return Scale.caliper(unit);
  }
}
