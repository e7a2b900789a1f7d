package org.proofcut.core.intake;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.regex.Pattern;
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
import org.proofcut.core.shop.SpeedStep;
import org.proofcut.core.shop.StackedCutter.Layer;

/**
 * Reads fields one by one and gathers what is wrong, so that a person is told everything at once.
 * What can't be read comes back as a harmless stand-in; {@link #result} throws it all away.
 */
final class FormReader {

  private static final int LONGEST_TEXT = 80;
  private static final int LONGEST_QUOTED = 24;
  private static final int FASTEST = 40_000;
  private static final int MOST_TOLD = 12;
  private static final int MOST_LAYERS = 6;
  private static final int MOST_OF_A_LAYER = 6;
  private static final Pattern LAYER =
      Pattern.compile("(?<thickness>.+?)[x×*]\\s*(?<count>[0-9]{1,3})\\s*(?:[,;]\\s*|$)");
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
    if (text.isEmpty() && !field.optional()) {
      problems.add(stops(field, "Nothing was entered", "1 to " + LONGEST_TEXT + " characters"));
    } else if (text.length() > LONGEST_TEXT) {
      problems.add(
          stops(
              field,
              "That is " + text.length() + " characters long",
              "1 to " + LONGEST_TEXT + " characters"));
    } else if (text.chars().anyMatch(Character::isISOControl)) {
      problems.add(
          stops(field, "There are characters in it that can't be shown", "one line of text"));
    }
    return text;
  }

  Length length(Field field, Band allowed) {
    return length(field, raw(field.name()), allowed).orElse(STAND_IN);
  }

  Optional<Length> optionalLength(Field field, Band allowed) {
    return isBlank(field.name()) ? Optional.empty() : length(field, raw(field.name()), allowed);
  }

  private Optional<Length> length(Field field, String text, Band allowed) {
    var example = shown(allowed.least()) + " to " + shown(allowed.most());
    try {
      var length = Length.parse(text, unit);
      if (allowed.contains(length)) {
        return Optional.of(length);
      }
      problems.add(stops(field, "That is " + shown(length), example));
    } catch (LengthFormatException e) {
      var what = text.isBlank() ? "Nothing was entered" : "\"" + e.text() + "\": " + e.reason();
      problems.add(
          stops(field, what, example + ", written like " + LengthFormatException.EXAMPLES));
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
    var example = least + " to " + most;
    try {
      var angle = Angle.parse(text);
      if (!angle.isLessThan(least) && !angle.isGreaterThan(most)) {
        return Optional.of(angle);
      }
      problems.add(stops(field, "That is " + angle, example));
    } catch (AngleFormatException e) {
      var what = text.isBlank() ? "Nothing was entered" : "\"" + e.text() + "\": " + e.reason();
      problems.add(stops(field, what, example + ", written like " + AngleFormatException.EXAMPLES));
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
    var example = least + " to " + most + ", written like " + WeightText.EXAMPLES;
    try {
      var weight = WeightText.parse(text, unit);
      var kilograms = WeightUnit.KILOGRAM.of(weight);
      if (kilograms.compareTo(WeightUnit.KILOGRAM.of(least)) >= 0
          && kilograms.compareTo(WeightUnit.KILOGRAM.of(most)) <= 0) {
        return Optional.of(weight);
      }
      problems.add(stops(field, "That is " + weight, example));
    } catch (WeightText.Unreadable e) {
      problems.add(stops(field, unreadable(text, e), example));
    }
    return Optional.empty();
  }

  /** A number that may have decimals, from one to another, both allowed. */
  BigDecimal number(Field field, BigDecimal least, BigDecimal most) {
    var text = raw(field.name());
    var example = least + " to " + most;
    try {
      var number = WeightText.number(text);
      if (number.compareTo(least) >= 0 && number.compareTo(most) <= 0) {
        return number;
      }
      problems.add(stops(field, "That is " + number.toPlainString(), example));
    } catch (WeightText.Unreadable e) {
      problems.add(stops(field, unreadable(text, e), example));
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
                problems.add(stops(field, "Nothing was entered", least + " to " + most));
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
    problems.add(
        stops(
            field,
            "\"" + shortened(text) + "\" is no such number",
            "a whole number from " + least + " to " + most + ", digits only"));
    return Optional.empty();
  }

  Optional<LocalDate> optionalDate(Field field) {
    if (isBlank(field.name())) {
      return Optional.empty();
    }
    var day = DateText.read(raw(field.name()));
    if (day.isEmpty()) {
      problems.add(
          stops(
              field,
              "\"" + shortened(raw(field.name()).strip()) + "\" is not surely one day",
              DateText.ALLOWED));
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
    problems.add(
        stops(
            field,
            "\"" + shortened(text) + "\" is no such number",
            "a number from " + least + " to " + most + ", with one decimal at most"));
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
      problems.add(
          stops(
              field,
              text.isEmpty() ? "Nothing was chosen" : "\"" + shortened(text) + "\" is no choice",
              words.isEmpty() ? "something to choose from, entered first" : told(words)));
    }
    return text;
  }

  /** A long list is read where it is chosen from. */
  private static String told(List<String> words) {
    return words.size() > MOST_TOLD
        ? "one of the " + words.size() + " in the list"
        : String.join(words.stream().anyMatch(one -> one.contains(",")) ? "; " : ", ", words);
  }

  /** {@code 1: 8000, 2: 12000}; a number alone is a machine with one speed. */
  List<SpeedStep> speeds(Field field) {
    var allowed = "like 1: 8000, 2: 12000, or one number for a single speed; slowest first";
    var steps = new ArrayList<SpeedStep>();
    var marks = new LinkedHashSet<String>();
    var text = raw(field.name()).strip();
    if (text.isEmpty()) {
      problems.add(stops(field, "Nothing was entered", allowed));
      return List.of();
    }
    int before = 0;
    for (var part : text.split(",", -1)) {
      var both = part.split(":", -1);
      var mark = both.length == 2 ? both[0].strip() : "fixed";
      var speed = both[both.length - 1].strip();
      boolean wrong =
          both.length > 2
              || mark.isEmpty()
              || mark.length() > 12
              || !marks.add(mark)
              || !speed.matches("[0-9]{1,5}");
      int perMinute = wrong ? 0 : Integer.parseInt(speed);
      if (wrong || perMinute <= before || perMinute > FASTEST) {
        problems.add(
            stops(field, "\"" + shortened(part.strip()) + "\" is no step of a dial", allowed));
        return List.of();
      }
      before = perMinute;
      steps.add(new SpeedStep(mark, perMinute));
    }
    return steps;
  }

  /** Whether nothing was wrong with these fields so far, so that they may be judged together. */
  boolean isSound(Field... fields) {
    var names = Stream.of(fields).map(Field::name).toList();
    return problems.stream().noneMatch(problem -> names.contains(problem.where()));
  }

  /**
   * {@code 3.2 mm x 3, 1.6 mm x 1}: thicknesses, each with how many there are. The count ends an
   * entry, so that a comma may stand in a number, too.
   */
  List<Layer> layers(Field field, Band allowed) {
    int before = problems.size();
    var text = text(field);
    if (text.isEmpty() || problems.size() > before) {
      return List.of();
    }
    var layers = new ArrayList<Layer>();
    int read = 0;
    var entry = LAYER.matcher(text);
    while (entry.lookingAt()) {
      var thickness = length(field, entry.group("thickness").strip(), allowed);
      int count = Integer.parseInt(entry.group("count"));
      if (count < 1 || count > MOST_OF_A_LAYER) {
        problems.add(
            stops(
                field,
                "\"" + shortened(entry.group().strip()) + "\": " + count + " of them",
                "1 to " + MOST_OF_A_LAYER + " of a thickness"));
      } else {
        thickness.ifPresent(one -> layers.add(new Layer(one, count)));
      }
      read = entry.end();
      entry.region(read, text.length());
    }
    if (read < text.length()) {
      problems.add(
          stops(
              field,
              "\"" + shortened(text.substring(read).strip()) + "\" does not say how many there are",
              "like 3.2 mm x 3, 1.6 mm x 1: a thickness, x, and how many"));
    } else if (layers.size() > MOST_LAYERS) {
      problems.add(
          stops(
              field,
              "That is " + layers.size() + " thicknesses",
              "at most " + MOST_LAYERS + "; leave out what is never used"));
    }
    return layers;
  }

  void problem(Field field, String what, String allowed) {
    problems.add(stops(field, what, allowed));
  }

  private Problem stops(Field field, String what, String allowed) {
    var hint = field.hint().isEmpty() ? "" : ": " + field.hint();
    return Problem.stops(
        field.name(),
        field.label() + ": " + what,
        allowed,
        field.choices().isEmpty() ? "Enter it again" + hint : "Choose again");
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
