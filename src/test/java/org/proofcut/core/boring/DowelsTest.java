package org.proofcut.core.boring;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.proofcut.core.geometry.Sizes.entered;

import java.util.List;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.geometry.Sizes;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.LengthUnit;

class DowelsTest {

  private static Dowels dowels(String joint, int count, String edge, String diameter) {
    return dowels(joint, count, edge, diameter, "40 mm", "18 mm");
  }

  private static Dowels dowels(
      String joint, int count, String edge, String diameter, String length, String face) {
    return new Dowels(
        entered(joint),
        count,
        entered(edge),
        entered(diameter),
        entered(length),
        entered("1 mm"),
        entered(face),
        entered("18 mm"),
        entered("5 mm"));
  }

  @Test
  void positions_areEvenlySpacedBetweenTheEdges() {
    assertPositions(List.of("20 mm", "80 mm"), dowels("100 mm", 2, "20 mm", "8 mm"));
    assertPositions(List.of("50 mm"), dowels("100 mm", 1, "20 mm", "8 mm"));
    // 60 ÷ 7 = 8.571…: rounded from the nearer edge
    assertPositions(
        List.of(
            "20 mm",
            "28.57 mm",
            "37.14 mm",
            "45.71 mm",
            "54.29 mm",
            "62.86 mm",
            "71.43 mm",
            "80 mm"),
        dowels("100 mm", 8, "20 mm", "4 mm"));
  }

  private static void assertPositions(List<String> expected, Dowels dowels) {
    assertEquals(expected, dowels.positions().stream().map(one -> one.value().toString()).toList());
  }

  @Test
  void depths_shareTheDowel_orLeaveTheFaceWhole() {
    var thin = dowels("100 mm", 2, "20 mm", "8 mm", "40 mm", "18 mm");
    // 18 − 5 in the face, 40 + 2 − 13 in the end
    assertEquals(Length.of("13 mm"), thin.depthInFace().value());
    assertEquals(Length.of("29 mm"), thin.depthInEnd().value());
    var thick = dowels("100 mm", 2, "20 mm", "8 mm", "40 mm", "40 mm");
    assertEquals(Length.of("21 mm"), thick.depthInFace().value());
    assertEquals(Length.of("21 mm"), thick.depthInEnd().value());
    assertEquals(Length.of("9 mm"), thick.centre().value());
  }

  @Test
  void dowelsThatCrowdOrSplit_areProblems() {
    assertProblems("", dowels("100 mm", 2, "20 mm", "8 mm"));
    assertProblems("", dowels("100 mm", 2, "8 mm", "8 mm"));
    assertProblems("edge", dowels("100 mm", 2, "7.99 mm", "8 mm"));
    assertProblems("", dowels("56 mm", 2, "20 mm", "8 mm"));
    assertProblems("count", dowels("55.99 mm", 2, "20 mm", "8 mm"));
    assertProblems("count", dowels("39 mm", 1, "20 mm", "8 mm"));
  }

  @Test
  void dowelThatSuitsAnotherThickness_warns_andOneThatFillsIt_stops() {
    assertProblems("", dowels("100 mm", 2, "20 mm", "6 mm"));
    assertProblems("", dowels("100 mm", 2, "20 mm", "9 mm"));
    assertProblems("diameter", dowels("100 mm", 2, "20 mm", "5.99 mm"));
    assertProblems("diameter", dowels("100 mm", 2, "20 mm", "9.01 mm"));
    assertTrue(
        dowels("100 mm", 2, "20 mm", "18 mm", "40 mm", "40 mm")
            .problems(LengthUnit.MILLIMETRE)
            .get(0)
            .stops());
  }

  @Test
  void faceTooThinForTheDowel_isAProblem() {
    assertProblems("", dowels("100 mm", 2, "20 mm", "8 mm", "40 mm", "14 mm"));
    assertProblems("length", dowels("100 mm", 2, "20 mm", "8 mm", "40 mm", "13.99 mm"));
    assertProblems("length", dowels("100 mm", 2, "20 mm", "8 mm", "15.98 mm", "30 mm"));
  }

  private static void assertProblems(String fields, Dowels dowels) {
    assertEquals(
        fields,
        String.join(
            ",",
            dowels.problems(LengthUnit.MILLIMETRE).stream()
                .map(problem -> problem.where())
                .toList()));
  }

  @Test
  void sizesThatAreNone_areRefused() {
    assertThrows(IllegalArgumentException.class, () -> dowels("100 mm", 0, "20 mm", "8 mm"));
    assertThrows(IllegalArgumentException.class, () -> dowels("100 mm", 2, "0 mm", "8 mm"));
  }

  /** Marks the one part from its left edge and the other, face to face with it, from its right. */
  @Property
  void partsMarkedFromEitherEdge_meetHoleOnHole_andTheHolesHoldTheDowel(
      @ForAll("joints") Worked<Length> joint,
      @ForAll("edges") Worked<Length> edge,
      @ForAll @IntRange(min = 1, max = 12) int count,
      @ForAll("faces") Worked<Length> face) {
    var dowels =
        new Dowels(
            joint,
            count,
            edge,
            entered("8 mm"),
            entered("30 mm"),
            entered("1 mm"),
            face,
            entered("20 mm"),
            entered("4 mm"));
    var places = dowels.positions();
    for (int i = 0; i < count; i++) {
      assertEquals(joint.value().minus(places.get(i).value()), places.get(count - 1 - i).value());
    }
    for (int i = 2; i < count; i++) {
      var one = places.get(i).value().minus(places.get(i - 1).value());
      var before = places.get(i - 1).value().minus(places.get(i - 2).value());
      assertTrue(one.minus(before).abs().isAtMost(Length.HUNDREDTH.times(2)));
    }
    assertEquals(
        Length.of("32 mm"), dowels.depthInFace().value().plus(dowels.depthInEnd().value()));
    assertTrue(face.value().minus(dowels.depthInFace().value()).isAtLeast(Length.of("4 mm")));
  }

  @Provide
  Arbitrary<Worked<Length>> joints() {
    return Sizes.hundredths(10_000, 80_000);
  }

  @Provide
  Arbitrary<Worked<Length>> edges() {
    return Sizes.hundredths(800, 4_000);
  }

  @Provide
  Arbitrary<Worked<Length>> faces() {
    return Sizes.hundredths(1_500, 4_000);
  }
}
