package org.proofcut.core.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.proofcut.core.evidence.Amount;
import org.proofcut.core.evidence.Problem;
import org.proofcut.core.measure.Angle;
import org.proofcut.core.measure.Band;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.LengthUnit;

/** The last sentence of what is wrong: whoever types its example is understood. */
class ToTypeTest {

  private static final Field ANY = Field.length("any", "Width inside", "between the sides");

  /** What is wrong with a text in the field, where something is. */
  private static Optional<Problem> wrong(
      String typed, LengthUnit unit, Function<FormReader, Object> read) {
    var form = new FormReader(Map.of("any", typed), unit);
    var value = read.apply(form);
    return form.result(() -> value).problems().stream().findFirst();
  }

  /** Types the example that the sentence gives. */
  private static void assertTaken(LengthUnit unit, Function<FormReader, Object> read) {
    for (var typed : List.of("", "rubbish", "99999999")) {
      var says = wrong(typed, unit, read).orElseThrow().doThis();
      var example = says.replaceFirst("^.*such as ", "").replaceFirst(";.*$", "");
      assertFalse(example.isBlank(), says);
      assertEquals(Optional.empty(), wrong(example, unit, read), says);
    }
  }

  @Property(tries = 500)
  void length_exampleOfAnyRange_isInIt(
      @ForAll @IntRange(min = 0, max = 3_000_000) int leastInHundredths,
      @ForAll @IntRange(min = 0, max = 3_000_000) int more,
      @ForAll LengthUnit unit) {
    var least = Length.HUNDREDTH.times(leastInHundredths);
    var allowed = new Band(least, least.plus(Length.HUNDREDTH.times(more)));
    var says = ToType.length(allowed, unit);
    var example = says.replaceFirst("^.*such as ", "").replaceFirst(";.*$", "");
    assertTrue(allowed.contains(Length.parse(example, unit)), () -> allowed + ": " + says);
  }

  @ParameterizedTest
  @CsvSource({
    "50 mm, 4000 mm, 450 mm, 17 1/2 in",
    "3 mm, 100 mm, 15 mm, 11/16 in",
    "0 mm, 2500 mm, 250 mm, 10 in",
    "900 mm, 2300 mm, 1500 mm, 56 1/2 in",
    "0.02 mm, 0.5 mm, 0.1 mm, 0.004 in"
  })
  void length_example_isRoundInItsUnit(String least, String most, String mm, String inches) {
    var allowed = new Band(Length.of(least), Length.of(most));
    assertTrue(ToType.length(allowed, LengthUnit.MILLIMETRE).contains(" such as " + mm + ";"));
    var says = ToType.length(allowed, LengthUnit.INCH);
    var inch = Length.parse(inches, LengthUnit.INCH);
    assertEquals(inch, ToType.example(allowed, LengthUnit.INCH), says);
    assertTrue(says.endsWith("a number alone is in inches"), says);
  }

  @Test
  void everyKindOfField_saysWhatItTakes() {
    for (var unit : LengthUnit.values()) {
      var sizes = CutFields.band("50 mm", "4000 mm");
      assertTaken(unit, form -> form.length(ANY, sizes));
      assertTaken(unit, form -> form.angle(ANY, Angle.ofDegrees(1), Angle.ofDegrees(5)));
      assertTaken(unit, form -> form.angle(ANY, Angle.ZERO, Angle.STRAIGHT));
      assertTaken(unit, form -> form.weight(ANY, kg("0.1"), kg("500")));
      assertTaken(unit, form -> form.weight(ANY, kg("0.001"), kg("0.2")));
      assertTaken(unit, form -> form.number(ANY, new BigDecimal("0.2"), BigDecimal.valueOf(15)));
      assertTaken(unit, form -> form.count(ANY, 1, 4));
      assertTaken(unit, form -> SeveralIn.speeds(form, ANY));
      var day = wrong("3/11/2027", unit, form -> form.optionalDate(ANY)).orElseThrow().doThis();
      assertEquals(
          Optional.empty(),
          wrong(day.replaceFirst("^.*such as ", ""), unit, form -> form.optionalDate(ANY)));
      var layers =
          wrong("2", unit, form -> SeveralIn.layers(form, ANY, CutFields.SIZES)).orElseThrow();
      assertEquals(
          Optional.empty(),
          wrong(
              layers.doThis().replaceFirst("^.*such as ", ""),
              unit,
              form -> SeveralIn.layers(form, ANY, CutFields.SIZES)));
    }
  }

  private static Amount kg(String number) {
    return new Amount(new BigDecimal(number), "kg");
  }

  @Test
  void range_ofAWeight_isInTheUnitOfTheForm() {
    var wrong =
        wrong("900", LengthUnit.INCH, form -> form.weight(ANY, kg("0.1"), kg("200"))).orElseThrow();
    assertEquals("Width inside: That is 900 lb", wrong.what());
    assertEquals("0.221 lb to 440.924 lb", wrong.allowed());
    assertEquals("Type it with its unit, such as 18 lb; a number alone is in lb", wrong.doThis());
  }

  @Test
  void wrong_lengthInMillimetres_isSaidWhole() {
    var wrong =
        wrong("45", LengthUnit.MILLIMETRE, form -> form.length(ANY, CutFields.band("50 mm", "4 m")))
            .orElseThrow();
    assertEquals("Width inside: That is 45.00 mm", wrong.what());
    assertEquals("50.00 mm to 4000.00 mm", wrong.allowed());
    assertEquals(
        "Type it with its unit, such as 450 mm; a number alone is in millimetres", wrong.doThis());
  }

  @Test
  void words_saysAnExampleWhereThereIsOne() {
    assertEquals(
        "Type it in a few words, such as \"gear cabinet\"", ToType.words(CabinetFields.NAME));
    assertEquals("Type it in a few words", ToType.words(ANY));
  }

  @Test
  void choice_withNothingToChooseFrom_saysWhereItComesFrom() {
    var none = Field.choice("any", "Cutter", List.of());
    assertEquals("Enter one first, then choose it here", ToType.choose(none));
    assertEquals("Choose one of them", ToType.choose(Field.yesNo("any", "Dry?")));
  }

  @Test
  void besideOthers_isChanged_andWhatIsMissing_isTyped() {
    assertEquals(
        "Change it, or what it does not go with",
        ToType.instead(ANY, false, LengthUnit.MILLIMETRE));
    assertEquals(
        "Type it with its unit; a number alone is in inches",
        ToType.instead(ANY, true, LengthUnit.INCH));
    assertEquals(
        "Type it that way", ToType.instead(Field.text("any", "Name", ""), false, LengthUnit.INCH));
  }
}
