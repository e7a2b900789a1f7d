package org.proofcut.core.exposure;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import org.proofcut.core.evidence.Amount;
import org.proofcut.core.evidence.Citation;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.measure.Length;

/**
 * The three sizes by which a published standard says whether a chest or cupboard for clothes must
 * pass its tests of tipping. A comparison only: other cabinets fall outside it, and tip all the
 * same.
 *
 * @param height over everything
 * @param weight empty
 * @param volume closed space that is counted
 */
public record ClothingStorage(Worked<Length> height, Worked<Amount> weight, Worked<Amount> volume) {

  /** Where the three sizes stand. */
  public static final Citation SCOPE =
      new Citation(
          Citation.Kind.STANDARD,
          "ASTM F2057-23, clothing storage units, which 16 CFR 1261 makes law in the US",
          "scope");

  private static final Citation COUNTED =
      new Citation(
          Citation.Kind.HANDBOOK,
          "guidance of the CPSC on clothing storage units, 16 CFR 1261",
          "volume of closed space without drawers");

  private static final Worked<Length> LEAST_HEIGHT =
      Worked.given("least height", Length.ofInches(27, 1), SCOPE);
  private static final Worked<Amount> LEAST_WEIGHT =
      Worked.given("least weight", new Amount(BigDecimal.valueOf(30), "lb"), SCOPE);

  /** 3.2 cubic feet; a foot is 304.8 mm. */
  private static final BigDecimal LEAST_VOLUME =
      new BigDecimal("3.048").pow(3).multiply(new BigDecimal("3.2"));

  /** Closed space that is no drawer counts by half: {@code ½ · width · height · depth}, in dm³. */
  public static Worked<Amount> counted(
      Worked<Length> width, Worked<Length> height, Worked<Length> depth) {
    var cubicMillimetres =
        width
            .value()
            .inMillimetres()
            .multiply(height.value().inMillimetres())
            .multiply(depth.value().inMillimetres());
    return Worked.called("closed space that counts")
        .by("½ × width × height × depth, to 0.1 dm³ upward")
        .with("width", width)
        .with("height", height)
        .with("depth", depth)
        .from(COUNTED)
        .is(
            new Amount(
                cubicMillimetres
                    .movePointLeft(6)
                    .multiply(new BigDecimal("0.5"))
                    .setScale(1, RoundingMode.CEILING),
                "dm³"));
  }

  /** Whether it is as large as those that the standard tests: in all three. */
  public boolean isAsLarge() {
    return isHigh() && isHeavy() && isRoomy();
  }

  public boolean isHigh() {
    return height.value().isAtLeast(LEAST_HEIGHT.value());
  }

  public boolean isHeavy() {
    return WeightUnit.POUND.of(weight.value()).compareTo(LEAST_WEIGHT.value().value()) >= 0;
  }

  public boolean isRoomy() {
    return volume.value().value().compareTo(LEAST_VOLUME) >= 0;
  }

  /** The limits it is held against, as given. */
  public static List<Worked<?>> limits() {
    return List.of(
        LEAST_HEIGHT,
        LEAST_WEIGHT,
        Worked.given("least closed space", new Amount(new BigDecimal("3.2"), "cubic feet"), SCOPE));
  }
}
