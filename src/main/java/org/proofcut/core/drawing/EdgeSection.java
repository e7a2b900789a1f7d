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
import org.proofcut.core.setup.CutAsked.CentredGroove;
import org.proofcut.core.setup.Setting;
import org.proofcut.core.setup.Setup;

/** What a cut along an edge leaves, seen at the end of the piece, which stands on the table. */
final class EdgeSection {

  private EdgeSection() {}

  /** A groove in the middle: the wood beside it, its width and its depth. */
  static Picture groove(
      Operation operation, Setup setup, CentredGroove asked, LengthUnit unit, int width) {
    var caliper = Scale.caliper(unit);
    var depth = setup.setting(Setting.Role.HEIGHT).orElseThrow().set().value();
    var thick = asked.work().thickness().middle();
    var marked = setup.passes().get(1).takes().least();
    var made = setup.passes().get(0).takes().most().minus(marked);
    var notes =
        List.of(
            "Groove %s wide and %s deep in a piece %s thick; %s of wood on each side."
                .formatted(
                    caliper.show(made),
                    Scale.rule(unit).show(depth),
                    caliper.show(thick),
                    caliper.show(marked)),
            "Both sides come out alike whatever the fence is set to; the fence makes the width,"
                + " and twice over.",
            "To scale; the piece goes on above the zigzag.");
    var sheet = new PlanSheet(width, operation.title() + ", seen at the end. " + join(notes));
    sheet.head("Seen at the end; the piece stands on the table.");
    long edge = 24 + sheet.drawing().widthOf(Scale.rule(unit).show(depth).number(), Type.FIGURE);
    long across = Math.min(260, width - 2 * edge - 20);
    long left = (width - across) / 2;
    var pixel = new Length(Math.max(1, thick.picometres() / across));
    var high = depth.plus(pixel.times(70)).min(asked.standing().least());
    sheet.field(pixel, left, 30, width - left - across, high.dividedBy(pixel, Rounding.UP));
    var plan = sheet.drawing();
    var floor = high.minus(depth);
    var wall = marked.plus(made);
    plan.outline(
        Fill.WOOD,
        Line.PLAIN,
        plan.at(Length.ZERO, Length.ZERO),
        plan.at(thick, Length.ZERO),
        plan.at(thick, high),
        plan.at(wall, high),
        plan.at(wall, floor),
        plan.at(marked, floor),
        plan.at(marked, high),
        plan.at(Length.ZERO, high));
    var top = plan.at(Length.ZERO, Length.ZERO);
    long topAt = top.yThousandths() / 1000;
    if (high.isLessThan(asked.standing().least())) {
      sheet.breakAcross(left - 6, left + across + 6, top.up(4), 8);
    }
    long bottom = plan.at(Length.ZERO, high).yThousandths() / 1000;
    plan.box(plan.px(8, bottom), plan.px(width - 8L, bottom + 14), Fill.MACHINE, Line.PLAIN);
    operation
        .entering()
        .ifPresent(
            goesIn -> {
              var room = made.minus(goesIn.middle()).half().max(Length.ZERO);
              plan.box(
                  plan.at(marked.plus(room), floor),
                  plan.at(wall.minus(room), high),
                  Fill.WASTE,
                  Line.THIN);
            });
    long right = left + across + 14;
    long mid = plan.at(Length.ZERO, floor).yThousandths() / 1000;
    plan.line(Line.THIN, plan.at(wall, floor), plan.px(right + 6, mid));
    plan.span(plan.px(right, mid), plan.px(right, bottom));
    plan.text(
        plan.px(right + 10, (mid + bottom) / 2 + plan.pixels(Type.FIGURE) * 35 / 100),
        Scale.rule(unit).show(depth).number(),
        Type.FIGURE,
        Anchor.START);
    // Under the table: side, groove, side.
    long row = bottom + 34;
    for (var place : List.of(Length.ZERO, marked, wall, thick)) {
      var from = plan.at(place, high);
      plan.line(Line.THIN, from, from.down(row - bottom + 6));
    }
    plan.span(plan.at(Length.ZERO, high).down(34), plan.at(marked, high).down(34));
    plan.span(plan.at(marked, high).down(34), plan.at(wall, high).down(34));
    plan.span(plan.at(wall, high).down(34), plan.at(thick, high).down(34));
    long words = row + 12 + plan.pixels(Type.FIGURE);
    long x0 = plan.at(marked.half(), high).xThousandths() / 1000;
    long x2 = plan.at(wall.plus(marked.half()), high).xThousandths() / 1000;
    plan.text(plan.px(x0, words), caliper.show(marked).number(), Type.FIGURE, Anchor.END);
    plan.text(
        plan.px((x0 + x2) / 2, words + plan.pixels(Type.FIGURE) * 5 / 4),
        caliper.show(made).number(),
        Type.FIGURE,
        Anchor.MIDDLE);
    plan.text(plan.px(x2, words), caliper.show(marked).number(), Type.FIGURE, Anchor.START);
    sheet.sayOrNote(
        new PlanSheet.Column(Math.max(8, left - 120), left - 10, topAt + 6, bottom, Anchor.END),
        "Left: marked face.",
        Type.NOTE);
    sheet.lower(34 + 24 + plan.pixels(Type.FIGURE) * 9 / 4);
    notes.forEach(sheet::note);
    return sheet.picture();
  }

  private static String join(List<String> notes) {
    return String.join(" ", notes);
  }
}
