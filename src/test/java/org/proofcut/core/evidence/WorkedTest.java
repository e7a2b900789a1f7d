package org.proofcut.core.evidence;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class WorkedTest {

  private static final Worked<Integer> WIDTH = Worked.entered("case width", 600);
  private static final Worked<Integer> SIDE = Worked.measured("side", 18);
  private static final Worked<Integer> INSIDE =
      Worked.called("width between the sides")
          .by("case width − left side − right side")
          .with(WIDTH)
          .with("left side", SIDE)
          .with("right side", SIDE)
          .is(564);

  @Nested
  class Is {

    @Test
    void is_withFormula_keepsAllThatWasPutIn() {
      assertEquals(564, INSIDE.value());
      assertEquals("case width − left side − right side", INSIDE.formula());
      assertEquals(
          List.of("case width", "left side", "right side"),
          INSIDE.inputs().stream().map(Worked.Input::as).toList());
      assertEquals(Citation.GEOMETRY, INSIDE.source());
      assertFalse(INSIDE.isGiven());
    }

    @Test
    void is_withoutFormula_isRefused() {
      var working = Worked.called("width").with(WIDTH);
      assertThrows(IllegalStateException.class, () -> working.is(1));
    }

    @Test
    void is_withAnotherSource_namesIt() {
      var target =
          Worked.called("target").by("side + 1").with(SIDE).from(Citation.COMMON_PRACTICE).is(19);
      assertEquals(Citation.COMMON_PRACTICE, target.source());
    }
  }

  @Nested
  class Given {

    @Test
    void given_values_sayWhereTheyComeFrom() {
      assertTrue(WIDTH.isGiven() && SIDE.isGiven());
      assertEquals(Citation.ENTERED, WIDTH.source());
      assertEquals(Citation.MEASURED, SIDE.source());
    }

    @Test
    void as_anotherName_keepsTheRest() {
      var renamed = INSIDE.as("length of the bottom");
      assertEquals("length of the bottom", renamed.name());
      assertEquals(INSIDE.inputs(), renamed.inputs());
      assertEquals(INSIDE.value(), renamed.value());
    }
  }

  @Nested
  class Lines {

    @Test
    void lines_ofAComputedValue_goFromTheGivenToTheResultEachOnce() {
      var shelf = Worked.called("shelf").by("inside − side").with(INSIDE).with(SIDE).is(546);
      assertEquals(List.of(WIDTH, SIDE, INSIDE, shelf), shelf.lines());
    }

    @Test
    void lines_ofAGivenValue_areThatValue() {
      assertEquals(List.of(SIDE), SIDE.lines());
    }

    @Test
    void lines_givenTwiceAlike_areWrittenOnce() {
      var sum =
          Worked.called("both")
              .by("a + b")
              .with("a", Worked.measured("side", 18))
              .with("b", Worked.measured("side", 18))
              .is(36);
      assertEquals(2, sum.lines().size());
    }

    @Test
    void lines_sameResultFromOtherInputs_bothStay() {
      var one = Worked.called("depth").by("a").with("a", Worked.entered("a", 1)).is(9);
      var two = Worked.called("depth").by("a").with("a", Worked.entered("a", 2)).is(9);
      var both = Worked.called("sum").by("one + two").with("one", one).with("two", two).is(18);
      assertEquals(5, both.lines().size());
    }

    @Test
    void lines_ofValuesUsedManyTimes_areGatheredAtOnce() {
      Worked<Integer> worked = Worked.entered("step 0", 0);
      for (int step = 1; step <= 60; step++) {
        var before = worked;
        worked =
            Worked.called("step " + step)
                .by("once + again")
                .with("once", before)
                .with("again", before)
                .is(step);
      }
      var last = worked;
      assertEquals(61, assertTimeoutPreemptively(Duration.ofSeconds(5), () -> last.lines().size()));
    }
  }
}
