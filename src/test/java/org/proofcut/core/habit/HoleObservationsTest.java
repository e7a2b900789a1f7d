package org.proofcut.core.habit;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.measure.Band;
import org.proofcut.core.measure.Length;
import org.proofcut.core.setup.CutAsked.Countersink;
import org.proofcut.core.setup.CutAsked.Holes;
import org.proofcut.core.setup.CutAsked.Row;
import org.proofcut.core.setup.DrillSetup;
import org.proofcut.core.setup.Measure;
import org.proofcut.core.setup.Setup;
import org.proofcut.core.setup.ShopsForTests;
import org.proofcut.core.setup.Work;
import org.proofcut.core.stock.Material;

class HoleObservationsTest {

  private static final Row ROW = new Row(entered("37 mm"), List.of(entered("96 mm")));
  private static final Work WORK = new Work(at("700 mm"), at("300 mm"), at("18 mm"));
  private static final Holes HOLES =
      new Holes(
          entered("5 mm"),
          Optional.empty(),
          Optional.of(entered("10 mm")),
          false,
          ROW,
          Material.PLYWOOD,
          WORK);

  private static Worked<Length> entered(String length) {
    return Worked.entered("test", Length.of(length));
  }

  private static Band at(String length) {
    return new Band(Length.of(length), Length.of(length));
  }

  private static Map<Trait, Length> told(Setup setup, Function<Measure, String> found) {
    var told = new HashMap<Trait, Length>();
    for (var one :
        Observations.of(
            "p",
            setup,
            measure -> List.of(Length.of(found.apply(measure)), Length.of(found.apply(measure))),
            Instant.EPOCH)) {
      told.put(one.trait(), one.trait().valueOf(one.set(), one.found()));
    }
    return told;
  }

  private static String asBored(Measure measure) {
    return switch (measure.dimension()) {
      case DIAMETER -> "5.1 mm";
      case DEPTH -> "10.1 mm";
      // The centre lies 37.25 and 95.85 from edge and end.
      case DISTANCE -> "34.7 mm";
      case FROM_END -> "93.3 mm";
      case WIDTH, SIZE, RUN_ACROSS, RUN_THROUGH, RUN_ALONG ->
          throw new AssertionError("no hole has it");
    };
  }

  /** A hole 0.1 wider has its near wall 0.05 nearer: the centre is told, not the wall. */
  @Test
  void press_tellsHowFenceStopAndDepthAreOff() {
    var setup =
        (Setup)
            DrillSetup.holes(
                HOLES, ShopsForTests.PRESS, ShopsForTests.FIVE, ShopsForTests.CONDITIONS);
    assertEquals(
        Map.of(
            new Trait.ScaleOffset("press", "5", Trait.Datum.FENCE_TO_CENTRE),
            Length.of("0.25 mm"),
            new Trait.ScaleOffset("press", "5", Trait.Datum.STOP),
            Length.of("-0.15 mm"),
            new Trait.ScaleOffset("press", "5", Trait.Datum.DEPTH),
            Length.of("0.1 mm")),
        told(setup, HoleObservationsTest::asBored));
  }

  /** Marks are struck anew each time, and a collar is set by caliper. */
  @Test
  void drillInTheHands_tellsNothing() {
    var setup =
        (Setup)
            DrillSetup.holes(
                HOLES, ShopsForTests.DRILL, ShopsForTests.FIVE, ShopsForTests.CONDITIONS);
    assertEquals(Map.of(), told(setup, HoleObservationsTest::asBored));
  }

  /** Where the head lies is not how deep the stop was set. */
  @Test
  void countersink_tellsNothing() {
    var seat =
        new Countersink(
            entered("8 mm"), entered("4 mm"), entered("0.3 mm"), ROW, Material.HARDWOOD, WORK);
    var setup =
        (Setup)
            DrillSetup.countersink(
                seat, ShopsForTests.PRESS, ShopsForTests.CONE, ShopsForTests.CONDITIONS);
    assertEquals(Map.of(), told(setup, measure -> "0.4 mm"));
  }
}
