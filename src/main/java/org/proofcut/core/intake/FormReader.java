package org.proofcut.core.intake;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.proofcut.core.evidence.Amount;
import org.proofcut.core.evidence.Problem;
import org.proofcut.core.exposure.WeightUnit;
import org.proofcut.core.measure.Angle;
import org.proofcut.core.measure.AngleFormatException;
import org.proofcut.core.measure.Band;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.LengthFormatException;
import org.proofcut.core.measure.LengthUnit;
import org.proofcut.core.measure.display.Scale;

/**
 * Reads fields one by one and gathers what is wrong, so that a person is told everything at once.
 * What can't be read comes back as a harmless stand-in; {@link #result} throws it all away.
 */
final class FormReader {

  private static final int LONGEST_TEXT = 80;
  private static final int LONGEST_QUOTED = 24;
  private static final int MOST_TOLD = 12;
  private static final Length STAND_IN = Length.ofMillimetres(1);

  private final Map<String, String> typed;
  private final LengthUnit unit;
  private final List<Problem> problems = new ArrayList<>();

  FormReader(Map<String, String> typed, LengthUnit unit) {
    this.typed = typed;
    this.unit = unit;
  }

  /** The value, if nothing at all was wrong. */
  <T> Read<T> result(Supplier<T> value) {
    return problems.isEmpty()
        ? new Read<>(Optional.of(value.get()), List.of())
        : new Read<>(Optional.empty(), problems);
  }

  /** The unit that bare numbers are in, and words are written in. */
  LengthUnit unit() {
    return unit;
  }

  boolean isBlank(String field) {
    return raw(field).isBlank();
  }

  String raw(String field) {
    return typed.getOrDefault(field, "");
  }

  String text(Field field) {
    var text = raw(field.name()).strip();
    var allowed = "1 to " + LONGEST_TEXT + " characters";
    if (text.isEmpty() && !field.optional()) {
      wrong(field, "Nothing was entered", allowed, ToType.words(field));
    } else if (text.length() > LONGEST_TEXT) {
      var over = text.length() - LONGEST_TEXT;
      wrong(
          field,
          "That is " + text.length() + " characters long",
          allowed,
          "Say it in " + over + " fewer");
    } else if (text.chars().anyMatch(Character::isISOControl)) {
      wrong(
          field,
          "There are characters in it that can't be shown",
          "one line of text",
          "Type it with letters, figures and signs alone");
    }
    return text;
  }

  Length length(Field field, Band allowed) {
    return length(field, raw(field.name()), allowed).orElse(STAND_IN);
  }

  Optional<Length> optionalLength(Field field, Band allowed) {
    return isBlank(field.name()) ? Optional.empty() : length(field, raw(field.name()), allowed);
  }

  /** A length that is part of what was typed into a field. */
  Optional<Length> length(Field field, String text, Band allowed) {
    var range = shown(allowed.least()) + " to " + shown(allowed.most());
    try {
      var length = Length.parse(text, unit);
      if (allowed.contains(length)) {
        return Optional.of(length);
      }
      wrong(field, "That is " + shown(length), range, ToType.length(allowed, unit));
    } catch (LengthFormatException e) {
      var what = text.isBlank() ? "Nothing was entered" : "\"" + e.text() + "\": " + e.reason();
      wrong(
          field,
          what,
          range + ", written like " + LengthFormatException.EXAMPLES,
          ToType.length(allowed, unit));
    }
    return Optional.empty();
  }

  /** An angle between two, both allowed. */
  Angle angle(Field field, Angle least, Angle most) {
    return readAngle(field, least, most).orElse(least);
  }

  Optional<Angle> optionalAngle(Field field, Angle least, Angle most) {
    return isBlank(field.name()) ? Optional.empty() : readAngle(field, least, most);
  }

  private Optional<Angle> readAngle(Field field, Angle least, Angle most) {
    var text = raw(field.name());
    var range = least + " to " + most;
    try {
      var angle = Angle.parse(text);
      if (!angle.isLessThan(least) && !angle.isGreaterThan(most)) {
        return Optional.of(angle);
      }
      wrong(field, "That is " + angle, range, ToType.angle(least, most));
    } catch (AngleFormatException e) {
      var what = text.isBlank() ? "Nothing was entered" : "\"" + e.text() + "\": " + e.reason();
      wrong(
          field,
          what,
          range + ", written like " + AngleFormatException.EXAMPLES,
          ToType.angle(least, most));
    }
    return Optional.empty();
  }

  /** A weight from one to another, both allowed; as it was typed, in kg or lb. */
  Amount weight(Field field, Amount least, Amount most) {
    return readWeight(field, least, most).orElse(least);
  }

  Optional<Amount> optionalWeight(Field field, Amount least, Amount most) {
    return isBlank(field.name()) ? Optional.empty() : readWeight(field, least, most);
  }

  private Optional<Amount> readWeight(Field field, Amount least, Amount most) {
    var text = raw(field.name());
    var range = inUnit(least, RoundingMode.UP) + " to " + inUnit(most, RoundingMode.DOWN);
    try {
      var weight = WeightText.parse(text, unit);
      var kilograms = WeightUnit.KILOGRAM.of(weight);
      if (kilograms.compareTo(WeightUnit.KILOGRAM.of(least)) >= 0
          && kilograms.compareTo(WeightUnit.KILOGRAM.of(most)) <= 0) {
        return Optional.of(weight);
      }
      wrong(field, "That is " + weight, range, ToType.weight(least, most, unit));
    } catch (WeightText.Unreadable e) {
      wrong(
          field,
          unreadable(text, e),
          range + ", written like " + WeightText.EXAMPLES,
          ToType.weight(least, most, unit));
    }
    return Optional.empty();
  }

  /** In the unit that goes with that of lengths; an end of a range is rounded into it. */
  private Amount inUnit(Amount weight, RoundingMode rounding) {
    var in = WeightUnit.beside(unit).amount(weight, 3, rounding);
    return new Amount(new BigDecimal(in.value().stripTrailingZeros().toPlainString()), in.unit());
  }

  /** A number that may have decimals, from one to another, both allowed. */
  BigDecimal number(Field field, BigDecimal least, BigDecimal most) {
    var text = raw(field.name());
    var range = least + " to " + most;
    try {
      var number = WeightText.number(text);
      if (number.compareTo(least) >= 0 && number.compareTo(most) <= 0) {
        return number;
      }
      wrong(field, "That is " + number.toPlainString(), range, ToType.number(least, most));
    } catch (WeightText.Unreadable e) {
      wrong(field, unreadable(text, e), range, ToType.number(least, most));
    }
    return least;
  }

  private static String unreadable(String text, WeightText.Unreadable why) {
    return text.isBlank()
        ? "Nothing was entered"
        : "\"" + shortened(text.strip()) + "\": " + why.getMessage();
  }

  int count(Field field, int least, int most) {
    return optionalCount(field, least, most)
        .orElseGet(
            () -> {
              if (isBlank(field.name())) {
                wrong(
                    field,
                    "Nothing was entered",
                    least + " to " + most,
                    ToType.number(least, most));
              }
              return least;
            });
  }

  Optional<Integer> optionalCount(Field field, int least, int most) {
    var text = raw(field.name()).strip();
    if (text.isEmpty()) {
      return Optional.empty();
    }
    // Digits only: a space or a point between thousands would mean different things in two
    // countries.
    if (text.matches("[0-9]{1,6}")) {
      int count = Integer.parseInt(text);
      if (count >= least && count <= most) {
        return Optional.of(count);
      }
    }
    wrong(
        field,
        "\"" + shortened(text) + "\" is no such number",
        "a whole number from " + least + " to " + most + ", digits only",
        ToType.number(least, most));
    return Optional.empty();
  }

  Optional<LocalDate> optionalDate(Field field) {
    if (isBlank(field.name())) {
      return Optional.empty();
    }
    var day = DateText.read(raw(field.name()));
    if (day.isEmpty()) {
      wrong(
          field,
          "\"" + shortened(raw(field.name()).strip()) + "\" is not surely one day",
          DateText.ALLOWED,
          ToType.day());
    }
    return day;
  }

  /** A number within bounds, with one decimal at most; empty where nothing was entered. */
  Optional<BigDecimal> optionalNumber(Field field, int least, int most) {
    var text = raw(field.name()).strip();
    if (text.isEmpty()) {
      return Optional.empty();
    }
    // No mark between thousands: it would mean different things in two countries.
    if (text.matches("-?[0-9]{1,4}([.,][0-9])?")) {
      var number = new BigDecimal(text.replace(',', '.'));
      if (number.compareTo(BigDecimal.valueOf(least)) >= 0
          && number.compareTo(BigDecimal.valueOf(most)) <= 0) {
        return Optional.of(number);
      }
    }
    wrong(
        field,
        "\"" + shortened(text) + "\" is no such number",
        "a number from " + least + " to " + most + ", with one decimal at most",
        ToType.number(least, most));
    return Optional.empty();
  }

  boolean yes(Field field) {
    return choice(field).equals("yes");
  }

  String choice(Field field) {
    var text = raw(field.name());
    if (text.isEmpty() && field.optional()) {
      return text;
    }
    var words = field.choices().stream().map(Field.Choice::words).toList();
    if (field.choices().stream().noneMatch(choice -> choice.value().equals(text))) {
      wrong(
          field,
          text.isEmpty() ? "Nothing was chosen" : "\"" + shortened(text) + "\" is no choice",
          words.isEmpty() ? "something to choose from, entered first" : told(words),
          ToType.choose(field));
    }
    return text;
  }

  /** A long list is read where it is chosen from. */
  private static String told(List<String> words) {
    return words.size() > MOST_TOLD
        ? "one of the " + words.size() + " in the list"
        : String.join(words.stream().anyMatch(one -> one.contains(",")) ? "; " : ", ", words);
  }

  /** Whether nothing was wrong with these fields so far, so that they may be judged together. */
  boolean isSound(Field... fields) {
    var names = Stream.of(fields).map(Field::name).toList();
    return problems.stream().noneMatch(problem -> names.contains(problem.where()));
  }

  /** What is wrong beside other fields, or in a way of its own. */
  void problem(Field field, String what, String allowed) {
    wrong(field, what, allowed, ToType.instead(field, isBlank(field.name()), unit));
  }

  void wrong(Field field, String what, String allowed, String doThis) {
    problems.add(Problem.stops(field.name(), field.label() + ": " + what, allowed, doThis));
  }

  String shown(Length length) {
    return Scale.caliper(unit).show(length).text();
  }

  /** For a message; never half of a character. */
  static String shortened(String text) {
    return text.codePointCount(0, text.length()) > LONGEST_QUOTED
        ? text.substring(0, text.offsetByCodePoints(0, LONGEST_QUOTED)) + "…"
        : text;
  }
}
