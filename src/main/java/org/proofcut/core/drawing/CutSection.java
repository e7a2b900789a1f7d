package org.proofcut.core.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import org.proofcut.core.drawing.Drawing.Anchor;
import org.proofcut.core.drawing.Drawing.Fill;
import org.proofcut.core.drawing.Drawing.Line;
import org.proofcut.core.drawing.Drawing.Type;
import org.proofcut.core.measure.Band;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.LengthUnit;
import org.proofcut.core.measure.Rounding;
import org.proofcut.core.measure.display.Scale;
import org.proofcut.core.operation.Operation;
import org.proofcut.core.setup.CutAsked;
import org.proofcut.core.setup.Guide;
import org.proofcut.core.setup.Setting;
import org.proofcut.core.setup.Setup;
import org.proofcut.core.shop.KnifeMachine;

/**
 * What a cut leaves, in section: for a housing the thinnest cut part with depth, wood left and the
 * part that goes in; for a through cut how far the blade goes beyond the stock; at knives the board
 * from the side.
 */
public final class CutSection {

  /** Room of a tenth of a millimetre can't be seen to scale; it is drawn larger, and says so. */
  private static final int ROOM_ENLARGED = 10;

  private final Operation operation;
  private final Setup setup;
  private final Scale caliper;
  private final Scale rule;
  private final int width;

  private CutSection(Operation operation, Setup setup, LengthUnit unit, int width) {
    this.operation = operation;
    this.setup = setup;
    this.caliper = Scale.caliper(unit);
    this.rule = Scale.rule(unit);
    this.width = width;
  }

  /**
   * The section through a cut.
   *
   * @param operation what is cut, and what goes in
   * @param setup the set-up of that operation
   * @param unit in which figures are written
   * @param widthPx width at which the page shows it, at least 300
   */
  public static Picture of(Operation operation, Setup setup, LengthUnit unit, int widthPx) {
    if (setup.asked() instanceof CutAsked.Pocket pocket) {
      return PocketSection.of(operation, setup, pocket, unit, widthPx);
    }
    if (setup.asked() instanceof CutAsked.Bored) {
      return HoleSection.of(operation, setup, unit, widthPx);
    }
    if (setup.machine() instanceof KnifeMachine) {
      return KnifePlan.fromTheSide(operation, setup, unit, widthPx);
    }
    if (!setup.anglesSet().isEmpty()) {
      return SlantSection.of(operation, setup, unit, widthPx);
    }
    if (setup.asked() instanceof CutAsked.CentredGroove groove) {
      return EdgeSection.groove(operation, setup, groove, unit, widthPx);
    }
    if (setup.asked() instanceof CutAsked.EdgeProfile profile) {
      return EdgeSection.profile(operation, setup, profile, unit, widthPx);
    }
    if (setup.asked() instanceof CutAsked.TemplateRecess recess) {
      return TemplateSection.of(operation, setup, recess, unit, widthPx);
    }
    if (setup.asked() instanceof CutAsked.EdgeTrim trim) {
      return EdgeSection.trim(operation, setup, trim, unit, widthPx);
    }
    if (setup.asked() instanceof CutAsked.FlushTrim trim) {
      return EdgeSection.flush(operation, setup, trim, unit, widthPx);
    }
    if (setup.asked() instanceof CutAsked.Step step) {
      return StepSection.of(operation, setup, step, unit, widthPx);
    }
    if (setup.asked() instanceof CutAsked.Tongue tongue) {
      return TongueSection.of(operation, setup, tongue, unit, widthPx);
    }
    if (setup.asked() instanceof CutAsked.Tapered tapered) {
      return TaperSection.of(operation, setup, tapered, unit, widthPx);
    }
    var section = new CutSection(operation, setup, unit, widthPx);
    boolean through =
        setup.asked() instanceof CutAsked.Parting || setup.asked() instanceof CutAsked.Strips;
    return through ? section.through() : section.housing();
  }

  private Picture housing() {
    boolean slot = setup.asked() instanceof CutAsked.Slot;
    var stock = setup.asked().work().thickness().least();
    var depth = depthSet();
    var left = stock.minus(depth);
    var made = made();
    var entering = operation.entering();
    var notes = new ArrayList<String>();
    notes.add(
        "Cut %s wide, %s deep; %s of the thinnest %s is left."
            .formatted(
                caliper.show(made.extent()),
                rule.show(depth),
                caliper.show(left),
                caliper.show(stock)));
    entering.ifPresent(goesIn -> notes.add(fit(slot, made.extent(), goesIn)));
    var drawnRoom = entering.map(goesIn -> enlargedRoom(slot, made.extent(), goesIn));
    boolean enlarged = slot && drawnRoom.filter(Length::isPositive).isPresent();
    notes.add(
        enlarged
            ? "To scale, but the room at both sides is drawn " + ROOM_ENLARGED + " times."
            : "To scale.");
    var sheet =
        new PlanSheet(width, operation.title() + ", in section. " + String.join(" ", notes));
    sheet.head(slot ? "Section across the slot." : "Section across the rabbet.");
    long sides = 12 + sheet.drawing().widthOf(caliper.show(stock).number(), Type.FIGURE) + 40;
    long room = width - 2 * sides;
    // The housing and about as much wood beside it.
    var pixel = new Length(Math.max(1, made.extent().max(stock).times(2).picometres() / room));
    var high = stock.times(2);
    sheet.field(pixel, sides, 44, sides, high.dividedBy(pixel, Rounding.UP) + 8);
    var plan = sheet.drawing();
    var span = pixel.times(room);
    var from = slot ? span.minus(made.extent()).half() : Length.ZERO;
    var to = from.plus(made.extent());
    var face = stock;
    var floor = face.plus(depth);
    var under = face.plus(stock);
    plan.outline(
        Fill.WOOD,
        Line.PLAIN,
        plan.at(Length.ZERO, slot ? face : floor),
        plan.at(from, slot ? face : floor),
        plan.at(from, floor),
        plan.at(to, floor),
        plan.at(to, face),
        plan.at(span, face),
        plan.at(span, under),
        plan.at(Length.ZERO, under));
    drawnRoom.ifPresent(
        gap -> {
          // In a slot in the middle, in a rabbet against the wall.
          var one = slot ? from.plus(gap.half()) : to.minus(entering.orElseThrow().most());
          var other = slot ? to.minus(gap.half()) : to;
          if (one.isLessThan(other)) {
            plan.box(plan.at(one, Length.ZERO), plan.at(other, floor), Fill.WASTE, Line.PLAIN);
          }
        });
    long top = plan.at(Length.ZERO, face).yThousandths() / 1000;
    long bottom = plan.at(Length.ZERO, under).yThousandths() / 1000;
    long mid = plan.at(Length.ZERO, floor).yThousandths() / 1000;
    // Left: all of the thickness. Right: what is cut and what is left.
    upright(plan, sides - 14, top, bottom, caliper.show(stock).number(), true);
    long right = width - sides + 14;
    plan.span(plan.px(right, top), plan.px(right, mid));
    plan.span(plan.px(right, mid), plan.px(right, bottom));
    long size = plan.pixels(Type.FIGURE);
    long leftBase = (mid + bottom) / 2 + size * 35 / 100;
    long depthBase = Math.min((top + mid) / 2 + size * 35 / 100, leftBase - size * 5 / 4);
    plan.text(plan.px(right + 12, depthBase), rule.show(depth).number(), Type.FIGURE, Anchor.START);
    plan.text(
        plan.px(right + 12, leftBase), caliper.show(left).number(), Type.FIGURE, Anchor.START);
    plan.line(Line.THIN, plan.at(to, floor), plan.px(right + 6, mid));
    plan.line(Line.THIN, plan.px(sides - 22, top), plan.at(slot ? Length.ZERO : to, face));
    plan.line(Line.THIN, plan.px(sides - 22, bottom), plan.px(right + 6, bottom));
    plan.line(Line.THIN, plan.at(span, face), plan.px(right + 6, top));
    sheet.lower(26);
    notes.forEach(sheet::note);
    return sheet.picture();
  }

  /** A dimension with its figure beside its middle, whatever its size. */
  private void upright(Drawing plan, long x, long from, long to, String figure, boolean onLeft) {
    plan.span(plan.px(x, from), plan.px(x, to));
    long base = (from + to) / 2 + plan.pixels(Type.FIGURE) * 35 / 100;
    plan.text(
        plan.px(onLeft ? x - 12 : x + 12, base),
        figure,
        Type.FIGURE,
        onLeft ? Anchor.END : Anchor.START);
  }

  private String fit(boolean slot, Length made, Band goesIn) {
    var thickness =
        "Goes in: %s to %s thick"
            .formatted(caliper.show(goesIn.least()), caliper.show(goesIn.most()));
    return slot
        ? thickness
            + "; room %s to %s, both sides together."
                .formatted(
                    caliper.show(made.minus(goesIn.most())),
                    caliper.show(made.minus(goesIn.least())))
        : thickness + ", its outer face flush with the edge or under it.";
  }

  private static Length enlargedRoom(boolean slot, Length made, Band goesIn) {
    return slot
        ? made.minus(goesIn.middle()).max(Length.ZERO).times(ROOM_ENLARGED).min(made.half())
        : Length.ZERO;
  }

  /** From wall to wall after the last pass; a rabbet begins at the edge. */
  private Band made() {
    var least = Length.ZERO;
    var most = Length.ZERO;
    boolean first = true;
    for (var pass : setup.passes()) {
      least = first ? pass.takes().least() : least.min(pass.takes().least());
      most = first ? pass.takes().most() : most.max(pass.takes().most());
      first = false;
    }
    return new Band(least.max(Length.ZERO), most);
  }

  private Length depthSet() {
    return setup
        .setting(Setting.Role.HEIGHT)
        .or(() -> setup.setting(Setting.Role.DEPTH))
        .orElseThrow()
        .set()
        .value();
  }

  private Picture through() {
    boolean track = setup.guide() == Guide.TRACK;
    var reach = depthSet();
    var thickness = setup.asked().work().thickness();
    var beyond = reach.minus(thickness.most());
    var notes =
        List.of(
            track
                ? "Blade %s deep: %s below the thickest stock, %s. Keep supports and cables clear of it."
                    .formatted(rule.show(reach), rule.show(beyond), caliper.show(thickness.most()))
                : "Blade %s high: %s above the thickest stock, %s."
                    .formatted(rule.show(reach), rule.show(beyond), caliper.show(thickness.most())),
            "To scale, the blade seen from the side.");
    var sheet =
        new PlanSheet(
            width, operation.title() + ", in section along the cut. " + String.join(" ", notes));
    sheet.head(
        track ? "From the side: blade through the sheet." : "From the side: blade above the work.");
    long leftSide = 12 + sheet.drawing().widthOf(rule.show(reach).number(), Type.FIGURE) + 40;
    long rightSide =
        12 + sheet.drawing().widthOf(caliper.show(thickness.most()).number(), Type.FIGURE) + 40;
    long room = width - leftSide - rightSide;
    var exposed = SawPlan.exposed(setup.cutter().diameter(), reach);
    var pixel = new Length(Math.max(1, exposed.picometres() * 6 / 5 / room));
    var high = reach.plus(pixel.times(40));
    long tall = high.dividedBy(pixel, Rounding.UP);
    sheet.field(pixel, leftSide, 40, rightSide, tall);
    var plan = sheet.drawing();
    var span = pixel.times(room);
    // Measured from the face that the reach counts from: the table, or the underside of the track.
    var base = track ? pixel.times(20) : reach.plus(pixel.times(20));
    UnaryOperator<Length> up = l -> track ? base.plus(l) : base.minus(l);
    plan.box(
        plan.at(Length.ZERO, base),
        plan.at(span, up.apply(thickness.most())),
        Fill.WOOD,
        Line.PLAIN);
    var radius = setup.cutter().diameter().half();
    cap(plan, span.half(), radius, reach, up);
    var table = plan.at(Length.ZERO, base);
    var end = plan.at(span, base);
    plan.box(track ? table.up(20) : table, track ? end : end.down(20), Fill.MACHINE, Line.PLAIN);
    long y0 = plan.at(Length.ZERO, base).yThousandths() / 1000;
    long yTip = plan.at(Length.ZERO, up.apply(reach)).yThousandths() / 1000;
    long yFace = plan.at(Length.ZERO, up.apply(thickness.most())).yThousandths() / 1000;
    plan.line(Line.THIN, plan.px(leftSide - 22, yTip), plan.at(span.half(), up.apply(reach)));
    plan.line(Line.THIN, plan.px(leftSide - 22, y0), table);
    upright(
        plan,
        leftSide - 14,
        Math.min(y0, yTip),
        Math.max(y0, yTip),
        rule.show(reach).number(),
        true);
    long right = width - rightSide + 14;
    upright(
        plan,
        right,
        Math.min(y0, yFace),
        Math.max(y0, yFace),
        caliper.show(thickness.most()).number(),
        false);
    sheet.lower(26);
    notes.forEach(sheet::note);
    return sheet.picture();
  }

  /** The part of the blade beyond the face that its reach counts from. */
  private void cap(
      Drawing plan, Length middle, Length radius, Length reach, UnaryOperator<Length> up) {
    var outline = new ArrayList<Drawing.Point>();
    int steps = 48;
    for (int i = 0; i <= steps; i++) {
      // Heights up one side and down the other; half the chord at each is exact but for its root.
      var height = new Length(reach.picometres() / (steps / 2) * (i <= steps / 2 ? i : steps - i));
      var chord = SawPlan.exposed(radius.times(2), reach.minus(height)).half();
      var x = i <= steps / 2 ? middle.minus(chord) : middle.plus(chord);
      outline.add(plan.at(x, up.apply(height)));
    }
    plan.outline(Fill.SHEET, Line.THICK, outline.toArray(Drawing.Point[]::new));
  }
}
