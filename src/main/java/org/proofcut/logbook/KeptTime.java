package org.proofcut.logbook;

import java.time.Instant;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeFormatterBuilder;

/** Moments as text, always with nine decimals: exact, and in the order of time when sorted. */
final class KeptTime {

  private static final DateTimeFormatter NINE_DECIMALS =
      new DateTimeFormatterBuilder().appendInstant(9).toFormatter();

  private KeptTime() {}

  static String write(Instant moment) {
    return NINE_DECIMALS.format(moment);
  }

  static Instant read(String text) {
    return Instant.parse(text);
  }
}
