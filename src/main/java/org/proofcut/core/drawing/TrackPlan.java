package org.proofcut.core.drawing;

import java.util.ArrayList;
import java.util.List;
import org.proofcut.core.drawing.Drawing.Anchor;
import org.proofcut.core.drawing.Drawing.Fill;
import org.proofcut.core.drawing.Drawing.Line;
import org.proofcut.core.drawing.Drawing.Point;
import org.proofcut.core.drawing.Drawing.Type;
import org.proofcut.core.drawing.PlanSheet.Column;
import org.proofcut.core.measure.Band;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.LengthUnit;
import org.proofcut.core.measure.Rounding;
import org.proofcut.core.operation.Operation;
import org.proofcut.core.setup.CutAsked;
import org.proofcut.core.setup.Setup;

/**
 * A sheet under a track saw from above: reference edge on the left, the track on the side that is
 * kept, the saw pushed away along it. Lengths across count from the reference edge, along from the
 * edge next to the person.
 */
final class TrackPlan {

  private static final int GAP = 18;
  private static final int TRACK = 84;
  private static final int WASTE = 76;
  private static final int END = 40;
  private static final int OVER = 26;

  private final Setup setup;
  private final PlanWords words;
  private final PlanSheet sheet;
  private final String figure;
  private final Length mark;
  private final Length kerf;
  private final Length run;
  private final Length pixel;
  private final Length saw;
  private Stretch across;
  private Stretch along;

  private TrackPlan(Operation operation, Setup setup, LengthUnit unit, int width) {
    this.setup = setup;
    this.words = new PlanWords(operation, setup, unit);
    this.figure = words.figure(setup.settings().get(0));
    this.mark = setup.settings().get(0).set().value();
    this.kerf = setup.cutter().cutWidth();
    var work = setup.asked().work();
    boolean rip =
        setup.asked() instanceof CutAsked.Bevel
            || setup.asked() instanceof CutAsked.Parting parting && parting.along();
    this.run = (rip ? work.alongGuide() : work.acrossGuide()).most();
    this.saw = run.half();
    this.sheet = new PlanSheet(width, words.all(layout(), notes()));
    // Large enough that the kerf is seen.
    this.pixel = new Length(Math.max(1, kerf.picometres() / 5));
  }

  static Picture of(Operation operation, Setup setup, LengthUnit unit, int width) {
    return new TrackPlan(operation, setup, unit, width).drawn();
  }

  private Picture drawn() {
    sheet.head("From above; you stand at the bottom and push away.");
    long room = sheet.width() - 24L;
    long kept = room - WASTE - pixels(kerf);
    long byEdge = kept - GAP - TRACK - 26;
    var gap = pixel.times(GAP);
    across =
        Stretch.of(
            gap,
            new Band(Length.ZERO, pixel.times(byEdge).min(mark)),
            new Band(
                mark.minus(pixel.times(TRACK + 26)).max(Length.ZERO),
                mark.plus(kerf).plus(pixel.times(WASTE))));
    var end = pixel.times(END);
    var half = pixel.times(105);
    along =
        Stretch.of(
            gap,
            new Band(Length.ZERO, end.min(run)),
            new Band(saw.minus(half).max(Length.ZERO), saw.plus(half).min(run)),
            new Band(run.minus(end).max(Length.ZERO), run));
    sheet.field(pixel, 12, OVER + 4, 12, pixels(along.extent()) + OVER + 8);
    var plan = sheet.drawing();
    sheetAndTrack(plan);
    breaks();
    saw(plan);
    dimension(plan);
    sheet.note(setup.feed().words() + ".");
    labels();
    notes().stream().skip(1).forEach(sheet::note);
    return sheet.picture();
  }

  private long pixels(Length of) {
    return of.dividedBy(pixel, Rounding.UP);
  }

  private Point at(Length fromEdge, Length away) {
    return sheet.drawing().at(across.at(fromEdge), along.extent().minus(along.at(away)));
  }

  private long x(Length fromEdge) {
    return at(fromEdge, Length.ZERO).xThousandths() / 1000;
  }

  private long y(Length away) {
    return at(Length.ZERO, away).yThousandths() / 1000;
  }

  private Length farEnd() {
    return mark.plus(kerf).plus(pixel.times(WASTE));
  }

  private void sheetAndTrack(Drawing plan) {
    var wasteFrom = mark.plus(kerf);
    plan.box(at(Length.ZERO, Length.ZERO), at(mark, run), Fill.WOOD, Line.PLAIN);
    plan.box(at(mark, Length.ZERO), at(farEnd(), run), Fill.WOOD, Line.PLAIN);
    plan.box(at(mark, Length.ZERO), at(wasteFrom, saw), Fill.SHEET, Line.THIN);
    plan.line(Line.DASHED, at(mark, saw), at(mark, run));
    plan.line(Line.DASHED, at(wasteFrom, saw), at(wasteFrom, run));
    for (var support : supports()) {
      plan.line(
          Line.DASHED,
          support,
          new Point(at(farEnd(), run).xThousandths(), support.yThousandths()));
      var lower = support.down(18);
      plan.line(
          Line.DASHED, lower, new Point(at(farEnd(), run).xThousandths(), lower.yThousandths()));
    }
    var rail = at(mark, Length.ZERO).down(OVER);
    plan.box(rail.left(TRACK), at(mark, run).up(OVER), Fill.MACHINE, Line.PLAIN);
  }

  /** Upper edges of the supports, at the far end, at both sides of the saw, and at the near end. */
  private List<Point> supports() {
    return List.of(
        at(Length.ZERO, run).down(10),
        at(Length.ZERO, saw).up(96),
        at(Length.ZERO, saw).down(78),
        at(Length.ZERO, Length.ZERO).up(28));
  }

  private void breaks() {
    var plan = sheet.drawing();
    for (var place : across.breaks()) {
      sheet.breakDown(y(run) - 6, y(Length.ZERO) + 6, plan.at(place, Length.ZERO), GAP);
    }
    for (var place : along.breaks()) {
      var from = plan.at(Length.ZERO, along.extent().minus(place)).up(GAP);
      sheet.breakAcross(x(Length.ZERO) - 6, x(farEnd()) + 6, from, GAP);
    }
    sheet.goesOnBeside(y(run) - 6, y(Length.ZERO) + 6, at(farEnd(), run), true);
  }

  private void saw(Drawing plan) {
    var centre = at(mark, saw);
    plan.box(centre.left(TRACK - 12).up(66), centre.right(34).down(66), Fill.SHEET, Line.THICK);
    plan.box(at(mark, saw).up(50), at(mark.plus(kerf), saw).down(40), Fill.INK, Line.NONE);
    plan.feed(centre.left(TRACK - 44).down(54), centre.left(TRACK - 44).up(54));
  }

  private void dimension(Drawing plan) {
    var from = at(Length.ZERO, Length.ZERO).down(OVER + 18);
    var to = at(mark, Length.ZERO).down(OVER + 18);
    plan.line(Line.THIN, from.up(OVER + 18), from.down(8));
    plan.line(Line.THIN, to.up(18), to.down(8));
    plan.span(from, to);
    sheet.lower(44);
    long half = plan.widthOf(figure, Type.FIGURE) / 2;
    long middle = Math.max(8 + half, (from.xThousandths() + to.xThousandths()) / 2000);
    plan.text(plan.px(middle, sheet.bottom() + 6), figure, Type.FIGURE, Anchor.MIDDLE);
    sheet.lower(14);
  }

  private void labels() {
    long left = x(Length.ZERO) + 10;
    long right =
        across.isBroken()
            ? sheet.drawing().at(across.breaks().get(0), Length.ZERO).xThousandths() / 1000 - 12
            : x(mark) - TRACK - 10;
    var kept = new Column(left, right, y(saw) - 70, y(saw) + 74, Anchor.START);
    sheet.sayOrNote(kept, "kept", Type.STRESS);
    sheet.sayOrNote(kept, words.face(), Type.NOTE);
    sheet.sayOrNote(kept, "reference edge on the left", Type.NOTE);
    long wide = x(farEnd()) - 6;
    sheet.say(
        new Column(x(mark.plus(kerf)) + 40, wide, y(saw) - 20, y(saw) + 20, Anchor.START),
        "off",
        Type.NOTE);
    sheet.note(
        "The hatched track lies on the side that is kept, its edge on the mark. Dashed under the"
            + " sheet: supports on both sides of the cut.");
  }

  private List<String> notes() {
    var notes = new ArrayList<>(words.notes());
    notes.add("Set the track anew for each size, from the edge just cut.");
    if (words.otherSizes().isEmpty()) {
      notes.remove(notes.size() - 1);
    }
    notes.add(
        "To scale but for what the zigzag lines leave out; track, saw and supports not to size.");
    return notes;
  }

  private String layout() {
    return "The sheet lies on supports on both sides of the cut, "
        + words.face()
        + ", its reference edge on your left. The track lies on the side that is kept, its edge on"
        + " the mark; the blade runs along its right edge, so that the kerf falls on the waste."
        + " The saw is pushed away from you.";
  }
}
