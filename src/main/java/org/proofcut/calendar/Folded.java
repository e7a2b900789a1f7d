package org.proofcut.calendar;

import java.util.Arrays;
import java.util.stream.Collectors;

/** Lines of at most 75 octets: RFC 5545, 3.1. */
final class Folded {

  private static final int MOST_OCTETS = 75;

  private Folded() {}

  /** The same lines folded, none in the middle of a character. */
  static String lines(String text) {
    return Arrays.stream(text.split("\r\n"))
        .map(Folded::line)
        .collect(Collectors.joining("\r\n", "", "\r\n"));
  }

  private static String line(String line) {
    var folded = new StringBuilder();
    int octets = 0;
    for (int character : line.codePoints().toArray()) {
      int more = octets(character);
      if (octets + more > MOST_OCTETS) {
        folded.append("\r\n ");
        octets = 1;
      }
      folded.appendCodePoint(character);
      octets += more;
    }
    return folded.toString();
  }

  /** Of a character in UTF-8. */
  private static int octets(int character) {
    if (character < 0x80) {
      return 1;
    }
    if (character < 0x800) {
      return 2;
    }
    return character < 0x10000 ? 3 : 4;
  }
}
