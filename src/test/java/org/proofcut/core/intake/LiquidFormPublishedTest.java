package org.proofcut.core.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.proofcut.core.evidence.Citation;
import org.proofcut.core.evidence.Problem;
import org.proofcut.core.exposure.FlammableCategory;
import org.proofcut.core.measure.LengthUnit;
import org.proofcut.core.shop.Liquid;
import org.proofcut.core.shop.LiquidKind;

/**
 * Flash and boiling points as a person types them, against the bounds of 29 CFR 1910.106(a)(19),
 * found in print.
 */
class LiquidFormPublishedTest {

  private static final LiquidKind KIND =
      new LiquidKind(
          "oil-varnish",
          "oil varnish",
          LiquidKind.Use.FINISH,
          FlammableCategory.THREE,
          true,
          true,
          List.of(LiquidKind.Harm.VAPOUR),
          Citation.COMMON_PRACTICE);

  private static Read<Liquid> read(String flash, String boils) {
    return ShopForms.liquid(KIND)
        .read("id", Map.of("name", "tin", "flash", flash, "boils", boils), LengthUnit.MILLIMETRE);
  }

  private static FlammableCategory category(String flash, String boils) {
    return read(flash, boils).value().orElseThrow().category().value();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "73.3 °F | 95.0 °F | ONE",
        "73.3 F  | 95.1 F  | TWO",
        "73.4f   | 95 f    | THREE",
        "140.0°F | 300 °F  | THREE",
        "140.1 °F| 300 °F  | FOUR",
        "199.4 °F| 300 °F  | FOUR",
        "199.5 °F| 300 °F  | NONE",
        "22,9 °C | 35 °C   | ONE",
        "22.9 C  | 35.1 C  | TWO",
        "23 °C   | 80 °C   | THREE",
        "60 c    | 150 c   | THREE",
        "60.1 °C | 150 °C  | FOUR",
        "93 °C   | 180 °C  | FOUR",
        "93.1 °C | 180 °C  | NONE",
        "-4 °C   | 77 °C   | TWO",
        "−20 °C  | 57 °C   | TWO",
      })
  void category_asTyped_isAsPrinted(String flash, String boils, FlammableCategory expected) {
    assertEquals(expected, category(flash, boils));
  }

  /** The worse of the two that it may be. */
  @Test
  void category_boilingPointNotEntered_isTakenAsLow() {
    assertEquals(FlammableCategory.ONE, category("73.3 °F", ""));
    assertEquals(FlammableCategory.THREE, category("73.4 °F", ""));
    var lines = read("10 °C", "").value().orElseThrow().category().lines();
    assertTrue(
        lines.stream().anyMatch(line -> line.name().contains("not entered")), lines.toString());
  }

  @Test
  void category_flashPointNotEntered_isThatOfTheKind() {
    var category = read("", "200 °C").value().orElseThrow().category();
    assertEquals(FlammableCategory.THREE, category.value());
    assertEquals(Citation.COMMON_PRACTICE, category.source());
    assertEquals(FlammableCategory.SOURCE, read("10 °C", "").value().get().category().source());
  }

  /** A sheet that gives only a lower bound is taken at it. */
  @Test
  void category_above_countsAsTheBound() {
    assertEquals(FlammableCategory.FOUR, category("> 61 °C", ""));
    assertEquals(FlammableCategory.NONE, category("≥ 100 °C", ""));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "23",
        "23 K",
        "< 23 °C",
        "°C",
        "abc",
        "1e2 °C",
        "23 °C to 27 °C",
        "901 °C",
        "-101 °C",
        "1,234 °C"
      })
  void flash_unclear_isToldAtItsField(String flash) {
    var read = read(flash, "");
    assertEquals(Optional.empty(), read.value());
    assertEquals(List.of("flash"), read.problems().stream().map(Problem::where).toList());
  }

  @Test
  void dataSheet_neverSaid_isNotOnFile() {
    assertFalse(read("", "").value().orElseThrow().dataSheetOnFile());
  }
}
