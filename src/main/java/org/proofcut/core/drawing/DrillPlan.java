package org.proofcut.core.drawing;

import java.util.ArrayList;
import java.util.List;
import org.proofcut.core.drawing.Drawing.Anchor;
import org.proofcut.core.drawing.Drawing.Fill;
import org.proofcut.core.drawing.Drawing.Line;
import org.proofcut.core.drawing.Drawing.Point;
import org.proofcut.core.drawing.Drawing.Turn;
import org.proofcut.core.drawing.Drawing.Type;
import org.proofcut.core.drawing.PlanSheet.Column;
import org.proofcut.core.measure.Band;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.LengthUnit;
import org.proofcut.core.measure.Rounding;
import org.proofcut.core.operation.Handling;
import org.proofcut.core.operation.Operation;
import org.proofcut.core.setup.CutAsked;
import org.proofcut.core.setup.CutAsked.Row;
import org.proofcut.core.setup.Setting;
import org.proofcut.core.setup.Setup;
import org.proofcut.core.shop.Bit;
import org.proofcut.core.shop.DrillPress;

/**
 * Work under a drill from above: reference edge at the far side, against the fence of a press, the
 * bit over the first hole. Lengths along count from the reference end, across from the reference
 * edge.
 */
final class DrillPlan {

  private static final int GAP = 18;
  private static final int FENCE = 34;
  private static final int STOP = 30;
  private static final int LEAST_HOLE = 16;

  private final Setup setup;
  private final PlanWords words;
  private final PlanSheet sheet;
  private final Row row;
  private final boolean atPress;
  private final boolean pocket;
  private final boolean endOnRight;
  private final Length end;
  private final Length side;
  private final Length radius;
  private final String across;
  private final String first;
  private final long left;
  private final long right;
  private final Length pixel;
  private final Stretch alongShown;
  private final Stretch acrossShown;

  private DrillPlan(Operation operation, Setup setup, LengthUnit unit, int width) {
    this.setup = setup;
    this.words = new PlanWords(operation, setup, unit);
    this.row = ((CutAsked.Bored) setup.asked()).row();
    this.atPress = setup.machine() instanceof DrillPress;
    this.endOnRight =
        operation.parts().get(0).handling().flatMap(Handling::end).orElse("").endsWith("right");
    var work = setup.asked().work();
    this.end = work.alongGuide().most();
    this.side = work.acrossGuide().most();
    this.radius = setup.passes().get(0).takes().extent().half();
    this.pocket = setup.asked() instanceof CutAsked.Pocket;
    // A jig puts a pocket as far from the end as it does; only where along it is set.
    this.across =
        pocket ? words.ruleNumber(row.fromEdge().value()) : words.figure(setup.settings().get(0));
    this.first = words.figure(setup.settings().get(1));
    this.sheet = new PlanSheet(width, words.all(layout(), notes()));
    // The figure for the distance from the edge stands beside the far end.
    long figure = sheet.drawing().widthOf(across, Type.FIGURE) + 44;
    this.left = endOnRight ? figure : STOP + 14;
    this.right = endOnRight ? STOP + 14 : figure;
    long room = width - left - right;
    var whole = new Length(Math.max(1, end.picometres() / room));
    var large = new Length(Math.max(1, radius.times(2).picometres() / LEAST_HOLE));
    this.pixel = whole.min(large);
    this.alongShown = whole.equals(pixel) ? all(end) : broken(room);
    var hole = mouthHalf().plus(pixel.times(40));
    this.acrossShown =
        Stretch.of(
            pixel.times(GAP),
            new Band(Length.ZERO, pixel.times(46).min(side)),
            new Band(
                row.fromEdge().value().minus(hole).max(Length.ZERO),
                row.fromEdge().value().plus(hole).min(side)));
  }

  static Picture of(Operation operation, Setup setup, LengthUnit unit, int width) {
    return new DrillPlan(operation, setup, unit, width).drawn();
  }

  private Stretch all(Length whole) {
    return Stretch.of(pixel.times(GAP), new Band(Length.ZERO, whole));
  }

  /** Both ends, as many of the first holes as there is room for, and the last. */
  private Stretch broken(long room) {
    long rest = room;
    var shown = broken(pixel.times(rest), room);
    while (rest > 0 && pixels(shown.extent()) > room) {
      rest = Math.max(0, rest - 6);
      shown = broken(pixel.times(rest), room);
    }
    return shown;
  }

  private Stretch broken(Length rest, long room) {
    var around = radius.plus(pixel.times(room < 300 ? 20 : 32));
    var one = row.first().value();
    var last = row.last().value();
    return Stretch.of(
        pixel.times(GAP),
        piece(Length.ZERO, pixel.times(24)),
        piece(one.minus(around), one.plus(around).plus(rest)),
        piece(last.minus(around), last.plus(around)),
        piece(end.minus(pixel.times(20)), end));
  }

  private Band piece(Length from, Length to) {
    return new Band(from.max(Length.ZERO).min(end), to.min(end));
  }

  private Picture drawn() {
    sheet.head("From above; you stand at the bottom.");
    sheet.field(pixel, left, (atPress ? FENCE : 10) + 8L, right, pixels(acrossShown.extent()) + 4);
    var plan = sheet.drawing();
    plan.box(at(Length.ZERO, Length.ZERO), at(end, farSide()), Fill.WOOD, Line.PLAIN);
    guide(plan);
    holes(plan);
    breaks(plan);
    if (atPress) {
      fenceLabel(plan);
    }
    dimensions(plan);
    notes().forEach(sheet::note);
    return sheet.picture();
  }

  private long pixels(Length of) {
    return of.dividedBy(pixel, Rounding.UP);
  }

  private Point at(Length along, Length fromEdge) {
    var x = alongShown.at(along);
    return sheet
        .drawing()
        .at(endOnRight ? alongShown.extent().minus(x) : x, acrossShown.at(fromEdge));
  }

  /** The far side of the work, or where it goes on out of sight. */
  private Length farSide() {
    return side.min(row.fromEdge().value().plus(mouthHalf()).plus(pixel.times(40)));
  }

  private void guide(Drawing plan) {
    var near = at(Length.ZERO, Length.ZERO);
    var far = at(end, Length.ZERO);
    if (pocket) {
      plan.line(Line.THICK, near, far);
      return;
    }
    if (!atPress) {
      plan.line(Line.THICK, near, far);
      plan.line(
          Line.CHAIN, at(Length.ZERO, row.fromEdge().value()), at(end, row.fromEdge().value()));
      return;
    }
    var outer = endOnRight ? near.right(STOP) : near.left(STOP);
    plan.box(
        outer,
        endOnRight ? far.left(8).up(FENCE) : far.right(8).up(FENCE),
        Fill.MACHINE,
        Line.PLAIN);
    if (setup.setting(Setting.Role.STOP).isPresent()) {
      plan.box(outer, near.down(34), Fill.MACHINE, Line.THICK);
    }
  }

  private void fenceLabel(Drawing plan) {
    long middle =
        (at(Length.ZERO, Length.ZERO).xThousandths() + at(end, Length.ZERO).xThousandths()) / 2000;
    long y = at(Length.ZERO, Length.ZERO).yThousandths() / 1000;
    plan.plate(plan.px(middle, y - FENCE / 2), "fence", Type.NOTE);
  }

  private void holes(Drawing plan) {
    if (!pocket) {
      plan.circle(
          at(row.first().value(), row.fromEdge().value()), chuck(plan), Fill.NONE, Line.THIN);
    }
    for (var hole : row.along()) {
      if (alongShown.shows(hole.value())) {
        var centre = at(hole.value(), row.fromEdge().value());
        if (pocket) {
          mouth(plan, hole.value());
        } else {
          plan.circle(centre, plan.thousandths(radius), Fill.SHEET, Line.PLAIN);
        }
        cross(plan, centre);
      }
    }
    if (pocket) {
      return;
    }
    var bit = at(row.first().value(), row.fromEdge().value());
    plan.turning(bit, chuck(plan) / 1000 + 6, Turn.CLOCKWISE);
  }

  /** Its jaws are wider than a small bit, and a wide bit hides them. */
  private long chuck(Drawing plan) {
    return Math.max(plan.thousandths(radius) + 6_000, 20_000);
  }

  /** Where a pocket opens the face, and under the wood the way of its screw. */
  private void mouth(Drawing plan, Length along) {
    var middle = row.fromEdge().value();
    var half = mouthHalf();
    plan.box(
        at(along.minus(radius), middle.minus(half)),
        at(along.plus(radius), middle.plus(half)),
        Fill.SHEET,
        Line.PLAIN);
    plan.line(Line.DASHED, at(along, middle.minus(half)), at(along, Length.ZERO));
  }

  private Length mouthHalf() {
    if (!(setup.asked() instanceof CutAsked.Pocket asked)) {
      return radius;
    }
    var section = asked.with((Bit) setup.cutter()).section(asked.screw());
    return section.mouthNear().x().minus(section.mouthFar().x()).half();
  }

  private void cross(Drawing plan, Point centre) {
    plan.line(Line.THIN, centre.left(6), centre.right(6));
    plan.line(Line.THIN, centre.up(6), centre.down(6));
  }

  private void breaks(Drawing plan) {
    long top = at(Length.ZERO, Length.ZERO).yThousandths() / 1000;
    long bottom = at(Length.ZERO, farSide()).yThousandths() / 1000;
    for (var place : alongShown.breaks()) {
      var from = endOnRight ? alongShown.extent().minus(place) : place;
      var point = plan.at(from, Length.ZERO);
      sheet.breakDown(
          top - (atPress ? FENCE : 6), bottom + 6, endOnRight ? point.left(GAP) : point, GAP);
    }
    long one = at(Length.ZERO, Length.ZERO).xThousandths() / 1000;
    long other = at(end, Length.ZERO).xThousandths() / 1000;
    for (var place : acrossShown.breaks()) {
      sheet.breakAcross(
          Math.min(one, other) - 6, Math.max(one, other) + 6, plan.at(Length.ZERO, place), GAP);
    }
    if (farSide().isLessThan(side)) {
      sheet.goesOnBelow(
          Math.min(one, other) - 6, Math.max(one, other) + 6, at(Length.ZERO, farSide()));
    }
  }

  private void dimensions(Drawing plan) {
    var corner = at(end, Length.ZERO);
    var level = at(end, row.fromEdge().value());
    var last = alongShown.shows(row.last().value()) ? row.last() : row.first();
    var out = endOnRight ? level.left(20) : level.right(20);
    var from = endOnRight ? corner.left(20) : corner.right(20);
    plan.line(
        Line.THIN,
        at(last.value(), row.fromEdge().value()),
        endOnRight ? out.left(6) : out.right(6));
    plan.line(Line.THIN, corner, endOnRight ? from.left(6) : from.right(6));
    plan.span(from, out);
    long base =
        (from.yThousandths() + out.yThousandths()) / 2000 + plan.pixels(Type.FIGURE) * 35 / 100;
    plan.text(
        plan.px(from.xThousandths() / 1000 + (endOnRight ? -12 : 12), base),
        across,
        Type.FIGURE,
        endOnRight ? Anchor.END : Anchor.START);
    // Below the work: from the reference end to the first hole.
    var zero = at(Length.ZERO, farSide());
    var hole = at(row.first().value(), farSide());
    plan.line(Line.THIN, zero, zero.down(32));
    plan.line(Line.THIN, at(row.first().value(), row.fromEdge().value()), hole.down(32));
    plan.span(zero.down(24), hole.down(24));
    sheet.lower(36);
    long half = plan.widthOf(first, Type.FIGURE) / 2;
    long middle = (zero.xThousandths() + hole.xThousandths()) / 2000;
    long y = zero.yThousandths() / 1000 + 32 + plan.pixels(Type.FIGURE);
    plan.text(
        plan.px(Math.max(8 + half, Math.min(middle, sheet.width() - 8 - half)), y),
        first,
        Type.FIGURE,
        Anchor.MIDDLE);
    sheet.lower(plan.pixels(Type.FIGURE));
    var free =
        new Column(
            Math.min(hole.xThousandths() / 1000 + 40 + half, sheet.width()),
            sheet.width() - 8L,
            zero.yThousandths() / 1000 + 10,
            y + 10,
            Anchor.START);
    if (!endOnRight) {
      sheet.say(free, words.face(), Type.NOTE);
    }
  }

  private List<String> notes() {
    var notes = new ArrayList<>(words.notes());
    if (row.along().size() > 1) {
      notes.add(
          row.along().size()
              + (pocket ? " pockets, from " : " holes, from ")
              + words.rule(row.first().value())
              + " to "
              + words.rule(row.last().value())
              + ", each from the "
              + endWords()
              + ".");
    }
    notes.add(
        "To scale but for what the zigzag lines leave out"
            + (atPress ? "; fence, stop and chuck not to size." : "."));
    return notes;
  }

  private String endWords() {
    if (pocket) {
      return "reference edge";
    }
    return endOnRight || !words.rides().contains("reference") ? "lower end" : "reference end";
  }

  private String layout() {
    if (pocket) {
      return "The part is clamped in the jig, "
          + words.face()
          + ", its "
          + words.rides()
          + " away from you; dashed, the way of the screws.";
    }
    return atPress
        ? "The fence stands behind the bit, the "
            + words.rides()
            + " of the work against it, "
            + words.face()
            + ". The bit turns clockwise: a long end on your left is stopped by the fence."
        : "The work is clamped, "
            + words.face()
            + ", its "
            + words.rides()
            + " away from you; the bit stands on the marks.";
  }
}
