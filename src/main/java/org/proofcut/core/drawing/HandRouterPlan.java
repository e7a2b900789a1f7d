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
import org.proofcut.core.operation.Operation;
import org.proofcut.core.setup.Setting;
import org.proofcut.core.setup.Setup;
import org.proofcut.core.shop.HandRouter;

/**
 * A router in the hands from above, at the first pass: the work clamped face up, straightedge on
 * the left, pushed away. Lengths across count from the left edge of the work, along from the edge
 * next to the person.
 */
final class HandRouterPlan {

  private static final int GAP = 18;
  private static final int RAIL = 40;
  private static final int SCRAP = 18;
  private static final int MARGIN = 10;

  private final Setup setup;
  private final PlanWords words;
  private final PlanSheet sheet;
  private final String figure;
  private final Length toCentre;
  private final Length strip;
  private final Length pixel;

  /** Whether the reference edge lies on the left, on the straightedge's side. */
  private final boolean nearSide;

  private final Length width;
  private final Length length;
  private final Length guide;
  private final Band first;
  private final Band whole;
  private final Length router;

  private Stretch across;
  private Stretch along;

  private HandRouterPlan(
      Operation operation, Setup setup, HandRouter machine, LengthUnit unit, int widthPx) {
    this.setup = setup;
    this.words = new PlanWords(operation, setup, unit);
    this.toCentre = machine.baseEdgeToCentre();
    var pass = setup.passes().get(0);
    this.strip =
        pass.stripOn()
            ? setup.setting(Setting.Role.STRIP).orElseThrow().set().value()
            : Length.ZERO;
    var straightedge = setup.setting(Setting.Role.STRAIGHTEDGE).orElseThrow();
    this.figure = words.figure(straightedge);
    this.width = setup.asked().work().acrossGuide().most();
    this.length = setup.asked().work().alongGuide().most();
    var set = straightedge.set().value();
    this.nearSide = set.isLessThan(pass.takes().most());
    this.guide = fromLeft(set);
    this.first = fromLeft(pass.takes());
    this.whole =
        setup.passes().stream()
            .map(one -> fromLeft(one.takes()))
            .reduce(
                (one, other) ->
                    new Band(one.least().min(other.least()), one.most().max(other.most())))
            .orElseThrow();
    this.router = length.half();
    this.sheet = new PlanSheet(widthPx, words.all(layout(), notes()));
    this.pixel =
        new Length(toCentre.times(2).picometres() / (sheet.narrow() ? 166 : 230))
            .max(new Length(1));
  }

  static Picture of(
      Operation operation, Setup setup, HandRouter machine, LengthUnit unit, int widthPx) {
    return new HandRouterPlan(operation, setup, machine, unit, widthPx).drawn();
  }

  private Length fromLeft(Length fromReference) {
    return nearSide ? fromReference : width.minus(fromReference);
  }

  private Band fromLeft(Band fromReference) {
    return nearSide
        ? fromReference
        : new Band(fromLeft(fromReference.most()), fromLeft(fromReference.least()));
  }

  private Picture drawn() {
    sheet.head("From above; you stand at the bottom and push away.");
    long room = sheet.width() - 2L * MARGIN;
    var gap = pixel.times(GAP);
    var base = toCentre.times(2);
    var middle =
        new Band(
            guide.minus(pixel.times(RAIL + 14)),
            guide.plus(strip).plus(base).plus(pixel.times(14)));
    long spare = room - pixels(middle.extent()) - 2 * GAP;
    var nearPiece = pixel.times(Math.max(30, nearSide ? spare - 8 : spare / 3));
    var farPiece = pixel.times(Math.max(8, nearSide ? 0 : spare * 2 / 3));
    // The edge that the figure is taken from is always shown; the other one where there is room.
    var pieces = new ArrayList<Band>();
    pieces.add(middle);
    if (nearSide) {
      pieces.add(new Band(Length.ZERO, nearPiece.min(guide.max(Length.ZERO))));
    } else {
      pieces.add(new Band(width.minus(farPiece), width));
    }
    across = Stretch.of(gap, pieces.toArray(Band[]::new));
    var end = pixel.times(26);
    along =
        Stretch.of(
            gap,
            new Band(Length.ZERO, end.min(length)),
            new Band(
                router.minus(toCentre).minus(pixel.times(16)),
                router.plus(toCentre).plus(pixel.times(16))),
            new Band(length.minus(end).max(Length.ZERO), length));
    long above = (words.backed() ? SCRAP : 0) + 44;
    sheet.field(
        pixel, MARGIN + Math.max(0, spareLeft(room)), above, MARGIN, pixels(along.extent()) + 36);
    var plan = sheet.drawing();
    work(plan);
    breaks();
    router(plan);
    dimension(plan);
    sheet.note(setup.feed().words() + ".");
    labels();
    notes().stream().skip(1).forEach(sheet::note);
    return sheet.picture();
  }

  private long spareLeft(long room) {
    return (room - pixels(across.extent())) / 2;
  }

  private long pixels(Length of) {
    return of.dividedBy(pixel, Rounding.UP);
  }

  /** A place so far from the left edge of the work and so far away from the person. */
  private Point at(Length fromLeft, Length awayFromYou) {
    return sheet.drawing().at(across.at(fromLeft), along.extent().minus(along.at(awayFromYou)));
  }

  private long x(Length fromLeft) {
    return at(fromLeft, Length.ZERO).xThousandths() / 1000;
  }

  private long y(Length away) {
    return at(guide, away).yThousandths() / 1000;
  }

  private Length leftShown() {
    return nearSide ? Length.ZERO : Length.ZERO.max(guide.minus(pixel.times(RAIL + 14)));
  }

  private Length rightShown() {
    return nearSide
        ? width.min(guide.plus(strip).plus(toCentre.times(2)).plus(pixel.times(14)))
        : width;
  }

  private void work(Drawing plan) {
    var left = leftShown();
    var right = rightShown();
    plan.box(at(left, Length.ZERO), at(right, length), Fill.WOOD, Line.PLAIN);
    var cutLeft = first.least().max(left);
    var cutRight = first.most().min(right);
    plan.box(at(cutLeft, Length.ZERO), at(cutRight, router), Fill.SHEET, Line.THIN);
    for (var wall : List.of(whole.least(), first.least(), first.most(), whole.most())) {
      if (wall.isGreaterThan(left) && wall.isLessThan(right)) {
        boolean now = wall.equals(first.least()) || wall.equals(first.most());
        plan.line(Line.DASHED, at(wall, now ? router : Length.ZERO), at(wall, length));
      }
    }
    if (words.backed()) {
      var near = whole.least().minus(pixel.times(40)).max(left);
      var far = whole.most().plus(pixel.times(40)).min(right);
      plan.box(at(near, length).up(SCRAP), at(far, length), Fill.WASTE, Line.PLAIN);
    }
    var rail = at(guide, Length.ZERO);
    plan.box(rail.left(RAIL).down(30), at(guide, length).up(SCRAP + 22), Fill.MACHINE, Line.PLAIN);
    if (strip.isPositive()) {
      plan.box(rail.down(30), at(guide.plus(strip), length).up(SCRAP + 22), Fill.SHEET, Line.THIN);
    }
    for (var clamp : List.of(rail.up(6), at(guide, length).down(20))) {
      plan.box(clamp.left(RAIL - 8), clamp.left(8).up(14), Fill.INK, Line.NONE);
    }
  }

  private void breaks() {
    var plan = sheet.drawing();
    long above = y(length) - 6;
    long below = y(Length.ZERO) + 6;
    for (var place : across.breaks()) {
      sheet.breakDown(y(length) - 8, y(Length.ZERO) + 8, plan.at(place, Length.ZERO), GAP);
    }
    for (var place : along.breaks()) {
      var from = plan.at(Length.ZERO, along.extent().minus(place)).up(GAP);
      sheet.breakAcross(x(leftShown()) - 6, x(rightShown()) + 6, from, GAP);
    }
    if (nearSide && rightShown().isLessThan(width)) {
      sheet.goesOnBeside(above, below, at(rightShown(), Length.ZERO), true);
    }
    if (!nearSide && leftShown().isPositive()) {
      sheet.goesOnBeside(above, below, at(leftShown(), Length.ZERO), false);
    }
  }

  private void router(Drawing plan) {
    var centre = at(first.middle(), router);
    var corner = at(guide.plus(strip), router.plus(toCentre));
    plan.box(
        corner, at(first.middle().plus(toCentre), router.minus(toCentre)), Fill.NONE, Line.THICK);
    plan.circle(centre, plan.thousandths(setup.cutter().diameter().half()), Fill.INK, Line.NONE);
    plan.turning(centre, turning(), Turn.CLOCKWISE);
    var arrow = at(first.middle().plus(toCentre), router).left(26);
    plan.feed(arrow.down(80), arrow.up(60));
  }

  private long turning() {
    return Math.max(24, pixels(setup.cutter().diameter().half()) + 12);
  }

  private void dimension(Drawing plan) {
    var edge = at(nearSide ? Length.ZERO : width, Length.ZERO).down(52);
    var rail = at(guide, Length.ZERO).down(52);
    plan.line(Line.THIN, edge.up(52), edge.down(8));
    plan.line(Line.THIN, rail.up(22), rail.down(8));
    plan.span(edge, rail);
    sheet.lower(62);
    long from = Math.min(edge.xThousandths(), rail.xThousandths()) / 1000;
    long to = Math.max(edge.xThousandths(), rail.xThousandths()) / 1000;
    long half = plan.widthOf(figure, Type.FIGURE) / 2;
    long middle = Math.max(8 + half, Math.min((from + to) / 2, sheet.width() - 8 - half));
    plan.text(plan.px(middle, sheet.bottom() - 2), figure, Type.FIGURE, Anchor.MIDDLE);
    sheet.lower(10);
  }

  private void labels() {
    long beside = x(guide.plus(strip)) + 8;
    long row = y(length) - SCRAP - 40;
    sheet.sayOrNote(
        new Column(beside, sheet.width() - 8L, row, row + 31, Anchor.START),
        "straightedge, clamped",
        Type.NOTE);
    long top = y(router.plus(toCentre)) + 8;
    long bottom = y(router.minus(toCentre)) - 4;
    long slotLeft = x(first.least().max(leftShown())) - turning() - 4;
    sheet.say(
        new Column(beside + 4, slotLeft + turning(), top, top + 31, Anchor.START),
        "base",
        Type.NOTE);
    sheet.say(
        new Column(
            x(whole.most()) + 8,
            x(first.middle().plus(toCentre)) - 42,
            top,
            y(router) - turning() - 12,
            Anchor.START),
        "still to cut",
        Type.NOTE);
    sheet.say(
        new Column(
            x(whole.most()) + 8,
            x(first.middle().plus(toCentre)) - 42,
            bottom - 34,
            bottom,
            Anchor.START),
        "cut",
        Type.NOTE);
    if (strip.isPositive()) {
      sheet.note(
          "Strip "
              + words.figure(setup.setting(Setting.Role.STRIP).orElseThrow())
              + " between straightedge and base, pass 1 only.");
    }
    sheet.note(words.face() + "; " + words.rides() + " on your left.");
  }

  private List<String> notes() {
    var notes = new ArrayList<>(words.notes());
    notes.add("White: cut. Dashed: still to cut.");
    notes.add(
        "To scale but for what the zigzag lines leave out; straightedge, clamps"
            + (words.backed() ? ", scrap" : "")
            + " not to size.");
    return notes;
  }

  private String layout() {
    return "The work is clamped, "
        + words.face()
        + ", with its "
        + words.rides()
        + " on your left. A straightedge is clamped on it, on your left of the cut, from front to"
        + " back"
        + (nearSide
            ? ", between the reference edge and the cut. "
            : "; the reference edge is on your right, beyond the cut. ")
        + (strip.isPositive()
            ? "In the first pass the spacer strip lies between straightedge and base. "
            : "")
        + "The base rides along it; the cutter turns clockwise; the router is pushed away from"
        + " you. Nearer to you it is cut, farther away still to cut."
        + (words.backed() ? " Scrap is held against the far edge." : "");
  }
}
