package org.proofcut.core.feeding;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.proofcut.core.geometry.Sizes.entered;

import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.proofcut.core.evidence.Problem;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.feeding.Thicknessing.Face;
import org.proofcut.core.geometry.Sizes;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.LengthUnit;
import org.proofcut.core.measure.Rounding;

class ThicknessingTest {

  private static ThicknessLimits limits(String deepest, String light, String step) {
    return new ThicknessLimits(
        entered(deepest),
        entered(light),
        entered("300 mm"),
        entered("6 mm"),
        entered("60 mm"),
        entered(step));
  }

  private static Thicknessing from(String start, String target, ThicknessLimits limits) {
    return new Thicknessing(entered(start), entered(target), entered("500 mm"), limits);
  }

  @Test
  void passes_goInPairsFromBothFaces_andTheLastPairIsLight() {
    var passes = from("26 mm", "20 mm", limits("1.5 mm", "0.3 mm", "0.1 mm")).passes();
    // 6 − 2 · 0.3 = 5.4: two pairs of 1.3 and 1.4 mm, then the light pair
    assertEquals(
        List.of("24.7 mm", "23.4 mm", "22 mm", "20.6 mm", "20.3 mm", "20 mm"),
        passes.stream().map(pass -> pass.setTo().value().toString()).toList());
    assertEquals(
        List.of(Face.FIRST, Face.SECOND, Face.FIRST, Face.SECOND, Face.FIRST, Face.SECOND),
        passes.stream().map(Thicknessing.Pass::face).toList());
  }

  @Test
  void littleToTakeOff_isTwoPassesOrOne() {
    var limits = limits("1.5 mm", "0.3 mm", "0.1 mm");
    assertEquals(2, from("20.5 mm", "20 mm", limits).passes().size());
    assertEquals(1, from("20.05 mm", "20 mm", limits).passes().size());
  }

  @Test
  void restThatNoPairCanBear_isAPassOfItsOwn() {
    // 1.15 − 2 · 0.5 = 0.15, and both light passes are as deep as may be
    var passes = from("21.15 mm", "20 mm", limits("0.5 mm", "0.5 mm", "0.1 mm")).passes();
    assertEquals(
        List.of("0.15 mm", "0.5 mm", "0.5 mm"),
        passes.stream().map(pass -> pass.takes().toString()).toList());
  }

  @Test
  void snipe_isAllowedForAtBothEnds() {
    var asked = from("26 mm", "20 mm", limits("1.5 mm", "0.3 mm", "0.1 mm"));
    assertEquals(Length.of("620 mm"), asked.roughLength().value());
  }

  @Test
  void whatCannotBeThicknessed_isAProblem_andNeverAListOfPasses() {
    var limits = limits("1.5 mm", "0.3 mm", "0.1 mm");
    assertProblems("", from("26 mm", "20 mm", limits));
    assertProblems("target", from("20 mm", "20 mm", limits));
    assertProblems("target", from("8 mm", "5.9 mm", limits));
    assertProblems("step", from("26 mm", "20 mm", limits("0.5 mm", "0.3 mm", "2 mm")));
    assertProblems("step", from("21.4 mm", "20 mm", limits("0.5 mm", "0.3 mm", "0.7 mm")));
    assertProblems("", from("26 mm", "20 mm", limits("0.5 mm", "0.3 mm", "0.25 mm")));
    var little = new Thicknessing(entered("26 mm"), entered("20 mm"), entered("179 mm"), limits);
    assertProblems("finished", little);
    assertThrows(IllegalArgumentException.class, () -> from("20 mm", "20 mm", limits).passes());
    assertThrows(
        IllegalArgumentException.class,
        () -> from("26 mm", "20 mm", limits("0.5 mm", "0.3 mm", "2 mm")).passes());
  }

  private static void assertProblems(String fields, Thicknessing asked) {
    assertEquals(
        fields,
        String.join(
            ",", asked.problems(LengthUnit.MILLIMETRE).stream().map(Problem::where).toList()));
  }

  @Test
  void limitsThatAreNone_areRefused() {
    assertThrows(IllegalArgumentException.class, () -> limits("0 mm", "0.3 mm", "0.1 mm"));
    assertThrows(IllegalArgumentException.class, () -> limits("0.2 mm", "0.3 mm", "0.1 mm"));
  }

  /** Planes the board pass by pass, and weighs what each face has lost. */
  @Property
  void board_planedPassByPass_comesToItsThickness_andLosesTheSameOnBothFaces(
      @ForAll("targets") Worked<Length> target,
      @ForAll("removals") Worked<Length> removal,
      @ForAll("deepests") Worked<Length> deepest,
      @ForAll("steps") Worked<Length> step) {
    var limits =
        new ThicknessLimits(
            deepest, entered("0.3 mm"), entered("100 mm"), entered("2 mm"), entered("0 mm"), step);
    var start = entered(target.value().plus(removal.value()));
    var asked = new Thicknessing(start, target, entered("500 mm"), limits);
    assertEquals(List.of(), asked.problems(LengthUnit.MILLIMETRE));
    var thick = start.value();
    var first = Length.ZERO;
    var second = Length.ZERO;
    var passes = asked.passes();
    for (var pass : passes) {
      var taken = thick.minus(pass.setTo().value());
      assertEquals(taken, pass.takes());
      assertTrue(taken.isPositive() && taken.isAtMost(deepest.value()), pass.toString());
      var above = pass.setTo().value().minus(target.value());
      assertEquals(above, above.roundedTo(step.value(), Rounding.DOWN));
      if (pass.face() == Face.FIRST) {
        first = first.plus(taken);
      } else {
        second = second.plus(taken);
      }
      thick = pass.setTo().value();
    }
    assertEquals(target.value(), thick);
    assertTrue(first.minus(second).abs().isLessThan(step.value().times(2)));
    var light = Length.of("0.3 mm").max(step.value());
    assertTrue(passes.get(passes.size() - 1).takes().isAtMost(light));
  }

  @Provide
  Arbitrary<Worked<Length>> targets() {
    return Sizes.hundredths(600, 5_000);
  }

  @Provide
  Arbitrary<Worked<Length>> removals() {
    return Sizes.hundredths(1, 1_500);
  }

  @Provide
  Arbitrary<Worked<Length>> deepests() {
    return Sizes.hundredths(30, 300);
  }

  @Provide
  Arbitrary<Worked<Length>> steps() {
    return Arbitraries.of("0.05 mm", "0.1 mm", "0.127 mm", "0.15 mm").map(Sizes::entered);
  }
}
