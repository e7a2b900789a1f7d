package org.proofcut.core.setup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.proofcut.core.setup.CutsForTests.cutter;
import static org.proofcut.core.setup.CutsForTests.marked;
import static org.proofcut.core.setup.ShopsForTests.LIMITS;
import static org.proofcut.core.setup.ShopsForTests.TABLE;

import java.math.BigDecimal;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.proofcut.core.measure.Length;
import org.proofcut.core.shop.SawBlade;
import org.proofcut.core.shop.StraightCutter;

/** Derived figures: π · D · n worked apart, in ft/min, and turned into m/s. */
class SpeedsTest {

  @ParameterizedTest
  @CsvSource({
    "3 in, 24000, 18850",
    "1 in, 24000, 6283",
    "2 in, 18000, 9425",
    "2.5 in, 16000, 10472",
    "3.5 in, 12000, 10996",
    // The speed at which 2 in reach 12,000 ft/min: 12 · 12,000 ÷ (2π)
    "2 in, 22918, 12000"
  })
  void rimSpeed_isPiTimesDiameterTimesSpeed(String diameter, int perMinute, int feetPerMinute) {
    var rim = Speeds.rimSpeed(Length.of(diameter), perMinute).value();
    assertEquals(SpeedsPublishedTest.inMetresPerSecond(feetPerMinute), rim.value());
    assertEquals("m/s", rim.unit());
  }

  @Test
  void rimSpeed_isRoundedUp() {
    // π · 10 mm · 60 a minute = 31.4159… mm/s
    assertEquals(new BigDecimal("0.1"), Speeds.rimSpeed(Length.of("10 mm"), 60).value().value());
  }

  @ParameterizedTest
  @CsvSource({
    "1 in, 24000",
    "1.001 in, 18000",
    "2 in, 18000",
    "2.001 in, 16000",
    "2.5 in, 16000",
    "2.501 in, 12000",
    "3.5 in, 12000"
  })
  void band_reachesToItsLargestDiameter_included(String diameter, int perMinute) {
    assertEquals(perMinute, limit(diameter, 30_000));
  }

  @Test
  void cutterWithoutAMark_followsItsBand_bladeWithoutOne_hasNoLimit() {
    var plain = cutter("16 mm");
    var unmarked =
        new StraightCutter(
            plain.id(),
            plain.name(),
            plain.diameter(),
            plain.cuttingLength(),
            plain.edges(),
            plain.shank(),
            Optional.empty());
    assertEquals(24_000, Speeds.limit(unmarked, LIMITS).orElseThrow().value());
    var blade =
        new SawBlade("b", "blade", Length.of("250 mm"), Length.of("2.8 mm"), 40, Optional.empty());
    assertEquals(Optional.empty(), Speeds.limit(blade, LIMITS));
  }

  @Test
  void mark_underTheBand_wins_overIt_loses() {
    assertEquals(17_000, limit("16 mm", 17_000));
    assertEquals(24_000, limit("16 mm", 30_000));
    assertEquals(18_000, limit("30 mm", 24_000));
  }

  @Test
  void step_isTheFastestAtOrBelowTheLimit() {
    assertEquals("4", step(18_000));
    assertEquals("3", step(17_999));
  }

  @Test
  void feed_ofARouterCutter_keepsEachEdgesChipInItsBand_aBladeIsToldNone() {
    // 0.05 mm · 2 · 18,000 = 1.8 m; 0.15 mm · 2 · 18,000 = 5.4 m
    var router = Speeds.choose(TABLE, marked(cutter("16 mm"), 18_000), LIMITS).speed();
    assertEquals("1.8 to 5.4 m/min", router.orElseThrow().feed().orElseThrow().text());
    // 15,500: 1.55 and 4.65, to the inside of the band.
    var slower = Speeds.choose(TABLE, marked(cutter("16 mm"), 15_500), LIMITS).speed();
    assertEquals("1.6 to 4.6 m/min", slower.orElseThrow().feed().orElseThrow().text());
    var saw = Speeds.choose(ShopsForTests.SAW, ShopsForTests.RIP_BLADE, LIMITS).speed();
    assertEquals(Optional.empty(), saw.orElseThrow().feed());
  }

  @Test
  void cutterBeyondAllBands_hasNoSpeed() {
    var choice = Speeds.choose(TABLE, marked(cutter("89 mm"), 8_000), LIMITS);
    assertTrue(choice.speed().isEmpty());
    assertEquals(Refusal.Reason.TOO_FAST, choice.refusal().orElseThrow().reason());
  }

  private static int limit(String diameter, int mark) {
    return Speeds.limit(marked(cutter(diameter), mark), LIMITS).orElseThrow().value();
  }

  private static String step(int mark) {
    var choice = Speeds.choose(TABLE, marked(cutter("16 mm"), mark), LIMITS);
    return choice.speed().orElseThrow().step().mark();
  }
}
