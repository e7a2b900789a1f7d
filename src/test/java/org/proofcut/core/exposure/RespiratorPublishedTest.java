package org.proofcut.core.exposure;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.proofcut.core.evidence.Amount;
import org.proofcut.core.evidence.Citation;
import org.proofcut.core.evidence.Worked;

class RespiratorPublishedTest {

  /** 29 CFR 1910.134, Table 1: factors of masks that clean the air, found in secondary copies. */
  @ParameterizedTest
  @CsvSource({"QUARTER_MASK, 5", "HALF_MASK, 10", "FULL_FACE, 50", "LOOSE_WITH_FAN, 25"})
  void factor_isThatOfTheTable(Respirator respirator, int factor) {
    assertEquals(factor, respirator.factor().value());
  }

  /** An example found in a secondary copy: a limit of 50 µg/m³ and a half mask give 500 µg/m³. */
  @Test
  void mostAround_isFactorTimesLimit() {
    var limit =
        Worked.given(
            "limit",
            new Amount(BigDecimal.valueOf(50), "µg/m³"),
            new Citation(Citation.Kind.LAW, "an example", ""));
    assertEquals("500 µg/m³", Respirator.HALF_MASK.mostAround(limit).value().text());
  }
}
