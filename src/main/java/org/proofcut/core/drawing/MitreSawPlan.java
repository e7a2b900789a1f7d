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
import org.proofcut.core.measure.Angle;
import org.proofcut.core.measure.Band;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.LengthUnit;
import org.proofcut.core.measure.Rounding;
import org.proofcut.core.operation.Operation;
import org.proofcut.core.setup.AngleSetting;
import org.proofcut.core.setup.CutAsked;
import org.proofcut.core.setup.Setting;
import org.proofcut.core.setup.Setup;
import org.proofcut.core.shop.Side;

/**
 * A mitre saw from above: the fence at the top, the work against it, the cut turned about the point
 * where it meets the fence. Lengths along count from stop or long point to the teeth at the fence,
 * across from the fence toward the person.
 */
final class MitreSawPlan {

  private static final int GAP = 18;
  private static final int FENCE = 40;
  private static final int STOP = 26;
  private static final int WASTE = 84;
  private static final int TALLEST = 150;

  /** How far the saw's line is drawn beyond the work, toward the person. */
  private static final int ARM = 74;

  private final Setup setup;
  private final PlanWords words;
  private final PlanSheet sheet;
  private final String figure;
  private final Length size;
  private final Length width;

  /** How far the cut runs in over the width of the work. */
  private final Length run;

  private final Length kerf;
  private final Angle mitre;

  /** Whether the piece that is kept lies on the left. */
  private final boolean left;

  private final boolean stopped;
  private final Length pixel;
  private Stretch along;

  private MitreSawPlan(Operation operation, Setup setup, LengthUnit unit, int width) {
    this.setup = setup;
    this.words = new PlanWords(operation, setup, unit);
    this.figure = words.figure(setup.settings().get(0));
    this.size = setup.settings().get(0).set().value();
    this.width = setup.asked().work().acrossGuide().most();
    var turned = setup.angle(AngleSetting.Role.MITRE).orElseThrow();
    this.mitre = turned.set().value();
    this.left =
        setup
            .angle(AngleSetting.Role.BEVEL)
            .flatMap(AngleSetting::toward)
            .map(leans -> leans == Side.RIGHT)
            .orElse(true);
    this.stopped = setup.setting(Setting.Role.STOP).isPresent();
    this.run = this.width.times(mitre.tangent(), Length.HUNDREDTH, Rounding.NEAREST);
    this.kerf = setup.passes().get(0).takes().extent();
    this.sheet = new PlanSheet(width, words.all(layout(), notes()));
    // Small enough for both slanted ends, and for the width.
    long forRuns = (width - 2L * 8 - STOP - GAP - WASTE - 120) / 2;
    this.pixel =
        new Length(
            Stream.of(
                    this.width.picometres() / TALLEST,
                    run.picometres() / Math.max(forRuns, 20),
                    kerf.picometres() / 5)
                .reduce(1L, Math::max));
  }

  static Picture of(Operation operation, Setup setup, LengthUnit unit, int width) {
    return new MitreSawPlan(operation, setup, unit, width).drawn();
  }

  private Picture drawn() {
    sheet.head("From above; you stand at the bottom, the work lies still.");
    var farEnd = size.plus(kerf).plus(pixel.times(WASTE));
    long room = sheet.width() - 16L - STOP - pixels(run) - 40 - GAP;
    var near = pixel.times(Math.max(40, room - pixels(run) - pixels(kerf) - WASTE)).plus(run);
    along =
        Stretch.of(
            pixel.times(GAP),
            new Band(Length.ZERO, run.plus(pixel.times(40)).min(size)),
            new Band(size.minus(near).max(Length.ZERO), farEnd));
    long wide = pixels(along.extent());
    long margin = 8 + STOP + Math.max(0, sheet.width() - 16L - STOP - wide) / 2;
    sheet.field(
        pixel,
        left ? margin : sheet.width() - margin - wide,
        56 + FENCE,
        left ? sheet.width() - margin - wide : margin,
        pixels(width) + ARM + 8);
    var plan = sheet.drawing();
    fence(plan, farEnd);
    work(plan, farEnd);
    breaks();
    blade(plan);
    dimension(plan);
    labels(farEnd);
    notes().forEach(sheet::note);
    return sheet.picture();
  }

  private long pixels(Length of) {
    return of.dividedBy(pixel, Rounding.UP);
  }

  private Point at(Length fromStop, Length fromFence) {
    var x = along.at(fromStop);
    return sheet.drawing().at(left ? x : along.extent().minus(x), fromFence);
  }

  private long x(Length fromStop) {
    return at(fromStop, Length.ZERO).xThousandths() / 1000;
  }

  private long y(Length fromFence) {
    return at(Length.ZERO, fromFence).yThousandths() / 1000;
  }

  /** On the line of the cut, so far from the fence; on the kept side of the kerf, or the other. */
  private Point onCut(Length fromFence, boolean offcutSide) {
    var in = fromFence.times(mitre.tangent(), Length.HUNDREDTH, Rounding.NEAREST);
    var there = at(offcutSide ? size.plus(kerf) : size, fromFence);
    long shift = sheet.drawing().thousandths(in);
    return new Point(there.xThousandths() + (left ? -shift : shift), there.yThousandths());
  }

  private void fence(Drawing plan, Length farEnd) {
    long top = y(Length.ZERO) - FENCE;
    long one = x(Length.ZERO) + (left ? -STOP : STOP);
    long gap = 16;
    long tooth = x(size);
    long other = x(size.plus(kerf));
    plan.box(
        plan.px(one, top),
        plan.px(left ? tooth - gap : tooth + gap, y(Length.ZERO)),
        Fill.MACHINE,
        Line.PLAIN);
    plan.box(
        plan.px(left ? other + gap : other - gap, top),
        plan.px(x(farEnd) + (left ? -4 : 4), y(Length.ZERO)),
        Fill.MACHINE,
        Line.PLAIN);
    if (stopped) {
      plan.box(
          plan.px(one, y(Length.ZERO)),
          plan.px(x(Length.ZERO), y(Length.ZERO) + 40),
          Fill.MACHINE,
          Line.THICK);
    }
  }

  private void work(Drawing plan, Length farEnd) {
    boolean mitred = setup.asked() instanceof CutAsked.Mitre;
    var kept =
        List.of(
            at(Length.ZERO, Length.ZERO),
            at(size, Length.ZERO),
            onCut(width, false),
            at(mitred ? run : Length.ZERO, width));
    plan.outline(Fill.WOOD, Line.PLAIN, kept.toArray(Point[]::new));
    plan.outline(
        Fill.SHEET,
        Line.PLAIN,
        at(size.plus(kerf), Length.ZERO),
        at(farEnd, Length.ZERO),
        at(farEnd, width),
        onCut(width, true));
    sheet.goesOnBeside(y(Length.ZERO) + 2, y(width) + 6, at(farEnd, Length.ZERO), left);
  }

  private void breaks() {
    for (var place : along.breaks()) {
      var from =
          left
              ? sheet.drawing().at(place, Length.ZERO)
              : sheet.drawing().at(along.extent().minus(place), Length.ZERO).left(GAP);
      sheet.breakDown(y(Length.ZERO) + 2, y(width) + 6, from, GAP);
    }
  }

  private void blade(Drawing plan) {
    var beyond = width.plus(pixel.times(ARM - 20));
    plan.outline(
        Fill.INK,
        Line.NONE,
        onCut(Length.ZERO, false),
        onCut(Length.ZERO, true),
        onCut(width, true),
        onCut(width, false));
    plan.line(Line.THICK, onCut(width, false), onCut(beyond, false));
    if (mitre.isPositive()) {
      // The square line that the mitre is counted from.
      plan.line(Line.CHAIN, at(size, Length.ZERO), at(size, width).down(24));
    }
  }

  private void dimension(Drawing plan) {
    long line = y(Length.ZERO) - FENCE - 16;
    long from = x(Length.ZERO);
    long to = x(size);
    plan.line(Line.THIN, plan.px(from, line - 8), at(Length.ZERO, Length.ZERO));
    plan.line(Line.THIN, plan.px(to, line - 8), at(size, Length.ZERO));
    plan.span(plan.px(Math.min(from, to), line), plan.px(Math.max(from, to), line));
    plan.text(plan.px((from + to) / 2, line - 12), figure, Type.FIGURE, Anchor.MIDDLE);
  }

  private void labels(Length farEnd) {
    long shownEdge = breakEnd();
    long cut = onCut(width, false).xThousandths() / 1000;
    var kept =
        new Column(
            left ? shownEdge : cut + 12,
            left ? cut - 12 : shownEdge,
            y(Length.ZERO) + 6,
            y(width) - 2,
            left ? Anchor.START : Anchor.END);
    sheet.say(kept, "kept", Type.STRESS);
    long off = x(size.plus(kerf)) + (left ? 26 : -26);
    long end = x(farEnd) + (left ? -12 : 12);
    sheet.say(
        new Column(
            Math.min(off, end),
            Math.max(off, end),
            y(Length.ZERO) + 6,
            y(width),
            left ? Anchor.END : Anchor.START),
        "off",
        Type.NOTE);
    if (mitre.isPositive()) {
      var shown = setup.angle(AngleSetting.Role.MITRE).orElseThrow().shown();
      long base = y(width) + ARM - 4;
      long square = x(size) + (left ? 10 : -10);
      sheet
          .drawing()
          .text(
              sheet.drawing().px(square, base),
              shown,
              Type.FIGURE,
              left ? Anchor.START : Anchor.END);
    }
  }

  /** Where the piece beside the blade begins at the break. */
  private long breakEnd() {
    if (!along.isBroken()) {
      return x(run) + (left ? 12 : -12);
    }
    var place = along.breaks().get(0).plus(pixel.times(GAP));
    var end = sheet.drawing().at(left ? place : along.extent().minus(place), Length.ZERO);
    return end.xThousandths() / 1000 + (left ? 10 : -10);
  }

  private List<String> notes() {
    var notes = new ArrayList<>(words.notes());
    notes.add(
        stopped
            ? "Hatched: fence in two halves, and the stop. The stop stands on the side that is kept;"
                + " nothing stands against the offcut."
            : "Hatched: the fence in two halves. Nothing stands against the offcut.");
    if (mitre.isPositive()) {
      notes.add(
          "The heavy line is the saw's, turned from the square line by the mitre; the longest edge"
              + " lies on the fence.");
    }
    notes.add("To scale but for what the zigzag lines leave out; fence and stop not to size.");
    return notes;
  }

  private String layout() {
    var side = left ? "left" : "right";
    return "The fence runs across the top. The piece that is kept lies against it on the "
        + side
        + ", "
        + words.face()
        + (stopped ? ", its end to the stop" : ", its mark under the blade")
        + "; the offcut lies free on the "
        + (left ? "right" : "left")
        + ". "
        + (mitre.isPositive()
            ? "The front of the saw is turned to the " + side + "."
            : "The saw stands square to the fence.");
  }
}
