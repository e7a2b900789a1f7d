package org.proofcut.core.drawing;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import org.proofcut.core.measure.Length;

/**
 * A drawing to scale, in the manner of a bench card: ink lines, hatching for machines, wood tinted.
 *
 * <p>Its unit is one pixel as shown, so a letter is as large as it says; lengths are mapped into it
 * once, by {@link #at}. A drawing that is to be shown in two widths is made twice.
 *
 * <p>For example:
 *
 * <pre>{@code
 * var plan = Drawing.of(620, 470, "Plan: fence behind, work fed right to left");
 * plan.field(new Drawing.Margins(40, 60, 20, 90), width, depth);
 * plan.box(plan.at(ZERO, ZERO), plan.at(width, fenceDepth), Fill.MACHINE, Line.THICK);
 * plan.plate(plan.at(half, fenceMiddle), "fence", Type.CAPTION);
 * return plan.picture();
 * }</pre>
 */
public final class Drawing {

  /** What a face is filled with. */
  public enum Fill {
    NONE("none"),
    SHEET(Svg.SHEET),
    WOOD(Svg.WOOD),
    INK(Svg.INK),
    /** Closely hatched: a machine, a fence, a jig. */
    MACHINE(Svg.SHEET),
    /** Widely hatched: what falls away. */
    WASTE(Svg.SHEET);

    private final String paint;

    Fill(String paint) {
      this.paint = paint;
    }
  }

  /** How a line is drawn. */
  public enum Line {
    NONE("0", ""),
    THIN("1.5", ""),
    PLAIN("2.5", ""),
    THICK("4", ""),
    /** Not there yet, or hidden. */
    DASHED("2", "9 6"),
    /** A line of reference: centre, path, axis. */
    CHAIN("1.5", "16 5 3 5");

    private final String width;
    private final String dashes;

    Line(String width, String dashes) {
      this.width = width;
      this.dashes = dashes;
    }
  }

  /** Sizes of type. Nothing smaller is drawn; on a phone's width each is a little smaller. */
  public enum Type {
    /** Words of a plan: read at arm's length on every screen. */
    NOTE(24, 24, "400"),
    /** Words of a plan that matter most. */
    STRESS(24, 24, "700"),
    CAPTION(24, 18, "400"),
    LABEL(28, 20, "700"),
    FIGURE(34, 26, "700");

    private final long wide;
    private final long narrow;
    private final String weight;

    Type(long wide, long narrow, String weight) {
      this.wide = wide;
      this.narrow = narrow;
      this.weight = weight;
    }
  }

  /** Which side of its point a text lies on. */
  public enum Anchor {
    START("start"),
    MIDDLE("middle"),
    END("end");

    private final String css;

    Anchor(String css) {
      this.css = css;
    }
  }

  /** Which way something turns, as seen in the drawing. */
  public enum Turn {
    CLOCKWISE,
    COUNTER_CLOCKWISE
  }

  /** Room in pixels around the field, for words and dimensions. */
  public record Margins(int left, int above, int right, int below) {}

  /** A place in the drawing, in thousandths of a pixel from the upper left. */
  public record Point(long xThousandths, long yThousandths) {

    public Point right(long pixels) {
      return new Point(xThousandths + pixels * 1000, yThousandths);
    }

    public Point left(long pixels) {
      return right(-pixels);
    }

    public Point down(long pixels) {
      return new Point(xThousandths, yThousandths + pixels * 1000);
    }

    public Point up(long pixels) {
      return down(-pixels);
    }

    private String text() {
      return Svg.number(xThousandths) + " " + Svg.number(yThousandths);
    }
  }

  /** Below this width a drawing is for a phone. */
  private static final int NARROW = 480;

  /** Room that a dimension needs to hold both its arrowheads. */
  private static final long ARROWS_INSIDE = 44_000;

  private final int width;
  private int height;
  private final String words;
  private final Svg shapes = new Svg();
  private final Svg texts = new Svg();

  private Point corner = new Point(0, 0);
  private BigInteger fieldPixels = BigInteger.ONE;
  private BigInteger fieldPicometres = BigInteger.valueOf(1_000_000_000L);

  private Drawing(int width, int height, String words) {
    this.width = width;
    this.height = height;
    this.words = words;
  }

  /**
   * An empty sheet. Until {@link #field} says otherwise, one millimetre is one pixel.
   *
   * @param widthPixels width at which the page shows it
   * @param words what the drawing shows, for who can't see it
   */
  public static Drawing of(int widthPixels, int heightPixels, String words) {
    return new Drawing(widthPixels, heightPixels, words);
  }

  /** Ends the sheet below this, where how much it holds is known only at the end. */
  Drawing endingAt(long heightPixels) {
    height = Math.toIntExact(heightPixels);
    return this;
  }

  /**
   * Sets the scale so that an area of this size just fits inside the margins, in its middle; the
   * scale is the same both ways.
   *
   * @throws IllegalArgumentException if the area has no size or the margins leave no room
   */
  public Drawing field(Margins margins, Length across, Length down) {
    long roomAcross = width - margins.left - margins.right;
    long roomDown = height - margins.above - margins.below;
    if (!across.isPositive() || !down.isPositive() || roomAcross <= 0 || roomDown <= 0) {
      throw new IllegalArgumentException(
          "no room for %s by %s in %d by %d px".formatted(across, down, roomAcross, roomDown));
    }
    var acrossWins =
        BigInteger.valueOf(roomAcross)
                .multiply(BigInteger.valueOf(down.picometres()))
                .compareTo(
                    BigInteger.valueOf(roomDown).multiply(BigInteger.valueOf(across.picometres())))
            <= 0;
    fieldPixels = BigInteger.valueOf(acrossWins ? roomAcross : roomDown);
    fieldPicometres = BigInteger.valueOf((acrossWins ? across : down).picometres());
    corner =
        new Point(
            margins.left * 1000L + (roomAcross * 1000 - thousandths(across)) / 2,
            margins.above * 1000L + (roomDown * 1000 - thousandths(down)) / 2);
    return this;
  }

  /** The place so far right of and below the field's upper left corner. */
  public Point at(Length right, Length down) {
    return new Point(
        corner.xThousandths + thousandths(right), corner.yThousandths + thousandths(down));
  }

  /** A place on the sheet, in pixels. */
  public Point px(long right, long down) {
    return new Point(right * 1000, down * 1000);
  }

  /** How large a length is drawn, in thousandths of a pixel; here it is rounded, not before. */
  public long thousandths(Length length) {
    var scaled =
        BigInteger.valueOf(length.picometres())
            .multiply(fieldPixels)
            .multiply(BigInteger.valueOf(1000));
    var half = fieldPicometres.shiftRight(1);
    return (scaled.signum() < 0 ? scaled.subtract(half) : scaled.add(half))
        .divide(fieldPicometres)
        .longValueExact();
  }

  /** A rectangle between two opposite corners. */
  public Drawing box(Point one, Point other, Fill fill, Line line) {
    long left = Math.min(one.xThousandths, other.xThousandths);
    long right = Math.max(one.xThousandths, other.xThousandths);
    long top = Math.min(one.yThousandths, other.yThousandths);
    long bottom = Math.max(one.yThousandths, other.yThousandths);
    var outline =
        "M%s %sH%sV%sH%sz"
            .formatted(
                Svg.number(left),
                Svg.number(top),
                Svg.number(right),
                Svg.number(bottom),
                Svg.number(left));
    if (fill == Fill.MACHINE || fill == Fill.WASTE) {
      stroked(outline, fill, Line.NONE);
      stroked(
          hatch(left, top, right, bottom, fill == Fill.MACHINE ? 9000 : 18000),
          Fill.NONE,
          Line.THIN);
      return stroked(outline, Fill.NONE, line);
    }
    return stroked(outline, fill, line);
  }

  /** A line through these points. */
  public Drawing line(Line line, Point... points) {
    return stroked(through(points), Fill.NONE, line);
  }

  /** A closed outline through these points. */
  public Drawing outline(Fill fill, Line line, Point... points) {
    return stroked(through(points) + "z", fill, line);
  }

  /** A circle of this radius, in thousandths of a pixel, such as {@link #thousandths} gives. */
  public Drawing circle(Point centre, long radiusThousandths, Fill fill, Line line) {
    shapes.empty(
        "circle",
        "cx",
        Svg.number(centre.xThousandths),
        "cy",
        Svg.number(centre.yThousandths),
        "r",
        Svg.number(radiusThousandths),
        "fill",
        fill.paint,
        "stroke",
        Svg.INK,
        "stroke-width",
        line.width);
    return this;
  }

  /**
   * A dimension between two points, level or upright. The figure stands above one that runs to the
   * right and right of one that runs down; drawn the other way round it stands below, or left.
   * Where it is too short for its arrowheads they point at it from outside.
   *
   * @throws IllegalArgumentException if the points lie aslant
   */
  public Drawing dimension(Point from, Point to, String figure) {
    span(from, to);
    boolean level = from.yThousandths == to.yThousandths;
    boolean forward =
        level ? from.xThousandths <= to.xThousandths : from.yThousandths <= to.yThousandths;
    var low = forward ? from : to;
    var high = forward ? to : from;
    long span = level ? high.xThousandths - low.xThousandths : high.yThousandths - low.yThousandths;
    long half = pixels(Type.FIGURE) / 2;
    boolean inside = span >= ARROWS_INSIDE;
    var middle =
        new Point(
            (low.xThousandths + high.xThousandths) / 2, (low.yThousandths + high.yThousandths) / 2);
    if (!level) {
      var beside = middle.down(half * 7 / 10);
      return forward
          ? text(beside.right(14), figure, Type.FIGURE, Anchor.START)
          : text(beside.left(14), figure, Type.FIGURE, Anchor.END);
    }
    boolean fits = widthOf(figure, Type.FIGURE) * 1000 < span;
    if (!fits) {
      return text(
          high.right(inside ? 12 : 38).down(half * 7 / 10), figure, Type.FIGURE, Anchor.START);
    }
    return text(
        forward ? middle.up(10) : middle.down(2 * half + 2), figure, Type.FIGURE, Anchor.MIDDLE);
  }

  /** The lines of a dimension, where its figure stands elsewhere. */
  Drawing span(Point from, Point to) {
    boolean level = from.yThousandths == to.yThousandths;
    if (!level && from.xThousandths != to.xThousandths) {
      throw new IllegalArgumentException("a dimension is level or upright");
    }
    boolean forward =
        level ? from.xThousandths <= to.xThousandths : from.yThousandths <= to.yThousandths;
    var low = forward ? from : to;
    var high = forward ? to : from;
    long span = level ? high.xThousandths - low.xThousandths : high.yThousandths - low.yThousandths;
    if (span >= ARROWS_INSIDE) {
      line(Line.PLAIN, low, high);
      head(low, level ? 180 : 270, 15);
      head(high, level ? 0 : 90, 15);
    } else {
      line(Line.PLAIN, level ? low.left(30) : low.up(30), low);
      line(Line.PLAIN, high, level ? high.right(30) : high.down(30));
      head(low, level ? 0 : 90, 15);
      head(high, level ? 180 : 270, 15);
    }
    return this;
  }

  /** The way the work or the machine is fed: a heavy arrow, level or upright. */
  public Drawing feed(Point tail, Point head) {
    boolean level = tail.yThousandths == head.yThousandths;
    boolean forward =
        level ? tail.xThousandths < head.xThousandths : tail.yThousandths < head.yThousandths;
    long back = forward ? -40 : 40;
    var neck = level ? head.right(back) : head.down(back);
    shapes.path(through(tail, neck), "fill", "none", "stroke", Svg.INK, "stroke-width", "14");
    head(head, level ? (forward ? 0 : 180) : (forward ? 90 : 270), 48);
    return this;
  }

  /** Two arrows around a cutter, the way it turns. */
  public Drawing turning(Point centre, long radiusPixels, Turn turn) {
    var radius = Svg.number(radiusPixels * 1000);
    // Drawn counter-clockwise about the origin; mirrored for the other way.
    var arc = "M0 -%s A%s %s 0 0 0 -%s 0".formatted(radius, radius, radius, radius);
    var headAt = "M-%s 7l-9 -16h18z".formatted(radius);
    for (int half : new int[] {0, 180}) {
      shapes
          .element(
              "g",
              "transform",
              "translate(%s) scale(%d 1) rotate(%d)"
                  .formatted(centre.text(), turn == Turn.CLOCKWISE ? -1 : 1, half))
          .path(arc, "fill", "none", "stroke", Svg.INK, "stroke-width", "5")
          .path(headAt, "fill", Svg.INK)
          .close("g");
    }
    return this;
  }

  /**
   * Words beside a point, on its base line. What would run over the edge of the sheet is moved in;
   * what is wider than the sheet is broken into lines.
   */
  public Drawing text(Point at, String words, Type type, Anchor anchor) {
    var lines = broken(words, type, width - 16);
    long size = pixels(type);
    long widest = lines.stream().mapToLong(line -> widthOf(line, type)).max().orElse(0);
    long before =
        switch (anchor) {
          case START -> 0;
          case MIDDLE -> widest / 2;
          case END -> widest;
        };
    long x = between(before + 8, at.xThousandths / 1000, width - 8 - (widest - before));
    long lastLine = (lines.size() - 1) * size * 6 / 5;
    long y = between(size, at.yThousandths / 1000, height - 6 - lastLine);
    for (var line : lines) {
      texts.words(
          "text",
          line,
          "x",
          Long.toString(x),
          "y",
          Long.toString(y),
          "font-size",
          Long.toString(size),
          "font-weight",
          type.weight,
          "text-anchor",
          anchor.css,
          "fill",
          Svg.INK);
      y += size * 6 / 5;
    }
    return this;
  }

  /** Words in the middle of a hatched face, on a plate of their own. */
  public Drawing plate(Point centre, String words, Type type) {
    long halfWidth = widthOf(words, type) / 2 + 8;
    long halfHeight = pixels(type) * 6 / 10;
    box(
        centre.left(halfWidth).up(halfHeight),
        centre.right(halfWidth).down(halfHeight),
        Fill.SHEET,
        Line.NONE);
    return text(centre.down(pixels(type) * 35 / 100), words, type, Anchor.MIDDLE);
  }

  /** A generous guess at how wide words are set, in pixels. */
  public long widthOf(String words, Type type) {
    long perCent = type.weight.equals("400") ? 50 : 55;
    return words.codePointCount(0, words.length()) * pixels(type) * perCent / 100;
  }

  /** What was drawn. */
  public Picture picture() {
    var svg =
        Svg.picture("0 0 " + width + " " + height, "drawing", words)
            .raw(shapes.toString())
            .raw(texts.toString())
            .close("svg");
    return new Picture(svg.toString(), words);
  }

  /** How large it is set, in pixels. */
  long pixels(Type type) {
    return width < NARROW ? type.narrow : type.wide;
  }

  private Drawing stroked(String d, Fill fill, Line line) {
    if (line == Line.NONE) {
      shapes.path(d, "fill", fill.paint);
    } else if (line.dashes.isEmpty()) {
      shapes.path(d, "fill", fill.paint, "stroke", Svg.INK, "stroke-width", line.width);
    } else {
      shapes.path(
          d,
          "fill",
          fill.paint,
          "stroke",
          Svg.INK,
          "stroke-width",
          line.width,
          "stroke-dasharray",
          line.dashes);
    }
    return this;
  }

  /** An arrowhead with its tip at the point, turned clockwise from pointing right. */
  private void head(Point tip, int degrees, int length) {
    shapes.path(
        "M0 0L-%d -%dV%dz".formatted(length, length * 45 / 100, length * 45 / 100),
        "fill",
        Svg.INK,
        "transform",
        "translate(%s) rotate(%d)".formatted(tip.text(), degrees));
  }

  private static String through(Point... points) {
    var d = new StringBuilder();
    for (var point : points) {
      d.append(d.isEmpty() ? "M" : "L").append(point.text());
    }
    return d.toString();
  }

  /**
   * Lines rising at 45° across a rectangle. Written out line by line: a pattern would need an id,
   * and several drawings share a page.
   */
  private static String hatch(long left, long top, long right, long bottom, long pitch) {
    var d = new StringBuilder();
    long across = right - left;
    long down = bottom - top;
    for (long step = pitch; step < across + down; step += pitch) {
      long startX = left + Math.max(0, step - down);
      long startY = top + Math.min(step, down);
      long endX = left + Math.min(step, across);
      long endY = top + Math.max(0, step - across);
      d.append("M").append(new Point(startX, startY).text());
      d.append("L").append(new Point(endX, endY).text());
    }
    return d.isEmpty() ? "M0 0" : d.toString();
  }

  /** The words in lines of at most this many pixels; a single word may be wider. */
  List<String> broken(String words, Type type, long room) {
    var lines = new ArrayList<String>();
    var line = "";
    // A figure stays whole: "37" on one line and "1/64" on the next would be read as two.
    var bound = words.replaceAll("(\\d) (?=\\d+/\\d|(mm|in)\\b)", "$1\u00a0");
    for (var word : bound.split(" ")) {
      var longer = line.isEmpty() ? word : line + " " + word;
      if (!line.isEmpty() && widthOf(longer, type) > room) {
        lines.add(line.replace('\u00a0', ' '));
        line = word;
      } else {
        line = longer;
      }
    }
    lines.add(line.replace('\u00a0', ' '));
    return lines;
  }

  private static long between(long least, long wanted, long most) {
    return Math.max(least, Math.min(wanted, most));
  }
}
