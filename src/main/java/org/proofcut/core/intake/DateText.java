package org.proofcut.core.intake;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.proofcut.core.shop.GearLife;

/**
 * A day as people write it: {@code 2027-11-03}, {@code 3.11.2027} (the day first), {@code 3
 * November 2027} or {@code 3 Nov 2027}. What could be two days, such as {@code 3/11/2027}, is
 * refused, and so is a year of two digits.
 */
public final class DateText {

  /** What may be written. */
  public static final String ALLOWED =
      "a day as 2027-11-03, 3.11.2027 (the day first) or 3 November 2027, from 2000 to 2099";

  private static final Pattern YEAR_FIRST =
      Pattern.compile("(?<year>20[0-9]{2})-(?<month>[0-9]{1,2})-(?<day>[0-9]{1,2})");
  private static final Pattern DAY_FIRST =
      Pattern.compile("(?<day>[0-9]{1,2})\\.\\s?(?<month>[0-9]{1,2})\\.\\s?(?<year>20[0-9]{2})");
  private static final Pattern IN_WORDS =
      Pattern.compile("(?<day>[0-9]{1,2})\\.? (?<month>[a-z]{3,9})\\.? (?<year>20[0-9]{2})");
  private static final List<String> MONTHS =
      List.of(
          "january",
          "february",
          "march",
          "april",
          "may",
          "june",
          "july",
          "august",
          "september",
          "october",
          "november",
          "december");

  private DateText() {}

  /** The day that is meant; empty where it is none, or might be another. */
  public static Optional<LocalDate> read(String typed) {
    var text = typed.strip().toLowerCase(Locale.ROOT);
    for (var pattern : List.of(YEAR_FIRST, DAY_FIRST, IN_WORDS)) {
      var found = pattern.matcher(text);
      if (found.matches()) {
        return day(found);
      }
    }
    return Optional.empty();
  }

  /** A day as one says it. */
  public static String said(LocalDate day) {
    return GearLife.inWords(day);
  }

  private static Optional<LocalDate> day(Matcher found) {
    int month = month(found.group("month"));
    try {
      return month == 0
          ? Optional.empty()
          : Optional.of(
              LocalDate.of(
                  Integer.parseInt(found.group("year")),
                  month,
                  Integer.parseInt(found.group("day"))));
    } catch (DateTimeException noSuchDay) {
      return Optional.empty();
    }
  }

  /** From 1; 0 where there is none. Three letters of a month, or all of them. */
  private static int month(String text) {
    if (Character.isDigit(text.charAt(0))) {
      return Integer.parseInt(text);
    }
    for (int i = 0; i < MONTHS.size(); i++) {
      var name = MONTHS.get(i);
      if (text.equals(name) || text.equals(name.substring(0, 3))) {
        return i + 1;
      }
    }
    return 0;
  }
}
