package org.proofcut.core.proof;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import java.util.List;
import java.util.stream.LongStream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.Tuple;
import net.jqwik.api.statistics.Statistics;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.Rounding;
import org.proofcut.core.setup.Answer;
import org.proofcut.core.setup.CutAsked;
import org.proofcut.core.setup.CutSimulation;
import org.proofcut.core.setup.CutSimulation.Truth;
import org.proofcut.core.setup.Measure;
import org.proofcut.core.setup.RandomCuts;
import org.proofcut.core.setup.RandomSawSlots;
import org.proofcut.core.setup.Setting;
import org.proofcut.core.setup.Setup;

/**
 * The whole loop at the bench: cut with a cutter that is not its mark, at a fence and a height that
 * do not read true; measure; judge; correct; cut again.
 */
class ProofByCuttingTest {

  private static final int MOST_CORRECTIONS = 1;

  /** What the maker's readings scatter by, one offset for each reading of a measure. */
  record Bench(Length cutterOverMark, Length guideOff, Length heightOff, List<Length> scatter) {}

  @Provide
  Arbitrary<RandomCuts.Trial> trials() {
    return RandomCuts.trials();
  }

  @Provide
  Arbitrary<Bench> benches() {
    // A good bench scatters by a hundredth or two, a bad one by more than any fit allows.
    var scatter =
        Arbitraries.frequencyOf(
            Tuple.of(5, hundredths(0, 1)),
            Tuple.of(2, hundredths(-4, 4)),
            Tuple.of(1, hundredths(-30, 30)));
    return Combinators.combine(
            hundredths(-25, 25), hundredths(-90, 90), hundredths(-90, 90), scatter.list().ofSize(3))
        .as(Bench::new);
  }

  private static Arbitrary<Length> hundredths(int least, int most) {
    return Arbitraries.integers().between(least, most).map(n -> Length.ofMicrometres(n * 10L));
  }

  @Property(tries = 3_000, edgeCases = EdgeCasesMode.NONE)
  void anySetup_isProvenAfterOneCorrection_orRightlyGivenUp(
      @ForAll("trials") RandomCuts.Trial trial, @ForAll("benches") Bench bench) {
    prove(trial.answer(), trial.across(), bench);
  }

  @Property(tries = 1_500, edgeCases = EdgeCasesMode.NONE)
  void anySlotAtTheSaw_isProvenAfterOneCorrection_orRightlyGivenUp(
      @ForAll("sawSlots") RandomSawSlots.Trial trial, @ForAll("benches") Bench bench) {
    prove(trial.answer(), trial.across(), bench);
  }

  @Provide
  Arbitrary<RandomSawSlots.Trial> sawSlots() {
    return RandomSawSlots.trials();
  }

  private static void prove(Answer answer, Length across, Bench bench) {
    if (!(answer instanceof Setup setup)) {
      collect("no set-up");
      return;
    }
    var truth =
        new Truth(
            Truth.asMarked(setup).cuts().plus(bench.cutterOverMark()),
            bench.guideOff(),
            bench.heightOff());
    for (int corrections = 0; corrections <= MOST_CORRECTIONS; corrections++) {
      var wood = CutSimulation.cut(setup, across, truth).wood();
      if (setup.asked() instanceof CutAsked.Slot && !wood.nearWall().isPositive()) {
        // Set so near the edge that, off as the guide is, it is no slot: told before it is
        // measured.
        collect("ran out at the edge");
        return;
      }
      for (var measure : setup.measures()) {
        assertRight(Proof.judge(measure, readings(measure, wood, bench), setup), setup);
      }
      var verdicts = Proof.judge(setup, measure -> readings(measure, wood, bench));
      if (verdicts.stream().allMatch(Verdict::isProven)) {
        collect("proven");
        return;
      }
      if (verdicts.stream().anyMatch(ProofByCuttingTest::givesUp)) {
        collect("given up");
        return;
      }
      for (var verdict : verdicts) {
        if (verdict.correction().isPresent()) {
          var correction = verdict.correction().get();
          setup = setup.movedBy(correction.role(), correction.by());
        }
      }
    }
    fail("still not proven: " + setup.machine().kind() + " " + setup.passes() + " " + bench);
  }

  private static void collect(String end) {
    Statistics.label("end")
        .collect(end)
        .coverage(
            coverage -> {
              coverage.check("proven").percentage(share -> share > 20);
              coverage.check("given up").percentage(share -> share > 5);
            });
  }

  private static boolean givesUp(Verdict verdict) {
    return switch (verdict.outcome()) {
      case OTHER_CUTTER, UNEVEN -> true;
      case PROVEN, CHANGE -> false;
      case MORE_READINGS -> throw new AssertionError("every reading was taken");
    };
  }

  private static List<Length> readings(Measure measure, CutSimulation wood, Bench bench) {
    var found =
        switch (measure.dimension()) {
          case WIDTH -> wood.width();
          case DEPTH -> wood.deepest();
          case DISTANCE -> wood.nearWall();
          case SIZE, RUN_ACROSS, RUN_THROUGH, RUN_ALONG, DIAMETER, FROM_END ->
              throw new AssertionError("no router parts the stock");
        };
    return bench.scatter().stream().limit(measure.readings()).map(found::plus).toList();
  }

  /** The verdict against a search through every step that the setting could be moved by. */
  private static void assertRight(Verdict verdict, Setup setup) {
    var measure = verdict.measure();
    var found = verdict.found();
    boolean allIn = found.stream().allMatch(measure.accepted()::contains);
    assertEquals(allIn, verdict.isProven(), () -> verdict.toString());
    if (allIn) {
      return;
    }
    var setting = measure.correctedBy().flatMap(setup::setting);
    var middle = List.of(verdict.ends().orElseThrow().middle());
    boolean someStepServes = setting.isPresent() && someStepServes(measure, found, setting.get());
    boolean someStepWouldServeEvenReadings =
        setting.isPresent() && someStepServes(measure, middle, setting.get());
    switch (verdict.outcome()) {
      case CHANGE -> {
        assertTrue(someStepServes);
        var correction = verdict.correction().orElseThrow();
        assertTrue(
            found.stream().map(correction.by()::plus).allMatch(measure.accepted()::contains),
            () -> "the correction leaves a reading out: " + verdict);
      }
      case UNEVEN -> {
        assertFalse(someStepServes, () -> "a step would have served: " + verdict);
        var extent = verdict.ends().orElseThrow().extent();
        assertTrue(
            someStepWouldServeEvenReadings || extent.isGreaterThan(measure.accepted().extent()),
            () -> "not the spread is at fault: " + verdict);
      }
      case OTHER_CUTTER ->
          assertFalse(someStepWouldServeEvenReadings, () -> "a step would serve: " + verdict);
      case PROVEN, MORE_READINGS -> fail(verdict.toString());
    }
  }

  private static boolean someStepServes(Measure measure, List<Length> found, Setting setting) {
    long most = Length.ofMillimetres(3).dividedBy(setting.step(), Rounding.UP);
    return LongStream.rangeClosed(-most, most)
        .mapToObj(setting.step()::times)
        .filter(by -> setting.set().value().plus(by).isPositive())
        .anyMatch(by -> found.stream().map(by::plus).allMatch(measure.accepted()::contains));
  }
}
