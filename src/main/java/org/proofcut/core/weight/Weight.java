package org.proofcut.core.weight;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.Collection;
import java.util.function.Function;
import org.proofcut.core.evidence.Amount;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.measure.Length;
import org.proofcut.core.part.Part;
import org.proofcut.core.stock.Material;
import org.proofcut.core.stock.Sheet;

/**
 * What a piece weighs, in kg: from its sizes as measured and the density of its material, which is
 * known only between two ends. Whoever lifts it reckons with the most; whoever trusts that it
 * stands, with the least.
 *
 * <p>For example, {@code Weight.of(Material.MDF, length, width, thickness, densities).most()}.
 *
 * @param least if the material is as light as it is sold, to a gram downward
 * @param most if it is as heavy, to a gram upward
 */
public record Weight(Worked<Amount> least, Worked<Amount> most) {

  private static final String UNIT = "kg";
  private static final int GRAMS = 3;

  /** Picometres three times over in a cubic metre: a one and thirty-six noughts. */
  private static final int CUBIC_METRE = 36;

  /** A piece with square edges. */
  public static Weight of(
      Material material,
      Worked<Length> length,
      Worked<Length> width,
      Worked<Length> thickness,
      Densities densities) {
    var density = densities.of(material);
    var volume = volume(length.value(), width.value(), thickness.value());
    return new Weight(
        worked("least weight", length, width, thickness, least(density), volume, RoundingMode.DOWN),
        worked("most weight", length, width, thickness, most(density), volume, RoundingMode.UP));
  }

  /** A part at its finished size, before anything is cut into it. */
  public static Weight of(Part part, Densities densities) {
    return of(
            part.sheet().material(),
            part.length(),
            part.width(),
            part.sheet().thickness().mean(),
            densities)
        .called("the " + part.name());
  }

  /** A whole sheet as it was bought. */
  public static Weight of(Sheet sheet, Densities densities) {
    return of(
            sheet.material(),
            Worked.entered("length of the sheet", sheet.length()),
            Worked.entered("width of the sheet", sheet.width()),
            sheet.thickness().mean(),
            densities)
        .called(sheet.name());
  }

  /** What several weigh together. */
  public static Weight sum(String of, Collection<Weight> weights) {
    return new Weight(
        sum("least weight of " + of, weights, Weight::least),
        sum("most weight of " + of, weights, Weight::most));
  }

  /** The same, said of this thing. */
  public Weight called(String thing) {
    return new Weight(least.as("least weight of " + thing), most.as("most weight of " + thing));
  }

  /** A body of any shape, from its volume in cubic picometres. */
  static Weight ofVolume(Worked<Density> density, BigInteger cubicPicometres, String of) {
    var volume = new BigDecimal(cubicPicometres);
    return new Weight(
        bulk("least weight of " + of, least(density), volume, RoundingMode.DOWN),
        bulk("most weight of " + of, most(density), volume, RoundingMode.UP));
  }

  private static Worked<Amount> bulk(
      String name, Worked<Amount> density, BigDecimal volume, RoundingMode rounding) {
    var shown = volume.movePointLeft(CUBIC_METRE - 3).setScale(3, rounding);
    return Worked.called(name)
        .by("volume × density, to a gram")
        .with(
            "volume",
            Worked.called("volume")
                .by("sum of the blocks that it is made of")
                .is(new Amount(shown, "dm³")))
        .with("density", density)
        .is(kilograms(volume, density, rounding));
  }

  private static Worked<Amount> worked(
      String name,
      Worked<Length> length,
      Worked<Length> width,
      Worked<Length> thickness,
      Worked<Amount> density,
      BigDecimal volume,
      RoundingMode rounding) {
    return Worked.called(name)
        .by("length × width × thickness × density, to a gram")
        .with("length", length)
        .with("width", width)
        .with("thickness", thickness)
        .with("density", density)
        .is(kilograms(volume, density, rounding));
  }

  private static Worked<Amount> sum(
      String name, Collection<Weight> weights, Function<Weight, Worked<Amount>> end) {
    var working = Worked.called(name).by("sum of all");
    var sum = BigDecimal.ZERO.setScale(GRAMS);
    for (var weight : weights) {
      working = working.with(end.apply(weight));
      sum = sum.add(end.apply(weight).value().value());
    }
    return working.is(new Amount(sum, UNIT));
  }

  private static Amount kilograms(
      BigDecimal volume, Worked<Amount> density, RoundingMode rounding) {
    return new Amount(
        volume
            .multiply(density.value().value())
            .movePointLeft(CUBIC_METRE)
            .setScale(GRAMS, rounding),
        UNIT);
  }

  private static BigDecimal volume(Length length, Length width, Length thickness) {
    return new BigDecimal(
        BigInteger.valueOf(length.picometres())
            .multiply(BigInteger.valueOf(width.picometres()))
            .multiply(BigInteger.valueOf(thickness.picometres())));
  }

  private static Worked<Amount> least(Worked<Density> density) {
    return perCubicMetre(density, density.value().leastKilogramsPerCubicMetre());
  }

  private static Worked<Amount> most(Worked<Density> density) {
    return perCubicMetre(density, density.value().mostKilogramsPerCubicMetre());
  }

  private static Worked<Amount> perCubicMetre(Worked<Density> density, int kilograms) {
    return Worked.given(
        density.name(), new Amount(BigDecimal.valueOf(kilograms), "kg/m³"), density.source());
  }
}
