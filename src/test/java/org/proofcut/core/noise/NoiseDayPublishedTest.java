package org.proofcut.core.noise;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.proofcut.core.noise.DaysForTests.EUROPE;
import static org.proofcut.core.noise.DaysForTests.US;
import static org.proofcut.core.noise.DaysForTests.typed;

import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.proofcut.core.evidence.Amount;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.exposure.NoiseLaw;
import org.proofcut.core.exposure.NoiseRule;
import org.proofcut.core.shop.OwnedGear;

/** Printed doses and levels, from what a maker types to what the day says. */
class NoiseDayPublishedTest {

  /** Worked examples by 29 CFR 1910.95, Appendix A, found in secondary copies. */
  @Test
  void dose_ofMixedDays_isAsPrinted() {
    near("49.34", dose(day("85", "300", "87", "120", "80", "30"), NoiseRule.PERMITTED_US), "0.05");
    near("118.75", dose(day("100", "60", "90", "240", "85", "180"), US_RULE), "0.005");
    near("91.24", steady(day("100", "60", "90", "240", "85", "180"), US_RULE), "0.05");
    near("131", dose(day("92", "480"), US_RULE), "1");
    near("92.0", steady(day("92", "480"), US_RULE), "0.01");
  }

  /** NIOSH 98-126 (found in a copy of its page): these are one whole dose each. */
  @ParameterizedTest
  @CsvSource({"85, 480", "88, 240", "91, 120", "94, 60", "97, 30", "100, 15"})
  void dose_ofTheRecommendation_isWhole(String level, String minutes) {
    near("100", dose(day(level, minutes), NoiseRule.RECOMMENDED), "0");
  }

  /** 29 CFR 1910.95, Table G-16a (found): these are one whole dose each. */
  @ParameterizedTest
  @CsvSource({"90, 480", "95, 240", "100, 120", "105, 60", "110, 30", "115, 15"})
  void dose_ofTheTable_isWhole(String level, String minutes) {
    near("100", dose(day(level, minutes), US_RULE), "0");
  }

  /**
   * 29 CFR 1910.95(c)(1): from 85 dBA over eight hours on, half of the dose (found in a secondary
   * copy, its number from memory).
   */
  @Test
  void action_exactlyAtHalfOfTheDose_isReached() {
    assertEquals(List.of("action"), steps(typed(US, day("85", "480"))));
    assertEquals(List.of("action"), steps(typed(US, day("90", "240"))));
    assertEquals(List.of(), steps(typed(US, day("84.9", "480"))));
    assertEquals(List.of("action"), steps(typed(US, day("90", "480"))));
    assertEquals(List.of("action", "limit"), steps(typed(US, day("90.1", "480"))));
  }

  /** Table G-16 ends at 115 dBA with a quarter of an hour (found in a secondary copy). */
  @Test
  void ceiling_isReachedAboveIt() {
    assertTrue(typed(US, day("115", "15")).aboveCeiling().isEmpty());
    assertEquals(1, typed(US, day("115.1", "1")).aboveCeiling().size());
    assertTrue(typed(EUROPE, day("120", "1")).aboveCeiling().isEmpty());
  }

  /**
   * Regulation 4 of the rules of Northern Ireland (found), whose values are those of Great Britain:
   * 80, 85 and 87 dB(A) a day.
   */
  @ParameterizedTest
  @CsvSource({
    "79.9, ''",
    "80, lower",
    "84.9, lower",
    "85, lower upper",
    "87, lower upper",
    "87.1, lower upper limit"
  })
  void europe_eightHours_comeUnderWhatIsPrinted(String level, String steps) {
    assertEquals(steps, String.join(" ", steps(typed(EUROPE, day(level, "480")))));
  }

  /**
   * 29 CFR 1910.95, Appendix B, and what inspectors make of it: examples found in secondary copies.
   */
  @Test
  void protectors_leaveWhatIsPrinted() {
    protector("82", "91", day("100", "480"), "NRR 25");
    protector("80", "89", day("98", "480"), "NRR 25");
    // 108 dBC and 110 dBC: the meter read 8 and 10 less in dBA.
    var by8 = typed(US, with(day("100", "480"), "protector", "NRR 32", "c-over-a", "8"));
    near("76", by8.protections().get(0).asRated().orElseThrow(), "0");
    var by10 =
        typed(
            US,
            with(day("100", "480"), "protector", "NRR 29", "second", "NRR 19", "c-over-a", "10"));
    near("76", by10.protections().get(1).asRated().orElseThrow(), "0");
  }

  /**
   * A maker of meters on the British guide (found): SNR 28 in 97.0 dBC leaves 73.0 dBA, with the 4
   * dB for the real world.
   */
  @Test
  void snr_leavesWhatIsPrinted() {
    var day = typed(EUROPE, with(day("95", "480"), "protector", "SNR 28", "c-over-a", "2"));
    near("69.0", day.protections().get(0).asRated().orElseThrow(), "0.005");
    near("73.0", day.protections().get(0).asWorn().orElseThrow(), "0.005");
  }

  private static void protector(String rated, String worn, String[] day, String marked) {
    var gear = List.of(new OwnedGear("g", "ear-protection", "muffs", marked, ""));
    var left = typed(US, gear, day).protections().get(0);
    near(rated, left.asRated().orElseThrow(), "0.005");
    near(worn, left.asWorn().orElseThrow(), "0.005");
  }

  private static final NoiseRule US_RULE = NoiseRule.PERMITTED_US;

  /** Levels and minutes in turn, as they are typed. */
  private static String[] day(String... levelsAndMinutes) {
    var typed = new String[levelsAndMinutes.length * 2];
    for (int i = 0; i < levelsAndMinutes.length; i++) {
      typed[2 * i] = "other-" + (i / 2 + 1) + (i % 2 == 0 ? "-level" : "-minutes");
      typed[2 * i + 1] = levelsAndMinutes[i];
    }
    return typed;
  }

  private static String[] with(String[] day, String... more) {
    var all = java.util.Arrays.copyOf(day, day.length + more.length);
    System.arraycopy(more, 0, all, day.length, more.length);
    return all;
  }

  private static Worked<Amount> dose(String[] day, NoiseRule rule) {
    return typed(US, day).dose(rule).dose();
  }

  private static Worked<Amount> steady(String[] day, NoiseRule rule) {
    return typed(US, day).dose(rule).steady().orElseThrow();
  }

  private static List<String> steps(NoiseDay day) {
    return day.steps().stream().map(NoiseLaw.Step::name).toList();
  }

  private static void near(String printed, Worked<Amount> worked, String most) {
    var off = worked.value().value().subtract(new BigDecimal(printed)).abs();
    assertTrue(off.compareTo(new BigDecimal(most)) <= 0, () -> printed + " printed: " + worked);
  }
}
