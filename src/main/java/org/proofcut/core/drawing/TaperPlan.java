package org.proofcut.core.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.proofcut.core.drawing.Drawing.Anchor;
import org.proofcut.core.drawing.Drawing.Fill;
import org.proofcut.core.drawing.Drawing.Line;
import org.proofcut.core.drawing.Drawing.Point;
import org.proofcut.core.drawing.Drawing.Type;
import org.proofcut.core.drawing.PlanSheet.Column;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.LengthUnit;
import org.proofcut.core.measure.Rounding;
import org.proofcut.core.operation.Operation;
import org.proofcut.core.setup.CutAsked.Tapered;
import org.proofcut.core.setup.Setting;
import org.proofcut.core.setup.Setup;
import org.proofcut.core.shop.TableSaw;

/**
 * A taper at the table saw from above, the blade half way: fence on the right, the carrier along
 * it, the work against heel and side stop. Lengths across count from the carrier's edge at the
 * blade toward the fence, along from where the narrow end is cut, away from the person.
 */
final class TaperPlan {

  private static final int FEED_LANE = 62;
  private static final int FENCE = 76;
  private static final int ABOVE = 92;
  private static final int BELOW = 136;
  private static final int STOP = 24;

  private final Tapered asked;
  private final Setup setup;
  private final TableSaw saw;
  private final PlanWords words;
  private final PlanSheet sheet;
  private final Drawing plan;
  private final Length carrier;
  private final Length in;
  private final Length cutFrom;
  private final Length kerf;
  private final Length exposed;
  private final Length front;
  private final Length length;
  private final Length free;
  private final Length pixel;

  private TaperPlan(
      Operation operation, Setup setup, Tapered asked, TableSaw saw, LengthUnit unit, int width) {
    this.asked = asked;
    this.setup = setup;
    this.saw = saw;
    this.words = new PlanWords(operation, setup, unit);
    this.carrier = asked.carrier().width().value();
    this.in = asked.runsIn();
    this.cutFrom = asked.wide().minus(in);
    this.kerf = setup.cutter().cutWidth();
    this.exposed =
        SawPlan.exposed(setup.cutter().diameter(), setting(Setting.Role.HEIGHT).set().value());
    this.front = asked.run().half();
    this.length = asked.work().alongGuide().most();
    this.sheet = new PlanSheet(width, words.all(layout(), notes()));
    this.plan = sheet.drawing();
    long room = width - FEED_LANE - FENCE - 8L;
    // Room beside the blade for its guard, and for what falls there.
    var across = carrier.plus(in);
    long tall = sheet.narrow() ? 520 : 620;
    this.pixel =
        new Length(Math.max(across.picometres() / (room - 40), length.picometres() / tall) + 1);
    this.free = pixel.times(room).minus(carrier);
  }

  static Picture of(
      Operation operation, Setup setup, Tapered asked, TableSaw saw, LengthUnit unit, int width) {
    return new TaperPlan(operation, setup, asked, saw, unit, width).drawn();
  }

  private Setting setting(Setting.Role role) {
    return setup.setting(role).orElseThrow();
  }

  private Picture drawn() {
    sheet.head("From above; you stand at the bottom, left of the blade's line.");
    long tall = length.dividedBy(pixel, Rounding.UP);
    sheet.field(pixel, FEED_LANE, ABOVE, FENCE + 8L, tall + BELOW);
    machine();
    work();
    stops();
    blade();
    sheet.note(setup.feed().words() + ".");
    figures();
    labels();
    plan.feed(
        plan.px(FEED_LANE / 2 - 4, sheet.bottom() - 60),
        plan.px(FEED_LANE / 2 - 4, sheet.top() + 60));
    notes().stream().skip(1).forEach(sheet::note);
    return sheet.picture();
  }

  /** So far from the carrier's edge toward the fence, so far ahead of where the cut ends. */
  private Point at(Length toFence, Length ahead) {
    return plan.at(free.plus(toFence), length.minus(ahead));
  }

  /** A place of the piece: along its middle line, and out from the edge that faces the fence. */
  private Point of(Length along, Length out) {
    return at(fromEdge(along, out), ahead(along, out));
  }

  private Length fromEdge(Length along, Length out) {
    return sine(along).minus(cosine(out.minus(cutFrom)));
  }

  private Length ahead(Length along, Length out) {
    return cosine(along).plus(sine(out.minus(cutFrom)));
  }

  private Length sine(Length of) {
    return of.times(asked.angle().sine(), Length.HUNDREDTH, Rounding.NEAREST);
  }

  private Length cosine(Length of) {
    return of.times(asked.angle().cosine(), Length.HUNDREDTH, Rounding.NEAREST);
  }

  private static long x(Point of) {
    return of.xThousandths() / 1000;
  }

  private static long y(Point of) {
    return of.yThousandths() / 1000;
  }

  private void machine() {
    long middle = x(at(kerf.half().negated(), Length.ZERO));
    plan.box(
        plan.px(middle - 26, sheet.top()),
        plan.px(middle + 26, sheet.bottom()),
        Fill.WASTE,
        Line.DASHED);
    var edge = at(carrier, Length.ZERO);
    plan.box(
        plan.px(x(edge), sheet.top() + 6),
        plan.px(x(edge) + FENCE, sheet.bottom() - 16),
        Fill.MACHINE,
        Line.PLAIN);
    plan.box(
        at(Length.ZERO, length).up(36), at(carrier, Length.ZERO).down(72), Fill.SHEET, Line.PLAIN);
  }

  private void work() {
    var wide = asked.wide();
    var run = asked.run();
    var straight =
        asked.second()
            ? Stream.of(of(Length.ZERO, in), of(run, Length.ZERO), of(length, Length.ZERO))
            : Stream.of(of(Length.ZERO, Length.ZERO), of(length, Length.ZERO));
    plan.outline(
        Fill.SHEET, Line.PLAIN, of(Length.ZERO, cutFrom), of(run, wide), of(Length.ZERO, wide));
    plan.outline(
        Fill.WOOD,
        Line.PLAIN,
        Stream.concat(
                straight, Stream.of(of(length, wide), of(run, wide), of(Length.ZERO, cutFrom)))
            .toArray(Point[]::new));
    plan.line(Line.DASHED, at(kerf.negated(), Length.ZERO), at(kerf.negated(), front));
    for (var share : List.of(5, 2)) {
      var along = length.minus(new Length(length.picometres() / share));
      // By the stops, clear of the guard.
      var out = new Length(cutFrom.picometres() / 4).plus(asked.second() ? in : Length.ZERO);
      plan.circle(of(along, out), 8_000, Fill.SHEET, Line.THICK);
    }
  }

  private Length heel() {
    return setting(Setting.Role.STOP).set().value();
  }

  private Length sideStop() {
    return heel().plus(setting(Setting.Role.STOP_OFFSET).set().value());
  }

  /** Where the corner in the heel lies, seen along the carrier. */
  private Length heelAhead() {
    return ahead(Length.ZERO, asked.second() ? in : Length.ZERO);
  }

  private Length sideStopAhead() {
    return heelAhead().plus(asked.carrier().apart().value());
  }

  private void stops() {
    var corner = at(heel(), heelAhead());
    long under = Math.min((x(corner) - x(at(Length.ZERO, Length.ZERO))) / 2, STOP);
    plan.outline(
        Fill.INK,
        Line.NONE,
        corner.left(under),
        corner,
        corner.up(STOP),
        corner.up(STOP).right(STOP),
        corner.right(STOP).down(STOP),
        corner.left(under).down(STOP));
    var side = at(sideStop(), sideStopAhead());
    plan.box(side, side.right(STOP).down(STOP), Fill.INK, Line.NONE);
  }

  private void blade() {
    var back = front.plus(exposed);
    plan.box(at(kerf.negated(), front), at(Length.ZERO, back), Fill.INK, Line.NONE);
    var knife = back.plus(pixel.times(4));
    var thin = new Length(kerf.picometres() / 8);
    if (saw.hasRivingKnife()) {
      plan.box(
          at(thin.minus(kerf), knife),
          at(thin.negated(), knife.plus(pixel.times(30))),
          Fill.SHEET,
          Line.PLAIN);
    }
    if (saw.hasGuard()) {
      plan.box(
          at(kerf.negated(), front).left(20).down(12),
          at(Length.ZERO, knife.plus(pixel.times(34))).right(20),
          Fill.NONE,
          Line.PLAIN);
    }
  }

  /** On a carrier with no room for them the figures are said below. */
  private void figures() {
    var corner = at(heel(), heelAhead());
    var side = at(sideStop(), sideStopAhead());
    var width = words.figure(setting(Setting.Role.FENCE));
    var heel = words.figure(setting(Setting.Role.STOP));
    var apart = words.ruleNumber(asked.carrier().apart().value());
    var offset = words.figure(setting(Setting.Role.STOP_OFFSET));
    long edge = x(at(carrier, Length.ZERO));
    long upright = x(side) + STOP + 30L;
    boolean room =
        upright + 14 + plan.widthOf(apart, Type.FIGURE) < edge - 6
            && x(corner) + 38 + plan.widthOf(heel, Type.FIGURE) < edge - 6;
    if (!room) {
      sheet.note(
          "Carrier %s wide; heel %s from its edge; side stop %s ahead of it and %s farther in."
              .formatted(width, heel, apart, offset));
      return;
    }
    // The carrier's width, before its leading end.
    long top = y(at(Length.ZERO, length)) - 56;
    var left = plan.px(x(at(Length.ZERO, length)), top);
    plan.line(Line.THIN, left.down(20), left.up(6));
    plan.dimension(left, plan.px(edge, top), width);
    // The heel, behind the narrow end.
    long line = y(corner) + STOP + 22;
    var other = plan.px(x(corner), line);
    plan.line(Line.THIN, corner, other.down(6));
    plan.dimension(plan.px(x(at(Length.ZERO, Length.ZERO)), line), other, heel);
    // Both stops: how far apart, and how much farther the second stands.
    var high = plan.px(upright, y(side));
    var low = plan.px(upright, y(corner));
    plan.line(Line.THIN, side.right(STOP), high.right(6));
    plan.line(Line.THIN, corner.right(STOP), low.right(6));
    plan.dimension(high, low, apart);
    long beside = x(side) + STOP + 10L;
    if (beside + plan.widthOf("+ " + offset, Type.FIGURE) < edge) {
      plan.text(plan.px(beside, y(side) - 12), "+ " + offset, Type.FIGURE, Anchor.START);
    } else {
      sheet.note("The side stop stands " + offset + " farther in than the heel.");
    }
  }

  private void labels() {
    var edge = at(carrier, Length.ZERO);
    sheet.plate(
        new Column(
            x(edge) + 2,
            x(edge) + FENCE - 2L,
            y(at(Length.ZERO, front)),
            sheet.bottom(),
            Anchor.MIDDLE),
        "fence",
        Type.NOTE);
    var side = at(sideStop(), sideStopAhead());
    long left = x(side) + STOP + 10L;
    long right = x(edge) - 8L;
    var above =
        new Column(left, right, y(at(Length.ZERO, length)) - 26, y(side) - 44, Anchor.START);
    sheet.sayOrNote(above, "wide end leads", Type.STRESS);
    sheet.sayOrNote(above, "side stop, by its corner", Type.NOTE);
    long middle = (y(side) + y(edge)) / 2;
    var beside = new Column(left + 40, right, middle + 30, y(edge), Anchor.START);
    sheet.say(beside, "carrier", Type.STRESS);
    sheet.sayOrNote(beside, "rings: clamps", Type.NOTE);
    sheet.sayOrNote(beside, "narrow end in the heel", Type.NOTE);
    long blade = x(at(kerf.negated(), Length.ZERO));
    var beyond =
        new Column(FEED_LANE, blade - 30, y(at(Length.ZERO, front)) - 20, y(edge) + 40, Anchor.END);
    if (saw.hasGuard()) {
      sheet.sayOrNote(
          new Column(
              FEED_LANE,
              blade - 30,
              y(at(Length.ZERO, front.plus(exposed))),
              y(at(Length.ZERO, front)) - 30,
              Anchor.END),
          saw.hasRivingKnife() ? "guard over blade and riving knife" : "guard over blade",
          Type.NOTE);
    }
    sheet.sayOrNote(beyond, "white: waste, free on this side of the blade", Type.NOTE);
    long stand = sheet.bottom() - 40;
    if (!sheet.plate(
        new Column(blade - 90, blade + 90, stand, stand + 34, Anchor.MIDDLE),
        "keep clear",
        Type.STRESS)) {
      sheet.note("Hatched: keep clear.");
    }
  }

  private List<String> notes() {
    var notes = new ArrayList<String>(words.notes());
    notes.add(
        "The blade's near side grazes the carrier's edge. It comes in where the taper begins and"
            + " goes out at the narrow end: the waste hangs on to the last, and its thick end comes"
            + " free, not a tip.");
    if (asked.second()) {
      notes.add("Turned over: the edge cut first lies on both stops, the wide end leads again.");
    }
    notes.add(
        "Keep out of the line of the blade, where a piece is thrown; never reach behind the blade.");
    if (!saw.hasGuard() || !saw.hasRivingKnife()) {
      notes.add(
          "Entered for this saw: no "
              + (saw.hasGuard()
                  ? "riving knife"
                  : saw.hasRivingKnife() ? "guard" : "guard and no riving knife")
              + ". None is drawn.");
    }
    notes.add("To scale; fence, stops, clamps, guard and knife not to size.");
    return notes;
  }

  private String layout() {
    return "The fence is on the right, the carrier's straight edge against it. On the carrier lies"
        + " the work, "
        + words.face()
        + ", clamped; its "
        + words.rides()
        + " touches the heel at the narrow end, which is nearest to you, and the side stop "
        + words.rule(asked.carrier().apart().value())
        + " ahead of it. The carrier moves away from you, and the blade runs along its left edge;"
        + " the waste is on the left of the blade, away from the fence"
        + (saw.hasRivingKnife() ? "; behind the blade stands the riving knife" : "")
        + (saw.hasGuard() ? "; the guard covers the blade" : "")
        + ". The strip in line with the blade is hatched: keep clear.";
  }
}
