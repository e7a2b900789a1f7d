package org.proofcut.core.intake;

import static org.proofcut.core.intake.Field.number;
import static org.proofcut.core.intake.Field.text;
import static org.proofcut.core.intake.Field.yesNo;

import java.math.BigDecimal;
import java.time.Duration;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.proofcut.core.evidence.Amount;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.exposure.DayAsked;
import org.proofcut.core.exposure.HearingRating;
import org.proofcut.core.measure.LengthUnit;

/**
 * The form of a day's noise: which sheets are done and how long they take, what else is loud, and
 * protectors that are thought of. All of it may stay empty.
 */
public final class NoiseForm {

  /** How many noises that belong to no sheet. */
  public static final int OTHERS = 3;

  /** One protector that is not owned. */
  public static final Field TRIED =
      text("protector", "Another protector", "as marked: " + HearingRating.EXAMPLES).mayStayEmpty();

  /** Worn together with any of the others. */
  public static final Field SECOND =
      text(
              "second",
              "A second one worn with it",
              "plugs under muffs, as marked: " + HearingRating.EXAMPLES)
          .mayStayEmpty();

  /** For ratings, which are made for dBC. */
  public static final Field DIFFERENCE =
      number(
              "c-over-a",
              "Your meter: dBC less dBA",
              "where the noise is, whole dB; leave empty if never measured")
          .mayStayEmpty();

  private static final int LONGEST_MINUTES = 960;
  private static final Duration A_DAY = Duration.ofHours(24);
  private static final BigDecimal SECONDS = BigDecimal.valueOf(60);

  private NoiseForm() {}

  /** Whether a sheet is done that day; taken as yes where nothing is said. */
  public static Field done(int sheet) {
    return yesNo("done-" + sheet, "Sheet " + sheet + ": done that day");
  }

  /** How long it takes. */
  public static Field minutes(int sheet) {
    return number(
            "minutes-" + sheet,
            "Sheet " + sheet + ": minutes",
            "that the machine runs; leave empty to take what is worked out")
        .mayStayEmpty();
  }

  /** What, level and minutes of something else that is loud. */
  public static List<Field> other(int number) {
    return List.of(what(number), level(number), time(number));
  }

  private static Field what(int number) {
    return text("other-" + number + "-what", "What else is loud", "such as \"sanding the top\"")
        .mayStayEmpty();
  }

  private static Field level(int number) {
    return number("other-" + number + "-level", "Its level, in dBA", "at your ear").mayStayEmpty();
  }

  private static Field time(int number) {
    return number("other-" + number + "-minutes", "Its minutes", "in that day").mayStayEmpty();
  }

  /** All fields of a day with so many sheets. */
  public static List<Field> fields(int sheets) {
    return Stream.of(
            IntStream.rangeClosed(1, sheets)
                .boxed()
                .flatMap(sheet -> Stream.of(done(sheet), minutes(sheet))),
            IntStream.rangeClosed(1, OTHERS).boxed().flatMap(number -> other(number).stream()),
            Stream.of(TRIED, SECOND, DIFFERENCE))
        .flatMap(fields -> fields)
        .toList();
  }

  /** What was typed, with what is taken where nothing was said. */
  public static Map<String, String> filledIn(Map<String, String> typed, int sheets) {
    var filled = new LinkedHashMap<>(typed);
    for (int sheet = 1; sheet <= sheets; sheet++) {
      filled.merge(done(sheet).name(), "yes", (said, yes) -> said.isEmpty() ? yes : said);
    }
    return filled;
  }

  /** The day that was typed, or what is wrong with it. */
  public static Read<DayAsked> read(Map<String, String> typed, int sheets) {
    var form = new FormReader(filledIn(typed, sheets), LengthUnit.MILLIMETRE);
    var leftOut = new HashSet<Integer>();
    var times = new HashMap<Integer, Worked<Duration>>();
    for (int sheet = 1; sheet <= sheets; sheet++) {
      if (form.choice(done(sheet)).equals("no")) {
        leftOut.add(sheet);
      }
      var entered = minutes(form, minutes(sheet));
      if (entered.isPresent()) {
        times.put(sheet, entered.get());
      }
    }
    var others = new ArrayList<DayAsked.Other>();
    for (int number = 1; number <= OTHERS; number++) {
      other(form, number).ifPresent(others::add);
    }
    var tried = rating(form, TRIED);
    var second = rating(form, SECOND);
    var difference = difference(form);
    var sum =
        Stream.concat(
                times.entrySet().stream()
                    .filter(one -> !leftOut.contains(one.getKey()))
                    .map(one -> one.getValue().value()),
                others.stream().map(one -> one.time().value()))
            .reduce(Duration.ZERO, Duration::plus);
    if (sum.compareTo(A_DAY) > 0) {
      form.problem(
          sheets > 0 ? minutes(1) : time(1),
          "All minutes together are " + sum.toMinutes(),
          "no more than a day has: " + A_DAY.toMinutes());
    }
    return form.result(() -> new DayAsked(leftOut, times, others, tried, second, difference));
  }

  private static Optional<Worked<Duration>> minutes(FormReader form, Field field) {
    return form.optionalNumber(field, 0, LONGEST_MINUTES)
        .map(
            minutes ->
                Worked.entered(
                    "time that the machine runs",
                    Duration.ofSeconds(minutes.multiply(SECONDS).longValue())));
  }

  /** Level and minutes, or neither; what it is may stay unsaid. */
  private static Optional<DayAsked.Other> other(FormReader form, int number) {
    var what = form.text(what(number));
    var level = MachineFields.level(form, level(number));
    var time = minutes(form, time(number));
    var fields = List.of(level(number), time(number));
    boolean nothing =
        what.isEmpty() && fields.stream().allMatch(field -> form.isBlank(field.name()));
    for (var field : fields) {
      if (!nothing && form.isBlank(field.name())) {
        form.problem(field, "Nothing was entered", "level and minutes, or neither");
      }
    }
    return level.flatMap(heard -> time.map(lasts -> other(number, what, heard, lasts)));
  }

  private static DayAsked.Other other(
      int number, String what, Amount level, Worked<Duration> time) {
    var name = what.isEmpty() ? "something else, " + number : what;
    return new DayAsked.Other(
        name, Worked.entered("level of " + name, level), time.as("time of " + name));
  }

  private static Optional<HearingRating> rating(FormReader form, Field field) {
    var text = form.text(field);
    var ratings = HearingRating.read(text);
    if (!text.isEmpty() && ratings.size() != 1) {
      form.problem(
          field,
          ratings.isEmpty() ? "No rating can be read in that" : "Those are two ratings",
          "one rating with its number, as marked: " + HearingRating.EXAMPLES);
    }
    return ratings.stream().findFirst();
  }

  private static Optional<Worked<Integer>> difference(FormReader form) {
    var read = form.optionalNumber(DIFFERENCE, -10, 20);
    if (read.isPresent() && read.get().stripTrailingZeros().scale() > 0) {
      form.problem(DIFFERENCE, "That is no whole number", "-10 to 20, in whole dB");
      return Optional.empty();
    }
    return read.map(
        difference ->
            Worked.measured(
                "how much more your meter reads in dBC, in dB", difference.intValueExact()));
  }
}
