package org.proofcut.core.boring;

import java.math.BigDecimal;
import java.util.Map;
import org.proofcut.core.evidence.Citation;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.measure.Band;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.LengthUnit;
import org.proofcut.core.measure.Rounding;

/**
 * The holes that a wood screw wants: its shank goes freely through the part under its head, its
 * thread cuts into the walls of a pilot.
 *
 * @param shank diameter of the screw over its thread
 * @param root diameter between the threads
 */
public record ScrewHoles(Worked<Length> shank, Worked<Length> root) {

  private static final Citation GAUGE =
      new Citation(Citation.Kind.STANDARD, "ASME B18.6.1, formula as seen in a secondary copy", "");

  private static final Citation ROOTS =
      new Citation(
          Citation.Kind.HANDBOOK,
          "table of pilot holes after the American Wood Council, seen in a secondary copy",
          "");

  private static final Citation PILOTS =
      new Citation(
          Citation.Kind.HANDBOOK,
          "lead holes of 70 and 90 per cent of the root, seen in a secondary copy",
          "");

  /** In ten thousandths of an inch. Larger gauges are not in the table. */
  private static final Map<Integer, Integer> ROOT_BY_GAUGE =
      Map.of(4, 750, 6, 940, 8, 1120, 10, 1300);

  /** What the screw goes into. */
  public enum Wood {
    SOFTWOOD("0.7", PILOTS),
    HARDWOOD("0.9", PILOTS),
    /** Its edge splits along the glue. */
    PANEL("1", Citation.COMMON_PRACTICE);

    private final BigDecimal ofRoot;
    private final Citation source;

    Wood(String ofRoot, Citation source) {
      this.ofRoot = new BigDecimal(ofRoot);
      this.source = source;
    }
  }

  public ScrewHoles {
    root.value().requirePositive(root.name());
    if (!root.value().isLessThan(shank.value())) {
      throw new IllegalArgumentException("root " + root.value() + ", shank " + shank.value());
    }
  }

  /**
   * A screw by its gauge: {@code 0.060 + 0.013 · gauge} in.
   *
   * @param gauge 4, 6, 8 or 10
   */
  public static ScrewHoles ofGauge(int gauge) {
    var number = Worked.given("gauge of the screw", gauge, Citation.ENTERED);
    var shank =
        Worked.called("diameter of the screw")
            .by("0.060 in + 0.013 in × gauge")
            .with("gauge", number)
            .from(GAUGE)
            .is(Length.of(BigDecimal.valueOf(60 + 13L * gauge, 3), LengthUnit.INCH));
    if (!ROOT_BY_GAUGE.containsKey(gauge)) {
      throw new IllegalArgumentException("no root of a gauge " + gauge);
    }
    var root = Length.of(BigDecimal.valueOf(ROOT_BY_GAUGE.get(gauge), 4), LengthUnit.INCH);
    return new ScrewHoles(shank, Worked.given("root of a No. " + gauge + " screw", root, ROOTS));
  }

  /** The hole that the shank goes through freely. */
  public Worked<Length> clearance(BoringLimits limits) {
    return Worked.called("clearance hole")
        .by("screw + play")
        .with("screw", shank)
        .with("play", limits.screwPlay())
        .from(limits.screwPlay().source())
        .is(shank.value().plus(limits.screwPlay().value()));
  }

  /** Clearance holes that will do: no tighter than the screw. */
  public Band clearanceAccepted(BoringLimits limits) {
    return new Band(shank.value(), shank.value().plus(limits.mostScrewPlay().value()));
  }

  /** The hole that the thread cuts into. */
  public Worked<Length> pilot(Wood wood) {
    return Worked.called("pilot hole")
        .by("root × " + wood.ofRoot.movePointRight(2).toBigInteger() + " %, to 0.01 mm")
        .with("root", root)
        .from(wood.source)
        .is(root.value().times(wood.ofRoot, Length.HUNDREDTH, Rounding.NEAREST));
  }

  /** Pilots that will do, as bits come in steps. */
  public Band pilotAccepted(Wood wood, BoringLimits limits) {
    return Band.around(pilot(wood).value(), limits.pilotTolerance().value());
  }

  /**
   * How deep the pilot is: as far as the screw goes into the part that holds it.
   *
   * @param length of the screw
   * @param through thickness of the part under its head
   */
  public static Worked<Length> pilotDepth(Worked<Length> length, Worked<Length> through) {
    return Worked.called("depth of the pilot")
        .by("screw − part under its head")
        .with("screw", length)
        .with("part under its head", through)
        .from(Citation.COMMON_PRACTICE)
        .is(length.value().minus(through.value()));
  }
}
