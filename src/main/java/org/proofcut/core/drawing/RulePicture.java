package org.proofcut.core.drawing;

import java.math.BigInteger;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.LengthUnit;
import org.proofcut.core.measure.Rounding;
import org.proofcut.core.measure.display.Scale;

/**
 * A piece of the maker's own rule, larger than life, with a pointer at the figure to set: as large
 * as the finger needs, and the same number as the figure above it.
 *
 * <p>The figure lies in the middle, so that a narrow page may crop both ends; numbers that a crop
 * would cut in two are marked {@code rule-mid} or {@code rule-far} and left out by the page.
 */
public final class RulePicture {

  private static final long WIDTH = 720;
  private static final long HEIGHT = 92;
  private static final long MIDDLE = WIDTH / 2;

  /** Drawing units for one millimetre, and for one inch: at least one inch number is in sight. */
  private static final long PER_MILLIMETRE = 28;

  private static final long PER_INCH = 480;

  /** Half the width that every page shows, that most show, that the widest show. */
  private static final long NEAR = 160;

  private static final long MID = 260;

  private final Length figure;
  private final Graduation edge;
  private final long unitsPerMeasure;

  private RulePicture(Length figure, Graduation edge) {
    this.figure = figure;
    this.edge = edge;
    this.unitsPerMeasure = edge.unit() == LengthUnit.INCH ? PER_INCH : PER_MILLIMETRE;
  }

  /**
   * The rule with its pointer at a figure, on the coarsest edge that has a tick there.
   *
   * @param figure what is to be set, as it is to be read off the rule; 0 or more
   */
  public static Picture at(Length figure, LengthUnit unit) {
    return at(figure, Graduation.fitting(figure, unit));
  }

  /**
   * The rule with its pointer at a figure, on a given edge.
   *
   * @throws IllegalArgumentException if the figure is negative: a rule begins at 0
   */
  public static Picture at(Length figure, Graduation edge) {
    if (figure.isNegative()) {
      throw new IllegalArgumentException("a rule begins at 0: " + figure);
    }
    return new RulePicture(figure, edge).drawn();
  }

  private Picture drawn() {
    var words = words();
    var svg = Svg.picture("0 0 " + WIDTH + " " + HEIGHT, "rule", words);
    svg.raw("<g fill=\"none\" stroke=\"" + Svg.INK + "\">");
    long left = Math.max(0, x(Length.ZERO));
    svg.path("M" + Svg.number(left) + " 2H" + WIDTH, "stroke-width", "4");
    if (left > 0) {
      svg.path("M" + Svg.number(left) + " 0V46", "stroke-width", "4");
    }
    var labels = new Svg();
    for (long tick = firstTick(); ; tick++) {
      var at = edge.step().times(tick);
      long x = x(at);
      if (x > WIDTH * 1000) {
        break;
      }
      var rank = rank(tick);
      var neighbour = !edge.hasTickAt(figure) && at.minus(figure).abs().isLessThan(edge.step());
      svg.path(
          "M" + Svg.number(x) + " 3V" + (neighbour ? "46" : rank.bottom),
          "class",
          neighbour ? "tick between" : "tick",
          "stroke-width",
          neighbour ? "4" : rank.stroke);
      if (rank.labelled) {
        label(labels, at, x, rank == Rank.WHOLE);
      }
    }
    svg.close("g");
    svg.raw("<g fill=\"" + Svg.INK + "\" font-size=\"24\" text-anchor=\"middle\">");
    svg.raw(labels.toString()).close("g");
    pointer(svg, edge.hasTickAt(figure));
    return new Picture(svg.close("svg").toString(), words);
  }

  /** Ticks from the left edge of the picture, never below 0. */
  private long firstTick() {
    var inSight = new Length(lengthOf(MIDDLE));
    var leftmost = figure.isLessThan(inSight) ? Length.ZERO : figure.minus(inSight);
    return leftmost.dividedBy(edge.step(), Rounding.UP);
  }

  private void label(Svg labels, Length at, long x, boolean bold) {
    var number = Scale.rule(edge.unit()).show(at).number();
    // 15 units for a bold digit of 24 is the widest the page's own type sets.
    long halfWidth = (number.length() * 15 + 1) / 2;
    long reach = Math.abs(x / 1000 - MIDDLE) + halfWidth;
    if (reach > MIDDLE || reach - 2 * halfWidth < 22) {
      return;
    }
    labels.words(
        "text",
        number,
        "class",
        reach <= NEAR ? "rule-near" : reach <= MID ? "rule-mid" : "rule-far",
        "x",
        Svg.number(x),
        "y",
        "74",
        "font-weight",
        bold ? "700" : "400");
  }

  /** The pointer covers no number: the number under it is the figure itself, written above. */
  private static void pointer(Svg svg, boolean onTick) {
    // Between two ticks the line is thin, so that both stay in sight.
    var stroke = onTick ? "6" : "2.5";
    svg.path("M360 2V60", "class", "pointer", "stroke", Svg.INK, "stroke-width", stroke);
    svg.path("M342 92L360 54L378 92z", "fill", Svg.INK);
  }

  private enum Rank {
    WHOLE("46", "3", true),
    HALF("40", "2.4", true),
    QUARTER("34", "2", true),
    EIGHTH("30", "1.8", false),
    FINE("24", "1.6", false),
    FINEST("18", "1.4", false);

    private final String bottom;
    private final String stroke;
    private final boolean labelled;

    Rank(String bottom, String stroke, boolean labelled) {
      this.bottom = bottom;
      this.stroke = stroke;
      this.labelled = labelled;
    }
  }

  /** How long the tick is, as rules have it: tens and fives of millimetres, halving for inches. */
  private Rank rank(long tick) {
    return switch (edge) {
      case MILLIMETRE -> metricRank(tick * 2);
      case HALF_MILLIMETRE -> metricRank(tick);
      case SIXTEENTH -> inchRank(tick * 4);
      case THIRTY_SECOND -> inchRank(tick * 2);
      case SIXTY_FOURTH -> inchRank(tick);
    };
  }

  private static Rank metricRank(long halves) {
    if (halves % 20 == 0) {
      return Rank.WHOLE;
    }
    if (halves % 10 == 0) {
      return Rank.HALF;
    }
    return halves % 2 == 0 ? Rank.EIGHTH : Rank.FINEST;
  }

  private static Rank inchRank(long sixtyFourths) {
    return switch (Long.numberOfTrailingZeros(sixtyFourths | 64)) {
      case 0 -> Rank.FINEST;
      case 1, 2 -> Rank.FINE;
      case 3 -> Rank.EIGHTH;
      case 4 -> Rank.QUARTER;
      case 5 -> Rank.HALF;
      default -> Rank.WHOLE;
    };
  }

  /** Thousandths of a drawing unit from the left edge, rounded here and nowhere before. */
  private long x(Length at) {
    var offset =
        BigInteger.valueOf(at.minus(figure).picometres())
            .multiply(BigInteger.valueOf(unitsPerMeasure * 1000));
    var perMeasure = BigInteger.valueOf(edge.unit().picometres());
    var half = perMeasure.shiftRight(1);
    var rounded =
        offset.signum() < 0
            ? offset.subtract(half).divide(perMeasure)
            : offset.add(half).divide(perMeasure);
    return MIDDLE * 1000 + rounded.longValueExact();
  }

  private long lengthOf(long drawingUnits) {
    return drawingUnits * edge.unit().picometres() / unitsPerMeasure;
  }

  private String words() {
    var scale = Scale.rule(edge.unit());
    if (edge.hasTickAt(figure)) {
      return "on the tick at " + scale.show(figure) + edge.words();
    }
    var below = figure.roundedTo(edge.step(), Rounding.DOWN);
    var above = below.plus(edge.step());
    int side = figure.minus(below).compareTo(above.minus(figure));
    var nearer = side == 0 ? "half way" : "nearer " + scale.show(side < 0 ? below : above).number();
    return "between %s and %s, %s%s"
        .formatted(scale.show(below).number(), scale.show(above), nearer, edge.words());
  }
}
