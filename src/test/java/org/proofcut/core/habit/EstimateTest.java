package org.proofcut.core.habit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.proofcut.core.measure.Band;
import org.proofcut.core.measure.Length;

class EstimateTest {

  @Test
  void one_hasNoScatter() {
    var estimate = estimate("18.21 mm");
    assertEquals(1, estimate.proofs());
    assertEquals(Length.of("18.21 mm"), estimate.mean());
    assertEquals(Optional.empty(), estimate.scatter());
  }

  /** s = 0.01; t = 4.3027 at 2; 4.3027 × 0.01 ÷ √3 = 0.0248; 4.3027 × 0.01 × √(4 ÷ 3) = 0.0497. */
  @Test
  void three_workedByHand() {
    var estimate = estimate("18.20 mm", "18.21 mm", "18.22 mm");
    assertEquals(Length.of("18.21 mm"), estimate.mean());
    var scatter = estimate.scatter().orElseThrow();
    assertEquals(Length.of("0.01 mm"), scatter.deviation());
    assertEquals(band("18.185 mm", "18.235 mm"), scatter.ofMean());
    assertEquals(Length.of("0.025 mm"), scatter.plusOrMinus());
    assertEquals(band("18.16 mm", "18.26 mm"), scatter.ofNext());
  }

  /**
   * Of 4,000 series the share whose interval covers what it should lies within four standard
   * deviations of 95 %: √(0.95 × 0.05 ÷ 4000) = 0.0034.
   */
  @ParameterizedTest
  @ValueSource(ints = {2, 3, 6, 11})
  void intervals_coverTheTruth_ninetyFiveTimesInAHundred(int n) {
    int series = 4_000;
    var chance = new Random(20260302L + n);
    var truth = Length.of("0.3 mm");
    int coversMean = 0;
    int coversNext = 0;
    for (int i = 0; i < series; i++) {
      var values = Stream.generate(() -> around(truth, chance)).limit(n).toList();
      var scatter = Estimate.of(values, HabitsForTests.T).scatter().orElseThrow();
      coversMean += scatter.ofMean().contains(truth) ? 1 : 0;
      coversNext += scatter.ofNext().contains(around(truth, chance)) ? 1 : 0;
    }
    assertNear(0.95, coversMean, series);
    assertNear(0.95, coversNext, series);
  }

  private static void assertNear(double share, int count, int of) {
    double deviation = Math.sqrt(share * (1 - share) / of);
    double found = 1.0 * count / of;
    assertTrue(Math.abs(found - share) < 4 * deviation, () -> found + " of " + share);
  }

  private static Length around(Length mean, Random chance) {
    return mean.plus(Length.ofMicrometres(Math.round(100 * chance.nextGaussian())));
  }

  private static Estimate estimate(String... values) {
    return Estimate.of(List.of(values).stream().map(Length::of).toList(), HabitsForTests.T);
  }

  private static Band band(String least, String most) {
    return new Band(Length.of(least), Length.of(most));
  }
}
