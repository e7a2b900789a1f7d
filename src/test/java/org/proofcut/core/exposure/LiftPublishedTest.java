package org.proofcut.core.exposure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.proofcut.core.evidence.Amount;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.exposure.LiftTable.Grip;
import org.proofcut.core.exposure.LiftTable.Span;
import org.proofcut.core.measure.Angle;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.LengthUnit;

/** The lifting equation as printed in NIOSH 94-110, revised 2021. */
class LiftPublishedTest {

  /** Table 5, the rows that were found. Both columns: below 30 in, and from there on. */
  @ParameterizedTest
  @CsvSource({
    "ONE_HOUR, 0.2, 1.00, 1.00", "ONE_HOUR, 0.5, .97, .97", "ONE_HOUR, 1, .94, .94",
    "ONE_HOUR, 2, .91, .91", "ONE_HOUR, 3, .88, .88", "ONE_HOUR, 4, .84, .84",
    "ONE_HOUR, 5, .80, .80", "ONE_HOUR, 6, .75, .75", "ONE_HOUR, 7, .70, .70",
    "ONE_HOUR, 8, .60, .60", "ONE_HOUR, 9, .52, .52", "ONE_HOUR, 10, .45, .45",
    "TWO_HOURS, 0.2, .95, .95", "TWO_HOURS, 1, .88, .88", "TWO_HOURS, 3, .79, .79",
    "TWO_HOURS, 5, .60, .60", "TWO_HOURS, 8, .35, .35", "TWO_HOURS, 11, .00, .23",
    "EIGHT_HOURS, 0.2, .85, .85", "EIGHT_HOURS, 1, .75, .75", "EIGHT_HOURS, 3, .55, .55",
    "EIGHT_HOURS, 5, .35, .35", "EIGHT_HOURS, 8, .18, .18", "EIGHT_HOURS, 9, .00, .15",
    "EIGHT_HOURS, 10, .00, .13", "EIGHT_HOURS, 11, .00, .00"
  })
  void seldomness_isThatOfTheTable(Span span, String often, String low, String high) {
    assertSame(low, LiftTable.frequency(new BigDecimal(often), span, true));
    assertSame(high, LiftTable.frequency(new BigDecimal(often), span, false));
  }

  /** Example 4 at its origin (found): multipliers 1.0, .94, .87, 1.0, .88, .95; 34.9 lb. */
  @Test
  void example4_origin() {
    var lift = lift("10", "22", "37", "3");
    assertPrinted("1.00", lift.nearness(LengthUnit.INCH));
    assertPrinted("0.94", lift.height(LengthUnit.INCH));
    assertPrinted("0.87", lift.way(LengthUnit.INCH));
    assertPrinted("1.00", lift.straightness());
    assertPrinted("0.88", lift.seldomness());
    assertPrinted("0.95", lift.hold());
    // Printed from multipliers that were rounded first: a tenth may be between.
    assertNear("34.9", lift);
  }

  /** The same at its destination: 15.2 lb and its height found, 20 in out from memory. */
  @Test
  void example4_destination() {
    var lift = lift("20", "59", "37", "3");
    assertPrinted("0.50", lift.nearness(LengthUnit.INCH));
    assertPrinted("0.78", lift.height(LengthUnit.INCH));
    assertPrinted("1.00", lift.hold());
    assertNear("15.2", lift);
  }

  /** Page 7: 23 kg or 51 lb where everything is at its best. */
  @Test
  void bestConditions_giveTheLoadConstant() {
    var inches = lift("10", "30", "10", "0.2");
    assertEquals("51.0 lb", inches.most(LengthUnit.INCH).orElseThrow().value().text());
    var metric =
        new Lift(
            length("250 mm"),
            length("750 mm"),
            length("250 mm"),
            ahead(),
            often("0.2"),
            Span.ONE_HOUR,
            Grip.GOOD,
            List.of());
    assertEquals("23.0 kg", metric.most(LengthUnit.MILLIMETRE).orElseThrow().value().text());
  }

  /** Page 7: nothing beyond 25 in out, 70 in high, 70 in of way or 135° of turn. */
  @Test
  void beyondTheLimits_nothingIsLifted() {
    assertSame("1.00", lift("10", "30", "10", "0.2").nearness(LengthUnit.INCH).value());
    assertSame("0.4", lift("25", "30", "10", "0.2").nearness(LengthUnit.INCH).value());
    assertSame("0", lift("25.01", "30", "10", "0.2").nearness(LengthUnit.INCH).value());
    assertSame("0.70", lift("10", "70", "10", "0.2").height(LengthUnit.INCH).value());
    assertSame("0", lift("10", "70.01", "10", "0.2").height(LengthUnit.INCH).value());
    assertSame("0", lift("10", "30", "70.01", "0.2").way(LengthUnit.INCH).value());
    assertSame("0.5680", turned(Angle.ofDegrees(135)).straightness().value());
    assertSame("0", turned(Angle.parse("135.01°")).straightness().value());
  }

  /** Page 6: there is no figure for what the equation was not made for. */
  @ParameterizedTest
  @EnumSource(Lift.NotCovered.class)
  void whatIsNotCovered_getsNoFigure(Lift.NotCovered one) {
    var good = lift("10", "30", "10", "0.2");
    var lift =
        new Lift(
            good.horizontal(),
            good.vertical(),
            good.travel(),
            good.turn(),
            good.often(),
            good.span(),
            good.grip(),
            List.of(one));
    assertEquals(Optional.empty(), lift.most(LengthUnit.INCH));
  }

  /**
   * Table 7: fair, found in Example 4; good and poor from memory. The hands are low below 30 in.
   */
  @ParameterizedTest
  @CsvSource({"GOOD, 1.00, 1.00", "FAIR, 0.95, 1.00", "POOR, 0.90, 0.90"})
  void hold_isThatOfTheTable(Grip grip, String low, String high) {
    assertSame(low, held(grip, "29.99 in"));
    assertSame(high, held(grip, "30 in"));
  }

  private static BigDecimal held(Grip grip, String high) {
    var good = lift("10", "30", "10", "0.2");
    return new Lift(
            good.horizontal(),
            length(high),
            good.travel(),
            good.turn(),
            good.often(),
            good.span(),
            grip,
            List.of())
        .hold()
        .value();
  }

  /** 1.3.1.1: half of the load and 8 in, or 10 in where the hands are below 10 in; 20 and 25 cm. */
  @ParameterizedTest
  @CsvSource({
    "16 in, 10 in, INCH, 16 in",
    "16 in, 9.99 in, INCH, 18 in",
    "400 mm, 250 mm, MILLIMETRE, 400 mm",
    "400 mm, 249.9 mm, MILLIMETRE, 450 mm"
  })
  void estimatedOut_isHalfTheLoadAndTheBody(
      String deep, String high, LengthUnit unit, String expected) {
    assertEquals(Length.of(expected), Lift.estimatedOut(length(deep), length(high), unit).value());
  }

  /**
   * Example 4 with its 26 lb (from memory): index .7 where it is taken up and 1.7 where it is put
   * down, which is the one that counts. Printed to one place.
   */
  @Test
  void example4_index() {
    var task =
        new LiftTask(
            Worked.entered("weight", new Amount(new BigDecimal("26"), "lb")),
            new LiftTask.Reach(length("10 in"), ahead()),
            length("22 in"),
            Optional.of(new LiftTask.Reach(length("20 in"), ahead())),
            length("59 in"),
            often("3"),
            Span.ONE_HOUR,
            Grip.FAIR,
            List.of());
    var judged = task.judged(LengthUnit.INCH);
    assertIndex("0.7", judged.get(0));
    assertIndex("1.7", judged.get(1));
    var decides = task.decides(LengthUnit.INCH).orElseThrow();
    assertEquals(LiftTask.End.FINISH, decides.end());
    assertEquals(LiftTask.Strain.RAISED, decides.strain());
  }

  /**
   * Page 20: an index to 1.0 is the aim, over it the risk rises, over 3.0 for nearly all workers.
   * Where 23 kg are recommended, just as much is within it and a gram more is not.
   */
  @ParameterizedTest
  @CsvSource({
    "23, WITHIN, 1.00",
    "23.001, RAISED, 1.01",
    "69, RAISED, 3.00",
    "69.001, GRAVE, 3.01"
  })
  void strain_partsAtOneAndThree(String kilograms, LiftTask.Strain strain, String index) {
    var task =
        new LiftTask(
            Worked.entered("weight", new Amount(new BigDecimal(kilograms), "kg")),
            new LiftTask.Reach(length("250 mm"), ahead()),
            length("750 mm"),
            Optional.empty(),
            length("750 mm"),
            often("0.2"),
            Span.ONE_HOUR,
            Grip.GOOD,
            List.of());
    var judged = task.decides(LengthUnit.MILLIMETRE).orElseThrow();
    assertEquals(strain, judged.strain());
    assertEquals(index, judged.index().orElseThrow().value().toPlainString());
  }

  private static void assertIndex(String printed, LiftTask.Judged judged) {
    var off = judged.index().orElseThrow().value().subtract(new BigDecimal(printed)).abs();
    assertTrue(off.compareTo(new BigDecimal("0.05")) <= 0, () -> printed + ": " + judged.index());
  }

  private static Lift lift(String out, String high, String way, String often) {
    return new Lift(
        length(out + " in"),
        length(high + " in"),
        length(way + " in"),
        ahead(),
        often(often),
        Span.ONE_HOUR,
        Grip.FAIR,
        List.of());
  }

  private static Lift turned(Angle turn) {
    return new Lift(
        length("10 in"),
        length("30 in"),
        length("10 in"),
        Worked.entered("turn", turn),
        often("0.2"),
        Span.ONE_HOUR,
        Grip.GOOD,
        List.of());
  }

  private static Worked<Length> length(String text) {
    return Worked.entered("length", Length.of(text));
  }

  private static Worked<Angle> ahead() {
    return Worked.entered("turn", Angle.ZERO);
  }

  private static Worked<BigDecimal> often(String often) {
    return Worked.entered("lifts in a minute", new BigDecimal(often));
  }

  private static void assertSame(String expected, BigDecimal actual) {
    assertEquals(0, new BigDecimal(expected).compareTo(actual), () -> expected + ": " + actual);
  }

  /** Multipliers are printed to two places. */
  private static void assertPrinted(String printed, Worked<BigDecimal> multiplier) {
    assertSame(printed, multiplier.value().setScale(2, RoundingMode.HALF_UP));
  }

  private static void assertNear(String printed, Lift lift) {
    var off =
        lift.most(LengthUnit.INCH)
            .orElseThrow()
            .value()
            .value()
            .subtract(new BigDecimal(printed))
            .abs();
    assertTrue(off.compareTo(new BigDecimal("0.1")) <= 0, () -> printed + " printed: " + lift);
  }
}
