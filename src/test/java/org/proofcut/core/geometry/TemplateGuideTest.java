package org.proofcut.core.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.proofcut.core.geometry.Sizes.entered;

import java.util.List;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.proofcut.core.evidence.Problem;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.LengthUnit;

class TemplateGuideTest {

  private static final TemplateGuide GUIDE = guide("30 mm", "28 mm", "12 mm");

  private static TemplateGuide guide(String bush, String bore, String cutter) {
    return new TemplateGuide(entered(bush), entered(bore), entered(cutter));
  }

  @Test
  void recess_needsALargerOpening_andAPieceASmallerTemplate() {
    assertEquals(Length.of("9 mm"), GUIDE.offset().value());
    assertEquals(Length.of("58 mm"), GUIDE.opening(entered("40 mm")).value());
    assertEquals(Length.of("182 mm"), GUIDE.outline(entered("200 mm")).value());
    assertEquals(Length.of("6 mm"), GUIDE.leastInsideRadius().value());
    assertEquals(Length.of("15 mm"), GUIDE.leastTemplateRadius().value());
    assertEquals(Length.of("9 mm"), GUIDE.roundingOfSharpCorners().value());
    assertEquals(Length.of("22 mm"), GUIDE.cutterOut(entered("12 mm"), entered("10 mm")).value());
  }

  @Test
  void cutterThatDoesNotTurnFree_andCollarThatStandsOnTheWork_areProblems() {
    assertEquals(List.of(), fields(GUIDE, "11.9 mm", "12 mm"));
    assertEquals(List.of("template"), fields(GUIDE, "12 mm", "12 mm"));
    assertEquals(List.of("cutter"), fields(guide("30 mm", "28 mm", "28 mm"), "9 mm", "12 mm"));
    assertEquals(List.of("bore"), fields(guide("30 mm", "30 mm", "12 mm"), "9 mm", "12 mm"));
  }

  private static List<String> fields(TemplateGuide guide, String collar, String template) {
    return guide.problems(Length.of(collar), Length.of(template), LengthUnit.MILLIMETRE).stream()
        .map(Problem::where)
        .toList();
  }

  @Test
  void recessAndPieceTooSmall_areProblems() {
    var unit = LengthUnit.MILLIMETRE;
    assertEquals(List.of(), GUIDE.problemsOfRecess(Length.of("12 mm"), unit));
    assertEquals(
        "12.00 mm or more", GUIDE.problemsOfRecess(Length.of("11.99 mm"), unit).get(0).allowed());
    assertEquals(List.of(), GUIDE.problemsOfPiece(Length.of("18.01 mm"), unit));
    assertEquals(
        "more than 18.00 mm", GUIDE.problemsOfPiece(Length.of("18 mm"), unit).get(0).allowed());
    assertThrows(IllegalArgumentException.class, () -> GUIDE.outline(entered("18 mm")));
    assertThrows(IllegalArgumentException.class, () -> guide("30 mm", "28 mm", "0 mm"));
  }

  /** Moves the bush from wall to wall of the opening, and round the outside of the template. */
  @Property
  void bushMovedFromWallToWall_cutsWhatWasAsked(
      @ForAll("cutters") Worked<Length> cutter,
      @ForAll("more") Worked<Length> more,
      @ForAll("sizes") Worked<Length> size) {
    var bush = entered(cutter.value().plus(more.value()));
    var guide = new TemplateGuide(bush, entered(cutter.value().plus(more.value().half())), cutter);
    var bushRadius = bush.value().half();
    var cutterRadius = cutter.value().half();
    var opening = guide.opening(size).value();
    var leftmostAxis = bushRadius;
    var rightmostAxis = opening.minus(bushRadius);
    assertEquals(
        size.value(), rightmostAxis.plus(cutterRadius).minus(leftmostAxis.minus(cutterRadius)));
    var template = guide.outline(size).value();
    var axisLeft = bushRadius.negated();
    var axisRight = template.plus(bushRadius);
    assertEquals(size.value(), axisRight.minus(cutterRadius).minus(axisLeft.plus(cutterRadius)));
    assertEquals(guide.offset().value(), leftmostAxis.minus(cutterRadius));
  }

  @Provide
  Arbitrary<Worked<Length>> cutters() {
    return Sizes.hundredths(300, 2_500);
  }

  @Provide
  Arbitrary<Worked<Length>> more() {
    return Sizes.hundredths(50, 2_500);
  }

  @Provide
  Arbitrary<Worked<Length>> sizes() {
    return Sizes.hundredths(4_000, 50_000);
  }
}
