package org.proofcut.core.storage;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import org.proofcut.core.shop.GearLife;

/**
 * That a piece is out of its place.
 *
 * @param who has it
 * @param since the day on which it was taken out
 */
public record Out(String who, LocalDate since) {

  private static final DateTimeFormatter THIS_YEAR =
      DateTimeFormatter.ofPattern("d MMMM", Locale.ENGLISH);

  /** Whether it was not put back at the end of a day. */
  public boolean isFromBefore(LocalDate today) {
    return since.isBefore(today);
  }

  /** {@code with Ash, since yesterday}, or {@code with Ash, since 24 November}. */
  public String words(LocalDate today) {
    return "with " + who + ", since " + day(today);
  }

  private String day(LocalDate today) {
    if (!isFromBefore(today)) {
      return "today";
    }
    if (since.equals(today.minusDays(1))) {
      return "yesterday";
    }
    return since.getYear() == today.getYear() ? THIS_YEAR.format(since) : GearLife.inWords(since);
  }
}
