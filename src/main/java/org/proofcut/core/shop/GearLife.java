package org.proofcut.core.shop;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * How long a piece of gear serves. A day that is named still counts.
 *
 * @param goodUntil the last day that it may be used; empty where none is marked
 * @param inspectBy the day by which it is to be looked at; from then on it waits for that
 */
public record GearLife(Optional<LocalDate> goodUntil, Optional<LocalDate> inspectBy) {

  /** No day is named. */
  public static final GearLife UNDATED = new GearLife(Optional.empty(), Optional.empty());

  /** So many days ahead one is told that it ends (our choice). */
  public static final int SOON_IN_DAYS = 30;

  private static final DateTimeFormatter WORDS =
      DateTimeFormatter.ofPattern("d MMMM uuuu", Locale.ENGLISH);

  /** The last day that it serves; empty where it has none. */
  public Optional<LocalDate> lastDay() {
    return Stream.concat(goodUntil.stream(), inspectBy.stream()).min(LocalDate::compareTo);
  }

  /** Why it does not serve on a day; empty where it does. */
  public Optional<String> overOn(LocalDate day) {
    return goodUntil
        .filter(day::isAfter)
        .map(last -> "was good until " + inWords(last))
        .or(
            () ->
                inspectBy
                    .filter(day::isAfter)
                    .map(last -> "was to be looked at by " + inWords(last)));
  }

  /** What ends within {@link #SOON_IN_DAYS} of a day on which it still serves; else empty. */
  public Optional<String> soonAfter(LocalDate day) {
    var then = day.plusDays(SOON_IN_DAYS);
    if (overOn(day).isPresent()) {
      return Optional.empty();
    }
    return goodUntil
        .filter(last -> !last.isAfter(then))
        .map(last -> "good until " + inWords(last))
        .or(
            () ->
                inspectBy
                    .filter(last -> !last.isAfter(then))
                    .map(last -> "to be looked at by " + inWords(last)));
  }

  /** A day as one says it: {@code 3 November 2027}. */
  public static String inWords(LocalDate day) {
    return WORDS.format(day);
  }
}
