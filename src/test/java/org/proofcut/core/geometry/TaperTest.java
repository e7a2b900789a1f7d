package org.proofcut.core.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.proofcut.core.geometry.Sizes.entered;
import static org.proofcut.core.geometry.Sizes.mm;

import java.util.List;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.LengthUnit;
import org.proofcut.core.measure.display.Degrees;

class TaperTest {

  private static final Worked<Length> APART = entered("300 mm");

  @Test
  void leg_taperedOnOneEdge() {
    var leg = new Taper(entered("600 mm"), entered("50 mm"), entered("30 mm"), false);
    assertEquals(Length.of("20 mm"), leg.runsIn().value());
    assertEquals(Length.of("10 mm"), leg.stopOffset(APART).value());
    assertEquals(Length.of("45 mm"), leg.widthAt(entered("150 mm")).value());
    // 20 : 600, 1.909…°
    assertEquals("1.909°", Degrees.text(leg.angle().value(), 3));
    assertThrows(IllegalStateException.class, () -> leg.secondStopOffset(APART));
  }

  @Test
  void leg_taperedOnBothEdges_turnsByTwiceTheAngleForTheSecond() {
    var leg = new Taper(entered("600 mm"), entered("50 mm"), entered("30 mm"), true);
    assertEquals(Length.of("10 mm"), leg.runsIn().value());
    assertEquals(Length.of("5 mm"), leg.stopOffset(APART).value());
    // 300 · 2 · 10 · 600 ÷ (360000 − 100) = 10.00278
    assertEquals(Length.of("10 mm"), leg.secondStopOffset(APART).value());
  }

  /** cos(1.909°) = 0.999445, cos(0.955°) = 0.999861. */
  @Test
  void heel_standsAtTheEndOfThisCut_leanedByTheAngle() {
    var one = new Taper(entered("600 mm"), entered("50 mm"), entered("30 mm"), false);
    assertEquals(Length.of("29.98 mm"), one.heel(false).value());
    assertEquals(Length.of("600 mm"), one.mostApart(false));
    var both = new Taper(entered("600 mm"), entered("50 mm"), entered("30 mm"), true);
    assertEquals(Length.of("40 mm"), both.endAfter(false).value());
    assertEquals(Length.of("39.99 mm"), both.heel(false).value());
    assertEquals(Length.of("30 mm"), both.endAfter(true).value());
    assertEquals(Length.of("30 mm"), both.heel(true).value());
    // 600 − 50 · 2 · 10 · 600 ÷ (600² − 10²) = 600 − 1.67
    assertEquals(Length.of("598.33 mm"), both.mostApart(true));
  }

  @Test
  void pieceThatDoesNotNarrow_orIsAMitre_isAProblem() {
    assertEquals("narrow", problem("600 mm", "50 mm", "50 mm", false));
    assertEquals("narrow", problem("600 mm", "50 mm", "60 mm", true));
    assertEquals("run", problem("20 mm", "50 mm", "30 mm", false));
    assertEquals("", problem("20 mm", "50 mm", "30.01 mm", false));
    assertEquals("", problem("600 mm", "50 mm", "0 mm", true));
  }

  private static String problem(String run, String wide, String narrow, boolean both) {
    var taper = new Taper(entered(run), entered(wide), entered(narrow), both);
    List<String> fields =
        taper.problems(LengthUnit.MILLIMETRE).stream().map(problem -> problem.where()).toList();
    return String.join(",", fields);
  }

  @Test
  void sizesThatAreNone_areRefused() {
    assertThrows(
        IllegalArgumentException.class,
        () -> new Taper(entered("0 mm"), entered("50 mm"), entered("30 mm"), true));
    assertThrows(
        IllegalArgumentException.class,
        () -> new Taper(entered("600 mm"), entered("50 mm"), entered("-1 mm"), true));
    var taper = new Taper(entered("600 mm"), entered("50 mm"), entered("30 mm"), true);
    assertThrows(IllegalArgumentException.class, () -> taper.widthAt(entered("600.01 mm")));
    assertThrows(IllegalArgumentException.class, () -> taper.stopOffset(entered("0 mm")));
    var straight = new Taper(entered("600 mm"), entered("50 mm"), entered("50 mm"), true);
    assertThrows(IllegalArgumentException.class, straight::angle);
    assertThrows(IllegalArgumentException.class, () -> straight.stopOffset(APART));
    var mitre = new Taper(entered("10 mm"), entered("50 mm"), entered("30 mm"), true);
    assertThrows(IllegalArgumentException.class, () -> mitre.secondStopOffset(APART));
  }

  /**
   * Lays the piece on the carrier by its two stops, cuts along the carrier's edge, and measures
   * what is left at both ends of the run.
   */
  @Property
  void stops_letTheCutTakeTheEdgeToTheNarrowEnd(
      @ForAll("runs") Worked<Length> run,
      @ForAll("wides") Worked<Length> wide,
      @ForAll("narrows") Worked<Length> narrow,
      @ForAll boolean bothEdges) {
    var taper = new Taper(run, wide, narrow, bothEdges);
    double apart = 300;
    double first = mm(taper.stopOffset(APART)) / apart;
    double cut = mm(run) * first;
    double allowed = 0.006 / apart * mm(run);
    double lost = mm(wide) - mm(narrow);
    if (!bothEdges) {
      assertEquals(lost, cut, allowed);
    } else {
      // The second time the edge just cut lies against the stops; seen from the middle line, the
      // new edge leans by what the stops say less what that edge leans already.
      double second = mm(taper.secondStopOffset(APART)) / apart;
      double leans = Math.atan(second) - Math.atan(first);
      assertEquals(lost, cut + mm(run) * Math.tan(leans), 4 * allowed);
    }
    assertEquals(Math.toDegrees(Math.atan(cut / mm(run))), Sizes.degrees(taper.angle()), 0.003);
    assertEquals(narrow.value(), taper.widthAt(run).value());
  }

  @Provide
  Arbitrary<Worked<Length>> runs() {
    return Sizes.hundredths(20_000, 150_000);
  }

  @Provide
  Arbitrary<Worked<Length>> wides() {
    return Sizes.hundredths(5_000, 10_000);
  }

  @Provide
  Arbitrary<Worked<Length>> narrows() {
    return Sizes.hundredths(0, 4_999);
  }
}
