package org.proofcut.core.exposure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.BigRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.proofcut.core.evidence.Amount;
import org.proofcut.core.evidence.Worked;

class MaskTest {

  private static final List<Mask> TABLE = Mask.ofTheTable(List.of("us"));

  /**
   * 29 CFR 1910.134, Table 1, found in secondary copies: 5, 10, 25 and 50 times a limit of 1 mg/m³,
   * each exactly and a hundredth above.
   */
  @ParameterizedTest
  @CsvSource({
    "1, ''",
    "1.01, quarter-mask",
    "5, quarter-mask",
    "5.01, half-mask",
    "10, half-mask",
    "10.01, loose-with-fan",
    "25, loose-with-fan",
    "25.01, full-face",
    "50, full-face",
    "50.01, beyond"
  })
  void least_atEachFactor_isThatOfTheTable(String level, String id) {
    assertEquals(id, id(Mask.least(TABLE, amount(level), amount("1"))));
  }

  /** A filter that lets a twentieth through makes of no mask one of 25 or 50. */
  @Test
  void maskAboveTwenty_isNotToldToTakeN95() {
    for (var mask : TABLE) {
      assertEquals(mask.factor().value() < 20, mask.words().contains("N95"), mask.words());
    }
  }

  @Test
  void neededFactor_isRoundedUp() {
    assertEquals("8.4 times", Mask.neededFactor(amount("25"), amount("3")).value().text());
    assertThrows(
        IllegalArgumentException.class,
        () ->
            Mask.neededFactor(
                amount("25"), Worked.entered("limit", new Amount(BigDecimal.ONE, "ppm"))));
  }

  @Property(tries = 2_000)
  void least_isEnough_andNoWeakerOneIs(
      @ForAll @BigRange(min = "0.01", max = "400") @Scale(2) BigDecimal level,
      @ForAll @BigRange(min = "0.1", max = "10") @Scale(1) BigDecimal limit) {
    var need = Mask.least(TABLE, amount(level.toPlainString()), amount(limit.toPlainString()));
    if (need instanceof Mask.Need.Least least) {
      assertTrue(covers(least.mask(), level, limit), least::toString);
      TABLE.stream()
          .filter(other -> other.factor().value() < least.mask().factor().value())
          .forEach(weaker -> assertTrue(!covers(weaker, level, limit), weaker::toString));
    } else if (need instanceof Mask.Need.BeyondAll) {
      assertTrue(TABLE.stream().noneMatch(mask -> covers(mask, level, limit)));
    } else {
      assertInstanceOf(Mask.Need.None.class, need);
      assertTrue(level.doubleValue() <= limit.doubleValue());
    }
  }

  @Property(tries = 2_000)
  void least_isNeverWeakerForMoreDust(
      @ForAll @BigRange(min = "0.01", max = "100") @Scale(2) BigDecimal level,
      @ForAll @BigRange(min = "0.01", max = "100") @Scale(2) BigDecimal more) {
    var limit = amount("1");
    var less = strength(Mask.least(TABLE, amount(level.toPlainString()), limit));
    var dustier = strength(Mask.least(TABLE, amount(level.add(more).toPlainString()), limit));
    assertTrue(dustier >= less, () -> less + " then " + dustier);
  }

  /** In floating point, away from the boundary by less than a rounding of the doubles. */
  private static boolean covers(Mask mask, BigDecimal level, BigDecimal limit) {
    return mask.factor().value() * limit.doubleValue() + 1e-9 >= level.doubleValue();
  }

  private static int strength(Mask.Need need) {
    if (need instanceof Mask.Need.Least least) {
      return least.mask().factor().value();
    }
    return need instanceof Mask.Need.None ? 1 : Integer.MAX_VALUE;
  }

  private static String id(Mask.Need need) {
    if (need instanceof Mask.Need.Least least) {
      return least.mask().id();
    }
    return need instanceof Mask.Need.None ? "" : "beyond";
  }

  private static Worked<Amount> amount(String number) {
    return Worked.entered("amount", new Amount(new BigDecimal(number), "mg/m³"));
  }
}
