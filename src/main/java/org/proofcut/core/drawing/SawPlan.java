package org.proofcut.core.drawing;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.proofcut.core.drawing.Drawing.Anchor;
import org.proofcut.core.drawing.Drawing.Fill;
import org.proofcut.core.drawing.Drawing.Line;
import org.proofcut.core.drawing.Drawing.Point;
import org.proofcut.core.drawing.Drawing.Type;
import org.proofcut.core.drawing.PlanSheet.Column;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.measure.Band;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.LengthUnit;
import org.proofcut.core.measure.Rounding;
import org.proofcut.core.operation.Operation;
import org.proofcut.core.setup.AngleSetting;
import org.proofcut.core.setup.CutAsked;
import org.proofcut.core.setup.CutAsked.Step;
import org.proofcut.core.setup.Guide;
import org.proofcut.core.setup.Setting;
import org.proofcut.core.setup.Setup;
import org.proofcut.core.shop.Side;
import org.proofcut.core.shop.StackedCutter;
import org.proofcut.core.shop.TableSaw;

/**
 * A table saw from above: a rip along the fence, which stands on the right, or a crosscut on the
 * sled with its stop on the left; a slot along either, at its first pass. Lengths across count from
 * the fence or stop to the blade, along from the edge of the work that is nearest to the person.
 */
final class SawPlan {

  private static final int GAP = 18;
  private static final int FEED_LANE = 62;
  private static final int GUIDE = 84;
  private static final int WASTE = 62;
  private static final int STAND = 64;
  private static final int STOP = 110;

  private final Setup setup;
  private final PlanWords words;
  private final PlanSheet sheet;

  /** Work pushed across the blade, its end at a stop on the left: on a sled, or by a gauge. */
  private final boolean carried;

  /** Whether that is a mitre gauge. */
  private final boolean gauge;

  /** Whether what is measured from stands on the left: the sled's stop, or a fence moved over. */
  private final boolean fromLeft;

  private final Setting place;

  /** On the free side of the blade, for strips that fall there. */
  private final Optional<Setting> stop;

  private final String figure;
  private final Length size;

  /** Where the figure of fence or stop ends. */
  private final Length figureTo;

  /** One of a step's two cuts; empty for every other cut. */
  private final Optional<Step> step;

  private final Length kerf;
  private final Length exposed;
  private final Length depth;
  private final Length pixel;

  /** A slot leaves wood on both sides of the blade, and none is waste. */
  private final boolean slot;

  /** Between guide and work in the first pass. */
  private final Length strip;

  /** From the guide to where the cut ends after the last pass, in the first pass's place. */
  private final Length lastWall;

  /** Along the cut, where the front of the blade stands. */
  private final Length front;

  private Stretch across;
  private Stretch along;

  private final boolean guarded;
  private final boolean knifed;

  private SawPlan(Operation operation, Setup setup, TableSaw saw, LengthUnit unit, int width) {
    this.setup = setup;
    this.step = Optional.of(setup.asked()).filter(Step.class::isInstance).map(Step.class::cast);
    this.slot =
        !(setup.asked() instanceof CutAsked.Parting
            || setup.asked() instanceof CutAsked.Bevel
            || setup.asked() instanceof CutAsked.Strips);
    this.guarded = saw.hasGuard() && !slot;
    this.knifed =
        slot
            ? saw.knifeStaysInBlindCuts() && !(setup.cutter() instanceof StackedCutter)
            : saw.hasRivingKnife();
    this.words = new PlanWords(operation, setup, unit);
    this.gauge = setup.guide() == Guide.GAUGE;
    this.carried = gauge || setup.guide() == Guide.SLED;
    this.fromLeft =
        carried
            || setup
                .angle(AngleSetting.Role.BEVEL)
                .flatMap(AngleSetting::toward)
                .filter(leans -> leans == Side.RIGHT)
                .isPresent();
    // Where strips are cut, the stop on the free side comes first; the fence follows the board.
    this.place =
        setup
            .setting(carried ? Setting.Role.STOP : Setting.Role.FENCE)
            .orElse(setup.settings().get(0));
    this.figure = words.figure(place);
    // A step's first cut is set to the far side of the teeth.
    this.figureTo = place.set().value();
    this.size =
        step.filter(one -> !one.onEdge()).isPresent()
            ? figureTo.minus(setup.cutter().cutWidth())
            : figureTo;
    this.stop = carried ? Optional.empty() : setup.setting(Setting.Role.STOP);
    this.kerf = setup.cutter().cutWidth();
    this.strip =
        setup
            .setting(Setting.Role.STRIP)
            .map(one -> one.set().value())
            .or(() -> carrier().map(Worked::value))
            .orElse(Length.ZERO);
    var passes = setup.passes();
    this.lastWall =
        setup.asked() instanceof CutAsked.CentredGroove
            ? passes.get(0).takes().most()
            : stop.isPresent()
                ? size.plus(kerf)
                : size.plus(
                    passes
                        .get(passes.size() - 1)
                        .takes()
                        .most()
                        .minus(passes.get(0).takes().least()));
    var height = setup.setting(Setting.Role.HEIGHT).orElseThrow().set().value();
    this.exposed = exposed(setup.cutter().diameter(), height);
    this.sheet = new PlanSheet(width, words.all(layout(), notes()));
    this.pixel = new Length(Math.max(1, exposed.picometres() / (sheet.narrow() ? 170 : 190)));
    // On the sled the work reaches across the blade; along the fence it comes from far in front.
    var work = setup.asked().work();
    this.depth = carried && !slot ? work.acrossGuide().most() : work.alongGuide().most();
    this.front =
        depth.minus(carried ? pixel.times(80).min(depth.half()) : exposed.plus(pixel.times(96)));
  }

  static Picture of(Operation operation, Setup setup, TableSaw saw, LengthUnit unit, int width) {
    return new SawPlan(operation, setup, saw, unit, width).drawn();
  }

  /** How long the blade stands out of the table: 2·√(2Rh − h²), the root rounded down. */
  static Length exposed(Length diameter, Length height) {
    var h = BigInteger.valueOf(height.picometres());
    var square = BigInteger.valueOf(diameter.picometres()).multiply(h).subtract(h.multiply(h));
    return new Length(square.max(BigInteger.ONE).sqrt().longValueExact()).times(2);
  }

  private Picture drawn() {
    sheet.head(
        "From above; you stand at the bottom, "
            + (fromLeft && !carried ? "right" : "left")
            + " of the blade's line.");
    long room = room();
    long kept = room - pixels(farEnd().minus(size));
    long byGuide = Math.min(kept / 3, 130);
    var gap = pixel.times(GAP);
    across =
        Stretch.of(
            gap,
            new Band(Length.ZERO, pixel.times(byGuide).min(size)),
            new Band(size.minus(pixel.times(kept - byGuide - GAP)).max(Length.ZERO), farEnd()));
    // From the front of the blade down to where words, figure and the near end have room.
    var piece = front.minus(pixel.times(150)).max(Length.ZERO);
    var top = depth.max(front.plus(exposed)).plus(pixel.times(carried ? 34 : 30));
    along =
        carried
            ? Stretch.of(
                gap, new Band(Length.ZERO, pixel.times(24).min(depth)), new Band(piece, top))
            : Stretch.of(gap, new Band(piece, top));
    sheet.field(
        pixel,
        FEED_LANE + (carried ? 24 : fromLeft ? GUIDE : 0),
        6,
        8,
        pixels(along.extent()) + nearRoom());
    var plan = sheet.drawing();
    keepClear(plan);
    guide(plan);
    work(plan);
    breaks();
    blade(plan);
    sheet.note(setup.feed().words() + ".");
    dimension(plan);
    plan.feed(
        plan.px(FEED_LANE / 2 - 4, sheet.bottom() - 30),
        plan.px(FEED_LANE / 2 - 4, sheet.top() + 60));
    labels();
    notes().stream().skip(1).forEach(sheet::note);
    return sheet.picture();
  }

  private long nearRoom() {
    return (carried ? 46 : 0) + STAND;
  }

  /** Where a strip that falls free ends, or whatever else is waste. */
  private Length stripEnd() {
    return stop.isPresent() ? lastWall.plus(stop.get().set().value()) : farEnd();
  }

  private long pixels(Length of) {
    return of.dividedBy(pixel, Rounding.UP);
  }

  /** A place so far from fence or stop, and so far away from the near edge of the work. */
  private Point at(Length fromGuide, Length away) {
    var right = across.at(fromGuide);
    return sheet
        .drawing()
        .at(fromLeft ? right : across.extent().minus(right), along.extent().minus(along.at(away)));
  }

  private long x(Length fromGuide) {
    return at(fromGuide, depth).xThousandths() / 1000;
  }

  private long y(Length away) {
    return at(Length.ZERO, away).yThousandths() / 1000;
  }

  private Length shownFrom() {
    return carried ? Length.ZERO : front.minus(pixel.times(150)).max(Length.ZERO);
  }

  private Length farEnd() {
    if (stop.isPresent()) {
      // Room beyond the strip for the stop.
      return stripEnd().plus(pixel.times(STOP));
    }
    if (!slot) {
      return lastWall.plus(pixel.times(WASTE));
    }
    // A slot close to the guide leaves room to show more of the work beyond it.
    long beyond = Math.max(WASTE, room() - pixels(lastWall));
    return lastWall.plus(pixel.times(beyond)).min(workEnd());
  }

  /** Pixels across, from the guide to the edge of the drawing. */
  private long room() {
    return sheet.width() - FEED_LANE - 8L - (carried ? 24 : GUIDE);
  }

  private Length workEnd() {
    var work = setup.asked().work();
    // On edge the work is as wide, seen from above, as it is thick.
    return strip.plus(
        step.filter(Step::onEdge).isPresent()
            ? work.thickness().most()
            : work.acrossGuide().most());
  }

  /** What lies between fence and work where it stands on edge. */
  private Optional<Worked<Length>> carrier() {
    return step.filter(Step::onEdge).flatMap(Step::carrier);
  }

  /** In line with the blade, before the work and behind it. */
  private void keepClear(Drawing plan) {
    var one = at(size, depth).xThousandths() / 1000;
    var other = at(size.plus(kerf), depth).xThousandths() / 1000;
    long middle = (one + other) / 2;
    plan.box(
        plan.px(middle - 26, sheet.top()),
        plan.px(middle + 26, sheet.bottom()),
        Fill.WASTE,
        Line.DASHED);
  }

  private void guide(Drawing plan) {
    if (gauge) {
      gauge(plan);
    } else if (carried) {
      long near = y(Length.ZERO);
      plan.box(
          plan.px(FEED_LANE, y(depth.max(front.plus(exposed))) - 22),
          plan.px(sheet.width() - 8L, near + 40),
          Fill.NONE,
          Line.PLAIN);
      plan.box(
          plan.px(FEED_LANE, near),
          plan.px(sheet.width() - 8L, near + 40),
          Fill.MACHINE,
          Line.PLAIN);
      plan.box(
          plan.px(FEED_LANE + 2, near - 26),
          plan.px(x(Length.ZERO), near),
          Fill.MACHINE,
          Line.PLAIN);
    } else {
      plan.box(
          plan.px(x(Length.ZERO), sheet.top() + 6),
          plan.px(x(Length.ZERO) + (fromLeft ? 8L - GUIDE : GUIDE - 8L), sheet.bottom() - 16),
          Fill.MACHINE,
          Line.PLAIN);
    }
  }

  /** A long facing that reaches past the cut, and the bar that slides in the table's slot. */
  private void gauge(Drawing plan) {
    long near = y(Length.ZERO);
    long bar = (plan.px(FEED_LANE, near).xThousandths() / 1000 + x(size)) / 2;
    plan.box(
        plan.px(bar - 7, y(depth.max(front.plus(exposed))) - 22),
        plan.px(bar + 7, near + 40),
        Fill.NONE,
        Line.PLAIN);
    plan.box(
        plan.px(FEED_LANE, near), plan.px(x(farEnd()) - 8, near + 20), Fill.MACHINE, Line.PLAIN);
    plan.box(plan.px(bar - 26, near + 20), plan.px(bar + 26, near + 40), Fill.MACHINE, Line.PLAIN);
    plan.box(
        plan.px(FEED_LANE + 2, near - 26), plan.px(x(Length.ZERO), near), Fill.MACHINE, Line.PLAIN);
  }

  private String carries() {
    return gauge ? "gauge" : "sled";
  }

  private String leansOn() {
    return gauge ? "gauge's facing" : "sled's fence";
  }

  /** The slot is underneath, drawn as if seen through. */
  private void slotted(Drawing plan) {
    var from = shownFrom();
    if (strip.isPositive()) {
      // Strips lie along the whole fence; on the sled as long as the stop.
      plan.box(
          carried ? at(Length.ZERO, from).up(26) : at(Length.ZERO, from).down(STAND - 16),
          carried
              ? at(strip, from)
              : new Point(at(strip, depth).xThousandths(), sheet.top() * 1000 + 6_000),
          Fill.SHEET,
          Line.PLAIN);
    }
    plan.box(at(strip, from), at(farEnd(), depth), Fill.WOOD, Line.PLAIN);
    plan.box(at(size, front), at(size.plus(kerf), depth), Fill.SHEET, Line.THIN);
    plan.line(Line.DASHED, at(size, from), at(size, front));
    plan.line(Line.DASHED, at(lastWall, from), at(lastWall, depth));
    if (farEnd().isLessThan(workEnd())) {
      sheet.goesOnBeside(y(depth) - 6, y(from) + 6, at(farEnd(), from), fromLeft);
    }
  }

  private void work(Drawing plan) {
    if (slot) {
      slotted(plan);
      return;
    }
    var from = shownFrom();
    var wasteFrom = size.plus(kerf);
    plan.box(at(Length.ZERO, from), at(size, depth), Fill.WOOD, Line.PLAIN);
    plan.box(at(wasteFrom, front), at(stripEnd(), depth), Fill.WASTE, Line.PLAIN);
    plan.box(at(size, from), at(stripEnd(), front), Fill.SHEET, Line.NONE);
    plan.box(at(wasteFrom, from), at(stripEnd(), depth), Fill.WASTE, Line.PLAIN);
    plan.box(at(size, from), at(wasteFrom, front), Fill.WOOD, Line.NONE);
    plan.line(Line.DASHED, at(size, from), at(size, front));
    plan.line(Line.DASHED, at(wasteFrom, from), at(wasteFrom, front));
    plan.box(at(size, front), at(wasteFrom, depth), Fill.SHEET, Line.THIN);
    if (stop.isPresent()) {
      // It touches the board's free edge before the front of the blade, and ends there.
      long edge = x(stripEnd());
      plan.box(
          plan.px(edge - STOP + 8, y(front) + 30),
          plan.px(edge, y(front) + 74),
          Fill.MACHINE,
          Line.PLAIN);
      sheet.plate(
          new Column(edge - STOP + 8, edge - 4, y(front) + 36, y(front) + 72, Anchor.MIDDLE),
          "stop",
          Type.NOTE);
      return;
    }
    sheet.goesOnBeside(y(depth) - 6, y(from) + 6, at(farEnd(), from), fromLeft);
  }

  private void breaks() {
    var plan = sheet.drawing();
    for (var place : across.breaks()) {
      var from =
          fromLeft
              ? plan.at(place, Length.ZERO)
              : plan.at(across.extent().minus(place), Length.ZERO).left(GAP);
      sheet.breakDown(y(depth) - 6, y(shownFrom()) + (carried ? 0 : 6), from, GAP);
    }
    for (var place : along.breaks()) {
      var from = plan.at(Length.ZERO, along.extent().minus(place)).up(GAP);
      sheet.breakAcross(FEED_LANE - 4, x(farEnd()) + 8, from, GAP);
    }
    if (!carried && shownFrom().isPositive()) {
      long left = Math.min(x(stripEnd()), x(Length.ZERO)) - (fromLeft ? 0 : 6);
      long right = Math.max(x(farEnd()) + 6, x(Length.ZERO));
      sheet.goesOnBelow(left, right, at(Length.ZERO, shownFrom()));
    }
  }

  private void blade(Drawing plan) {
    var wasteFrom = size.plus(kerf);
    var back = front.plus(exposed);
    plan.box(at(size, front), at(wasteFrom, back), Fill.INK, Line.NONE);
    // The riving knife: thinner than the kerf, close behind the blade.
    var thin = new Length(kerf.picometres() / 8);
    var knife = back.plus(pixel.times(4));
    if (knifed) {
      plan.box(
          at(size.plus(thin), knife),
          at(wasteFrom.minus(thin), knife.plus(pixel.times(34))),
          Fill.SHEET,
          Line.PLAIN);
    }
    if (!guarded) {
      return;
    }
    var one = at(size, front).down(12);
    var other = at(wasteFrom, knife.plus(pixel.times(36)));
    long left = Math.min(one.xThousandths(), other.xThousandths()) / 1000 - 20;
    long right = Math.max(one.xThousandths(), other.xThousandths()) / 1000 + 20;
    plan.box(
        plan.px(left, other.yThousandths() / 1000),
        plan.px(right, one.yThousandths() / 1000),
        Fill.NONE,
        Line.PLAIN);
  }

  /** Below the front of the blade, but on the work. */
  private long figureLine() {
    return Math.min(y(front) + 96, y(shownFrom()) - 12);
  }

  private void dimension(Drawing plan) {
    var guide = at(Length.ZERO, front);
    var tooth = at(figureTo, front);
    long line = figureLine() * 1000;
    var from = new Point(Math.min(guide.xThousandths(), tooth.xThousandths()), line);
    var to = new Point(Math.max(guide.xThousandths(), tooth.xThousandths()), line);
    plan.line(Line.THIN, tooth, new Point(tooth.xThousandths(), line + 8_000));
    plan.span(from, to);
    long left = across.isBroken() && fromLeft ? breakEnd() : from.xThousandths() / 1000 + 12;
    long right = across.isBroken() && !fromLeft ? breakEnd() : to.xThousandths() / 1000 - 12;
    long half = plan.widthOf(figure, Type.FIGURE) / 2;
    long middle = (left + right) / 2;
    boolean between = right - left > 2 * half;
    if (between) {
      plan.text(plan.px(middle, line / 1000 - 12), figure, Type.FIGURE, Anchor.MIDDLE);
      return;
    }
    if (slot && !across.isBroken()) {
      // Beyond the slot, clear of the arrowhead that points at the tooth from there.
      long beyond = x(lastWall) + (fromLeft ? 40 : -40);
      long edge = x(farEnd());
      if (Math.abs(edge - beyond) > 2 * half && (edge > beyond) == fromLeft) {
        plan.text(
            plan.px(beyond, line / 1000 + 12),
            figure,
            Type.FIGURE,
            fromLeft ? Anchor.START : Anchor.END);
        return;
      }
    }
    var over =
        new Column(
            from.xThousandths() / 1000 - 4,
            to.xThousandths() / 1000 + 4,
            line / 1000 - 46,
            line / 1000 - 8,
            Anchor.MIDDLE);
    if (!sheet.plate(over, figure, Type.FIGURE)) {
      sheet.note(figure + " " + place.from() + ".");
    }
  }

  /** Where the piece beside the blade ends at the break. */
  private long breakEnd() {
    var place = across.breaks().get(0).plus(pixel.times(GAP));
    var end = sheet.drawing().at(fromLeft ? place : across.extent().minus(place), Length.ZERO);
    return end.xThousandths() / 1000 + (fromLeft ? 12 : -12);
  }

  private void labels() {
    long blade = x(size);
    long guardSide = 28;
    long left =
        fromLeft ? (across.isBroken() ? breakEnd() : x(Length.ZERO) + 10) : blade + guardSide;
    long right =
        fromLeft ? blade - guardSide : (across.isBroken() ? breakEnd() : x(Length.ZERO) - 10);
    long top = Math.max(y(depth), y(front.plus(exposed))) + 6;
    long far = x(farEnd());
    long wall = x(lastWall);
    boolean beyond = slot && Math.abs(far - wall) - 38 > right - left;
    var beside =
        beyond
            ? new Column(
                fromLeft ? wall + 28 : far + 10,
                fromLeft ? far - 10 : wall - 28,
                top,
                figureLine() - 48,
                fromLeft ? Anchor.START : Anchor.END)
            : new Column(left, right, top, figureLine() - 48, fromLeft ? Anchor.END : Anchor.START);
    if (guarded) {
      sheet.sayOrNote(
          beside, knifed ? "guard over blade and riving knife" : "guard over blade", Type.NOTE);
    }
    if (strip.isPositive()) {
      sheet.sayOrNote(beside, strips(), Type.STRESS);
    }
    sheet.sayOrNote(beside, words.face(), Type.NOTE);
    sheet.sayOrNote(
        beside,
        words.rides() + (carried ? " against the " + leansOn() : " on the fence"),
        Type.NOTE);
    long near = y(shownFrom()) + (gauge ? 21 : carried ? 5 : 0);
    if (carried) {
      sheet.plate(
          new Column(FEED_LANE + 34, blade - 30, near, near + 36, Anchor.START),
          leansOn(),
          Type.NOTE);
      sheet.note(
          "The stop is on the left of the "
              + carries()
              + (slot ? "." : ", the offcut lies free on the right."));
    } else {
      long post = x(Length.ZERO) - (fromLeft ? GUIDE - 8L : 0);
      sheet.plate(
          new Column(post + 4, post + GUIDE - 12L, y(front) - 60, y(front), Anchor.MIDDLE),
          "fence",
          Type.NOTE);
    }
    long stand = sheet.bottom() - STAND + 18;
    if (!sheet.plate(
        new Column(
            blade - 120,
            Math.min(blade + 120, sheet.width() - 8L),
            stand,
            stand + 34,
            carried ? Anchor.END : Anchor.MIDDLE),
        "keep clear",
        Type.STRESS)) {
      sheet.note("Hatched: keep clear.");
    }
  }

  private List<String> notes() {
    var notes = new ArrayList<>(words.notes());
    stop.ifPresent(
        one ->
            notes.add(
                "The stop on the left touches the board before the teeth: "
                    + one.scale(words.unit()).show(one.read().value()).text()
                    + " "
                    + one.from()
                    + "."));
    notes.add(
        "Keep out of the line of the blade, where a piece is thrown; never reach behind the blade.");
    setup
        .angle(AngleSetting.Role.BEVEL)
        .flatMap(AngleSetting::toward)
        .ifPresent(
            leans ->
                notes.add(
                    "The blade is drawn where it stands in the table; its upper edge leans to the "
                        + leans.words()
                        + ", away from the fence."));
    if (slot) {
      notes.add(
          "White: cut. Dashed: still to cut. The cut is underneath, drawn as if seen through.");
      notes.add(
          "The usual guard can't stay here: featherboard or sled holds the work down."
              + (knifed
                  ? " The riving knife stays, below the top tooth."
                  : " The riving knife is off with a stacked cutter; put it back after."));
    } else if (!guarded || !knifed) {
      notes.add(
          "Entered for this saw: no "
              + (guarded ? "riving knife" : knifed ? "guard" : "guard and no riving knife")
              + ". None is drawn.");
    }
    notes.add(
        "To scale but for what the zigzag lines leave out; "
            + (carried ? carries() : "fence")
            + (slot ? " and knife not to size." : ", guard, knife and waste not to size."));
    return notes;
  }

  /** What lies between guide and work in the first pass, and its thickness. */
  private String strips() {
    if (carrier().isPresent()) {
      return "carrier, " + words.rule(strip);
    }
    return setup.passes().get(0).strips("on", "off")
        + ", "
        + words.figure(setup.setting(Setting.Role.STRIP).orElseThrow());
  }

  private String slotLayout() {
    return (carried
            ? "The work lies on the sled, its "
                + words.rides()
                + " against the sled's fence, which is nearest to you, its reference edge to the stop"
                + " on the left; the fence is off the table. "
            : "The fence is on the right, with the " + words.rides() + " of the work to it. ")
        + (strip.isPositive()
            ? (carrier().isPresent() ? "With " : "In the first pass ")
                + strips()
                + ": between "
                + (carried ? "stop" : "fence")
                + " and work. "
            : "")
        + "The work lies "
        + words.face()
        + " and moves away from you into the blade, which cuts a slot in its underside. The strip in"
        + " line with the blade is hatched: keep clear.";
  }

  private String layout() {
    if (slot) {
      return slotLayout();
    }
    return (carried
            ? (gauge ? "The work lies on the table, its " : "The work lies on the sled, its ")
                + words.rides()
                + " against the "
                + leansOn()
                + ", which is nearest to you, one end against the stop on the left. The offcut lies free on the right. "
            : "The fence is on the "
                + (fromLeft ? "left" : "right")
                + ", with the "
                + words.rides()
                + " of the work against it; "
                + (stop.isPresent()
                    ? "the strip falls on the left of the blade, and a stop there touches the board"
                        + " before the teeth. "
                    : "the waste is on the other side of the blade. "))
        + "The work lies "
        + words.face()
        + " and moves away from you into the blade"
        + (knifed ? "; behind the blade stands the riving knife" : "")
        + (guarded ? "; the guard covers the blade" : "")
        + ". The strip in line with the blade is hatched on both sides: keep clear.";
  }
}
