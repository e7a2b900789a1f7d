package org.proofcut.core.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;
import net.jqwik.api.constraints.Size;

/** What holds for every length. */
class LengthPropertiesTest {

  private static final long HUNDRED_METRES = 100_000_000_000_000L;

  @Property
  void parse_ofToString_givesTheSameLength(
      @ForAll @LongRange(min = -HUNDRED_METRES, max = HUNDRED_METRES) long picometres) {
    var length = new Length(picometres);
    assertEquals(length, Length.of(length.toString()));
  }

  @Property
  void parse_128thsOfAnInch_areExact(@ForAll @IntRange(max = 128 * 120) int count) {
    var expected = new Length(count * (25_400_000_000L / 128));
    assertEquals(expected, Length.of(count + "/128 in"));
    assertEquals(expected, Length.of(count / 128 + " " + count % 128 + "/128\""));
    assertEquals(expected, Length.of(BigDecimal.valueOf(count).divide(new BigDecimal(128)) + "in"));
  }

  @Property
  void parse_thousandthsOfAMillimetre_areExact(@ForAll @IntRange(max = 3_000_000) int count) {
    var expected = new Length(count * 1_000_000L);
    var text = "%d.%03d".formatted(count / 1000, count % 1000);
    assertEquals(expected, Length.parse(text, LengthUnit.MILLIMETRE));
    assertEquals(expected, Length.of(text + " mm"));
    assertEquals(expected, Length.of(text.replace('.', ',') + "0 mm"));
  }

  @Property
  void roundedTo_anyLength_isBracketedByItsSteps(
      @ForAll @LongRange(min = -HUNDRED_METRES, max = HUNDRED_METRES) long picometres,
      @ForAll @LongRange(min = 1, max = 30_000_000_000L) long stepInPicometres) {
    var length = new Length(picometres);
    var step = new Length(stepInPicometres);
    var down = length.roundedTo(step, Rounding.DOWN);
    var up = length.roundedTo(step, Rounding.UP);
    var nearest = length.roundedTo(step, Rounding.NEAREST);
    assertTrue(down.isAtMost(length) && length.isAtMost(up));
    assertEquals(down.equals(length) ? Length.ZERO : step, up.minus(down));
    assertEquals(0, down.picometres() % stepInPicometres);
    var nearer = length.minus(down).isLessThan(up.minus(length)) ? down : up;
    assertEquals(nearer, nearest);
  }

  @Property
  void mean_anyReadings_isTheDecimalMeanRoundedOnce(
      @ForAll @Size(min = 1, max = 12)
          List<@LongRange(min = -20_000L, max = 20_000L) Long> quartersOfAHundredth) {
    // Quarters, so that a mean often lies exactly half way between two steps.
    var readings = quartersOfAHundredth.stream().map(it -> it * 2_500_000).toList();
    var hundredth = new Length(10_000_000);
    var sum = readings.stream().map(BigDecimal::valueOf).reduce(BigDecimal.ZERO, BigDecimal::add);
    // Sixty digits tell a half from its neighbours for any count of readings here.
    var hundredths =
        sum.divide(
            BigDecimal.valueOf(readings.size()).multiply(BigDecimal.valueOf(10_000_000)),
            60,
            RoundingMode.FLOOR);
    var lengths = readings.stream().map(Length::new).toList();
    assertEquals(
        hundredths.setScale(0, RoundingMode.FLOOR).longValueExact(),
        Length.mean(lengths, hundredth, Rounding.DOWN).dividedBy(hundredth, Rounding.NEAREST));
    assertEquals(
        hundredths.setScale(0, RoundingMode.CEILING).longValueExact(),
        Length.mean(lengths, hundredth, Rounding.UP).dividedBy(hundredth, Rounding.NEAREST));
    assertEquals(
        hundredths.add(new BigDecimal("0.5")).setScale(0, RoundingMode.FLOOR).longValueExact(),
        Length.mean(lengths, hundredth, Rounding.NEAREST).dividedBy(hundredth, Rounding.NEAREST));
  }

  /** Garbage near to lengths: made of the very characters the reader knows, and of strangers. */
  @Property(tries = 20_000)
  void parse_garbage_isALengthOrARefusalAndNothingElse(@ForAll("nearlyLengths") String text) {
    try {
      var length = Length.parse(text, LengthUnit.MILLIMETRE);
      assertTrue(length.abs().isAtMost(Length.ofMillimetres(100_000)));
      assertTrue(
          text.codePoints().anyMatch(c -> c >= '0' && c <= '9' || "½¼¾⅛⅜⅝⅞".indexOf(c) >= 0),
          "a length out of no number: " + text);
    } catch (LengthFormatException refusal) {
      assertTrue(refusal.position() >= 0 && refusal.position() <= text.length());
    }
  }

  @Provide
  Arbitrary<String> nearlyLengths() {
    var near = Arbitraries.strings().withChars("0123456789  .,/-+'\"″′½⅞mcinft").ofMaxLength(14);
    var near2 = Arbitraries.strings().withChars("19 ./-'½").ofMaxLength(8);
    return Arbitraries.oneOf(near, near2, Arbitraries.strings().ofMaxLength(60));
  }

  @Property
  void parse_numbersOfProgramsAndOtherScripts_neverGiveALength(
      @ForAll("strangeNumbers") String text) {
    assertThrows(LengthFormatException.class, () -> Length.parse(text, LengthUnit.INCH));
  }

  @Provide
  Arbitrary<String> strangeNumbers() {
    var number = Arbitraries.integers().between(0, 99_999);
    return Arbitraries.oneOf(
        number.map(n -> n + "e" + n % 10),
        number.map(n -> "0x" + Integer.toHexString(n)),
        number.map(n -> n + "f"),
        number.map(n -> n + "_000"),
        number.map(
            n ->
                String.join(
                    "", String.valueOf(n).chars().mapToObj(LengthPropertiesTest::arabic).toList())),
        number.map(n -> "%d,%03d".formatted(1 + n / 1000, n % 1000)),
        number.map(n -> "%d,%03d.5".formatted(n / 1000, n % 1000)),
        number.map(n -> n + " " + n),
        number.map(n -> n + "; " + n),
        number.map(n -> "1".repeat(41 + n % 10_000)),
        Arbitraries.of("NaN", "Infinity", "-Infinity", "null", "true"));
  }

  private static String arabic(int digit) {
    return Character.toString('\u0660' + digit - '0');
  }
}
