package org.proofcut.core.weight;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.proofcut.core.evidence.Citation;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.exposure.Lift.NotCovered;
import org.proofcut.core.exposure.LiftLimits;
import org.proofcut.core.exposure.LiftTask;
import org.proofcut.core.exposure.LiftTask.Reach;
import org.proofcut.core.measure.Length;
import org.proofcut.core.part.Part;

class PartAtTheSawTest {

  private static final LiftLimits LIMITS =
      new LiftLimits(
          given("longest", Length.of("1200 mm")),
          given("deepest", Length.of("600 mm")),
          given("out", Length.of("400 mm")),
          given("from", Length.of("600 mm")),
          given("to", Length.of("900 mm")),
          given("lifts", 1));

  /** A part of 300 mm is held at 20 cm and half of it: 350 mm. One of 600 mm at 500 mm. */
  @Test
  void reach_isNoNearerThanHalfOfThePartBeforeTheBody() {
    int deeper = 0;
    for (var part : parts()) {
      var out = at(part).from().out().value();
      var half = PartAtTheSaw.deep(part).half().plus(Length.of("200 mm"));
      assertEquals(half.max(Length.of("400 mm")), out, part.name());
      deeper += half.isGreaterThan(Length.of("400 mm")) ? 1 : 0;
      assertEquals(out, at(part).placed().map(Reach::out).orElseThrow().value());
    }
    assertTrue(deeper > 0, "none is deep");
  }

  /** Taken up below 25 cm there is the body's 25 cm before it. */
  @Test
  void reach_fromNearTheFloor_isFurther() {
    var low =
        new LiftLimits(
            LIMITS.longestHeld(),
            LIMITS.deepestHeld(),
            given("out", Length.of("1 mm")),
            given("from", Length.of("200 mm")),
            LIMITS.sawHandsTo(),
            LIMITS.sawLiftsPerMinute());
    var part = parts().get(0);
    var lift = PartAtTheSaw.of(part, DensitiesForTests.ALIKE, low).lift();
    var half = PartAtTheSaw.deep(part).half();
    assertEquals(half.plus(Length.of("250 mm")), lift.from().out().value());
    assertEquals(
        half.plus(Length.of("200 mm")), lift.placed().map(Reach::out).orElseThrow().value());
  }

  @Test
  void tooLarge_isNotCovered() {
    for (var part : parts()) {
      var at = PartAtTheSaw.of(part, DensitiesForTests.ALIKE, LIMITS);
      assertEquals(
          at.isTooLarge() ? List.of(NotCovered.UNSTABLE) : List.of(), at.lift().notCovered());
    }
  }

  private static LiftTask at(Part part) {
    return PartAtTheSaw.of(part, DensitiesForTests.ALIKE, LIMITS).lift();
  }

  private static List<Part> parts() {
    return CaseBodyTest.cupboard(900, 600).parts();
  }

  private static <T> Worked<T> given(String name, T value) {
    return Worked.given(name, value, Citation.OWN_CHOICE);
  }
}
