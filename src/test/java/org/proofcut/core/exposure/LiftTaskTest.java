package org.proofcut.core.exposure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.proofcut.core.evidence.Amount;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.exposure.LiftTable.Grip;
import org.proofcut.core.exposure.LiftTable.Span;
import org.proofcut.core.exposure.LiftTask.End;
import org.proofcut.core.exposure.LiftTask.Reach;
import org.proofcut.core.exposure.LiftTask.Strain;
import org.proofcut.core.measure.Angle;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.LengthUnit;

class LiftTaskTest {

  private static final LengthUnit METRIC = LengthUnit.MILLIMETRE;

  @Test
  void judged_withoutCareAtTheEnd_isTheStartAlone() {
    var task = metric(10, 300, 400, 900, false);
    assertEquals(List.of(End.START), task.judged(METRIC).stream().map(j -> j.end()).toList());
  }

  @Test
  void decides_theEndAtWhichLessIsRecommended() {
    var task = metric(10, 300, 700, 1700, true);
    var judged = task.judged(METRIC);
    assertEquals(2, judged.size());
    var decides = task.decides(METRIC).orElseThrow();
    assertEquals(End.FINISH, decides.end());
    assertTrue(
        judged.stream()
            .allMatch(
                one -> one.most().value().value().compareTo(decides.most().value().value()) >= 0));
  }

  @Test
  void strain_outOfReach_hasNoIndex() {
    var decides = metric(1, 640, 750, 750, false).decides(METRIC).orElseThrow();
    assertEquals(Strain.OUT_OF_REACH, decides.strain());
    assertEquals(Optional.empty(), decides.index());
  }

  /** The equation in floating point; what is recommended is never more than it gives. */
  @Property(tries = 3_000)
  void most_isNeverMoreThanTheEquationGives(
      @ForAll @IntRange(min = 250, max = 630) int out,
      @ForAll @IntRange(min = 0, max = 1750) int from,
      @ForAll @IntRange(min = 0, max = 1750) int to) {
    var lift =
        new Lift(
            length(out + " mm"),
            length(from + " mm"),
            length(Math.abs(to - from) + " mm"),
            turn(30),
            often("1"),
            Span.ONE_HOUR,
            Grip.POOR,
            List.of());
    double exact =
        23
            * (250.0 / out)
            * (1 - 0.003 * Math.abs(from / 10.0 - 75))
            * (0.82 + 4.5 / Math.max(25, Math.abs(to - from) / 10.0))
            * (1 - 0.0032 * 30)
            * 0.94
            * 0.9;
    var most = lift.most(METRIC).orElseThrow().value().value().doubleValue();
    assertTrue(most <= exact + 1e-9, () -> most + " of " + exact);
    assertTrue(most > exact - 0.12, () -> most + " of " + exact);
  }

  /** Twice the weight is twice the index, but for what rounding upward adds. */
  @Property
  void index_isLinearInTheWeight(
      @ForAll @IntRange(min = 1, max = 60) int kilograms,
      @ForAll @IntRange(min = 100, max = 600) int out,
      @ForAll @IntRange(min = 0, max = 1700) int high) {
    var one = index(metric(kilograms, out, high, high, false));
    var two = index(metric(2 * kilograms, out, high, high, false));
    var off = one.multiply(BigDecimal.valueOf(2)).subtract(two);
    assertTrue(off.signum() >= 0 && off.compareTo(new BigDecimal("0.02")) < 0, off::toString);
  }

  @Property
  void heavier_neverLiftsBetter(
      @ForAll @IntRange(min = 1, max = 60) int kilograms,
      @ForAll @IntRange(min = 1, max = 20) int more,
      @ForAll @IntRange(min = 100, max = 600) int out) {
    assertTrue(
        strain(metric(kilograms + more, out, 500, 900, true))
                .compareTo(strain(metric(kilograms, out, 500, 900, true)))
            >= 0);
  }

  @Property
  void farther_isNeverRecommendedMore(
      @ForAll @IntRange(min = 100, max = 700) int out,
      @ForAll @IntRange(min = 1, max = 200) int more) {
    assertTrue(
        most(metric(10, out + more, 500, 900, true))
                .compareTo(most(metric(10, out, 500, 900, true)))
            <= 0);
  }

  /** What is offered helps, and the best stands first. */
  @Property
  void better_comesFirst(
      @ForAll @IntRange(min = 100, max = 620) int out,
      @ForAll @IntRange(min = 0, max = 1700) int from,
      @ForAll @IntRange(min = 0, max = 1700) int to) {
    var task = metric(20, out, from, to, true);
    var better =
        task.better(METRIC).stream().map(one -> one.then().most().value().value()).toList();
    assertFalse(better.isEmpty());
    assertTrue(better.stream().allMatch(then -> then.compareTo(most(task)) > 0), better::toString);
    assertEquals(better.stream().sorted(java.util.Comparator.reverseOrder()).toList(), better);
  }

  @Test
  void better_underTheBestConditions_isNothing() {
    var at = new Reach(length("250 mm"), turn(0));
    var task =
        new LiftTask(
            weight("10", "kg"),
            at,
            length("750 mm"),
            Optional.empty(),
            length("750 mm"),
            often("0.2"),
            Span.ONE_HOUR,
            Grip.GOOD,
            List.of());
    assertEquals(List.of(), task.better(METRIC));
  }

  @ParameterizedTest
  @EnumSource(Lift.NotCovered.class)
  void notCovered_hasNoFigureAndARuleInstead(Lift.NotCovered one) {
    var task = covered(List.of(one), "30");
    assertEquals(List.of(), task.judged(METRIC));
    assertEquals(Optional.empty(), task.decides(METRIC));
    assertEquals(List.of(), task.better(METRIC));
    var rules = String.join(" ", task.instead(METRIC));
    assertTrue(rules.contains("cart"), rules);
    assertTrue(rules.contains("Never alone") && rules.contains("23 kg"), rules);
    assertTrue(
        String.join(" ", covered(List.of(one), "23").instead(METRIC)).contains("second person"));
  }

  @Test
  void notCovered_sheet_isBrokenDownWhereItLies() {
    assertTrue(
        covered(List.of(Lift.NotCovered.UNSTABLE), "30").instead(METRIC).get(0).contains("Break"));
  }

  /** A pound is 0.45359237 kg. */
  @ParameterizedTest
  @CsvSource({"51, lb, 23.133, 51.000", "23, kg, 23.000, 50.706", "0.45359237, kg, 0.454, 1.000"})
  void weight_inTheOtherUnit(String number, String unit, String kilograms, String pounds) {
    var weight = new Amount(new BigDecimal(number), unit);
    assertEquals(
        kilograms + " kg", WeightUnit.KILOGRAM.amount(weight, 3, RoundingMode.HALF_UP).text());
    assertEquals(pounds + " lb", WeightUnit.POUND.amount(weight, 3, RoundingMode.HALF_UP).text());
  }

  private static LiftTask covered(List<Lift.NotCovered> notCovered, String kilograms) {
    var at = new Reach(length("250 mm"), turn(0));
    return new LiftTask(
        weight(kilograms, "kg"),
        at,
        length("750 mm"),
        Optional.empty(),
        length("750 mm"),
        often("0.2"),
        Span.ONE_HOUR,
        Grip.GOOD,
        notCovered);
  }

  private static LiftTask metric(int kilograms, int out, int from, int to, boolean careful) {
    var at = new Reach(length(out + " mm"), turn(10));
    return new LiftTask(
        weight(Integer.toString(kilograms), "kg"),
        at,
        length(from + " mm"),
        careful ? Optional.of(at) : Optional.empty(),
        length(to + " mm"),
        often("1"),
        Span.ONE_HOUR,
        Grip.FAIR,
        List.of());
  }

  private static BigDecimal index(LiftTask task) {
    return task.decides(METRIC).orElseThrow().index().orElseThrow().value();
  }

  private static Strain strain(LiftTask task) {
    return task.decides(METRIC).orElseThrow().strain();
  }

  private static BigDecimal most(LiftTask task) {
    return task.decides(METRIC).orElseThrow().most().value().value();
  }

  private static Worked<Amount> weight(String number, String unit) {
    return Worked.entered("weight", new Amount(new BigDecimal(number), unit));
  }

  private static Worked<Length> length(String text) {
    return Worked.entered("length", Length.of(text));
  }

  private static Worked<Angle> turn(int degrees) {
    return Worked.entered("turn", Angle.ofDegrees(degrees));
  }

  private static Worked<BigDecimal> often(String often) {
    return Worked.entered("lifts in a minute", new BigDecimal(often));
  }
}
