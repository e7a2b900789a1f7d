package org.proofcut.core.stock;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.proofcut.core.evidence.Amount;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.LengthUnit;

/**
 * How heavy each material is, in kilograms a cubic metre. From {@code content/stock/limits}: at the
 * heavy end of what is sold, for whoever lifts it is hurt by what is heavier than told.
 */
public record Densities(
    Worked<Integer> plywoodDensity,
    Worked<Integer> mdfDensity,
    Worked<Integer> particleboardDensity,
    Worked<Integer> hardboardDensity,
    Worked<Integer> hardwoodDensity,
    Worked<Integer> softwoodDensity) {

  private static final int PICOMETRES_OF_A_METRE = 12;
  private static final BigDecimal KILOGRAMS_OF_A_POUND = new BigDecimal("0.45359237");

  /** How heavy a material is. */
  public Worked<Integer> of(Material material) {
    return switch (material) {
      case PLYWOOD -> plywoodDensity;
      case MDF -> mdfDensity;
      case PARTICLEBOARD -> particleboardDensity;
      case HARDBOARD -> hardboardDensity;
      case HARDWOOD -> hardwoodDensity;
      case SOFTWOOD -> softwoodDensity;
    };
  }

  /** What a flat piece weighs, in kilograms or pounds, rounded up to a tenth. */
  public Worked<Amount> weight(
      Material material,
      Worked<Length> length,
      Worked<Length> width,
      Worked<Length> thickness,
      LengthUnit unit) {
    var density = of(material);
    var kilograms =
        metres(length)
            .multiply(metres(width))
            .multiply(metres(thickness))
            .multiply(BigDecimal.valueOf(density.value()));
    boolean inPounds = unit == LengthUnit.INCH;
    var working =
        Worked.called("weight, rounded up to a tenth")
            .by(
                "length · width · thickness · density in kg a cubic metre"
                    + (inPounds ? " ÷ 0.45359237 kg a pound" : ""))
            .with("length", length)
            .with("width", width)
            .with("thickness", thickness)
            .with("density", density);
    return working.is(
        inPounds
            ? new Amount(kilograms.divide(KILOGRAMS_OF_A_POUND, 1, RoundingMode.CEILING), "lb")
            : new Amount(kilograms.setScale(1, RoundingMode.CEILING), "kg"));
  }

  private static BigDecimal metres(Worked<Length> length) {
    return BigDecimal.valueOf(length.value().picometres(), PICOMETRES_OF_A_METRE);
  }
}
