package org.proofcut.core.boring;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.proofcut.core.geometry.Sizes.degrees;
import static org.proofcut.core.geometry.Sizes.entered;
import static org.proofcut.core.geometry.Sizes.mm;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.proofcut.core.boring.PocketHole.Other;
import org.proofcut.core.boring.PocketHole.Spot;
import org.proofcut.core.evidence.Problem;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.geometry.Sizes;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.LengthUnit;

class PocketHoleTest {

  private static final PocketHole IN_EIGHTEEN = hole("18 mm", "9 mm", "12 mm");
  private static final Other STILE = other("50 mm", "18 mm");

  private static PocketHole hole(String thickness, String exit, String nose) {
    return new PocketHole(
        degrees("15"),
        entered(thickness),
        entered(exit),
        entered(nose),
        entered("1 mm"),
        entered("9.5 mm"));
  }

  private static Other other(String deep, String thick) {
    return new Other(
        entered(deep),
        Optional.ofNullable(thick).map(Sizes::entered),
        entered("2 mm"),
        entered("12 mm"));
  }

  @Test
  void screw_inEighteenMillimetres_byHand() {
    // 9 ÷ sin 15° = 34.773…
    assertEquals(Length.of("34.77 mm"), IN_EIGHTEEN.axisInWood().value());
    assertEquals(Length.of("73.77 mm"), IN_EIGHTEEN.collar(entered("40 mm")).value());
    assertEquals(Length.of("13 mm"), IN_EIGHTEEN.underTheHead().value());
    var screw = entered("32 mm");
    assertEquals(Length.of("19 mm"), IN_EIGHTEEN.bite(screw).value());
    // 19 · cos 15° = 18.3526, 9 + 19 · sin 15° = 13.9176
    assertEquals(Length.of("18.36 mm"), IN_EIGHTEEN.tipBeyondJoint(screw).value());
    assertEquals(Length.of("13.92 mm"), IN_EIGHTEEN.tipBelowFace(screw).value());
  }

  @Test
  void screws_thatHoldAndStayInside_areChosen() {
    var screws =
        Stream.of("20 mm", "25 mm", "32 mm", "38 mm", "64 mm").map(Sizes::entered).toList();
    var stile = IN_EIGHTEEN.fitting(screws, STILE, LengthUnit.MILLIMETRE);
    assertEquals(
        List.of("25 mm", "32 mm", "38 mm"),
        stile.stream().map(screw -> screw.value().toString()).toList());
    // A sheet's thickness beyond the joint: 32 comes out, 25 reaches 11.6 and leaves 6.4.
    var sheet = other("18 mm", null);
    assertEquals(
        List.of("25 mm"),
        IN_EIGHTEEN.fitting(screws, sheet, LengthUnit.MILLIMETRE).stream()
            .map(screw -> screw.value().toString())
            .toList());
  }

  @Test
  void screwThatComesOut_stops_andOneThatNearlyDoes_warns() {
    // Straight on: 29 mm reaches 16 · cos 15° = 15.46, 31 mm reaches 17.39
    assertProblem("warns: Only 0.61 mm of wood is left beyond the screw's tip", "31 mm", "18 mm");
    assertProblem("stops: The screw's tip comes out of the other part", "32 mm", "18 mm");
    assertProblem("stops: The screw's tip comes out of the other part", "32 mm", "18.36 mm");
    // Sideways: 47 mm goes 34 · sin 15° = 8.8 below 9, 48 mm 9.06
    var sideways = IN_EIGHTEEN.problems(entered("48 mm"), STILE, LengthUnit.MILLIMETRE);
    assertEquals(List.of(true), sideways.stream().map(Problem::stops).toList());
    var nearly = IN_EIGHTEEN.problems(entered("47 mm"), STILE, LengthUnit.MILLIMETRE);
    assertEquals(List.of(false), nearly.stream().map(Problem::stops).toList());
  }

  @Test
  void screwThatDoesNotReach_stops_andOneThatHardlyHolds_warns() {
    assertProblem("stops: A screw of 13.00 mm does not reach the other part", "13 mm", "50 mm");
    assertProblem("warns: Only 0.01 mm of the screw is in the other part", "13.01 mm", "50 mm");
    assertProblem("", "25 mm", "50 mm");
  }

  private static void assertProblem(String expected, String screw, String deep) {
    var problems =
        IN_EIGHTEEN.problems(entered(screw), other(deep, null), LengthUnit.MILLIMETRE).stream()
            .map(one -> (one.stops() ? "stops: " : "warns: ") + one.what())
            .toList();
    assertEquals(expected, String.join("; ", problems));
  }

  @Test
  void pocketThatDoesNotFitThePart_isAProblem() {
    assertField("exit", hole("18 mm", "18 mm", "12 mm"));
    assertField("nose", hole("12 mm", "3 mm", "12 mm"));
    assertField("", hole("12 mm", "6 mm", "12 mm"));
    // Floor of the pocket at 9 − 3 · sin 15° + 4.75 · cos 15° = 12.8 below the face
    assertField("exit", hole("12.5 mm", "9 mm", "2 mm"));
    assertField("", hole("13 mm", "9 mm", "2 mm"));
  }

  private static void assertField(String field, PocketHole hole) {
    var screw = entered(hole.underTheHead().value().plus(Length.of("15 mm")));
    assertEquals(
        field,
        String.join(
            ",",
            hole.problems(screw, other("60 mm", null), LengthUnit.MILLIMETRE).stream()
                .map(Problem::where)
                .toList()));
  }

  @Test
  void sizesThatAreNone_areRefused() {
    assertThrows(IllegalArgumentException.class, () -> hole("0 mm", "9 mm", "12 mm"));
    assertThrows(IllegalArgumentException.class, () -> other("0 mm", null));
    assertThrows(IllegalArgumentException.class, () -> IN_EIGHTEEN.collar(entered("-1 mm")));
    assertThrows(
        IllegalArgumentException.class,
        () -> IN_EIGHTEEN.problems(entered("0 mm"), STILE, LengthUnit.MILLIMETRE));
  }

  /** Bores and drives by distances alone: every spot is judged by how far it is from others. */
  @Property
  void section_isWhatDrillAndScrewLeave(
      @ForAll("thicknesses") Worked<Length> thickness,
      @ForAll("noses") Worked<Length> nose,
      @ForAll("screws") Worked<Length> screw) {
    var exit = entered(thickness.value().half());
    var hole =
        new PocketHole(degrees("15"), thickness, exit, nose, entered("1 mm"), entered("9.5 mm"));
    var section = hole.section(screw);
    assertEquals(mm(screw), distance(section.seat(), section.tip()), 0.02);
    assertEquals(9.5, distance(section.seatFar(), section.seatNear()), 0.02);
    assertEquals(
        distance(section.seatFar(), section.seat()),
        distance(section.seatNear(), section.seat()),
        0.02);
    // The floor stands square on the screw, and the joint lies on the screw's line.
    assertEquals(Math.hypot(mm(screw), 9.5 / 2), distance(section.seatFar(), section.tip()), 0.03);
    double crossing = distance(section.seat(), section.exit());
    assertEquals(mm(nose) + 1, crossing, 0.02);
    // The walls of the pocket run along the screw: as far from its line at the mouth as below.
    assertEquals(9.5 / 2, offLine(section.mouthFar(), section.seat(), section.exit()), 0.08);
    assertEquals(9.5 / 2, offLine(section.mouthNear(), section.seat(), section.exit()), 0.08);
    assertEquals(Length.ZERO, section.mouthFar().y());
    assertTrue(section.mouthFar().x().isLessThan(section.mouthNear().x()));
    // Never nearer to the far side than told.
    assertTrue(hole.tipBeyondJoint(screw).value().isAtLeast(section.tip().x()));
    assertTrue(hole.tipBelowFace(screw).value().isAtLeast(section.tip().y()));
    assertEquals(
        Math.toDegrees(
            Math.atan2(
                number(section.tip().y()) - number(section.seat().y()),
                number(section.tip().x()) - number(section.seat().x()))),
        15,
        0.05);
  }

  private static double number(Length length) {
    return length.inMillimetres().doubleValue();
  }

  private static double distance(Spot one, Spot other) {
    return Math.hypot(number(one.x().minus(other.x())), number(one.y().minus(other.y())));
  }

  private static double offLine(Spot spot, Spot from, Spot to) {
    double area =
        number(to.x().minus(from.x())) * number(spot.y().minus(from.y()))
            - number(to.y().minus(from.y())) * number(spot.x().minus(from.x()));
    return Math.abs(area) / distance(from, to);
  }

  @Provide
  Arbitrary<Worked<Length>> thicknesses() {
    return Sizes.hundredths(1_200, 4_000);
  }

  @Provide
  Arbitrary<Worked<Length>> noses() {
    return Sizes.hundredths(800, 2_000);
  }

  @Provide
  Arbitrary<Worked<Length>> screws() {
    return Sizes.hundredths(2_500, 7_000);
  }
}
