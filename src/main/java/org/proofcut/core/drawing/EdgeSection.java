package org.proofcut.core.drawing;

import java.util.ArrayList;
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
import org.proofcut.core.setup.CutAsked.CentredGroove;
import org.proofcut.core.setup.CutAsked.EdgeProfile;
import org.proofcut.core.setup.CutAsked.EdgeTrim;
import org.proofcut.core.setup.CutAsked.FlushTrim;
import org.proofcut.core.setup.Setting;
import org.proofcut.core.setup.Setup;
import org.proofcut.core.shop.BearingCutter;

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

  /** A profile on the edge at the left, the face that it runs over on top. */
  static Picture profile(
      Operation operation, Setup setup, EdgeProfile asked, LengthUnit unit, int width) {
    var caliper = Scale.caliper(unit);
    var wide = setup.cutter().cutWidth();
    var high = last(setup);
    var thick = asked.work().thickness().least();
    var notes =
        List.of(
            "The %s reaches %s over the face and %s down the edge; %s of the edge is left."
                .formatted(
                    asked.profile().words(),
                    caliper.show(wide),
                    Scale.rule(unit).show(high),
                    caliper.show(thick.minus(high))),
            asked.profile() == BearingCutter.Profile.OGEE
                ? "The curve is drawn as a plain ogee: yours is as its maker shaped it."
                : "To scale.");
    var sheet = new PlanSheet(width, operation.title() + ", seen at the end. " + join(notes));
    sheet.head("Seen at the end, the cut face up.");
    long edge = 30 + sheet.drawing().widthOf(Scale.rule(unit).show(high).number(), Type.FIGURE);
    long room = width - edge - 60;
    var pixel =
        new Length(Math.max(1, thick.max(wide.times(2)).picometres() / Math.min(room, 220)));
    long above = 40 + sheet.drawing().pixels(Type.FIGURE);
    sheet.field(pixel, edge, above, 20, thick.dividedBy(pixel, Rounding.UP) + 4);
    var plan = sheet.drawing();
    var span = pixel.times(width - edge - 40);
    var outline = new ArrayList<Point>();
    curve(asked.profile(), wide, high).forEach(at -> outline.add(plan.at(at.x(), at.y())));
    outline.add(plan.at(span, Length.ZERO));
    outline.add(plan.at(span, thick));
    outline.add(plan.at(Length.ZERO, thick));
    plan.outline(Fill.WOOD, Line.PLAIN, outline.toArray(Point[]::new));
    plan.line(
        Line.DASHED,
        plan.at(Length.ZERO, high),
        plan.at(Length.ZERO, Length.ZERO),
        plan.at(wide, Length.ZERO));
    var top = plan.at(Length.ZERO, Length.ZERO);
    plan.line(Line.THIN, top.left(24), top);
    plan.line(Line.THIN, plan.at(Length.ZERO, high).left(24), plan.at(Length.ZERO, high));
    plan.span(top.left(16), plan.at(Length.ZERO, high).left(16));
    plan.text(
        plan.at(Length.ZERO, high.half()).left(26).down(plan.pixels(Type.FIGURE) * 35 / 100),
        Scale.rule(unit).show(high).number(),
        Type.FIGURE,
        Anchor.END);
    plan.line(Line.THIN, top, top.up(22));
    plan.line(Line.THIN, plan.at(wide, Length.ZERO), plan.at(wide, Length.ZERO).up(22));
    plan.span(top.up(14), plan.at(wide, Length.ZERO).up(14));
    plan.text(top.up(26), caliper.show(wide).number(), Type.FIGURE, Anchor.START);
    sheet.lower(10);
    notes.forEach(sheet::note);
    return sheet.picture();
  }

  private record At(Length x, Length y) {}

  /** From the edge, so far down, to the face, so far in. */
  private static List<At> curve(BearingCutter.Profile profile, Length wide, Length high) {
    var curve = new ArrayList<At>();
    curve.add(new At(Length.ZERO, high));
    switch (profile) {
      case RABBET -> curve.add(new At(wide, high));
      case CHAMFER -> {
        // At 45°, a shoulder where the cut is deeper than wide, less than all where it is not.
        var slant = wide.min(high);
        curve.add(new At(wide.minus(slant), high));
      }
      case ROUND_OVER -> {
        var centre = new At(wide, wide);
        arc(curve, centre, wide, high.min(wide), false);
      }
      case COVE -> arc(curve, new At(Length.ZERO, Length.ZERO), wide, high.min(wide), true);
      case OGEE -> {
        var halfHigh = high.half();
        curve.add(new At(wide.half().half(), high.minus(halfHigh.half().half())));
        curve.add(new At(wide.half(), halfHigh));
        curve.add(new At(wide.minus(wide.half().half()), halfHigh.half().half()));
      }
      case FLUSH_TRIM -> {}
    }
    curve.add(new At(wide, Length.ZERO));
    return curve;
  }

  /** A quarter circle between edge and face, of {@code radius}, as far as it is cut. */
  private static void arc(List<At> curve, At centre, Length radius, Length high, boolean hollow) {
    int steps = 24;
    for (int i = 1; i < steps; i++) {
      var y = new Length(high.picometres() / steps * (steps - i));
      var fromCentre = hollow ? y : centre.y().minus(y);
      var half = chord(radius, fromCentre);
      curve.add(new At(hollow ? half : centre.x().minus(half), y));
    }
  }

  /** √(r² − y²), the root rounded down. */
  private static Length chord(Length radius, Length y) {
    return SawPlan.exposed(radius.times(2), radius.minus(y)).half();
  }

  private static Length last(Setup setup) {
    return setup.passes().get(setup.passes().size() - 1).depth().value();
  }

  /** The layer that stands out, on the edge that the bearing rides. */
  static Picture flush(
      Operation operation, Setup setup, FlushTrim asked, LengthUnit unit, int width) {
    var caliper = Scale.caliper(unit);
    var layer = asked.layer().value();
    var under = asked.under().value();
    var out = asked.overhang().value();
    var cutter = (BearingCutter) setup.cutter();
    var reach = last(setup);
    var notes =
        List.of(
            "The layer, %s thick, stands out %s at most. The edges reach %s below it; there the"
                    .formatted(
                        caliper.show(layer), caliper.show(out), caliper.show(reach.minus(layer)))
                + " bearing rides.",
            "To scale.");
    var sheet = new PlanSheet(width, operation.title() + ", seen at the end. " + join(notes));
    sheet.head("Seen at the end, the router above.");
    var pixel =
        new Length(Math.max(1, layer.plus(under).max(cutter.diameter()).picometres() / 190));
    var bearing = pixel.times(40);
    var deep = layer.plus(under).max(reach.plus(bearing));
    long left = 70 + cutter.diameter().dividedBy(pixel, Rounding.UP);
    sheet.field(pixel, left, 56, 20, deep.dividedBy(pixel, Rounding.UP) + 6);
    var plan = sheet.drawing();
    var span = pixel.times(width - left - 60);
    plan.box(plan.at(Length.ZERO, layer), plan.at(span, layer.plus(under)), Fill.WOOD, Line.PLAIN);
    plan.box(plan.at(Length.ZERO, Length.ZERO), plan.at(span, layer), Fill.WOOD, Line.PLAIN);
    plan.box(
        plan.at(out.negated(), Length.ZERO), plan.at(Length.ZERO, layer), Fill.WASTE, Line.DASHED);
    plan.box(
        plan.at(cutter.diameter().negated(), Length.ZERO),
        plan.at(Length.ZERO, reach),
        Fill.NONE,
        Line.THICK);
    plan.box(
        plan.at(cutter.bearing().negated(), reach),
        plan.at(Length.ZERO, reach.plus(bearing)),
        Fill.MACHINE,
        Line.PLAIN);
    var middle = cutter.diameter().half().negated();
    plan.line(Line.CHAIN, plan.at(middle, Length.ZERO).up(14), plan.at(middle, deep).down(4));
    plan.box(
        plan.at(cutter.diameter().negated(), Length.ZERO).left(20).up(30),
        plan.at(span, Length.ZERO).up(4),
        Fill.MACHINE,
        Line.PLAIN);
    sheet.say(
        new PlanSheet.Column(
            left + 12,
            width - 60,
            plan.at(Length.ZERO, layer.plus(under.half())).yThousandths() / 1000 - 16,
            sheet.bottom(),
            Anchor.START),
        "reference edge",
        Type.NOTE);
    sheet.lower(10);
    notes.forEach(sheet::note);
    return sheet.picture();
  }

  /** The edge against the fence, on the left, and what one pass takes off it. */
  static Picture trim(
      Operation operation, Setup setup, EdgeTrim asked, LengthUnit unit, int width) {
    var caliper = Scale.caliper(unit);
    var take = setup.setting(Setting.Role.FENCE).orElseThrow().set().value();
    var thick = asked.work().thickness().most();
    var high = last(setup);
    int passes = setup.passes().size();
    var left = asked.now().value().minus(take.times(passes));
    var notes =
        List.of(
            "%s takes %s: %s is left of %s."
                .formatted(
                    passes == 1 ? "One pass" : passes + " passes, each",
                    caliper.show(take),
                    caliper.show(left),
                    caliper.show(asked.now().value())),
            "Measure the piece after each pass.",
            "To scale, but what is taken off is drawn four times.");
    var sheet = new PlanSheet(width, operation.title() + ", seen at the end. " + join(notes));
    sheet.head("Seen at the end: fence on the left.");
    var pixel = new Length(Math.max(1, high.picometres() / 150));
    long edge = 110;
    sheet.field(pixel, edge, 20, 20, high.dividedBy(pixel, Rounding.UP) + 4);
    var plan = sheet.drawing();
    var span = pixel.times(width - edge - 60);
    var shown = take.times(4);
    var face = high.minus(thick);
    plan.box(plan.at(shown, face), plan.at(span, high), Fill.WOOD, Line.PLAIN);
    plan.box(plan.at(Length.ZERO, face), plan.at(shown, high), Fill.WASTE, Line.DASHED);
    plan.box(
        plan.at(shown.minus(pixel.times(80)), Length.ZERO),
        plan.at(shown, high),
        Fill.NONE,
        Line.THICK);
    plan.box(
        plan.at(Length.ZERO, high).left(edge - 8),
        plan.at(span, high).down(14),
        Fill.MACHINE,
        Line.PLAIN);
    sheet.lower(20);
    notes.forEach(sheet::note);
    return sheet.picture();
  }

  private static String join(List<String> notes) {
    return String.join(" ", notes);
  }
}
