package org.proofcut.core.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.LengthUnit;

class RulePictureTest {

  private static final Pattern TICK =
      Pattern.compile("<path d=\"M([0-9.]+) 3V[0-9]+\" class=\"tick");
  private static final Pattern NUMBER = Pattern.compile("<text [^>]*x=\"([0-9.]+)\"[^>]*>([^<]+)<");
  private static final BigDecimal POINTER = new BigDecimal("360");

  /**
   * Reads the figure back off the picture, knowing only what is printed on the rule: two of its
   * numbers and where they stand give the scale, the pointer gives the figure.
   */
  @ParameterizedTest
  @CsvSource({
    "101.9, MILLIMETRE",
    "102, MILLIMETRE",
    "0, MILLIMETRE",
    "5.5, MILLIMETRE",
    "1204.25, MILLIMETRE",
    "0.71875, INCH",
    "4.015625, INCH",
    "3.625, INCH",
    "0.7, INCH",
    "47.984375, INCH"
  })
  void at_figure_isReadBackOffItsNumbers(BigDecimal figure, LengthUnit unit) {
    var svg = RulePicture.at(Length.of(figure, unit), unit).svg();
    var numbers = numbers(svg);
    assertTrue(numbers.size() >= 2, svg);
    var first = numbers.firstEntry();
    var last = numbers.lastEntry();
    var perUnit =
        last.getValue()
            .subtract(first.getValue())
            .divide(last.getKey().subtract(first.getKey()), MathContext.DECIMAL64);
    var read =
        first
            .getKey()
            .add(POINTER.subtract(first.getValue()).divide(perUnit, MathContext.DECIMAL64));
    var tolerance = new BigDecimal("0.0001");
    assertTrue(
        read.subtract(figure).abs().compareTo(tolerance) < 0, "read " + read + " for " + figure);
  }

  @ParameterizedTest
  @CsvSource({
    "101.9, HALF_MILLIMETRE, 0.5",
    "102, MILLIMETRE, 1",
    "0.71875, THIRTY_SECOND, 0.03125",
    "3.625, SIXTEENTH, 0.0625",
    "4.015625, SIXTY_FOURTH, 0.015625"
  })
  void at_edge_hasOneTickForEachStepAndNoOther(
      BigDecimal figure, Graduation edge, BigDecimal step) {
    var perUnit = new BigDecimal(edge.unit() == LengthUnit.INCH ? 480 : 28);
    var half = POINTER.divide(perUnit, MathContext.DECIMAL64);
    var expected = new ArrayList<String>();
    var from = figure.subtract(half).max(BigDecimal.ZERO);
    var tick = from.divide(step, 0, RoundingMode.CEILING).multiply(step);
    for (; tick.compareTo(figure.add(half)) <= 0; tick = tick.add(step)) {
      expected.add(
          POINTER
              .add(tick.subtract(figure).multiply(perUnit))
              .setScale(3, RoundingMode.HALF_UP)
              .stripTrailingZeros()
              .toPlainString());
    }
    var svg = RulePicture.at(Length.of(figure, edge.unit()), edge).svg();
    assertEquals(expected, TICK.matcher(svg).results().map(hit -> hit.group(1)).toList());
  }

  @ParameterizedTest
  @CsvSource({
    "101.9 mm, 'between 101.5 and 102 mm, nearer 102'",
    "101.75 mm, 'between 101.5 and 102 mm, half way'",
    "102 mm, on the tick at 102 mm",
    "23/32 in, on the tick at 23/32 in (1/32 edge)",
    "4 1/64 in, on the tick at 4 1/64 in (1/64 edge)",
    "0.7 in, 'between 11/16 and 45/64 in, nearer 45/64 (1/64 edge)'"
  })
  void at_figure_saysWhereItLies(String figure, String words) {
    var unit = figure.endsWith("in") ? LengthUnit.INCH : LengthUnit.MILLIMETRE;
    var picture = RulePicture.at(Length.of(figure), unit);
    assertEquals(words, picture.words());
    assertTrue(picture.svg().contains("aria-label=\"" + words + "\""), picture.svg());
  }

  @Test
  void at_betweenTicks_inksTheTwoBesideIt() {
    var between = RulePicture.at(Length.of("101.9 mm"), LengthUnit.MILLIMETRE).svg();
    assertEquals(2, between.split("class=\"tick between\"", -1).length - 1);
    var onTick = RulePicture.at(Length.of("102 mm"), LengthUnit.MILLIMETRE).svg();
    assertEquals(1, onTick.split("tick between", -1).length);
  }

  @Test
  void at_narrowestCrop_keepsANumberWhole() {
    for (long tenths = 0; tenths < 400; tenths++) {
      var svg = RulePicture.at(Length.ofMicrometres(tenths * 100), LengthUnit.MILLIMETRE).svg();
      assertTrue(svg.contains("rule-near"), tenths + " " + svg);
    }
    for (long sixtyFourths = 0; sixtyFourths < 256; sixtyFourths++) {
      var svg = RulePicture.at(Length.ofInches(sixtyFourths, 64), LengthUnit.INCH).svg();
      assertTrue(svg.contains("rule-near"), sixtyFourths + " " + svg);
    }
  }

  @Test
  void at_lessThanNothing_refuses() {
    var belowZero = Length.of("-1 mm");
    assertThrows(
        IllegalArgumentException.class, () -> RulePicture.at(belowZero, LengthUnit.MILLIMETRE));
  }

  /** Printed number → where it stands. */
  private static TreeMap<BigDecimal, BigDecimal> numbers(String svg) {
    Map<BigDecimal, BigDecimal> found = new HashMap<>();
    NUMBER
        .matcher(svg)
        .results()
        .forEach(hit -> found.put(value(hit.group(2)), new BigDecimal(hit.group(1))));
    return new TreeMap<>(found);
  }

  private static BigDecimal value(String printed) {
    var sum = BigDecimal.ZERO;
    for (var part : List.of(printed.split(" "))) {
      var fraction = part.split("/");
      sum =
          sum.add(
              fraction.length == 1
                  ? new BigDecimal(part)
                  : new BigDecimal(fraction[0]).divide(new BigDecimal(fraction[1])));
    }
    return sum;
  }
}
