package org.proofcut.core.storage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.time.LocalDate;
import java.time.Period;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.proofcut.core.evidence.Citation;

class AgeingTest {

  @ParameterizedTest
  @CsvSource({
    "P7D, 2024-02-26, 2024-03-04",
    "P1M, 2023-01-31, 2023-02-28",
    "P6M, 2023-08-31, 2024-02-29",
    "P1Y, 2024-02-29, 2025-02-28",
  })
  void after_isSoLongAfterTheDay_orOnTheLastOfAShorterMonth(
      Period every, LocalDate done, LocalDate due) {
    assertEquals(due, ageing(every).after(done));
  }

  @ParameterizedTest
  @ValueSource(strings = {"P0D", "P-1M", "P1M-1D"})
  void every_noTimeOrBackwards_isRefused(Period every) {
    assertThrows(IllegalArgumentException.class, () -> ageing(every));
  }

  @Test
  void every_oneDay_isTheShortest() {
    var day = LocalDate.of(2024, 12, 31);
    assertEquals(LocalDate.of(2025, 1, 1), ageing(Period.ofDays(1)).after(day));
  }

  private static Ageing ageing(Period every) {
    return new Ageing("look", "Look at it", every, false, Citation.OWN_CHOICE);
  }
}
