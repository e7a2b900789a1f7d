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
import org.proofcut.core.measure.display.Scale;
import org.proofcut.core.operation.Operation;
import org.proofcut.core.setup.CutAsked.Tongue;
import org.proofcut.core.setup.Setting;
import org.proofcut.core.setup.Setup;

/**
 * The second cheek of a tongue on the router table, to scale, seen the way it is fed: fence on the
 * right, the cutter partly in it, the cheek cut first above.
 */
final class TongueSection {

  private static final int LEFT = 104;
  private static final int RIGHT = 104;
  private static final int TABLE = 30;
  private static final int FENCE = 64;

  private final Setup setup;
  private final PlanWords words;
  private final PlanSheet sheet;
  private final Drawing plan;
  private final Scale caliper;
  private final int width;
  private final Length height;
  private final Length tongue;
  private final Length thick;
  private final Length diameter;
  private final Length shown;

  private TongueSection(
      Operation operation, Setup setup, Tongue asked, LengthUnit unit, int width) {
    this.setup = setup;
    this.width = width;
    this.words = new PlanWords(operation, setup, unit);
    this.caliper = Scale.caliper(unit);
    this.height = set(Setting.Role.HEIGHT);
    this.tongue = set(Setting.Role.FENCE);
    this.thick = asked.work().thickness().middle();
    this.diameter = setup.cutter().diameter();
    this.shown = tongue.plus(thick.times(2)).min(asked.work().acrossGuide().least());
    this.sheet =
        new PlanSheet(
            width, operation.title() + ", seen the way it is fed. " + String.join(" ", notes()));
    this.plan = sheet.drawing();
  }

  static Picture of(Operation operation, Setup setup, Tongue asked, LengthUnit unit, int width) {
    return new TongueSection(operation, setup, asked, unit, width).drawn();
  }

  private Length set(Setting.Role role) {
    return setup.setting(role).orElseThrow().set().value();
  }

  private List<String> notes() {
    return List.of(
        "In stock of %s each cheek is %s deep and the tongue %s thick, %s long."
            .formatted(
                caliper.show(thick).text(),
                words.rule(height),
                caliper.show(thick.minus(height.times(2))).text(),
                words.rule(tongue)),
        "The other face is down: the cheek above was cut first, at the same height.",
        "Nothing lies between cutter and fence; the tongue rides the fence above the cutter.",
        "To scale.");
  }

  private Picture drawn() {
    sheet.head("At the cutter, seen the way the work is fed.");
    var pixel = new Length(Math.max(1, shown.picometres() / (width - LEFT - RIGHT)));
    var top = thick.plus(thick.half());
    sheet.field(pixel, LEFT, 14, RIGHT, top.dividedBy(pixel, Rounding.UP));
    plan.box(
        at(shown, Length.ZERO, top).left(LEFT - 8),
        at(Length.ZERO, Length.ZERO, top).right(RIGHT - 8).down(TABLE),
        Fill.MACHINE,
        Line.PLAIN);
    plan.box(
        at(Length.ZERO, Length.ZERO, top),
        at(Length.ZERO, top, top).right(FENCE),
        Fill.MACHINE,
        Line.PLAIN);
    plan.outline(
        Fill.WOOD,
        Line.PLAIN,
        at(shown, Length.ZERO, top),
        at(tongue, Length.ZERO, top),
        at(tongue, height, top),
        at(Length.ZERO, height, top),
        at(Length.ZERO, thick.minus(height), top),
        at(tongue, thick.minus(height), top),
        at(tongue, thick, top),
        at(shown, thick, top));
    // As much of the cutter as the fence hides is drawn through it.
    long hidden = plan.thousandths(diameter.minus(tongue)) / 1000;
    plan.box(
        at(tongue, height, top).right(0),
        at(Length.ZERO, Length.ZERO, top).right(Math.min(hidden, FENCE - 8L)).down(TABLE),
        Fill.INK,
        Line.NONE);
    dimensions(top);
    sheet.lower(TABLE + 62);
    notes().forEach(sheet::note);
    return sheet.picture();
  }

  /** So far from the fence, so high above the table. */
  private Point at(Length fromFence, Length high, Length top) {
    return plan.at(shown.minus(fromFence), top.minus(high));
  }

  private void dimensions(Length top) {
    long half = plan.pixels(Type.FIGURE) * 35 / 100;
    // Height of the cutter and thickness of the tongue, left of what is shown of the work.
    long x = LEFT - 22;
    var low = at(tongue, Length.ZERO, top);
    var step = at(tongue, height, top);
    var lowest = plan.px(x, low.yThousandths() / 1000);
    var high = plan.px(x, step.yThousandths() / 1000);
    plan.line(Line.THIN, high, step);
    plan.span(high, lowest);
    plan.text(
        plan.px(x - 14, (low.yThousandths() + step.yThousandths()) / 2000 + half),
        words.figure(setup.setting(Setting.Role.HEIGHT).orElseThrow()),
        Type.FIGURE,
        Anchor.END);
    var from = at(tongue, Length.ZERO, top);
    var to = at(Length.ZERO, Length.ZERO, top);
    long line = to.yThousandths() / 1000 + TABLE + 18;
    plan.line(Line.THIN, from, plan.px(from.xThousandths() / 1000, line + 6));
    plan.line(Line.THIN, to, plan.px(to.xThousandths() / 1000, line + 6));
    plan.dimension(
        plan.px(to.xThousandths() / 1000, line),
        plan.px(from.xThousandths() / 1000, line),
        words.figure(setup.setting(Setting.Role.FENCE).orElseThrow()));
    plan.plate(
        at(Length.ZERO, thick.plus(thick.half().half()), top).right(FENCE / 2), "fence", Type.NOTE);
  }
}
