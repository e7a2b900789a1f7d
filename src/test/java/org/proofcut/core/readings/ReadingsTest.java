package org.proofcut.core.readings;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.measure.Length;

class ReadingsTest {

  @Test
  void mean_isRoundedOnceToAHundredth() {
    // 53.13 ÷ 3 = 17.71; 70.89 ÷ 4 = 17.7225
    assertEquals(Length.of("17.71 mm"), mean("17.70 mm", "17.71 mm", "17.72 mm"));
    assertEquals(Length.of("17.72 mm"), mean("17.70 mm", "17.71 mm", "17.72 mm", "17.76 mm"));
  }

  @Test
  void mean_exactlyHalfWay_goesUp() {
    assertEquals(Length.of("17.72 mm"), mean("17.71 mm", "17.72 mm"));
  }

  @Test
  void mean_ofEqualInchReadings_isThatReading() {
    // 0.705 in is 17.907 mm; to a hundredth it would be 17.91, thicker than any reading.
    assertEquals(Length.of("0.705 in"), mean("0.705 in", "0.705 in", "0.705 in", "0.705 in"));
  }

  @Test
  void mean_roundedUnderTheThinnest_staysAtTheThinnest() {
    // 0.704 in is 17.8816 mm; to a hundredth it would be 17.88, thinner than any reading.
    assertEquals(Length.of("0.704 in"), mean("0.704 in", "0.704 in"));
  }

  @Test
  void mean_opensToEveryReadingInOrder() {
    var inputs = readings("17.9 mm", "17.7 mm").mean().inputs();
    assertEquals(
        List.of(Length.of("17.9 mm"), Length.of("17.7 mm")),
        inputs.stream().map(input -> input.value().value()).toList());
  }

  @Test
  void ends_areTheReadingsThemselves() {
    var readings = readings("17.74 mm", "17.66 mm", "17.78 mm", "17.70 mm");
    assertEquals(Length.of("17.66 mm"), readings.minimum().value());
    assertEquals(Length.of("17.78 mm"), readings.maximum().value());
    assertEquals(Length.of("0.12 mm"), readings.spread().value());
  }

  @Test
  void pooled_spansAllSheets() {
    var pooled =
        Readings.pooled(
            "both sheets",
            List.of(readings("17.66 mm", "17.78 mm"), readings("18.02 mm", "17.90 mm")));
    assertEquals(Length.of("17.66 mm"), pooled.minimum().value());
    assertEquals(Length.of("18.02 mm"), pooled.maximum().value());
    assertEquals(4, pooled.all().size());
  }

  @Test
  void noReading_isRefused() {
    assertThrows(IllegalArgumentException.class, () -> new Readings("sheet", List.of()));
  }

  @Provide
  Arbitrary<List<Length>> readingsInEitherUnit() {
    var millimetres =
        Arbitraries.integers().between(3_000, 40_000).map(n -> Length.ofMicrometres(n));
    var thousandths = Arbitraries.integers().between(120, 1_500).map(n -> Length.ofInches(n, 1000));
    return Arbitraries.oneOf(millimetres, thousandths).list().ofMinSize(1).ofMaxSize(12);
  }

  @Property(edgeCases = EdgeCasesMode.NONE)
  void mean_liesWithinTheReadings_andHalfAHundredthFromTheExactMean(
      @ForAll("readingsInEitherUnit") List<Length> all) {
    var mean = new Readings("sheet", all).mean();
    assertTrue(all.stream().anyMatch(one -> one.isAtMost(mean.value())));
    assertTrue(all.stream().anyMatch(one -> one.isAtLeast(mean.value())));
    // |n · mean − sum| ≤ n · 0.005 mm, in millimetres, without dividing.
    var count = BigDecimal.valueOf(all.size());
    var sum = all.stream().map(Length::inMillimetres).reduce(BigDecimal.ZERO, BigDecimal::add);
    var off = mean.value().inMillimetres().multiply(count).subtract(sum).abs();
    assertTrue(off.compareTo(count.multiply(new BigDecimal("0.005"))) <= 0, () -> all + " " + mean);
  }

  private static Length mean(String... all) {
    Worked<Length> mean = readings(all).mean();
    return mean.value();
  }

  private static Readings readings(String... all) {
    return new Readings("sheet", Stream.of(all).map(Length::of).toList());
  }
}
