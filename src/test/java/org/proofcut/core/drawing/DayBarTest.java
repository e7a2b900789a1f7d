package org.proofcut.core.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.proofcut.core.drawing.DayBar.Piece;

class DayBarTest {

  private static final Pattern WIDTH = Pattern.compile(" width=\"([0-9.]+)\"");

  @Test
  void drawn_pieces_areAsWideAsTheirShares_andFillTheBar() {
    var svg = bar(50, 25, 15, 10).svg();
    var widths = WIDTH.matcher(svg).results().map(found -> Double.valueOf(found.group(1))).toList();
    assertEquals(List.of(210.0, 105.0, 63.0, 42.0), widths);
  }

  @Test
  void drawn_narrowPiece_hasNoMark_butStandsInTheWords() {
    var picture = bar(99, 1);
    assertTrue(picture.svg().contains(">1</text>"));
    assertFalse(picture.svg().contains(">2</text>"));
    assertTrue(picture.words().contains("2 rip & plane 1 %"), picture.words());
    assertTrue(picture.svg().contains("rip &amp; plane"));
  }

  @Test
  void nothing_hasNoBar() {
    assertThrows(IllegalArgumentException.class, () -> new DayBar(List.of()));
    assertThrows(IllegalArgumentException.class, () -> bar(5, 0));
  }

  private static Picture bar(int... shares) {
    var pieces = new java.util.ArrayList<Piece>();
    for (int share : shares) {
      pieces.add(
          new Piece(
              Integer.toString(pieces.size() + 1),
              "rip & plane",
              BigDecimal.valueOf(share),
              share + " %"));
    }
    return new DayBar(pieces).drawn();
  }
}
