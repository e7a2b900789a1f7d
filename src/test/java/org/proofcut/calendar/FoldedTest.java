package org.proofcut.calendar;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class FoldedTest {

  /** A line, and the octets of each line that it becomes; a fold's blank counts (RFC 5545, 3.1). */
  record Lines(String line, List<Integer> octets) {}

  static List<Lines> lines() {
    return List.of(
        new Lines("x".repeat(75), List.of(75)),
        new Lines("x".repeat(76), List.of(75, 2)),
        new Lines("x".repeat(149), List.of(75, 75)),
        new Lines("x".repeat(150), List.of(75, 75, 2)),
        new Lines("ä".repeat(37) + "x", List.of(75)),
        new Lines("ä".repeat(38), List.of(74, 3)),
        new Lines("€".repeat(25), List.of(75)),
        new Lines("€".repeat(26), List.of(75, 4)),
        new Lines("𝄞".repeat(18) + "xxx", List.of(75)),
        new Lines("𝄞".repeat(19), List.of(72, 5)));
  }

  @ParameterizedTest
  @MethodSource("lines")
  void line_isFoldedAfter75Octets_andNotBefore(Lines lines) {
    var folded = Folded.lines("BEGIN:X\r\n" + lines.line() + "\r\nEND:X\r\n");
    var all = Arrays.asList(folded.split("\r\n"));
    assertEquals(
        lines.octets(),
        all.subList(1, all.size() - 1).stream()
            .map(line -> line.getBytes(StandardCharsets.UTF_8).length)
            .toList());
    assertEquals("BEGIN:X\r\n" + lines.line() + "\r\nEND:X\r\n", folded.replace("\r\n ", ""));
  }
}
