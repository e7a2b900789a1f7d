package org.proofcut.core.exposure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.From;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.proofcut.core.evidence.Amount;
import org.proofcut.core.evidence.Worked;

/** Doses and levels against the same formulas in floating point, which the core has none of. */
class NoiseDosePropertiesTest {

  /** A level in tenths of dBA and a time in seconds. */
  record Noise(int tenths, int seconds) {

    Stay stay() {
      return new Stay(dba(tenths), Worked.entered("time", Duration.ofSeconds(seconds)));
    }

    double level() {
      return tenths / 10.0;
    }
  }

  @Provide
  Arbitrary<Noise> noise() {
    return Combinators.combine(
            Arbitraries.integers().between(600, 1250), Arbitraries.integers().between(60, 14_400))
        .as(Noise::new);
  }

  @Property
  void dose_isThatOfDoubles(
      @ForAll NoiseRule rule, @ForAll @Size(min = 1, max = 8) List<@From("noise") Noise> day) {
    double expected = 0;
    for (var one : day) {
      if (one.tenths >= 800) {
        expected += 100 * (one.seconds / 3600.0) / allowed(rule, one.level());
      }
    }
    double dose = dose(rule, day).doubleValue();
    assertEquals(expected, dose, 0.0051 + expected * 1e-9);
    if (dose > 0) {
      double steady = steady(rule, day);
      double factor = rule == NoiseRule.PERMITTED_US ? 16.61 : 10;
      assertEquals(criterion(rule) + factor * Math.log10(dose / 100), steady, 0.0051);
    }
  }

  @Property
  void dailyLevel_isThatOfDoubles(@ForAll @Size(min = 1, max = 8) List<@From("noise") Noise> day) {
    double energy = 0;
    for (var one : day) {
      energy += one.seconds / 28_800.0 * Math.pow(10, one.level() / 10);
    }
    assertEquals(10 * Math.log10(energy), daily(day).doubleValue(), 0.0051);
  }

  @Property
  void together_isThatOfDoubles_andAtMostThreeDecibelsMore(
      @ForAll @IntRange(min = 600, max = 1250) int one,
      @ForAll @IntRange(min = 600, max = 1250) int other) {
    double exact = 10 * Math.log10(Math.pow(10, one / 100.0) + Math.pow(10, other / 100.0));
    var both = SoundEnergy.together(dba(one), dba(other)).value().value();
    assertEquals(both, SoundEnergy.together(dba(other), dba(one)).value().value());
    double up = both.doubleValue() - exact;
    assertTrue(up > -1e-9 && up < 0.1 + 1e-9, () -> both + " for " + exact);
    assertTrue(both.doubleValue() > Math.max(one, other) / 10.0);
    assertTrue(both.doubleValue() <= Math.max(one, other) / 10.0 + 3.1 + 1e-9);
  }

  @Property
  void dose_ofTwoDays_isTheSumOfTheirDoses(
      @ForAll NoiseRule rule,
      @ForAll @Size(max = 5) List<@From("noise") Noise> one,
      @ForAll @Size(max = 5) List<@From("noise") Noise> other) {
    var both = new ArrayList<>(one);
    both.addAll(other);
    near(dose(rule, one).add(dose(rule, other)), dose(rule, both), "0.011");
  }

  @Property
  void dose_inTwoHalves_isThatOfTheWhole(@ForAll NoiseRule rule, @ForAll("noise") Noise noise) {
    int half = noise.seconds / 2;
    var halves =
        List.of(new Noise(noise.tenths, half), new Noise(noise.tenths, noise.seconds - half));
    assertEquals(dose(rule, List.of(noise)), dose(rule, halves));
    assertEquals(daily(List.of(noise)), daily(halves));
  }

  @Property
  void dose_louderOrLonger_isNeverLess(
      @ForAll NoiseRule rule,
      @ForAll @Size(min = 1, max = 5) List<@From("noise") Noise> day,
      @ForAll @IntRange(max = 100) int louder,
      @ForAll @IntRange(max = 3_600) int longer) {
    var first = day.get(0);
    var more = new ArrayList<>(day);
    more.set(0, new Noise(first.tenths + louder, first.seconds + longer));
    assertTrue(dose(rule, day).compareTo(dose(rule, more)) <= 0);
    assertTrue(daily(day).compareTo(daily(more)) <= 0);
  }

  /** To what rounding to 0.01 dBA and the printed factors leave over. */
  @Property
  void steadyLevel_forEightHours_comesToTheSameDose(
      @ForAll NoiseRule rule, @ForAll @IntRange(min = 800, max = 1150) int tenths) {
    var day = List.of(new Noise(tenths, 28_800));
    var dose = rule.dose(day.stream().map(Noise::stay).toList());
    var steady = rule.steadyLevel(dose);
    double off = Math.abs(steady.value().value().doubleValue() - tenths / 10.0);
    // 10 is printed for 9.966: ten tenths of a per cent of what lies over the criterion.
    double printed = rule == NoiseRule.RECOMMENDED ? Math.abs(tenths / 10.0 - 85) * 0.0035 : 0.001;
    assertTrue(off <= 0.0051 + printed, () -> steady + " for " + tenths);
  }

  @Property
  void dailyLevel_ofEightHours_isTheLevel(@ForAll @IntRange(min = 400, max = 1400) int tenths) {
    near(
        BigDecimal.valueOf(tenths).movePointLeft(1),
        daily(List.of(new Noise(tenths, 28_800))),
        "0");
  }

  @Property
  void dose_belowEighty_isNone(
      @ForAll NoiseRule rule, @ForAll @IntRange(min = 400, max = 799) int tenths) {
    Assume.that(tenths < NoiseRule.QUIET_BELOW * 10);
    assertEquals(0, dose(rule, List.of(new Noise(tenths, 28_800))).signum());
  }

  private static double allowed(NoiseRule rule, double level) {
    double halving = rule == NoiseRule.PERMITTED_US ? 5 : 3;
    return 8 / Math.pow(2, (level - criterion(rule)) / halving);
  }

  private static double criterion(NoiseRule rule) {
    return rule == NoiseRule.PERMITTED_US ? 90 : 85;
  }

  private static BigDecimal dose(NoiseRule rule, List<Noise> day) {
    return rule.dose(day.stream().map(Noise::stay).toList()).value().value();
  }

  private static double steady(NoiseRule rule, List<Noise> day) {
    return rule.steadyLevel(rule.dose(day.stream().map(Noise::stay).toList()))
        .value()
        .value()
        .doubleValue();
  }

  private static BigDecimal daily(List<Noise> day) {
    return SoundEnergy.dailyLevel(day.stream().map(Noise::stay).toList()).value().value();
  }

  private static void near(BigDecimal expected, BigDecimal found, String most) {
    assertTrue(
        expected.subtract(found).abs().compareTo(new BigDecimal(most)) <= 0,
        () -> found + " for " + expected);
  }

  private static Worked<Amount> dba(int tenths) {
    return Worked.measured("level", new Amount(BigDecimal.valueOf(tenths).movePointLeft(1), "dBA"));
  }
}
