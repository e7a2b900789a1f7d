package org.proofcut.core.drawing;

import java.util.function.Function;
import org.proofcut.core.drawing.Drawing.Anchor;
import org.proofcut.core.drawing.Drawing.Fill;
import org.proofcut.core.drawing.Drawing.Line;
import org.proofcut.core.drawing.Drawing.Point;
import org.proofcut.core.drawing.Drawing.Type;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.display.Scale;

/**
 * What was measured, laid against the band it has to lie in.
 *
 * @param least lower end of the band
 * @param most upper end of the band, more than {@code least}
 * @param from lower end of what was found
 * @param to upper end of what was found; the same for a single reading
 * @param tooLittle what it is below the band, in a word or two: {@code too tight}
 * @param right what it is within the band: {@code right}
 * @param tooMuch what it is above the band: {@code loose}
 */
public record FitBar(
    Length least,
    Length most,
    Length from,
    Length to,
    String tooLittle,
    String right,
    String tooMuch) {

  // Small, so that letters of 24 grow on a tablet and stay legible on a phone.
  private static final int WIDTH = 420;
  private static final int HEIGHT = 166;
  private static final int AXIS = 76;

  public FitBar {
    if (!least.isLessThan(most) || to.isLessThan(from)) {
      throw new IllegalArgumentException("a band and a range run upward");
    }
  }

  /** The bar, its figures written on this scale. */
  public Picture drawn(Scale scale) {
    var words = words(scale);
    var band = band();
    var bar = Drawing.of(WIDTH, HEIGHT, words);
    // One band's width on either side; what lies further out points out of the picture.
    var window = band.times(3);
    var start = least.minus(band);
    var end = most.plus(band);
    bar.field(new Drawing.Margins(14, 0, 14, 0), window, Length.ofMicrometres(1));
    Function<Length, Point> at =
        length ->
            new Point(
                bar.at(length.max(start).min(end).minus(start), Length.ZERO).xThousandths(),
                AXIS * 1000L);

    bar.line(Line.PLAIN, at.apply(start), at.apply(end));
    bar.box(at.apply(least).up(26), at.apply(most).down(26), Fill.WOOD, Line.PLAIN);
    if (start.isLessThan(Length.ZERO) && Length.ZERO.isLessThan(least)) {
      bar.line(Line.PLAIN, at.apply(Length.ZERO).up(12), at.apply(Length.ZERO).down(12));
    }
    found(bar, at);

    long middle = (at.apply(from).xThousandths() + at.apply(to).xThousandths()) / 2;
    bar.text(new Point(middle, 32_000), "found " + range(scale), Type.LABEL, Anchor.MIDDLE);
    bar.text(at.apply(least).down(52), scale.show(least).number(), Type.CAPTION, Anchor.MIDDLE);
    bar.text(at.apply(most).down(52), scale.show(most).number(), Type.CAPTION, Anchor.MIDDLE);
    bar.text(bar.px(8, HEIGHT - 8), tooLittle, Type.CAPTION, Anchor.START);
    bar.text(bar.px(WIDTH / 2, HEIGHT - 8), right, Type.CAPTION, Anchor.MIDDLE);
    bar.text(bar.px(WIDTH - 8, HEIGHT - 8), tooMuch, Type.CAPTION, Anchor.END);
    return bar.picture();
  }

  /** Within the band solid, outside it hatched; an end out of sight is an arrowhead. */
  private void found(Drawing bar, Function<Length, Point> at) {
    var inFrom = from.max(least).min(most);
    var inTo = to.min(most).max(least);
    if (from.isLessThan(least)) {
      bar.box(at.apply(from).up(12), at.apply(to.min(least)).down(12), Fill.MACHINE, Line.PLAIN);
    }
    if (to.isGreaterThan(most)) {
      bar.box(at.apply(from.max(most)).up(12), at.apply(to).down(12), Fill.MACHINE, Line.PLAIN);
    }
    if (inFrom.isLessThan(inTo)) {
      bar.box(at.apply(inFrom).up(12), at.apply(inTo).down(12), Fill.INK, Line.PLAIN);
    }
    for (var reading : new Length[] {from, to}) {
      var place = at.apply(reading);
      if (at.apply(least.minus(band())).equals(place)) {
        bar.outline(Fill.INK, Line.THICK, place, place.right(18).up(20), place.right(18).down(20));
      } else if (at.apply(most.plus(band())).equals(place)) {
        bar.outline(Fill.INK, Line.THICK, place, place.left(18).up(20), place.left(18).down(20));
      } else {
        bar.line(Line.THICK, place.up(20), place.down(20));
      }
    }
  }

  private Length band() {
    return most.minus(least);
  }

  private String range(Scale scale) {
    return from.equals(to)
        ? scale.show(from).text()
        : scale.show(from).number() + " to " + scale.show(to);
  }

  private String words(Scale scale) {
    var found =
        "Found %s; %s is %s to %s."
            .formatted(range(scale), right, scale.show(least).number(), scale.show(most));
    var under = least.minus(from);
    var over = to.minus(most);
    if (under.isPositive()) {
      found += " It reaches %s below: %s.".formatted(scale.show(under), tooLittle);
    }
    if (over.isPositive()) {
      found += " It reaches %s above: %s.".formatted(scale.show(over), tooMuch);
    }
    return found;
  }
}
