package org.proofcut.core.drawing;

import java.util.ArrayList;
import org.proofcut.core.drawing.Drawing.Anchor;
import org.proofcut.core.drawing.Drawing.Fill;
import org.proofcut.core.drawing.Drawing.Line;
import org.proofcut.core.drawing.Drawing.Point;
import org.proofcut.core.drawing.Drawing.Type;
import org.proofcut.core.measure.Angle;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.LengthUnit;
import org.proofcut.core.measure.Rounding;
import org.proofcut.core.measure.display.Scale;
import org.proofcut.core.operation.Operation;
import org.proofcut.core.setup.AngleSetting;
import org.proofcut.core.setup.Setup;
import org.proofcut.core.shop.Side;
import org.proofcut.core.shop.TableSaw;

/**
 * A blade in the stock, upright or tilted, seen along the cut by the person at the machine. Tilted,
 * its upper edge leans away from the piece that is kept, whose upper face is the wider one.
 */
final class SlantSection {

  /** Pixels of blade on the side that it comes from, and on the other. */
  private static final int STANDS_OUT = 46;

  private static final int LITTLE = 16;

  private final Operation operation;
  private final Setup setup;
  private final Scale caliper;
  private final int width;
  private final Angle tilt;
  private final String shown;

  /** Whether the piece that is kept lies on the left. */
  private final boolean left;

  private SlantSection(Operation operation, Setup setup, LengthUnit unit, int width) {
    this.operation = operation;
    this.setup = setup;
    this.caliper = Scale.caliper(unit);
    this.width = width;
    var bevel = setup.angle(AngleSetting.Role.BEVEL);
    this.tilt = bevel.map(one -> one.set().value()).orElse(Angle.ZERO);
    this.shown = bevel.map(AngleSetting::shown).orElse("");
    this.left = bevel.flatMap(AngleSetting::toward).map(leans -> leans == Side.RIGHT).orElse(true);
  }

  static Picture of(Operation operation, Setup setup, LengthUnit unit, int width) {
    return new SlantSection(operation, setup, unit, width).drawn();
  }

  private Picture drawn() {
    var stock = setup.asked().work().thickness().middle();
    var runs = stock.times(tilt.tangent(), Length.HUNDREDTH, Rounding.NEAREST);
    var notes = new ArrayList<String>();
    notes.add(
        tilt.isZero()
            ? "The blade stands upright in stock of %s.".formatted(caliper.show(stock))
            : "The blade is tilted %s from upright, its upper edge to the %s, away from the piece that is kept. In stock of %s the upper face comes out %s wider, square to the cut."
                .formatted(
                    shown, left ? "right" : "left", caliper.show(stock), caliper.show(runs)));
    notes.add("To scale, seen along the cut.");
    var sheet =
        new PlanSheet(width, operation.title() + ", in section. " + String.join(" ", notes));
    sheet.head("Across the cut, as you stand at the machine.");
    var thick = caliper.show(stock).number();
    long side = 12 + sheet.drawing().widthOf(thick, Type.FIGURE) + 40;
    long room = width - side - 20;
    // The run, as much again on both sides, and room for words.
    var pixel =
        new Length(
            Math.max(
                runs.picometres() * 3 / room,
                Math.max(stock.picometres() / 110, setup.cutter().cutWidth().picometres() / 6)));
    long high = stock.dividedBy(pixel, Rounding.UP);
    long above = STANDS_OUT + 12L;
    sheet.field(pixel, left ? side : 20, above, left ? 20 : side, high + STANDS_OUT + 4);
    var plan = sheet.drawing();
    var span = pixel.times(room);
    var half = span.minus(runs).half();
    // The lower end of the cut, on the side that is kept; the blade leans away from there.
    var foot = left ? half : span.minus(half);
    var kerf = setup.cutter().cutWidth().times(tilt.secant(), Length.HUNDREDTH, Rounding.NEAREST);
    var near = left ? Length.ZERO : span;
    var far = left ? span : Length.ZERO;
    plan.outline(
        Fill.WOOD,
        Line.PLAIN,
        plan.at(near, Length.ZERO),
        on(plan, foot, Length.ZERO, stock, Length.ZERO),
        on(plan, foot, stock, stock, Length.ZERO),
        plan.at(near, stock));
    plan.outline(
        Fill.SHEET,
        Line.PLAIN,
        plan.at(far, Length.ZERO),
        on(plan, foot, Length.ZERO, stock, kerf),
        on(plan, foot, stock, stock, kerf),
        plan.at(far, stock));
    boolean fromBelow = setup.machine() instanceof TableSaw;
    var over = pixel.times(fromBelow ? LITTLE : STANDS_OUT).negated();
    var under = stock.plus(pixel.times(fromBelow ? STANDS_OUT : LITTLE));
    plan.outline(
        Fill.INK,
        Line.NONE,
        on(plan, foot, over, stock, Length.ZERO),
        on(plan, foot, over, stock, kerf),
        on(plan, foot, under, stock, kerf),
        on(plan, foot, under, stock, Length.ZERO));
    if (!tilt.isZero()) {
      var head = plan.at(foot, pixel.times(STANDS_OUT).negated());
      plan.line(Line.CHAIN, head, plan.at(foot, stock));
      long base = head.yThousandths() / 1000 + plan.pixels(Type.FIGURE) * 7 / 10;
      plan.text(
          plan.px(head.xThousandths() / 1000 + (left ? -10 : 10), base),
          shown,
          Type.FIGURE,
          left ? Anchor.END : Anchor.START);
    }
    long top = plan.at(near, Length.ZERO).yThousandths() / 1000;
    long bottom = plan.at(near, stock).yThousandths() / 1000;
    long x = left ? side - 14 : width - side + 14;
    plan.span(plan.px(x, top), plan.px(x, bottom));
    plan.text(
        plan.px(left ? x - 12 : x + 12, (top + bottom) / 2 + plan.pixels(Type.FIGURE) * 35 / 100),
        thick,
        Type.FIGURE,
        left ? Anchor.END : Anchor.START);
    label(plan, "kept", near, left ? Anchor.START : Anchor.END, (top + bottom) / 2);
    label(plan, "off", far, left ? Anchor.END : Anchor.START, (top + bottom) / 2);
    notes.forEach(sheet::note);
    return sheet.picture();
  }

  private void label(Drawing plan, String word, Length beside, Anchor anchor, long y) {
    long x = plan.at(beside, Length.ZERO).xThousandths() / 1000;
    plan.text(
        plan.px(anchor == Anchor.START ? x + 12 : x - 12, y + plan.pixels(Type.STRESS) * 35 / 100),
        word,
        Type.STRESS,
        anchor);
  }

  /** On the line of the cut so far below the upper face, and so much beyond it. */
  private Point on(Drawing plan, Length foot, Length below, Length stock, Length beyond) {
    var rise = stock.minus(below);
    var lean = rise.times(tilt.tangent(), Length.HUNDREDTH, Rounding.NEAREST).plus(beyond);
    return plan.at(left ? foot.plus(lean) : foot.minus(lean), below);
  }
}
