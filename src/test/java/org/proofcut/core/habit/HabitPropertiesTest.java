package org.proofcut.core.habit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.LengthUnit;

class HabitPropertiesTest {

  /** Offsets of a fence, in whole micrometres within ±2 mm. */
  @Provide
  Arbitrary<List<Length>> offsets() {
    return Arbitraries.integers()
        .between(-2_000, 2_000)
        .map(Length::ofMicrometres)
        .list()
        .ofMinSize(2)
        .ofMaxSize(12);
  }

  @Property
  void identicalObservations_haveNoScatter(
      @ForAll @IntRange(min = -2_000, max = 2_000) int micrometres,
      @ForAll @IntRange(min = 2, max = 20) int count) {
    var value = Length.ofMicrometres(micrometres);
    var estimate = Estimate.of(Collections.nCopies(count, value), HabitsForTests.T);
    assertEquals(value, estimate.mean());
    var scatter = estimate.scatter().orElseThrow();
    assertEquals(Length.ZERO, scatter.deviation());
    assertEquals(Length.ZERO, scatter.ofMean().extent());
    assertEquals(Length.ZERO, scatter.ofNext().extent());
  }

  @Property
  void estimate_doesNotDependOnOrder(@ForAll("offsets") List<Length> offsets, @ForAll long seed) {
    var shuffled = new ArrayList<>(offsets);
    Collections.shuffle(shuffled, new Random(seed));
    assertEquals(Estimate.of(offsets, HabitsForTests.T), Estimate.of(shuffled, HabitsForTests.T));
  }

  @Property
  void estimate_movesWithItsValues(
      @ForAll("offsets") List<Length> offsets,
      @ForAll @IntRange(min = -50_000, max = 50_000) int micrometres) {
    var by = Length.ofMicrometres(micrometres);
    var here = Estimate.of(offsets, HabitsForTests.T);
    var there = Estimate.of(offsets.stream().map(by::plus).toList(), HabitsForTests.T);
    assertEquals(here.mean().plus(by), there.mean());
    var scatter = here.scatter().orElseThrow();
    assertEquals(scatter.deviation(), there.scatter().orElseThrow().deviation());
    assertEquals(scatter.ofMean().movedBy(by), there.scatter().orElseThrow().ofMean());
    assertTrue(scatter.ofMean().extent().isAtMost(scatter.ofNext().extent()));
  }

  @Property
  void habits_doNotDependOnTheOrderTheyAreTold(
      @ForAll("offsets") List<Length> offsets, @ForAll long seed) {
    var told = observations(offsets);
    var shuffled = new ArrayList<>(told);
    Collections.shuffle(shuffled, new Random(seed));
    assertEquals(
        HabitsForTests.learn(told).of(HabitsForTests.FENCE),
        HabitsForTests.learn(shuffled).of(HabitsForTests.FENCE));
  }

  /** Whatever is off, less than all of it is made good, and never the other way. */
  @Property
  void correction_isBetweenNothingAndTheMean(@ForAll("offsets") List<Length> offsets) {
    var habit = HabitsForTests.learn(observations(offsets)).of(HabitsForTests.FENCE);
    habit
        .estimate()
        .ifPresent(
            known -> {
              var correction =
                  habit.correction(HabitsForTests.LIMITS, LengthUnit.MILLIMETRE).use().value();
              var mean = known.mean();
              assertTrue(correction.isZero() || correction.isNegative() == mean.isPositive());
              assertTrue(correction.abs().isAtMost(mean.abs()));
            });
  }

  /** A firm fence, then a proof that lies 0.8 mm or more from where it was. */
  @Property
  void outlier_isAskedAbout_andNotLearned(
      @ForAll @IntRange(min = 1, max = 12) int count,
      @ForAll @IntRange(min = -1_400, max = 1_400) int fenceOff,
      @ForAll @IntRange(min = 800, max = 3_000) int outlier,
      @ForAll boolean up,
      @ForAll long seed) {
    var chance = new Random(seed);
    var offsets = new ArrayList<Length>();
    for (int i = 0; i < count; i++) {
      offsets.add(Length.ofMicrometres(fenceOff + chance.nextInt(101) - 50));
    }
    offsets.add(Length.ofMicrometres(fenceOff + (up ? outlier : -outlier)));
    var observations = observations(offsets);
    var habit = HabitsForTests.learn(observations).of(HabitsForTests.FENCE);
    assertEquals(count, habit.learned().size());
    assertEquals(observations.get(count), habit.open().get(0).observation());
  }

  @Property
  void whatScattersLikeTheRest_isLearned(
      @ForAll @IntRange(min = 0, max = 12) int count, @ForAll long seed) {
    var chance = new Random(seed);
    var offsets = new ArrayList<Length>();
    for (int i = 0; i <= count; i++) {
      offsets.add(Length.ofMicrometres(chance.nextInt(201) - 100));
    }
    var observations = observations(offsets);
    var last = observations.get(count);
    var lesson =
        Lesson.of(last, observations.subList(0, count), HabitsForTests.LIMITS, HabitsForTests.T);
    assertInstanceOf(Lesson.Learned.class, lesson);
  }

  private static List<Observation> observations(List<Length> offsets) {
    var observations = new ArrayList<Observation>();
    for (var offset : offsets) {
      observations.add(HabitsForTests.offset(observations.size(), offset.toString()));
    }
    return observations;
  }
}
