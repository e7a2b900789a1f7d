package org.proofcut.core.drawing;

import java.util.List;
import org.proofcut.core.drawing.Drawing.Anchor;
import org.proofcut.core.drawing.Drawing.Fill;
import org.proofcut.core.drawing.Drawing.Line;
import org.proofcut.core.drawing.Drawing.Point;
import org.proofcut.core.drawing.Drawing.Type;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.LengthUnit;
import org.proofcut.core.measure.Rounding;
import org.proofcut.core.operation.Operation;
import org.proofcut.core.setup.CutAsked.Tapered;
import org.proofcut.core.setup.Setting;
import org.proofcut.core.setup.Setup;

/**
 * Carrier, work and blade seen along the cut where the waste is thickest, to scale: the fence on
 * the right. Of the carrier as much is shown as lies under the work and behind its stops.
 */
final class TaperSection {

  private static final int LEFT = 96;
  private static final int RIGHT = 76;
  private static final int TABLE = 30;

  private final Tapered asked;
  private final Setup setup;
  private final PlanWords words;
  private final PlanSheet sheet;
  private final Drawing plan;
  private final int width;
  private final Length base;
  private final Length thick;
  private final Length height;
  private final Length end;
  private final Length waste;
  private final Length shown;

  private TaperSection(
      Operation operation, Setup setup, Tapered asked, LengthUnit unit, int width) {
    this.asked = asked;
    this.setup = setup;
    this.width = width;
    this.words = new PlanWords(operation, setup, unit);
    this.base = asked.carrier().base().value();
    this.thick = asked.work().thickness().most();
    this.height = setup.setting(Setting.Role.HEIGHT).orElseThrow().set().value();
    this.end = setup.setting(Setting.Role.STOP).orElseThrow().set().value();
    this.waste = asked.runsIn();
    this.shown = end.plus(thick.times(2)).min(asked.carrier().width().value());
    this.sheet = new PlanSheet(width, operation.title() + ", seen along the cut. " + says());
    this.plan = sheet.drawing();
  }

  static Picture of(Operation operation, Setup setup, Tapered asked, LengthUnit unit, int width) {
    return new TaperSection(operation, setup, asked, unit, width).drawn();
  }

  private String says() {
    return String.join(" ", notes());
  }

  private List<String> notes() {
    return List.of(
        "Blade %s high: carrier %s, thickest stock %s, and %s above it."
            .formatted(
                words.rule(height),
                words.rule(base),
                words.rule(thick),
                words.rule(height.minus(base).minus(thick))),
        "The waste hangs out over the carrier's edge, free, and drops to the table when it is off.",
        "To scale, at the narrow end; stop and clamp not to size.");
  }

  private Picture drawn() {
    sheet.head("Along the cut, as you stand at the saw.");
    var kerf = setup.cutter().cutWidth();
    var free = waste.max(kerf).plus(thick.half());
    var across = free.plus(shown);
    var pixel = new Length(Math.max(1, across.picometres() / (width - LEFT - RIGHT)));
    var top = height.plus(thick);
    sheet.field(pixel, LEFT, 14, RIGHT, top.dividedBy(pixel, Rounding.UP));
    var left = free.negated();
    plan.box(
        at(free, top, left, Length.ZERO).left(LEFT - 8),
        at(free, top, shown, Length.ZERO).right(RIGHT - 8).down(TABLE),
        Fill.MACHINE,
        Line.PLAIN);
    plan.box(
        at(free, top, shown, Length.ZERO),
        at(free, top, shown, top).right(RIGHT - 16).down(10),
        Fill.MACHINE,
        Line.PLAIN);
    var face = base.plus(thick);
    plan.box(
        at(free, top, Length.ZERO, Length.ZERO),
        at(free, top, shown, base),
        Fill.SHEET,
        Line.PLAIN);
    plan.box(at(free, top, end, base), at(free, top, end, face).right(20), Fill.INK, Line.NONE);
    plan.box(at(free, top, Length.ZERO, base), at(free, top, end, face), Fill.WOOD, Line.PLAIN);
    if (waste.isGreaterThan(kerf)) {
      plan.box(
          at(free, top, waste.negated(), base),
          at(free, top, kerf.negated(), face),
          Fill.WASTE,
          Line.PLAIN);
    }
    plan.box(
        at(free, top, kerf.negated(), Length.ZERO).down(TABLE),
        at(free, top, Length.ZERO, height),
        Fill.INK,
        Line.NONE);
    dimensions(free, top);
    sheet.lower(TABLE + 20);
    notes().forEach(sheet::note);
    return sheet.picture();
  }

  private Point at(Length free, Length top, Length toFence, Length high) {
    return plan.at(free.plus(toFence), top.minus(high));
  }

  private void dimensions(Length free, Length top) {
    long x = LEFT - 30;
    var tooth = at(free, top, Length.ZERO, height);
    var table = at(free, top, Length.ZERO, Length.ZERO);
    var high = plan.px(x, tooth.yThousandths() / 1000);
    plan.line(Line.THIN, high, tooth);
    plan.span(high, plan.px(x, table.yThousandths() / 1000));
    long middle = (tooth.yThousandths() + table.yThousandths()) / 2000;
    plan.text(
        plan.px(x - 12, middle + plan.pixels(Type.FIGURE) * 35 / 100),
        words.figure(setup.setting(Setting.Role.HEIGHT).orElseThrow()),
        Type.FIGURE,
        Anchor.END);
    if (plan.thousandths(base) > 28_000) {
      label("carrier", at(free, top, shown.plus(end).half(), base.half()));
    }
    label("fence", at(free, top, shown, top.half()).right((RIGHT - 16) / 2));
  }

  private void label(String word, Point middle) {
    plan.plate(middle, word, Type.CAPTION);
  }
}
