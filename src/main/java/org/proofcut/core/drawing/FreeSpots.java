package org.proofcut.core.drawing;

import java.util.ArrayList;
import java.util.List;
import org.proofcut.core.drawing.Drawing.Anchor;
import org.proofcut.core.drawing.Drawing.Fill;
import org.proofcut.core.drawing.Drawing.Line;
import org.proofcut.core.drawing.Drawing.Type;

/** Puts words into a drawing where they lie over no others, and over nothing that is kept free. */
final class FreeSpots {

  /** Room around words, in pixels. */
  private static final long AROUND = 3;

  /** A rectangle in pixels. */
  record Spot(long left, long top, long right, long bottom) {

    boolean meets(Spot other) {
      return left < other.right && other.left < right && top < other.bottom && other.top < bottom;
    }

    boolean holds(Spot other) {
      return left <= other.left
          && top <= other.top
          && right >= other.right
          && bottom >= other.bottom;
    }

    long middleX() {
      return (left + right) / 2;
    }

    long middleY() {
      return (top + bottom) / 2;
    }

    long wide() {
      return right - left;
    }
  }

  private final Drawing drawing;
  private final Spot sheet;
  private final List<Spot> kept = new ArrayList<>();
  private final List<Spot> said = new ArrayList<>();

  /**
   * @param sheet where words may stand at all
   */
  FreeSpots(Drawing drawing, Spot sheet) {
    this.drawing = drawing;
    this.sheet = sheet;
  }

  /** No words that stand outside their own thing may lie over this. */
  void keep(Spot spot) {
    kept.add(spot);
  }

  /** Sets words in lines inside a spot, if they find room there. */
  boolean inside(Spot spot, String words, Type type) {
    var lines = drawing.broken(words, type, spot.wide() - 2 * AROUND);
    long pitch = drawing.pixels(type) * 11 / 10;
    var around = around(spot.middleX(), spot.middleY(), lines, type, pitch);
    if (!spot.holds(around) || !isFree(around)) {
      return false;
    }
    set(around, lines, type, pitch);
    return true;
  }

  /** Sets words in one line about a point on a plate of their own, if that lies over nothing. */
  boolean beside(long x, long y, String words, Type type) {
    long pitch = drawing.pixels(type) * 11 / 10;
    var around = around(x, y, List.of(words), type, pitch);
    if (!isFree(around) || kept.stream().anyMatch(around::meets)) {
      return false;
    }
    drawing.box(
        drawing.px(around.left(), around.top()),
        drawing.px(around.right(), around.bottom()),
        Fill.SHEET,
        Line.NONE);
    set(around, List.of(words), type, pitch);
    return true;
  }

  /**
   * Whether a line straight up or down goes over no words, and over nothing kept free but its own.
   */
  boolean isClear(long x, long from, long to, Spot own) {
    var line = new Spot(x, Math.min(from, to), x + 1, Math.max(from, to));
    return said.stream().noneMatch(line::meets)
        && kept.stream().filter(spot -> !spot.equals(own)).noneMatch(line::meets);
  }

  private boolean isFree(Spot spot) {
    return sheet.holds(spot) && said.stream().noneMatch(spot::meets);
  }

  private Spot around(long x, long y, List<String> lines, Type type, long pitch) {
    long widest = lines.stream().mapToLong(line -> drawing.widthOf(line, type)).max().orElse(0);
    long half = widest / 2 + AROUND;
    long high = pitch * lines.size();
    return new Spot(x - half, y - high / 2, x + half, y - high / 2 + high);
  }

  private void set(Spot around, List<String> lines, Type type, long pitch) {
    said.add(around);
    long base = around.top() + drawing.pixels(type) * 4 / 5;
    for (var line : lines) {
      drawing.text(drawing.px(around.middleX(), base), line, type, Anchor.MIDDLE);
      base += pitch;
    }
  }
}
