package org.proofcut.core.exposure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.proofcut.core.evidence.Amount;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.exposure.Standing.Load;
import org.proofcut.core.measure.Length;

class StandingTest {

  /** 60 lb, 10 in behind: 40 lb at 14 in before it stand, 43 lb tip it. */
  @Test
  void tips_fromTheLoadThatOutweighsIt() {
    assertFalse(cabinet(load(40, "14 in")).tips());
    assertTrue(cabinet(load(43, "14 in")).tips());
  }

  @Test
  void tips_inBalanceAlready() {
    assertTrue(cabinet(load(50, "12 in")).tips());
    assertEquals(0, cabinet(load(50, "12 in")).margin().value().value().signum());
  }

  /** Two loads pull as one does that is as heavy as both, where they pull together. */
  @Property
  void margin_ofTwoLoads_isThatOfBothTogether(
      @ForAll @IntRange(min = 0, max = 50) int one,
      @ForAll @IntRange(min = 0, max = 50) int other,
      @ForAll @IntRange(min = 1, max = 900) int before) {
    var arm = before + " mm";
    assertEquals(
        0,
        cabinet(load(one + other, arm))
            .margin()
            .value()
            .value()
            .compareTo(cabinet(load(one, arm), load(other, arm)).margin().value().value()));
  }

  @Test
  void weightsInTwoUnits_areRefused() {
    var kilograms =
        new Load(
            Worked.entered("load", new Amount(BigDecimal.TEN, "kg")),
            Worked.entered("before", Length.of("14 in")));
    assertThrows(IllegalArgumentException.class, () -> cabinet(kilograms));
  }

  private static Standing cabinet(Load... loads) {
    return new Standing(
        Worked.entered("weight", new Amount(BigDecimal.valueOf(60), "lb")),
        Worked.entered("behind", Length.of("10 in")),
        List.of(loads));
  }

  private static Load load(int pounds, String before) {
    return new Load(
        Worked.entered("load", new Amount(BigDecimal.valueOf(pounds), "lb")),
        Worked.entered("before", Length.of(before)));
  }
}
