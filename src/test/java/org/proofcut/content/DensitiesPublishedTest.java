package org.proofcut.content;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.proofcut.core.evidence.Amount;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.exposure.WeightUnit;
import org.proofcut.core.measure.Length;
import org.proofcut.core.stock.Material;
import org.proofcut.core.weight.Densities;
import org.proofcut.core.weight.Weight;

/** Our ends of what materials weigh, held against printed figures: each lies between them. */
class DensitiesPublishedTest {

  private final Densities densities = Content.bundled().limits(Densities.class);

  /**
   * What a panel of 4 by 8 ft, 3/4 in thick, is said to weigh: a distributor's page on core types
   * (industrialplywood.com/13info_core.html: MDF about 96 lb, particleboard about 93) and another's
   * (burtforest.com/hpdomesticstds.htm: veneer core typically 70 lb, MDF and particleboard 100),
   * both read in stored copies.
   */
  @ParameterizedTest
  @CsvSource({"MDF, 96", "PARTICLEBOARD, 93", "PLYWOOD, 70", "MDF, 100", "PARTICLEBOARD, 100"})
  void wholePanel_weighsBetweenBothEnds(Material material, int pounds) {
    var weight =
        Weight.of(
            material,
            Worked.entered("length", Length.of("96 in")),
            Worked.entered("width", Length.of("48 in")),
            Worked.entered("thickness", Length.of("3/4 in")),
            densities);
    var printed = BigDecimal.valueOf(pounds);
    assertTrue(pounds(weight.least()).compareTo(printed) < 0, weight.least()::toString);
    assertTrue(pounds(weight.most()).compareTo(printed) > 0, weight.most()::toString);
  }

  private static BigDecimal pounds(Worked<Amount> weight) {
    return WeightUnit.POUND.of(weight.value());
  }

  /**
   * Medium density particleboard, generally 640 to 800 kg in a cubic metre: Architectural Woodwork
   * Institute, awinet.org, primary core materials, read in a stored copy.
   */
  @Test
  void particleboard_holdsTheMediumGrades() {
    assertHolds(Material.PARTICLEBOARD, "640");
    assertHolds(Material.PARTICLEBOARD, "800");
  }

  /**
   * Specific gravity at 12 % of moisture (Wood Handbook, Table 5-3, secondary copies; yellow-poplar
   * and walnut from memory), which is dry wood on its volume at 12 %: with its water it is 1.12
   * times as heavy.
   */
  @ParameterizedTest
  @ValueSource(
      strings = {"0.63", "0.62", "0.60", "0.64", "0.50", "0.54", "0.41", "0.68", "0.42", "0.55"})
  void hardwood_holdsTheUsualSpecies(String gravity) {
    assertHolds(
        Material.HARDWOOD,
        new BigDecimal(gravity).multiply(new BigDecimal("1120")).toPlainString());
  }

  private void assertHolds(Material material, String kilogramsPerCubicMetre) {
    var density = densities.of(material).value();
    var printed = new BigDecimal(kilogramsPerCubicMetre);
    assertTrue(
        BigDecimal.valueOf(density.leastKilogramsPerCubicMetre()).compareTo(printed) < 0
            && BigDecimal.valueOf(density.mostKilogramsPerCubicMetre()).compareTo(printed) > 0,
        () -> printed + " is not within " + density);
  }
}
