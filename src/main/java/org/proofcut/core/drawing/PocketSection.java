package org.proofcut.core.drawing;

import java.util.List;
import org.proofcut.core.boring.PocketHole;
import org.proofcut.core.boring.PocketHole.Spot;
import org.proofcut.core.drawing.Drawing.Anchor;
import org.proofcut.core.drawing.Drawing.Fill;
import org.proofcut.core.drawing.Drawing.Line;
import org.proofcut.core.drawing.Drawing.Point;
import org.proofcut.core.drawing.Drawing.Type;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.LengthUnit;
import org.proofcut.core.measure.Rounding;
import org.proofcut.core.measure.display.Scale;
import org.proofcut.core.operation.Operation;
import org.proofcut.core.setup.CutAsked.Pocket;
import org.proofcut.core.setup.Setup;
import org.proofcut.core.shop.Bit;

/** A pocket hole in section through its axis: pocket, screw, joint, and where the tip ends. */
final class PocketSection {

  private final Pocket asked;
  private final PocketHole hole;
  private final PocketHole.Section section;
  private final Scale caliper;
  private final PlanSheet sheet;
  private final List<String> notes;
  private final Length thickness;
  private final int width;

  private PocketSection(
      Operation operation, Setup setup, Pocket asked, LengthUnit unit, int width) {
    this.asked = asked;
    this.hole = asked.with((Bit) setup.cutter());
    this.section = hole.section(asked.screw());
    this.caliper = Scale.caliper(unit);
    this.thickness = asked.work().thickness().least();
    this.width = width;
    this.notes = said();
    this.sheet =
        new PlanSheet(width, operation.title() + ", in section. " + String.join(" ", notes));
  }

  static Picture of(Operation operation, Setup setup, Pocket asked, LengthUnit unit, int width) {
    return new PocketSection(operation, setup, asked, unit, width).drawn();
  }

  private List<String> said() {
    var screw = asked.screw();
    var beyond = hole.tipBeyondJoint(screw).value();
    var below = hole.tipBelowFace(screw).value();
    return List.of(
        "The tip ends %s beyond the joint and %s below the face with the pocket."
            .formatted(caliper.show(beyond), caliper.show(below)),
        "%s of the screw, %s long, is in the other part; %s is left to its far side."
            .formatted(
                caliper.show(hole.bite(screw).value()),
                caliper.show(screw.value()),
                caliper.show(asked.deep().value().minus(beyond))),
        "To scale, in the thinnest stock, %s.".formatted(caliper.show(thickness)));
  }

  private Picture drawn() {
    sheet.head("Section: pocketed part left, the other part right.");
    var plan = sheet.drawing();
    var figure = caliper.show(hole.tipBelowFace(asked.screw()).value()).number();
    long left = 10;
    long right = 12 + plan.widthOf(figure, Type.FIGURE) + 40;
    long room = width - left - right;
    var start = section.mouthFar().x().minus(thickness.half());
    var tip = section.tip();
    var other = asked.deep().value().min(tip.x().plus(thickness));
    var across = other.minus(start);
    var pixel = new Length(Math.max(1, across.picometres() / room + 1));
    var high = asked.thick().map(one -> one.value().max(thickness)).orElse(thickness);
    // A part that the screw reaches on past the pocketed one goes on below it.
    var shown = asked.thick().isPresent() ? high : high.plus(thickness.half());
    sheet.field(pixel, left, 44, right, shown.dividedBy(pixel, Rounding.UP) + 8);
    plan.box(
        at(start, Length.ZERO, start), at(Length.ZERO, thickness, start), Fill.WOOD, Line.PLAIN);
    var above = asked.thick().isPresent() ? Length.ZERO : pixel.times(24).negated();
    plan.box(
        at(Length.ZERO, above, start),
        at(other, asked.thick().map(one -> one.value()).orElse(shown), start),
        Fill.WOOD,
        Line.PLAIN);
    pocket(plan, start);
    long one = at(start, Length.ZERO, start).xThousandths() / 1000;
    sheet.goesOnBeside(
        at(start, Length.ZERO, start).yThousandths() / 1000 - 4,
        at(start, thickness, start).yThousandths() / 1000 + 4,
        plan.px(one, 0),
        false);
    dimensions(plan, start, shown, figure, width - right + 14);
    notes.forEach(sheet::note);
    return sheet.picture();
  }

  private Point at(Spot spot, Length start) {
    return at(spot.x(), spot.y(), start);
  }

  private Point at(Length x, Length y, Length start) {
    return sheet.drawing().at(x.minus(start), y);
  }

  private void pocket(Drawing plan, Length start) {
    plan.outline(
        Fill.SHEET,
        Line.PLAIN,
        at(section.mouthFar(), start),
        at(section.seatFar(), start),
        at(section.seatNear(), start),
        at(section.mouthNear(), start));
    // A head as wide as the floor of the pocket lets it lie, and the screw down to its tip.
    plan.line(
        Line.THICK,
        between(section.seat(), section.seatFar(), start),
        between(section.seat(), section.seatNear(), start));
    plan.line(Line.THICK, at(section.seat(), start), at(section.tip(), start));
  }

  private Point between(Spot one, Spot other, Length start) {
    return at(
        one.x().plus(other.x().minus(one.x()).times(3).dividedBy(4)),
        one.y().plus(other.y().minus(one.y()).times(3).dividedBy(4)),
        start);
  }

  private void dimensions(Drawing plan, Length start, Length shown, String figure, long x) {
    var tip = at(section.tip(), start);
    long top = at(Length.ZERO, Length.ZERO, start).yThousandths() / 1000;
    long size = plan.pixels(Type.FIGURE);
    plan.line(Line.THIN, tip, plan.px(x + 6, tip.yThousandths() / 1000));
    plan.line(Line.THIN, at(Length.ZERO, Length.ZERO, start), plan.px(x + 6, top));
    plan.span(plan.px(x, top), plan.px(x, tip.yThousandths() / 1000));
    plan.text(
        plan.px(x + 12, (top + tip.yThousandths() / 1000) / 2 + size * 35 / 100),
        figure,
        Type.FIGURE,
        Anchor.START);
    // Below: from the joint to the tip.
    var joint = at(Length.ZERO, shown, start);
    var under = plan.px(tip.xThousandths() / 1000, joint.yThousandths() / 1000);
    plan.line(Line.THIN, joint, joint.down(32));
    plan.line(Line.THIN, tip, under.down(32));
    var level = plan.px(joint.xThousandths() / 1000, under.yThousandths() / 1000 + 24);
    var end = plan.px(tip.xThousandths() / 1000, under.yThousandths() / 1000 + 24);
    plan.span(level, end);
    sheet.lower(36 + size);
    plan.text(
        plan.px(
            (level.xThousandths() + end.xThousandths()) / 2000,
            under.yThousandths() / 1000 + 34 + size),
        caliper.show(hole.tipBeyondJoint(asked.screw()).value()).number(),
        Type.FIGURE,
        Anchor.MIDDLE);
  }
}
