package org.proofcut.core.boring;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.proofcut.core.geometry.Sizes.entered;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.proofcut.core.evidence.Problem;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.geometry.Sizes;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.LengthUnit;

class ShelfPinsTest {

  private static ShelfPins row(String side, String pitch, String margin, Integer holes) {
    return new ShelfPins(
        entered(side), entered(pitch), entered(margin), Optional.ofNullable(holes));
  }

  @Test
  void wantedHoles_standInTheMiddleOfTheSide() {
    var row = row("720 mm", "32 mm", "50 mm", 5);
    // (720 − 4 · 32) ÷ 2
    assertEquals(Length.of("296 mm"), row.margin().value());
    assertEquals(
        List.of("296 mm", "328 mm", "360 mm", "392 mm", "424 mm"),
        row.positions().stream().map(one -> one.value().toString()).toList());
  }

  @Test
  void asManyAsFit_keepTheLeastMargin() {
    assertEquals(20, row("720 mm", "32 mm", "50 mm", null).holes().value());
    assertEquals(20, row("708 mm", "32 mm", "50 mm", null).holes().value());
    assertEquals(19, row("707.99 mm", "32 mm", "50 mm", null).holes().value());
    assertEquals(Length.of("50 mm"), row("708 mm", "32 mm", "50 mm", null).margin().value());
  }

  @Test
  void rowThatDoesNotFit_isAProblem_andNeverAFigure() {
    assertProblem("", row("132 mm", "32 mm", "50 mm", null));
    assertProblem("pitch", row("131.99 mm", "32 mm", "50 mm", null));
    assertProblem("pitch", row("131.99 mm", "32 mm", "50 mm", 2));
    assertProblem("", row("131.99 mm", "32 mm", "50 mm", 1));
    assertProblem("holes", row("132 mm", "32 mm", "50 mm", 3));
    assertProblem("margin", row("99 mm", "32 mm", "50 mm", 1));
    assertProblem("", row("100 mm", "32 mm", "50 mm", 1));
    assertThrows(
        IllegalArgumentException.class, () -> row("132 mm", "32 mm", "50 mm", 3).positions());
    assertThrows(IllegalArgumentException.class, () -> row("99 mm", "32 mm", "50 mm", 1).margin());
  }

  private static void assertProblem(String field, ShelfPins row) {
    var fields = row.problems(LengthUnit.MILLIMETRE).stream().map(Problem::where).toList();
    assertEquals(field, String.join(",", fields));
  }

  @Test
  void sizesThatAreNone_areRefused() {
    assertThrows(IllegalArgumentException.class, () -> row("700 mm", "0 mm", "50 mm", null));
    assertThrows(IllegalArgumentException.class, () -> row("700 mm", "32 mm", "-1 mm", null));
    assertThrows(IllegalArgumentException.class, () -> row("700 mm", "32 mm", "50 mm", 0));
  }

  /** Turns the bored side end for end, and walks along it hole by hole. */
  @Property
  void side_turnedEndForEnd_hasItsHolesInTheSamePlaces(
      @ForAll("sides") Worked<Length> side,
      @ForAll("pitches") Worked<Length> pitch,
      @ForAll("margins") Worked<Length> margin) {
    var row = new ShelfPins(side, pitch, margin, Optional.empty());
    var holes = row.positions().stream().map(Worked::value).toList();
    var turned = new ArrayList<>(holes.stream().map(side.value()::minus).toList());
    Collections.reverse(turned);
    assertEquals(holes, turned);
    var walked = holes.get(0);
    assertTrue(walked.isAtLeast(margin.value()));
    for (var hole : holes) {
      assertEquals(walked, hole);
      walked = walked.plus(pitch.value());
    }
    // One more would not keep the margins.
    var longer = pitch.value().times(holes.size()).plus(margin.value().times(2));
    assertTrue(longer.isGreaterThan(side.value()));
  }

  @Provide
  Arbitrary<Worked<Length>> sides() {
    return Sizes.hundredths(30_000, 250_000);
  }

  @Provide
  Arbitrary<Worked<Length>> pitches() {
    return Sizes.hundredths(1_000, 10_000);
  }

  @Provide
  Arbitrary<Worked<Length>> margins() {
    return Sizes.hundredths(0, 15_000);
  }
}
