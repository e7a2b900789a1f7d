package org.proofcut.core.drawing;

import java.util.ArrayList;
import java.util.List;
import org.proofcut.core.drawing.Drawing.Anchor;
import org.proofcut.core.drawing.Drawing.Fill;
import org.proofcut.core.drawing.Drawing.Line;
import org.proofcut.core.drawing.Drawing.Margins;
import org.proofcut.core.drawing.Drawing.Point;
import org.proofcut.core.drawing.Drawing.Type;
import org.proofcut.core.measure.Length;

/**
 * A drawing with words above it and below it. Words are set in columns that are kept apart, so that
 * none lies over another; what finds no room in the drawing is said below it.
 */
final class PlanSheet {

  /** Below this width the sheet is for a phone. */
  private static final int NARROW = 480;

  private static final int EDGE = 8;

  /** More than any sheet holds; cut off when it is done. */
  private static final int ENDLESS = 20_000;

  private final int width;
  private final Drawing drawing;
  private final List<String> notes = new ArrayList<>();
  private long top = EDGE;
  private long bottom;

  PlanSheet(int width, String words) {
    this.width = width;
    this.drawing = Drawing.of(width, ENDLESS, words);
  }

  boolean narrow() {
    return width < NARROW;
  }

  int width() {
    return width;
  }

  Drawing drawing() {
    return drawing;
  }

  /** Words over the drawing. */
  PlanSheet head(String words) {
    var column = new Column(EDGE, width - EDGE, top, ENDLESS, Anchor.START);
    say(column, words, Type.NOTE);
    top = column.y + 6;
    return this;
  }

  /**
   * Lays out the field between margins.
   *
   * @param pixel the length that one pixel shows
   * @param above room over the field in pixels, below the head
   */
  PlanSheet field(Length pixel, long left, long above, long right, long down) {
    long from = top + above;
    drawing.field(
        new Margins((int) left, (int) from, (int) right, (int) (ENDLESS - from - down)),
        pixel.times(width - left - right),
        pixel.times(down));
    bottom = from + down;
    return this;
  }

  /** Top of what lies under the head, in pixels. */
  long top() {
    return top;
  }

  /** Lower end of the field in pixels. */
  long bottom() {
    return bottom;
  }

  /** Keeps so much more room under the field. */
  void lower(long pixels) {
    bottom += pixels;
  }

  /** A free place for words; lines are set from its top down. */
  static final class Column {
    private final long left;
    private final long right;
    private final long end;
    private final Anchor anchor;
    private long y;

    Column(long left, long right, long from, long end, Anchor anchor) {
      this.left = left;
      this.right = right;
      this.y = from;
      this.end = end;
      this.anchor = anchor;
    }
  }

  /** Sets words in a column, if they find room there. */
  boolean say(Column column, String words, Type type) {
    return say(column, words, type, false);
  }

  /** Sets words in a column on a plate of their own, if they find room there. */
  boolean plate(Column column, String words, Type type) {
    return say(column, words, type, true);
  }

  /** Sets words in a column, or below the drawing if they find no room there. */
  void sayOrNote(Column column, String words, Type type) {
    if (!say(column, words, type)) {
      note(words);
    }
  }

  private boolean say(Column column, String words, Type type, boolean plated) {
    long room = column.right - column.left;
    var lines = drawing.broken(words, type, room);
    long size = drawing.pixels(type);
    long pitch = size * 5 / 4;
    boolean wide = lines.stream().anyMatch(line -> drawing.widthOf(line, type) > room);
    if (wide || column.y + pitch * lines.size() > column.end) {
      return false;
    }
    long x =
        switch (column.anchor) {
          case START -> column.left;
          case MIDDLE -> (column.left + column.right) / 2;
          case END -> column.right;
        };
    for (var line : lines) {
      if (plated) {
        long wideness = drawing.widthOf(line, type);
        long from =
            switch (column.anchor) {
              case START -> x;
              case MIDDLE -> x - wideness / 2;
              case END -> x - wideness;
            };
        drawing.box(
            drawing.px(from - 4, column.y),
            drawing.px(from + wideness + 4, column.y + pitch),
            Fill.SHEET,
            Line.NONE);
      }
      drawing.text(drawing.px(x, column.y + size), line, type, column.anchor);
      column.y += pitch;
    }
    return true;
  }

  /** A sentence for below the drawing. */
  PlanSheet note(String sentence) {
    notes.add(sentence);
    return this;
  }

  /** A break across the work from left to right, where something level is left out. */
  void breakAcross(long left, long right, Point from, long gapPixels) {
    long y = from.yThousandths() / 1000;
    band(zigzag(left, right, y, true), zigzag(left, right, y + gapPixels, true));
  }

  /** A break down the work, where something to the right is left out. */
  void breakDown(long above, long below, Point from, long gapPixels) {
    long x = from.xThousandths() / 1000;
    band(zigzag(above, below, x, false), zigzag(above, below, x + gapPixels, false));
  }

  /** Where the work goes on out of sight, below. */
  void goesOnBelow(long left, long right, Point from) {
    long y = from.yThousandths() / 1000;
    var edge = zigzag(left, right, y, true);
    var around = new ArrayList<>(edge);
    around.add(drawing.px(right, y + 12));
    around.add(drawing.px(left, y + 12));
    drawing.outline(Fill.SHEET, Line.NONE, around.toArray(Point[]::new));
    drawing.line(Line.PLAIN, edge.toArray(Point[]::new));
  }

  /** Where the work goes on out of sight, at a side. */
  void goesOnBeside(long above, long below, Point from, boolean toTheRight) {
    long x = from.xThousandths() / 1000;
    long out = toTheRight ? x + 12 : x - 12;
    var edge = zigzag(above, below, x, false);
    var around = new ArrayList<>(edge);
    around.add(drawing.px(out, below));
    around.add(drawing.px(out, above));
    drawing.outline(Fill.SHEET, Line.NONE, around.toArray(Point[]::new));
    drawing.line(Line.PLAIN, edge.toArray(Point[]::new));
  }

  private void band(List<Point> one, List<Point> other) {
    var around = new ArrayList<>(one);
    for (int i = other.size() - 1; i >= 0; i--) {
      around.add(other.get(i));
    }
    drawing.outline(Fill.SHEET, Line.NONE, around.toArray(Point[]::new));
    drawing.line(Line.PLAIN, one.toArray(Point[]::new));
    drawing.line(Line.PLAIN, other.toArray(Point[]::new));
  }

  /** A straight line with a few teeth in its middle, as breaks are drawn. */
  private List<Point> zigzag(long from, long to, long at, boolean level) {
    var points = new ArrayList<Point>();
    points.add(level ? drawing.px(from, at) : drawing.px(at, from));
    long middle = (from + to) / 2;
    for (int tooth = -2; tooth <= 2; tooth++) {
      long along = middle + tooth * 10L;
      // Straight up to the teeth, one to each side, straight on.
      long off = at + (tooth == -1 ? 9 : tooth == 1 ? -9 : 0);
      points.add(level ? drawing.px(along, off) : drawing.px(off, along));
    }
    points.add(level ? drawing.px(to, at) : drawing.px(at, to));
    return points;
  }

  /** The drawing with its notes under it. */
  Picture picture() {
    var column =
        new Column(EDGE, width - EDGE, Math.max(bottom, top) + EDGE, ENDLESS, Anchor.START);
    for (int i = 0; i < notes.size(); i++) {
      say(column, notes.get(i), i == 0 ? Type.STRESS : Type.NOTE);
      column.y += 6;
    }
    return drawing.endingAt(column.y + 4).picture();
  }
}
