package org.proofcut.core.evidence;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

class ProblemTest {

  private static final Problem NO_CUTTER =
      Problem.stops("dado", "no cutter fits 18.3 mm", "up to 18.3 mm", "Enter a narrower cutter");
  private static final Problem SHALLOW =
      Problem.warns("depth", "4 mm is shallow", "4.5 to 9 mm", "Enter 6 mm");

  @Test
  void problem_withoutOneOfItsParts_isRefused() {
    assertThrows(IllegalArgumentException.class, () -> Problem.stops("a", " ", "b", "c"));
    assertThrows(IllegalArgumentException.class, () -> Problem.stops("a", "b", "", "c"));
    assertThrows(IllegalArgumentException.class, () -> Problem.warns("a", "b", "c", ""));
    assertThrows(NullPointerException.class, () -> Problem.warns(null, "b", "c", "d"));
  }

  @Test
  void problem_asMade_saysWhetherItStops() {
    assertTrue(NO_CUTTER.stops());
    assertFalse(SHALLOW.stops());
    assertEquals("Enter a narrower cutter", NO_CUTTER.doThis());
  }

  @Test
  void anyStops_oneAmongWarnings_isEnough() {
    assertTrue(Problem.anyStops(List.of(SHALLOW, NO_CUTTER)));
    assertFalse(Problem.anyStops(List.of(SHALLOW, SHALLOW)));
    assertFalse(Problem.anyStops(List.of()));
  }
}
