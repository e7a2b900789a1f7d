package org.proofcut.core.exposure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.proofcut.core.evidence.Amount;

/** 29 CFR 1910.106(a)(19), bounds found; label words found. */
class FlammableCategoryPublishedTest {

  @ParameterizedTest
  @CsvSource({
    "73.3, 95.0, °F, ONE", "73.3, 95.1, °F, TWO", "73.4, 95.0, °F, THREE", "140.0, 300, °F, THREE",
    "140.1, 300, °F, FOUR", "199.4, 300, °F, FOUR", "199.5, 300, °F, NONE", "22.9, 35, °C, ONE",
    "22.9, 35.1, °C, TWO", "23, 80, °C, THREE", "60, 150, °C, THREE", "60.1, 150, °C, FOUR",
    "93, 180, °C, FOUR", "93.1, 180, °C, NONE"
  })
  void category_atEachBound(String flash, String boils, String unit, FlammableCategory expected) {
    assertEquals(
        expected, FlammableCategory.of(temperature(flash, unit), temperature(boils, unit)));
  }

  @ParameterizedTest
  @CsvSource({"ONE, danger", "TWO, danger", "THREE, warning", "FOUR, warning"})
  void label_saysTheWordOfItsCategory(FlammableCategory category, String word) {
    assertEquals(word, category.label());
  }

  @Test
  void otherUnit_isRefused() {
    assertThrows(
        IllegalArgumentException.class,
        () -> FlammableCategory.of(temperature("300", "K"), temperature("350", "K")));
  }

  private static Amount temperature(String value, String unit) {
    return new Amount(new BigDecimal(value), unit);
  }
}
