package org.proofcut.content;

import java.time.Period;
import java.util.regex.Pattern;

/** A length of time as content writes it: {@code 7 days}, {@code 1 month}, {@code 2 years}. */
final class PeriodText {

  static final String ANY = "a time with its unit, such as 7 days, 6 months or 1 year";

  private static final Pattern PERIOD = Pattern.compile("([1-9]\\d{0,3}) (day|month|year)s?");

  private PeriodText() {}

  /**
   * @throws IllegalArgumentException if the text is no such time
   */
  static Period read(String text) {
    var found = PERIOD.matcher(text);
    if (!found.matches()) {
      throw new IllegalArgumentException(text);
    }
    int count = Integer.parseInt(found.group(1));
    return switch (found.group(2)) {
      case "day" -> Period.ofDays(count);
      case "month" -> Period.ofMonths(count);
      default -> Period.ofYears(count);
    };
  }
}
