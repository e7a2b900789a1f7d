package org.proofcut.core.drawing;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.stream.Collectors;

/**
 * What each piece of work brings of a day's dose, laid end to end to scale.
 *
 * @param pieces in the order laid
 */
public record DayBar(List<Piece> pieces) {

  // Small, so that letters of 24 grow on a tablet and stay legible on a phone.
  private static final int WIDTH = 420;
  private static final int HEIGHT = 76;
  private static final int DIGIT = 15;
  private static final int AROUND = 8;

  /**
   * One piece of work.
   *
   * @param mark that stands in the bar where there is room, such as the number of its sheet
   * @param name in words
   * @param share of the dose, more than zero, in whatever unit all are in
   * @param shown the share as it is written
   */
  public record Piece(String mark, String name, BigDecimal share, String shown) {

    public Piece {
      if (share.signum() <= 0) {
        throw new IllegalArgumentException(name + " brings nothing");
      }
    }
  }

  public DayBar {
    pieces = List.copyOf(pieces);
    if (pieces.isEmpty()) {
      throw new IllegalArgumentException("a day that brings nothing has no bar");
    }
  }

  /** The bar. */
  public Picture drawn() {
    var words =
        pieces.stream()
            .map(piece -> piece.mark() + " " + piece.name() + " " + piece.shown())
            .collect(Collectors.joining("; ", "The day's dose, to scale: ", "."));
    var svg = Svg.picture("0 0 " + WIDTH + " " + HEIGHT, "drawing", words);
    var all = pieces.stream().map(Piece::share).reduce(BigDecimal.ZERO, BigDecimal::add);
    var labels = new Svg();
    var laid = BigDecimal.ZERO;
    long left = 0;
    boolean tinted = true;
    for (var piece : pieces) {
      laid = laid.add(piece.share());
      long right = x(laid, all);
      svg.empty(
          "rect",
          "x",
          Svg.number(left),
          "y",
          "8",
          "width",
          Svg.number(right - left),
          "height",
          "60",
          "fill",
          tinted ? Svg.WOOD : Svg.SHEET,
          "stroke",
          Svg.INK,
          "stroke-width",
          "2");
      if (right - left >= (piece.mark().length() * DIGIT + AROUND) * 1000L) {
        labels.words("text", piece.mark(), "x", Svg.number((left + right) / 2), "y", "47");
      }
      tinted = !tinted;
      left = right;
    }
    svg.raw("<g fill=\"" + Svg.INK + "\" font-size=\"24\" text-anchor=\"middle\">");
    svg.raw(labels.toString()).close("g");
    return new Picture(svg.close("svg").toString(), words);
  }

  /** Thousandths of a drawing unit, within the line that frames the bar. */
  private static long x(BigDecimal laid, BigDecimal all) {
    return laid.multiply(BigDecimal.valueOf(WIDTH * 1000L))
        .divide(all, 0, RoundingMode.HALF_UP)
        .longValueExact();
  }
}
