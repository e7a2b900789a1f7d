package org.proofcut.core.weight;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.proofcut.core.weight.DensitiesForTests.ALIKE;

import java.math.BigDecimal;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.api.Test;
import org.proofcut.core.casework.CasesForTests;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.measure.Length;
import org.proofcut.core.stock.Material;

class WeightTest {

  private static final BigDecimal A_GRAM = new BigDecimal("0.001");

  /** A cubic metre weighs what its density says. */
  @Test
  void of_aCubicMetre_isItsDensity() {
    var weight = weight(Length.ofMillimetres(1000), Length.ofMillimetres(1000), 1_000_000);
    assertEquals("500.000 kg", weight.least().value().text());
    assertEquals("800.000 kg", weight.most().value().text());
  }

  /** 2440 × 1220 × 17.72 mm is 52.748896 dm³. */
  @Test
  void of_aSheet_isRoundedOutwardToAGram() {
    var weight = Weight.of(CasesForTests.BIRCH, ALIKE);
    assertEquals("26.374 kg", weight.least().value().text());
    assertEquals("42.200 kg", weight.most().value().text());
    assertEquals("least weight of birch sheet", weight.least().name());
    assertTrue(
        weight.most().lines().stream()
            .anyMatch(
                line ->
                    line.name().equals("mean thickness of birch sheet")
                        || line.value().equals(Length.of("17.72 mm"))),
        () -> weight.most().lines().toString());
  }

  /** Cut in two, both halves weigh what the whole did, to a gram each. */
  @Property
  void of_twoHalves_isTheWhole(
      @ForAll @LongRange(min = 2, max = 2_440_000) long micrometres,
      @ForAll @LongRange(min = 1, max = 999) long thousandths,
      @ForAll @LongRange(min = 2_000, max = 40_000) long thickness) {
    var length = Length.ofMicrometres(micrometres);
    var width = Length.ofMillimetres(600);
    var first = Length.ofMicrometres(micrometres * thousandths / 1000);
    var whole = weight(length, width, thickness);
    var one = weight(first, width, thickness);
    var other = weight(length.minus(first), width, thickness);
    var most = kilograms(one.most()).add(kilograms(other.most())).subtract(kilograms(whole.most()));
    assertTrue(most.signum() >= 0 && most.compareTo(A_GRAM) <= 0, most::toString);
    var least =
        kilograms(whole.least())
            .subtract(kilograms(one.least()))
            .subtract(kilograms(other.least()));
    assertTrue(least.signum() >= 0 && least.compareTo(A_GRAM) <= 0, least::toString);
  }

  @Property
  void of_leastIsNeverMoreThanMost(
      @ForAll @LongRange(min = 0, max = 3_000_000) long length,
      @ForAll @LongRange(min = 0, max = 50_000) long thickness) {
    var weight = weight(Length.ofMicrometres(length), Length.ofMillimetres(300), thickness);
    assertTrue(kilograms(weight.least()).compareTo(kilograms(weight.most())) <= 0);
  }

  @Test
  void density_upsideDown_isRefused() {
    assertThrows(IllegalArgumentException.class, () -> new Density(800, 700));
    assertThrows(IllegalArgumentException.class, () -> new Density(0, 700));
  }

  private static BigDecimal kilograms(Worked<org.proofcut.core.evidence.Amount> weight) {
    return weight.value().value();
  }

  private static Weight weight(Length length, Length width, long thicknessInMicrometres) {
    return Weight.of(
        Material.PLYWOOD,
        Worked.entered("length", length),
        Worked.entered("width", width),
        Worked.measured("thickness", Length.ofMicrometres(thicknessInMicrometres)),
        ALIKE);
  }
}
