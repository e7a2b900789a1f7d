package org.proofcut.core.drawing;

import org.proofcut.core.drawing.Drawing.Anchor;
import org.proofcut.core.drawing.Drawing.Fill;
import org.proofcut.core.drawing.Drawing.Line;
import org.proofcut.core.drawing.Drawing.Point;
import org.proofcut.core.drawing.Drawing.Type;
import org.proofcut.core.drawing.PlanSheet.Column;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.LengthUnit;
import org.proofcut.core.operation.Operation;
import org.proofcut.core.setup.CutAsked.Step;
import org.proofcut.core.setup.Guide;
import org.proofcut.core.setup.Setting;
import org.proofcut.core.setup.Setup;

/**
 * One of the two cuts of a step, seen along the feed, to scale: table below, fence on the right or
 * the sled's stop on the left, the blade where it stands, and the waste. Distances count from the
 * fence or stop, heights from the table.
 */
final class StepSection {

  private static final int SIDE = 76;
  private static final int TABLE = 30;

  private final Step step;
  private final Setup setup;
  private final PlanWords words;
  private final PlanSheet sheet;
  private final Drawing plan;
  private final boolean sled;
  private final int width;
  private final Length near;
  private final Length kerf;
  private final Length height;
  private final Length carrier;
  private final Length shownAcross;
  private final Length shownHigh;

  private StepSection(Operation operation, Setup setup, Step step, LengthUnit unit, int width) {
    this.step = step;
    this.setup = setup;
    this.width = width;
    this.words = new PlanWords(operation, setup, unit);
    this.sled = setup.guide() == Guide.SLED;
    this.kerf = setup.cutter().cutWidth();
    this.height = setup.setting(Setting.Role.HEIGHT).orElseThrow().set().value();
    this.carrier =
        step.onEdge() ? step.carrier().map(Worked::value).orElse(Length.ZERO) : Length.ZERO;
    var place = setup.settings().get(0).set().value();
    this.near = step.onEdge() ? place : place.minus(kerf);
    var thick = thickness();
    this.shownAcross =
        step.onEdge()
            ? carrier.plus(thick).plus(thick.half())
            : near.plus(kerf).plus(thick.times(2));
    this.shownHigh = step.onEdge() ? height.plus(thick.times(2)) : thick.times(2);
    this.sheet =
        new PlanSheet(
            width, operation.title() + ", seen along the cut. " + layout() + " To scale.");
    this.plan = sheet.drawing();
  }

  static Picture of(Operation operation, Setup setup, Step step, LengthUnit unit, int width) {
    return new StepSection(operation, setup, step, unit, width).drawn();
  }

  private Length thickness() {
    return step.work().thickness().most();
  }

  private String layout() {
    var place = setup.settings().get(0);
    return step.onEdge()
        ? "The work stands on its edge, the face that stays toward the fence on the right. The blade"
            + " cuts the waste free on the left, away from the fence, where it can fall."
        : "The work lies on the face that is cut, its edge "
            + (sled ? "to the stop on the left" : "to the fence on the right")
            + ". The far side of the blade makes the wall, "
            + words.figure(place)
            + " from it. The waste stays on until the second cut.";
  }

  private Picture drawn() {
    sheet.head(step.onEdge() ? "Along the cut: on edge." : "Along the cut: flat.");
    long room = width - 2L * SIDE;
    var pixel = new Length(Math.max(1, shownAcross.picometres() / room));
    long tall = shownHigh.picometres() / pixel.picometres();
    sheet.field(pixel, SIDE, 50, SIDE, tall);
    if (step.onEdge()) {
      onEdge();
    } else {
      flat();
    }
    // Table, fence or stop.
    plan.box(
        at(Length.ZERO, Length.ZERO).left(sled ? SIDE - 8 : 0).right(sled ? 0 : SIDE - 8),
        at(shownAcross, Length.ZERO).down(TABLE),
        Fill.MACHINE,
        Line.PLAIN);
    long post = sled ? -(SIDE - 16) : SIDE - 16;
    plan.box(
        at(Length.ZERO, Length.ZERO),
        at(Length.ZERO, shownHigh).right(post).down(10),
        Fill.MACHINE,
        Line.PLAIN);
    blade();
    dimensions();
    sheet.lower(TABLE + 64);
    var setting = setup.settings().get(0);
    sheet.note(
        setting.role().words()
            + " "
            + setting.scale(words.unit()).show(setting.read().value()).text()
            + " "
            + setting.from()
            + "; blade "
            + words.rule(height)
            + " high.");
    sheet.note(
        step.onEdge()
            ? "Wide hatching: waste. It lies away from the fence and falls free."
            : "Dashed: what the second cut, on edge, will take.");
    sheet.note("To scale.");
    return sheet.picture();
  }

  /** So far from fence or stop, so high above the table. */
  private Point at(Length from, Length high) {
    return plan.at(sled ? from : shownAcross.minus(from), shownHigh.minus(high));
  }

  private void flat() {
    var thick = thickness();
    plan.box(at(Length.ZERO, Length.ZERO), at(shownAcross, thick), Fill.WOOD, Line.PLAIN);
    plan.line(Line.DASHED, at(Length.ZERO, height), at(near, height));
  }

  private void onEdge() {
    var thick = thickness();
    if (carrier.isPositive()) {
      plan.box(at(Length.ZERO, Length.ZERO), at(carrier, shownHigh), Fill.MACHINE, Line.PLAIN);
    }
    var back = carrier.plus(thick);
    plan.box(at(carrier, Length.ZERO), at(back, shownHigh), Fill.WOOD, Line.PLAIN);
    var free = near.plus(kerf);
    // The first cut is there already, a kerf below the wall.
    plan.box(at(near, height.minus(kerf)), at(back, height), Fill.SHEET, Line.PLAIN);
    if (free.isLessThan(back)) {
      plan.box(at(free, Length.ZERO), at(back, height.minus(kerf)), Fill.WASTE, Line.PLAIN);
    }
  }

  private void blade() {
    plan.box(at(near, Length.ZERO).down(TABLE), at(near.plus(kerf), height), Fill.INK, Line.NONE);
  }

  private void dimensions() {
    var to = step.onEdge() ? near : near.plus(kerf);
    var figure = words.figure(setup.settings().get(0));
    long line = at(Length.ZERO, Length.ZERO).yThousandths() / 1000 + TABLE + 18;
    long one = at(Length.ZERO, Length.ZERO).xThousandths() / 1000;
    long other = at(to, Length.ZERO).xThousandths() / 1000;
    plan.line(Line.THIN, at(to, Length.ZERO), plan.px(other, line + 6));
    plan.line(Line.THIN, at(Length.ZERO, Length.ZERO), plan.px(one, line + 6));
    plan.span(plan.px(Math.min(one, other), line), plan.px(Math.max(one, other), line));
    sheet.plate(
        new Column(
            Math.min(one, other) - 60,
            Math.max(one, other) + 60,
            line + 10,
            line + 60,
            Anchor.MIDDLE),
        figure,
        Type.FIGURE);
    // The height, on the side away from the guide.
    long x = sled ? width - 58L : 58;
    var top = at(near, height);
    plan.line(Line.THIN, plan.px(x, top.yThousandths() / 1000), top);
    long base = at(Length.ZERO, Length.ZERO).yThousandths() / 1000;
    plan.span(plan.px(x, top.yThousandths() / 1000), plan.px(x, base));
    plan.text(
        plan.px(sled ? x + 8 : x - 8, top.yThousandths() / 1000 - 34),
        words.figure(setup.setting(Setting.Role.HEIGHT).orElseThrow()),
        Type.FIGURE,
        Anchor.MIDDLE);
  }
}
