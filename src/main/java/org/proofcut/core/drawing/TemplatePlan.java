package org.proofcut.core.drawing;

import java.util.ArrayList;
import org.proofcut.core.drawing.Drawing.Anchor;
import org.proofcut.core.drawing.Drawing.Fill;
import org.proofcut.core.drawing.Drawing.Line;
import org.proofcut.core.drawing.Drawing.Turn;
import org.proofcut.core.drawing.Drawing.Type;
import org.proofcut.core.drawing.PlanSheet.Column;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.LengthUnit;
import org.proofcut.core.measure.Rounding;
import org.proofcut.core.operation.Operation;
import org.proofcut.core.setup.CutAsked.TemplateRecess;
import org.proofcut.core.setup.Setting;
import org.proofcut.core.setup.Setup;

/** The template from above, to scale, with the recess in its opening and the way round. */
final class TemplatePlan {

  private TemplatePlan() {}

  static Picture of(
      Operation operation, Setup setup, TemplateRecess asked, LengthUnit unit, int width) {
    var words = new PlanWords(operation, setup, unit);
    var length = setup.setting(Setting.Role.OPENING_LENGTH).orElseThrow();
    var across = setup.setting(Setting.Role.OPENING_WIDTH).orElseThrow();
    var notes = new ArrayList<String>();
    notes.add(setup.feed().words() + ".");
    notes.add("The piece lies " + words.face() + ", both clamped.");
    notes.addAll(words.passes());
    notes.add("Opening to scale, the template round it not. Dashed: the recess.");
    var sheet =
        new PlanSheet(
            width,
            words.all(
                "The template lies on the work; the bush runs inside its opening, clockwise.",
                notes));
    sheet.head("From above: inside the template.");
    var plan = sheet.drawing();
    var figureWide = plan.widthOf(words.figure(across), Type.FIGURE);
    long left = 50;
    long right = 30 + figureWide;
    long room = width - left - right;
    var opening = length.set().value();
    var deep = across.set().value();
    var pixel =
        new Length(
            Math.max(
                1,
                Math.max(
                    opening.picometres() / room,
                    deep.picometres() / (sheet.narrow() ? 180 : 260))));
    sheet.field(
        pixel,
        left,
        90,
        width - left - opening.dividedBy(pixel, Rounding.UP),
        deep.dividedBy(pixel, Rounding.UP));
    sheet.lower(48);
    var from = plan.at(Length.ZERO, Length.ZERO);
    var to = plan.at(opening, deep);
    plan.box(from.left(40).up(40), to.right(20).down(40), Fill.WOOD, Line.PLAIN);
    plan.box(from, to, Fill.SHEET, Line.PLAIN);
    var off = deep.minus(asked.width().value()).half();
    plan.box(
        plan.at(off, off), plan.at(opening.minus(off), deep.minus(off)), Fill.NONE, Line.DASHED);
    // Bush and cutter at the lower wall, where they move left.
    var centre = plan.at(opening.half(), deep.minus(asked.bush().outside().value().half()));
    long bush = plan.thousandths(asked.bush().outside().value().half());
    plan.circle(centre, bush, Fill.SHEET, Line.PLAIN);
    plan.circle(centre, plan.thousandths(setup.cutter().diameter().half()), Fill.INK, Line.NONE);
    plan.turning(centre, bush / 1000 + 12, Turn.CLOCKWISE);
    long x0 = from.xThousandths() / 1000;
    long x1 = to.xThousandths() / 1000;
    long y0 = from.yThousandths() / 1000;
    plan.feed(plan.px(x0 + (x1 - x0) / 5, y0 - 20), plan.px(x1 - (x1 - x0) / 5, y0 - 20));
    plan.line(Line.THIN, from, from.up(60));
    plan.line(Line.THIN, plan.px(x1, y0), plan.px(x1, y0 - 60));
    plan.span(plan.px(x0, y0 - 52), plan.px(x1, y0 - 52));
    sheet.plate(
        new Column(x0, x1, y0 - 92, y0 - 54, Anchor.MIDDLE), words.figure(length), Type.FIGURE);
    long out = x1 + 30;
    plan.line(Line.THIN, plan.px(x1, y0), plan.px(out + 6, y0));
    plan.line(Line.THIN, to, new Drawing.Point((out + 6) * 1000, to.yThousandths()));
    plan.span(plan.px(out, y0), new Drawing.Point(out * 1000, to.yThousandths()));
    sheet.lower(8);
    notes.add(
        "Opening "
            + words.figure(length)
            + " by "
            + words.figure(across)
            + ": larger than the recess by bush less cutter.");
    notes.forEach(sheet::note);
    return sheet.picture();
  }
}
