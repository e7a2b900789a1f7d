package org.proofcut.core.habit;

import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.IntStream;
import org.proofcut.core.evidence.Citation;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.measure.Length;
import org.proofcut.statistics.CommonsStudentT;

/** Limits, and observations one a day. */
final class HabitsForTests {

  static final HabitLimits LIMITS =
      new HabitLimits(
          limit("usual scatter of a width", "0.02 mm"),
          limit("usual scatter of a scale", "0.1 mm"),
          limit("far for a width", "0.5 mm"),
          limit("far for a scale", "1.5 mm"),
          Worked.given("odd by chance, one in", 100, Citation.COMMON_PRACTICE));

  /** Each quantile is worked out once. */
  static final StudentT T = remembering(new CommonsStudentT());

  static final Instant MONDAY = Instant.parse("2026-03-02T08:00:00Z");

  static final Trait FENCE =
      new Trait.ScaleOffset("table", "16", Trait.Datum.FENCE_TO_NEAREST_EDGE);
  static final Trait HEIGHT = new Trait.ScaleOffset("table", "16", Trait.Datum.HEIGHT);
  static final Trait WIDTH = new Trait.CutWidth("16");

  private HabitsForTests() {}

  static Instant day(int number) {
    return MONDAY.plus(Duration.ofDays(number));
  }

  /** Fence set to 100 mm, on as many days as there are offsets. */
  static List<Observation> offsets(String... offsets) {
    return IntStream.range(0, offsets.length).mapToObj(i -> offset(i, offsets[i])).toList();
  }

  static Observation offset(int day, String offset) {
    var set = Length.ofMillimetres(100);
    return new Observation("p" + day, FENCE, set, set.plus(Length.of(offset)), day(day));
  }

  static Observation width(int day, String found) {
    return new Observation("p" + day, WIDTH, Length.ofMillimetres(16), Length.of(found), day(day));
  }

  static Habits learn(List<Observation> observations, Ruling... rulings) {
    return Habits.of(observations, List.of(rulings), LIMITS, T);
  }

  private static Worked<Length> limit(String name, String value) {
    return Worked.given(name, Length.of(value), Citation.COMMON_PRACTICE);
  }

  private static StudentT remembering(StudentT t) {
    record Asked(BigDecimal probability, int degreesOfFreedom) {}
    Map<Asked, BigDecimal> known = new ConcurrentHashMap<>();
    return (probability, degreesOfFreedom) ->
        known.computeIfAbsent(
            new Asked(probability, degreesOfFreedom),
            asked -> t.quantile(asked.probability, asked.degreesOfFreedom));
  }
}
