package org.proofcut.core.drawing;

import java.util.List;
import org.proofcut.core.drawing.Drawing.Anchor;
import org.proofcut.core.drawing.Drawing.Fill;
import org.proofcut.core.drawing.Drawing.Line;
import org.proofcut.core.drawing.Drawing.Type;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.LengthUnit;
import org.proofcut.core.measure.Rounding;
import org.proofcut.core.measure.display.Scale;
import org.proofcut.core.operation.Operation;
import org.proofcut.core.setup.CutAsked.TemplateRecess;
import org.proofcut.core.setup.Setting;
import org.proofcut.core.setup.Setup;

/** Bush, template and cutter at the left wall of a recess, cut across. */
final class TemplateSection {

  private TemplateSection() {}

  static Picture of(
      Operation operation, Setup setup, TemplateRecess asked, LengthUnit unit, int width) {
    var caliper = Scale.caliper(unit);
    var rule = Scale.rule(unit);
    var out = setup.setting(Setting.Role.DEPTH).orElseThrow().set().value();
    var template = asked.template().value();
    var depth = out.minus(template);
    var bush = asked.bush().outside().value();
    var bore = asked.bush().bore().value();
    var collar = asked.bush().collar().value();
    var cutter = setup.cutter().diameter();
    var thick = asked.work().thickness().least();
    var offset = bush.minus(cutter).half();
    var notes =
        List.of(
            "Cutter %s below the base: %s of template and %s of wood; %s is left under it."
                .formatted(
                    rule.show(out),
                    caliper.show(template),
                    rule.show(depth),
                    caliper.show(thick.minus(depth))),
            "The recess begins %s inside the template. To scale.".formatted(caliper.show(offset)));
    var sheet =
        new PlanSheet(width, operation.title() + ", in section. " + String.join(" ", notes));
    sheet.head("In section, the router above.");
    var plan = sheet.drawing();
    long figure = plan.widthOf(rule.show(out).number(), Type.FIGURE) + 34;
    var pixel = new Length(Math.max(1, template.plus(thick).max(bush).picometres() / 190));
    long left = figure + 90;
    sheet.field(pixel, left, 44, 20, template.plus(thick).dividedBy(pixel, Rounding.UP) + 6);
    var span = pixel.times(width - left - 40);
    var edge = pixel.times(80).negated();
    plan.box(plan.at(edge, template), plan.at(span, template.plus(thick)), Fill.WOOD, Line.PLAIN);
    plan.box(
        plan.at(offset, template),
        plan.at(span.min(asked.width().value().plus(offset)), template.plus(depth)),
        Fill.SHEET,
        Line.PLAIN);
    plan.box(plan.at(edge, Length.ZERO), plan.at(Length.ZERO, template), Fill.WASTE, Line.PLAIN);
    var wall = bush.minus(bore).half();
    plan.box(plan.at(Length.ZERO, Length.ZERO), plan.at(wall, collar), Fill.MACHINE, Line.PLAIN);
    plan.box(
        plan.at(bush.minus(wall), Length.ZERO), plan.at(bush, collar), Fill.MACHINE, Line.PLAIN);
    plan.box(plan.at(offset, Length.ZERO), plan.at(offset.plus(cutter), out), Fill.INK, Line.NONE);
    plan.box(
        plan.at(edge, Length.ZERO).up(24),
        plan.at(span, Length.ZERO).up(2),
        Fill.MACHINE,
        Line.PLAIN);
    var top = plan.at(edge, Length.ZERO);
    var end = plan.at(edge, out);
    plan.line(Line.THIN, top.left(22), top);
    plan.line(Line.THIN, end.left(22), end);
    plan.span(top.left(14), end.left(14));
    plan.text(
        plan.at(edge, out.half()).left(24).down(plan.pixels(Type.FIGURE) * 35 / 100),
        rule.show(out).number(),
        Type.FIGURE,
        Anchor.END);
    sheet.lower(10);
    notes.forEach(sheet::note);
    return sheet.picture();
  }
}
