package org.proofcut.content;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.time.Period;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class PeriodTextTest {

  @ParameterizedTest
  @CsvSource({
    "1 day, P1D",
    "7 days, P7D",
    "1 month, P1M",
    "6 months, P6M",
    "18 months, P18M",
    "1 year, P1Y",
    "5 years, P5Y",
    "9999 days, P9999D",
  })
  void read_aNumberWithItsUnit(String text, Period period) {
    assertEquals(period, PeriodText.read(text));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "6",
        "months",
        "0 days",
        "-1 day",
        "1.5 years",
        "6months",
        "1 week",
        "6 Months",
        "10000 days",
        "07 days",
        "6 months "
      })
  void read_anythingElse_isRefused(String text) {
    assertThrows(IllegalArgumentException.class, () -> PeriodText.read(text));
  }
}
