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
import org.proofcut.core.setup.CutAsked;
import org.proofcut.core.setup.Guide;
import org.proofcut.core.setup.Setting;
import org.proofcut.core.setup.Setup;

/**
 * A router table from above, at the first pass: fence at the back, the work against it or against
 * the strip, fed from the right. Along the fence lengths count from the leading edge, away from it
 * from the face of the fence.
 */
final class RouterTablePlan {

  private static final int SCRAP = 18;
  private static final int BLOCK = 86;
  private static final int GAP = 18;
  private static final int OUTFEED = 20;

  private final Setup setup;
  private final PlanWords words;
  private final PlanSheet sheet;
  private final boolean rabbet;

  /** Thickness of the strip in the first pass. */
  private final Length strip;

  /** What the first pass takes, from the face of the fence. */
  private final Band first;

  /** Where the cut ends after the last pass, in the first pass's place of the work. */
  private final Length lastWall;

  private final Length pixel;
  private final String figure;

  private long left;
  private long fenceHigh;
  private Length cutter;
  private Stretch along;
  private Stretch away;

  private RouterTablePlan(Operation operation, Setup setup, LengthUnit unit, int width) {
    this.setup = setup;
    this.words = new PlanWords(operation, setup, unit);
    this.rabbet =
        setup.asked() instanceof CutAsked.Rabbet
            || setup.asked() instanceof CutAsked.Tongue
            || setup.asked() instanceof CutAsked.EdgeProfile
            || setup.asked() instanceof CutAsked.EdgeTrim;
    var pass = setup.passes().get(0);
    this.strip =
        pass.stripOn()
            ? setup.setting(Setting.Role.STRIP).orElseThrow().set().value()
            : Length.ZERO;
    this.first = pass.takes().movedBy(strip);
    this.lastWall =
        setup.passes().stream()
            .map(one -> one.takes().most())
            .max(Length::compareTo)
            .orElseThrow()
            .plus(strip);
    var fence = setup.setting(Setting.Role.FENCE).orElseThrow();
    this.figure = words.figure(fence);
    this.sheet = new PlanSheet(width, words.all(layout(), notes()));
    this.pixel = pixel();
  }

  static Picture of(Operation operation, Setup setup, LengthUnit unit, int width) {
    return new RouterTablePlan(operation, setup, unit, width).drawn();
  }

  /** Small enough to show the work, large enough to see the cutter and the step it cuts. */
  private Length pixel() {
    var diameter = setup.cutter().diameter();
    var pixel = part(diameter, sheet.narrow() ? 26 : 34);
    if (rabbet) {
      pixel = pixel.min(part(lastWall, 18)).max(part(diameter, 80));
    }
    return pixel;
  }

  private static Length part(Length whole, long count) {
    return new Length(Math.max(1, whole.picometres() / count));
  }

  private Picture drawn() {
    sheet.head("From above; you stand at the bottom.");
    stretches();
    var plan = sheet.drawing();
    fence(plan);
    work(plan);
    breaks();
    cutter(plan);
    dimension(plan);
    sheet.note(setup.feed().words() + ".");
    labels();
    long y = sheet.bottom() + 34;
    plan.feed(plan.px(sheet.width() - 30, y), plan.px(left + OUTFEED, y));
    sheet.lower(62);
    notes().stream().skip(1).forEach(sheet::note);
    return sheet.picture();
  }

  private void stretches() {
    left = 36 + sheet.drawing().widthOf(figure, Type.FIGURE) + 16;
    long room = sheet.width() - left - OUTFEED - 8;
    long behind = (words.backed() ? SCRAP : 0) + (block() ? BLOCK : 0);
    long stub = sheet.narrow() ? 40 : 80;
    long shown = room - GAP - stub - behind;
    var length = setup.asked().work().alongGuide().most();
    var gap = pixel.times(GAP);
    along =
        Stretch.of(
            gap,
            new Band(Length.ZERO, pixel.times(shown).min(length)),
            new Band(
                length.minus(pixel.times(stub)).max(Length.ZERO),
                length.plus(pixel.times(behind))));
    cutter = pixel.times(shown * 45 / 100).min(length.half());
    var end = strip.plus(setup.asked().work().acrossGuide().most());
    // Room for the words under the cut.
    var below = lastWall.plus(pixel.times(turning() + 100)).min(end);
    away =
        Stretch.of(
            gap,
            new Band(Length.ZERO, pixel.times(sheet.narrow() ? 164 : 110).min(below)),
            new Band(first.least().minus(pixel.times(48)).max(Length.ZERO), below));
    fenceHigh = Math.max(46, pixels(first.least().min(Length.ZERO).abs()) + 18);
    sheet.field(pixel, left, fenceHigh, 8, pixels(away.extent()) + 6);
  }

  private boolean block() {
    return setup.guide() == Guide.FENCE_WITH_BLOCK;
  }

  private long turning() {
    return Math.max(26, pixels(setup.cutter().diameter().half()) + 12);
  }

  private long pixels(Length length) {
    return length.dividedBy(pixel, Rounding.UP);
  }

  private Point at(Length alongFence, Length fromFence) {
    var y = fromFence.isNegative() ? fromFence : away.at(fromFence);
    return sheet.drawing().at(pixel.times(OUTFEED).plus(along.at(alongFence)), y);
  }

  private long x(Length alongFence) {
    return at(alongFence, Length.ZERO).xThousandths() / 1000;
  }

  private long y(Length fromFence) {
    return at(Length.ZERO, fromFence).yThousandths() / 1000;
  }

  private Length workLength() {
    return setup.asked().work().alongGuide().most();
  }

  private Length workEnd() {
    return strip.plus(setup.asked().work().acrossGuide().most());
  }

  private boolean goesOn() {
    return workEnd().isGreaterThan(shownEnd());
  }

  private Length shownEnd() {
    return lastWall.plus(pixel.times(turning() + 100)).min(workEnd());
  }

  private void fence(Drawing plan) {
    long face = y(Length.ZERO);
    plan.box(
        plan.px(left, face - fenceHigh),
        plan.px(sheet.width() - 8L, face),
        Fill.MACHINE,
        Line.PLAIN);
    long half = pixels(setup.cutter().diameter().half()) + 10;
    long deep = Math.max(28, pixels(first.least().min(Length.ZERO).abs()) + 8);
    plan.box(
        plan.px(x(cutter) - half, face - deep),
        plan.px(x(cutter) + half, face),
        Fill.SHEET,
        Line.PLAIN);
    long lines = face - fenceHigh + (fenceHigh - 30) / 2;
    var beside = new Column(x(cutter) + half + 10, headEnd(), lines, face, Anchor.START);
    if (!sheet.plate(beside, "fence", Type.NOTE)) {
      sheet.plate(
          new Column(left + 8, x(cutter) - half - 10, lines, face, Anchor.START),
          "fence",
          Type.NOTE);
    }
    if (strip.isPositive()) {
      plan.box(
          plan.px(left, face),
          new Point((sheet.width() - 8) * 1000L, at(Length.ZERO, strip).yThousandths()),
          Fill.SHEET,
          Line.THIN);
    }
  }

  private void work(Drawing plan) {
    var length = workLength();
    var edge = first.least().max(strip);
    plan.box(at(Length.ZERO, strip), at(length, shownEnd()), Fill.WOOD, Line.PLAIN);
    plan.box(at(Length.ZERO, edge), at(cutter, first.most()), Fill.SHEET, Line.THIN);
    plan.line(Line.DASHED, at(cutter, first.most()), at(length, first.most()));
    if (!rabbet) {
      plan.line(Line.DASHED, at(cutter, edge), at(length, edge));
    }
    if (lastWall.isGreaterThan(first.most())) {
      plan.line(Line.DASHED, at(Length.ZERO, lastWall), at(length, lastWall));
    }
    if (setup.asked() instanceof CutAsked.EdgeTrim) {
      long half = pixels(setup.cutter().diameter().half()) + 10;
      plan.box(
          new Point(left * 1000, at(Length.ZERO, Length.ZERO).yThousandths()),
          at(cutter, first.most()).left(half),
          Fill.MACHINE,
          Line.PLAIN);
    }
    if (words.backed()) {
      plan.box(
          at(length, strip),
          at(length, shownEnd().min(lastWall.plus(pixel.times(40)))).right(SCRAP),
          Fill.WASTE,
          Line.PLAIN);
    }
    if (block()) {
      var from = at(length, strip).right(words.backed() ? SCRAP : 0);
      plan.box(from, from.right(BLOCK - 4).down(76), Fill.MACHINE, Line.PLAIN);
      long right = from.xThousandths() / 1000 + BLOCK - 8;
      long top = from.yThousandths() / 1000 + 23;
      sheet.plate(
          new Column(right - BLOCK + 10, right, top, top + 40, Anchor.MIDDLE), "block", Type.NOTE);
    }
  }

  private void breaks() {
    var plan = sheet.drawing();
    long right = sheet.width() - 4L;
    if (goesOn()) {
      sheet.goesOnBelow(x(Length.ZERO) - 6, x(workLength()) + 6, at(Length.ZERO, shownEnd()));
    }
    for (var place : away.breaks()) {
      sheet.breakAcross(left - 4, right, plan.at(Length.ZERO, place), GAP);
    }
    for (var place : along.breaks()) {
      var from = plan.at(pixel.times(OUTFEED).plus(place), Length.ZERO);
      sheet.breakDown(y(Length.ZERO) - fenceHigh - 5, sheet.bottom() + 4, from, GAP);
    }
  }

  private void cutter(Drawing plan) {
    var centre = at(cutter, first.middle());
    plan.circle(centre, plan.thousandths(setup.cutter().diameter().half()), Fill.INK, Line.NONE);
    plan.turning(centre, turning(), Turn.COUNTER_CLOCKWISE);
  }

  /** From the fence to the nearest cutting edge of a slot, the farthest of a rabbet. */
  private void dimension(Drawing plan) {
    var edge = rabbet ? first.most() : first.least();
    var face = at(Length.ZERO, Length.ZERO);
    var to = at(cutter, edge);
    long line = 22_000;
    plan.line(
        Line.THIN,
        new Point(8_000, face.yThousandths()),
        new Point(left * 1000, face.yThousandths()));
    plan.line(Line.THIN, new Point(8_000, to.yThousandths()), to);
    var from = new Point(line, face.yThousandths());
    var end = new Point(line, to.yThousandths());
    if (to.yThousandths() - face.yThousandths() > 60_000) {
      plan.dimension(from, end, figure);
    } else {
      plan.span(from, end);
      plan.text(end.right(14).down(40), figure, Type.FIGURE, Anchor.START);
    }
  }

  /** Where words beside the leading edge have to end: before the break, or with the work. */
  private long headEnd() {
    return along.breaks().stream()
            .findFirst()
            .map(place -> sheet.drawing().at(pixel.times(OUTFEED).plus(place), Length.ZERO))
            .orElse(at(workLength(), Length.ZERO))
            .left(12)
            .xThousandths()
        / 1000;
  }

  private void labels() {
    long from = x(Length.ZERO) + 10;
    long to = headEnd();
    long round = turning() + 14;
    long near = y(first.least());
    long far = y(lastWall);
    var rides = words.rides() + " on the fence";
    if (strip.isPositive()) {
      rides = words.rides() + " on fence or strip";
    }
    if (!rabbet) {
      long end =
          away.isBroken()
              ? sheet.drawing().at(Length.ZERO, away.breaks().get(0)).yThousandths() / 1000 - 10
              : near - 34;
      var close = new Column(from, to, y(strip) + 4, end, Anchor.START);
      if (strip.isPositive()) {
        var thick = words.figure(setup.setting(Setting.Role.STRIP).orElseThrow());
        sheet.sayOrNote(close, "strip " + thick + ", pass 1 only", Type.STRESS);
      }
      sheet.sayOrNote(close, rides, Type.NOTE);
    }
    long row = rabbet ? far + 2 : near - 32;
    sheet.say(new Column(from, x(cutter) - round, row, row + 31, Anchor.START), "cut", Type.NOTE);
    sheet.say(
        new Column(x(cutter) + round, to, row, row + 31, Anchor.START), "still to cut", Type.NOTE);
    long under = Math.max(far + 4, y(first.middle()) + turning() + 12);
    under = rabbet ? Math.max(under, far + 34) : under;
    var below = new Column(from, to, under, y(shownEnd()) - 6, Anchor.START);
    sheet.sayOrNote(below, "leads", Type.STRESS);
    if (rabbet) {
      sheet.sayOrNote(below, rides, Type.NOTE);
    }
    sheet.sayOrNote(below, words.face(), Type.NOTE);
    if (words.backed()) {
      long tail = x(workLength()) - 6;
      long room = along.isBroken() ? headEnd() + 12 + GAP + 12 : from;
      sheet.say(new Column(room, tail, under, under + 31, Anchor.END), "scrap", Type.NOTE);
    }
  }

  private List<String> notes() {
    var notes = new ArrayList<>(words.notes());
    notes.add(
        "White: cut. Dashed: still to cut"
            + (lastWall.isGreaterThan(first.most()) ? ", with pass 2 at the far side" : "")
            + ". The cut is underneath, drawn as if seen through.");
    notes.add(
        "To scale but for what the zigzag lines leave out; fence"
            + (words.backed() ? ", scrap" : "")
            + (block() ? ", block" : "")
            + " not to size.");
    return notes;
  }

  private String layout() {
    return "The fence is at the back, with an opening for the cutter, which turns"
        + " counter-clockwise. "
        + (setup.asked() instanceof CutAsked.EdgeTrim
            ? "Its outfeed half, on the left, stands forward by what a pass takes. "
            : "")
        + (rabbet
            ? "The cutter stands partly in the fence and cuts along the edge that rides it. "
            : "The cutter stands in front of the fence and cuts a slot along it. ")
        + (strip.isPositive()
            ? "In the first pass the spacer strip lies between fence and work. "
            : "")
        + "The work moves from right to left, "
        + words.face()
        + ", "
        + words.rides()
        + " on the fence"
        + (strip.isPositive() ? " or strip" : "")
        + "; left of the cutter it is cut, right of it still to cut."
        + (words.backed() ? " Scrap is held against the trailing edge." : "")
        + (block() ? " A square block behind the work pushes it along the fence." : "");
  }
}
