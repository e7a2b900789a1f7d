package org.proofcut.core.drawing;

import java.util.ArrayList;
import org.proofcut.core.drawing.Drawing.Anchor;
import org.proofcut.core.drawing.Drawing.Fill;
import org.proofcut.core.drawing.Drawing.Line;
import org.proofcut.core.drawing.Drawing.Type;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.LengthUnit;
import org.proofcut.core.measure.Rounding;
import org.proofcut.core.measure.display.Scale;
import org.proofcut.core.operation.Operation;
import org.proofcut.core.setup.CutAsked.Countersink;
import org.proofcut.core.setup.CutAsked.Holes;
import org.proofcut.core.setup.Setup;
import org.proofcut.core.shop.Bit;

/** A hole in section through its axis, in the thinnest stock: depth, wood left, the bit's point. */
final class HoleSection {

  private final Setup setup;
  private final Scale caliper;
  private final Scale rule;
  private final PlanSheet sheet;
  private final ArrayList<String> notes = new ArrayList<>();
  private final Length stock;
  private final Length shown;
  private final Bit bit;
  private final int width;
  private final String title;

  private HoleSection(Operation operation, Setup setup, LengthUnit unit, int width) {
    this.setup = setup;
    this.caliper = Scale.caliper(unit);
    this.rule = Scale.rule(unit);
    this.stock = setup.asked().work().thickness().least();
    this.bit = (Bit) setup.cutter();
    // Of a part bored into its end only that end.
    this.shown = stock.min(depth().plus(bit.point()).times(2));
    this.width = width;
    this.title = operation.title() + ", in section. ";
    say();
    this.sheet = new PlanSheet(width, title + String.join(" ", notes));
  }

  static Picture of(Operation operation, Setup setup, LengthUnit unit, int width) {
    return new HoleSection(operation, setup, unit, width).drawn();
  }

  private Length depth() {
    return setup.passes().get(setup.passes().size() - 1).depth().value();
  }

  private boolean through() {
    return depth().isGreaterThan(stock);
  }

  private void say() {
    if (setup.asked() instanceof Countersink seat) {
      notes.add(
          "The head, %s wide, lies %s below the face; its cone goes %s into the hole."
              .formatted(
                  caliper.show(seat.head().value()),
                  caliper.show(seat.under().value()),
                  rule.show(depth())));
    } else if (through()) {
      notes.add(
          "Hole %s wide, through stock %s thick and %s into the waste board under it."
              .formatted(
                  caliper.show(bit.diameter()),
                  caliper.show(stock),
                  rule.show(depth().minus(stock))));
    } else if (isCutOff()) {
      notes.add(
          "Hole %s wide, %s deep, into the end."
              .formatted(caliper.show(bit.diameter()), rule.show(depth())));
    } else {
      notes.add(
          "Hole %s wide, %s deep; %s of the thinnest %s is left, and %s below the point."
              .formatted(
                  caliper.show(bit.diameter()),
                  rule.show(depth()),
                  caliper.show(left()),
                  caliper.show(stock),
                  caliper.show(left().minus(bit.point()))));
    }
    notes.add("To scale.");
  }

  private boolean isCutOff() {
    return shown.isLessThan(stock);
  }

  private Length left() {
    return stock.minus(depth());
  }

  private Picture drawn() {
    sheet.head("Section through a hole.");
    var plan = sheet.drawing();
    var thick = caliper.show(stock).number();
    long sides = 12 + plan.widthOf(thick, Type.FIGURE) + 40;
    long room = width - 2 * sides;
    var made = made();
    var pixel =
        new Length(Math.max(1, made.times(2).max(shown.times(3).half()).picometres() / room));
    // A waste board under a through hole, and room for the point.
    var under = through() ? depth().minus(stock).plus(bit.point()).plus(pixel.times(16)) : pixel;
    sheet.field(pixel, sides, 44, sides, shown.plus(under).dividedBy(pixel, Rounding.UP) + 8);
    var span = pixel.times(room);
    var middle = span.half();
    plan.box(plan.at(Length.ZERO, Length.ZERO), plan.at(span, shown), Fill.WOOD, Line.PLAIN);
    if (through()) {
      plan.box(
          plan.at(Length.ZERO, stock), plan.at(span, stock.plus(under)), Fill.WASTE, Line.PLAIN);
    }
    bore(plan, middle);
    if (isCutOff()) {
      long one = plan.at(Length.ZERO, Length.ZERO).xThousandths() / 1000;
      long other = plan.at(span, Length.ZERO).xThousandths() / 1000;
      sheet.goesOnBelow(one - 4, other + 4, plan.at(Length.ZERO, shown));
    }
    plan.line(
        Line.CHAIN,
        plan.at(middle, Length.ZERO).up(26),
        plan.at(middle, shown.plus(under)).down(4));
    dimensions(plan, sides, span, middle);
    sheet.lower(26);
    notes.forEach(sheet::note);
    return sheet.picture();
  }

  private Length made() {
    return setup.asked() instanceof Countersink seat ? seat.head().value() : bit.diameter();
  }

  /** What the bit leaves: a wall, a floor, and the mark of its point. */
  private void bore(Drawing plan, Length middle) {
    if (setup.asked() instanceof Countersink seat) {
      var hole = seat.hole().value().half();
      var head = seat.head().value().half();
      // At the face the cone is as much wider than the head as the head lies below it.
      var mouth =
          head.plus(
              seat.under()
                  .value()
                  .inProportion(
                      bit.diameter().half(), bit.point(), Length.HUNDREDTH, Rounding.NEAREST));
      plan.outline(
          Fill.SHEET,
          Line.PLAIN,
          plan.at(middle.minus(mouth), Length.ZERO),
          plan.at(middle.minus(hole), depth()),
          plan.at(middle.minus(hole), stock),
          plan.at(middle.plus(hole), stock),
          plan.at(middle.plus(hole), depth()),
          plan.at(middle.plus(mouth), Length.ZERO));
      return;
    }
    var radius = bit.diameter().half();
    var floor = depth();
    var tip = floor.plus(bit.point());
    // A spur is thin; the end of a twist bit is one cone.
    var spur =
        ((Holes) setup.asked()).flat() || bit.kind() == Bit.Kind.BRAD_POINT
            ? radius.dividedBy(4)
            : radius;
    plan.outline(
        Fill.SHEET,
        Line.PLAIN,
        plan.at(middle.minus(radius), Length.ZERO),
        plan.at(middle.minus(radius), floor),
        plan.at(middle.minus(spur), floor),
        plan.at(middle, tip),
        plan.at(middle.plus(spur), floor),
        plan.at(middle.plus(radius), floor),
        plan.at(middle.plus(radius), Length.ZERO));
  }

  private void dimensions(Drawing plan, long sides, Length span, Length middle) {
    long top = plan.at(Length.ZERO, Length.ZERO).yThousandths() / 1000;
    long bottom = plan.at(Length.ZERO, stock).yThousandths() / 1000;
    long floor = plan.at(Length.ZERO, depth()).yThousandths() / 1000;
    long size = plan.pixels(Type.FIGURE);
    if (!isCutOff()) {
      plan.line(Line.THIN, plan.px(sides - 22, top), plan.at(Length.ZERO, Length.ZERO));
      plan.line(Line.THIN, plan.px(sides - 22, bottom), plan.at(Length.ZERO, stock));
      plan.span(plan.px(sides - 14, top), plan.px(sides - 14, bottom));
      plan.text(
          plan.px(sides - 26, (top + bottom) / 2 + size * 35 / 100),
          caliper.show(stock).number(),
          Type.FIGURE,
          Anchor.END);
    }
    long x = width - sides + 14;
    plan.line(Line.THIN, plan.at(span, Length.ZERO), plan.px(x + 6, top));
    plan.line(Line.THIN, plan.at(middle.plus(made().half()), depth()), plan.px(x + 6, floor));
    plan.span(plan.px(x, top), plan.px(x, floor));
    if (through() || isCutOff() || setup.asked() instanceof Countersink) {
      plan.text(
          plan.px(x + 12, (top + floor) / 2 + size * 35 / 100),
          rule.show(depth()).number(),
          Type.FIGURE,
          Anchor.START);
      return;
    }
    plan.line(Line.THIN, plan.at(span, stock), plan.px(x + 6, bottom));
    plan.span(plan.px(x, floor), plan.px(x, bottom));
    long leftBase = (floor + bottom) / 2 + size * 35 / 100;
    long depthBase = Math.min((top + floor) / 2 + size * 35 / 100, leftBase - size * 5 / 4);
    plan.text(plan.px(x + 12, depthBase), rule.show(depth()).number(), Type.FIGURE, Anchor.START);
    plan.text(plan.px(x + 12, leftBase), caliper.show(left()).number(), Type.FIGURE, Anchor.START);
  }
}
