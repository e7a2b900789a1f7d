package org.proofcut.core.habit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.proofcut.core.habit.HabitsForTests.MONDAY;

import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.statistics.Statistics;
import org.junit.jupiter.api.Test;
import org.proofcut.core.casework.CasesForTests;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.habit.Trait.Datum;
import org.proofcut.core.measure.Band;
import org.proofcut.core.measure.Length;
import org.proofcut.core.setup.Answer;
import org.proofcut.core.setup.CutAsked;
import org.proofcut.core.setup.CutSimulation;
import org.proofcut.core.setup.CutSimulation.Truth;
import org.proofcut.core.setup.Measure;
import org.proofcut.core.setup.RandomCuts;
import org.proofcut.core.setup.RandomSawSlots;
import org.proofcut.core.setup.RouterTableSetup;
import org.proofcut.core.setup.SawSetup;
import org.proofcut.core.setup.Setting;
import org.proofcut.core.setup.Setup;
import org.proofcut.core.setup.ShopsForTests;
import org.proofcut.core.setup.Work;
import org.proofcut.core.shop.HandRouter;

class ObservationsTest {

  @Provide
  Arbitrary<RandomCuts.Trial> trials() {
    return RandomCuts.trials();
  }

  /** Read without error, a proof tells the very truth that it was cut with, and nothing else. */
  @Property(tries = 2_000, edgeCases = EdgeCasesMode.NONE)
  void routerCuts_tellWhatTheyWereCutWith(
      @ForAll("trials") RandomCuts.Trial trial,
      @ForAll @IntRange(min = -25, max = 25) int cutterOver,
      @ForAll @IntRange(min = -90, max = 90) int guideOff,
      @ForAll @IntRange(min = -90, max = 90) int heightOff) {
    if (!(trial.answer() instanceof Setup setup)) {
      return;
    }
    var truth =
        new Truth(
            setup.cutter().diameter().plus(hundredths(cutterOver)),
            hundredths(guideOff),
            hundredths(heightOff));
    var wood = CutSimulation.cut(setup, trial.across(), truth).wood();
    var told = told(setup, measure -> cameTo(measure, wood));

    var machine = setup.machine().id();
    var cutter = setup.cutter().id();
    boolean slot = setup.asked() instanceof CutAsked.Slot;
    var expected = new HashMap<Trait, Length>();
    if (slot) {
      expected.put(new Trait.CutWidth(cutter), truth.cuts());
    }
    var kind = slot ? "slot" : "rabbet";
    var by = setup.usesStrip() ? "strip" : "one pass";
    if (setup.machine() instanceof HandRouter router) {
      // Laid too far along, a straightedge before the cut has the same effect as a longer base;
      // one beyond it, as a shorter.
      boolean beyond = setup.settings().get(0).from().contains("beyond the cut");
      var laid = beyond ? hundredths(guideOff).negated() : hundredths(guideOff);
      expected.put(
          new Trait.BaseToEdge(machine, cutter),
          router.baseEdgeToCentre().minus(truth.cuts().half()).plus(laid));
      expected.put(new Trait.ScaleOffset(machine, cutter, Datum.DEPTH), hundredths(heightOff));
      Statistics.collect(kind, beyond ? "beyond" : "before", by);
    } else {
      var datum = slot ? Datum.FENCE_TO_NEAREST_EDGE : Datum.FENCE_TO_FARTHEST_EDGE;
      expected.put(new Trait.ScaleOffset(machine, cutter, datum), hundredths(guideOff));
      expected.put(new Trait.ScaleOffset(machine, cutter, Datum.HEIGHT), hundredths(heightOff));
      Statistics.collect(kind, "table", by);
    }
    assertEquals(expected.keySet(), told.keySet());
    expected.forEach((trait, value) -> assertAsFineAsMeans(value, told.get(trait)));
    Statistics.coverage(
        coverage -> {
          coverage.check("slot", "table", "strip").count(count -> count > 0);
          coverage.check("slot", "table", "one pass").count(count -> count > 0);
          coverage.check("slot", "before", "strip").count(count -> count > 0);
          coverage.check("slot", "beyond", "strip").count(count -> count > 0);
          coverage.check("rabbet", "table", "one pass").count(count -> count > 0);
          coverage.check("rabbet", "beyond", "one pass").count(count -> count > 0);
        });
  }

  @Provide
  Arbitrary<RandomSawSlots.Trial> sawTrials() {
    return RandomSawSlots.trials();
  }

  @Property(tries = 2_000, edgeCases = EdgeCasesMode.NONE)
  void sawSlots_tellWhatTheyWereCutWith(
      @ForAll("sawTrials") RandomSawSlots.Trial trial,
      @ForAll @IntRange(min = -15, max = 15) int cutterOver,
      @ForAll @IntRange(min = -90, max = 90) int guideOff,
      @ForAll @IntRange(min = -90, max = 90) int heightOff) {
    if (!(trial.answer() instanceof Setup setup)) {
      return;
    }
    var marked = Truth.asMarked(setup).cuts();
    var truth =
        new Truth(marked.plus(hundredths(cutterOver)), hundredths(guideOff), hundredths(heightOff));
    var wood = CutSimulation.cut(setup, trial.across(), truth).wood();
    if (wood.nearWall().isLessThan(Length.ofMicrometres(10)) || isFinned(wood)) {
      // Run out at the edge, or with a kerf so far under its mark that a fin stands: no slot.
      Statistics.collect("spoilt", "");
      return;
    }
    var told = told(setup, measure -> cameTo(measure, wood));

    var machine = setup.machine().id();
    var cutter = setup.cutter().id();
    boolean onSled = setup.setting(Setting.Role.STOP).isPresent();
    assertEquals(
        Set.of(
            trial.stacked() ? new Trait.StackWider(cutter) : new Trait.CutWidth(cutter),
            new Trait.ScaleOffset(
                machine, cutter, onSled ? Datum.STOP : Datum.FENCE_TO_NEAREST_EDGE),
            new Trait.ScaleOffset(machine, cutter, Datum.HEIGHT)),
        told.keySet());
    told.forEach(
        (trait, value) -> {
          var expected =
              trait instanceof Trait.ScaleOffset scale
                  ? hundredths(scale.datum() == Datum.HEIGHT ? heightOff : guideOff)
                  : trait instanceof Trait.StackWider ? hundredths(cutterOver) : truth.cuts();
          assertAsFineAsMeans(expected, value);
        });
    Statistics.collect(
        trial.stacked() ? "stack" : setup.usesStrip() ? "strips" : "one pass",
        onSled ? "sled" : "fence");
    Statistics.coverage(
        coverage -> {
          coverage.check("stack", "fence").count(count -> count > 0);
          coverage.check("stack", "sled").count(count -> count > 0);
          coverage.check("strips", "fence").count(count -> count > 0);
          coverage.check("strips", "sled").count(count -> count > 0);
        });
  }

  private static boolean isFinned(CutSimulation wood) {
    return !wood.shallowest().equals(wood.deepest());
  }

  private static Length cameTo(Measure measure, CutSimulation wood) {
    return switch (measure.dimension()) {
      case WIDTH -> wood.width();
      case DEPTH -> wood.deepest();
      case DISTANCE -> wood.nearWall();
      case SIZE, RUN_ACROSS, RUN_THROUGH, RUN_ALONG, DIAMETER, FROM_END ->
          throw new AssertionError("no slot parts or bores");
    };
  }

  @Test
  void rip_tellsOfItsFence() {
    var told = told(rip(true), measure -> Length.of("400.3 mm"));
    assertEquals(
        Map.of(
            new Trait.ScaleOffset("saw", "250", Datum.FENCE_TO_NEAREST_EDGE), Length.of("0.3 mm")),
        told);
  }

  @Test
  void crosscut_tellsOfItsStop() {
    var told = told(rip(false), measure -> Length.of("399.9 mm"));
    assertEquals(
        Map.of(new Trait.ScaleOffset("saw", "250", Datum.STOP), Length.of("-0.1 mm")), told);
  }

  /** What was set counts, not what was asked: a corrected fence tells the same of its scale. */
  @Test
  void correctedFence_tellsTheSameOfItsScale() {
    var corrected = rip(true).movedBy(Setting.Role.FENCE, Length.of("-0.3 mm"));
    var told = told(corrected, measure -> Length.of("400 mm"));
    assertEquals(
        Map.of(
            new Trait.ScaleOffset("saw", "250", Datum.FENCE_TO_NEAREST_EDGE), Length.of("0.3 mm")),
        told);
  }

  /** 17.87 with a strip of 1.88 and a cutter that cuts 15.9. */
  @Test
  void observation_keepsTheMeanOfItsReadings() {
    var readings =
        Map.of(
            Measure.Dimension.WIDTH, List.of("17.77 mm", "17.78 mm", "17.78 mm"),
            Measure.Dimension.DEPTH, List.of("6.1 mm", "6.1 mm", "6.1 mm"),
            Measure.Dimension.DISTANCE, List.of("99.9 mm", "100.1 mm"));
    var told =
        Observations.of(
            "p1",
            slot(),
            measure -> readings.get(measure.dimension()).stream().map(Length::of).toList(),
            MONDAY);
    var width = told.get(0);
    assertEquals(new Trait.CutWidth("16"), width.trait());
    assertEquals(Length.of("16 mm"), width.set());
    // (17.77 + 17.78 + 17.78) ÷ 3 = 17.777, less the strip of 1.88
    assertEquals(Length.of("15.897 mm"), width.found());
    assertEquals(Length.of("-0.103 mm"), width.off());
  }

  @Test
  void tooFewOrUnevenReadings_tellNothing() {
    var none =
        Observations.of(
            "p1",
            slot(),
            measure ->
                switch (measure.dimension()) {
                  case WIDTH -> List.of(Length.of("17.7 mm"), Length.of("17.7 mm"));
                  case DISTANCE -> List.of(Length.of("99 mm"), Length.of("101 mm"));
                  case DEPTH, SIZE, RUN_ACROSS, RUN_THROUGH, RUN_ALONG, DIAMETER, FROM_END ->
                      List.of();
                },
            MONDAY);
    assertEquals(List.of(), none);
  }

  private static Map<Trait, Length> told(Setup setup, Function<Measure, Length> really) {
    return Observations.of(
            "p1",
            setup,
            measure -> Collections.nCopies(measure.readings(), really.apply(measure)),
            MONDAY)
        .stream()
        .collect(Collectors.toMap(Observation::trait, Observation::value));
  }

  /** Each mean is rounded to 0.001 mm, and at most two of them go into one observation. */
  private static void assertAsFineAsMeans(Length expected, Length told) {
    assertTrue(
        expected.minus(told).abs().isAtMost(Length.ofMicrometres(1)),
        () -> told + " instead of " + expected);
  }

  private static Setup slot() {
    return setup(
        RouterTableSetup.slot(
            new CutAsked.Slot(
                entered("17.87 mm"),
                new Band(Length.of("17.83 mm"), Length.of("17.91 mm")),
                entered("6 mm"),
                entered("100 mm"),
                work()),
            ShopsForTests.TABLE,
            ShopsForTests.SIXTEEN,
            ShopsForTests.CONDITIONS));
  }

  private static Setup rip(boolean along) {
    return setup(
        SawSetup.table(
            new CutAsked.Parting(entered("400 mm"), true, along, work()),
            ShopsForTests.SAW,
            ShopsForTests.RIP_BLADE,
            ShopsForTests.CONDITIONS));
  }

  private static Setup setup(Answer answer) {
    return (Setup) answer;
  }

  private static Work work() {
    var size = new Band(CasesForTests.mm(600), CasesForTests.mm(600));
    return new Work(size, size, new Band(CasesForTests.mm(18), CasesForTests.mm(18)));
  }

  private static Worked<Length> entered(String length) {
    return Worked.entered("as asked", Length.of(length));
  }

  private static Length hundredths(int hundredths) {
    return Length.ofMicrometres(hundredths * 10L);
  }
}
