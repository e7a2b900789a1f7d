package org.proofcut.core.setup;

import java.util.List;
import java.util.Optional;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.measure.Band;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.Rounding;
import org.proofcut.core.shop.Cutter;
import org.proofcut.core.shop.RouterCutter;
import org.proofcut.core.shop.StraightCutter;

/** What slots and rabbets at all machines have in common: widening and its limits. */
final class RouterCuts {

  /** Readings of a width or depth: both ends of the cut and the middle. */
  static final int THREE_READINGS = 3;

  /** Readings of a distance: both ends, which shows whether the work stayed on its guide. */
  static final int TWO_READINGS = 2;

  private RouterCuts() {}

  /** Why the cutter can't be used on a machine at all, if so. */
  static Optional<Refusal> fits(RouterCutter cutter, Length largest, Conditions conditions) {
    if (cutter.diameter().isGreaterThan(largest)) {
      return Refusal.because(
          Refusal.Reason.CUTTER_DOES_NOT_FIT_MACHINE,
          cutter.name() + " is larger than the machine takes: " + conditions.shown(largest),
          "Use a smaller cutter");
    }
    return Optional.empty();
  }

  /** Why this cutter can't reach the depth, as set, in stock of this thickness, if so. */
  static Optional<Refusal> reaches(
      StraightCutter cutter, Setting setting, Work work, Conditions conditions) {
    var through = goesThrough(setting, work, conditions);
    if (through.isPresent()) {
      return through;
    }
    return Refusal.firstOf(
        longEnough(cutter, setting.set().value(), conditions),
        Depths.tooCoarse(setting, cutter, conditions));
  }

  /** Why the edges of this cutter are too short for the depth, if so. */
  static Optional<Refusal> longEnough(RouterCutter cutter, Length depth, Conditions conditions) {
    if (depth.isAtMost(cutter.cuttingLength())) {
      return Optional.empty();
    }
    return Refusal.because(
        Refusal.Reason.CUTTER_TOO_SHORT,
        "The edges of "
            + cutter.name()
            + " are "
            + conditions.shown(cutter.cuttingLength())
            + " long, the cut is "
            + conditions.shown(depth)
            + " deep",
        "Use a cutter with longer edges");
  }

  /** Why this depth, as set, is no housing in stock of this thickness, if so. */
  static Optional<Refusal> goesThrough(Setting setting, Work work, Conditions conditions) {
    var depth = setting.set().value();
    var thinnest = work.thickness().least();
    if (depth.isLessThan(thinnest)) {
      return Optional.empty();
    }
    return Refusal.because(
        Refusal.Reason.TOO_DEEP,
        "A cut "
            + conditions.shown(depth)
            + " deep would go through stock that is "
            + conditions.caliper(thinnest)
            + " at its thinnest",
        "Make the housing shallower");
  }

  /** Wood has to stay beyond the cut: work cut off between cutter and guide is thrown. */
  static Optional<Refusal> staysOnWork(
      Length distance, Length width, Work work, Conditions conditions) {
    var across = work.acrossGuide().least();
    if (!distance.isNegative() && distance.plus(width).isLessThan(across)) {
      return Optional.empty();
    }
    return Refusal.because(
        Refusal.Reason.WORK_TOO_SMALL,
        "A cut from "
            + conditions.shown(distance)
            + " to "
            + conditions.shown(distance.plus(width))
            + " runs off a piece that reaches out "
            + conditions.shown(across),
        "Move the housing, or make the piece larger");
  }

  /** What the settings come to on their own steps has to be accepted, or no proof ever would be. */
  static Optional<Refusal> settable(Measure measure, Length asSet, Conditions conditions) {
    var accepted = measure.accepted();
    if (accepted.contains(asSet)) {
      return Optional.empty();
    }
    return Refusal.because(
        Refusal.Reason.STEP_TOO_COARSE,
        measure.dimension().words()
            + ": set on its steps it would come to "
            + conditions.caliper(asSet)
            + ", outside "
            + conditions.caliper(accepted.least())
            + " to "
            + conditions.caliper(accepted.most()),
        measure.dimension() == Measure.Dimension.WIDTH
            ? "Use a cutter that needs no strip, or sort the parts by thickness"
            : "Use a machine that can be set more finely");
  }

  /**
   * A narrower cutter makes a slot in two passes, one with a strip of exactly what is missing.
   *
   * @param width the width aimed at
   * @return the strip as set, or why this cutter is too narrow
   */
  static Widening widening(
      Worked<Length> width, Band accepted, StraightCutter cutter, Conditions conditions) {
    // One strip, one step aside: a third pass would need a second strip.
    return widening(
        width, accepted, cutter, "diameter of the cutter", conditions.cuts(cutter), 2, conditions);
  }

  /**
   * The same in several passes, with a pack of strips of exactly what is missing, one less in each
   * pass. Only the pack's thickness makes the width; each strip of it need only be thin enough that
   * the passes overlap.
   *
   * @param as what the width of one pass is called
   * @param cuts width of one pass
   */
  static Widening widening(
      Worked<Length> width,
      Band accepted,
      Cutter cutter,
      String as,
      Worked<Length> cuts,
      int mostPasses,
      Conditions conditions) {
    var one = cuts.value();
    if (one.isGreaterThan(accepted.most())) {
      return Widening.no(
          new Refusal(
              Refusal.Reason.CUTTER_TOO_WIDE,
              cutter.name()
                  + " cuts "
                  + conditions.caliper(one)
                  + ", the slot may be at most "
                  + conditions.caliper(accepted.most()),
              "Use a narrower cutter"));
    }
    if (accepted.contains(one)) {
      return Widening.none();
    }
    var overlap = conditions.limits().router().leastOverlap().value();
    var exact =
        Worked.called("thickness of the spacer strip")
            .by("width − " + as)
            .with("width", width)
            .with(as, cuts)
            .is(width.value().minus(one));
    var thinnest = conditions.limits().settings().leastStrip().value();
    if (exact.value().isLessThan(thinnest)) {
      return Widening.no(
          new Refusal(
              Refusal.Reason.STRIP_TOO_THIN,
              cutter.name()
                  + " wants a strip of "
                  + conditions.caliper(exact.value())
                  + "; at least "
                  + conditions.caliper(thinnest)
                  + " stays where it is",
              "Use a narrower cutter, whose strip can be handled"));
    }
    var step = conditions.limits().settings().fineStep().value();
    var aside = one.minus(overlap);
    long strips = aside.isPositive() ? exact.value().dividedBy(aside, Rounding.UP) : Long.MAX_VALUE;
    if (strips > mostPasses - 1) {
      // Of a least b: b + (passes − 1) · (b − overlap) is the width.
      var inAll = width.value().plus(overlap.times(mostPasses - 1L));
      var least = new Length(-Math.floorDiv(-inAll.picometres(), (long) mostPasses));
      return Widening.no(tooNarrow(cutter, width, least, mostPasses, conditions));
    }
    var from =
        strips == 1
            ? "its thickness by caliper: it makes the width"
            : "all "
                + strips
                + " together by caliper: they make the width; none thicker than "
                + conditions.caliper(aside);
    return Widening.by(Setting.of(Setting.Role.STRIP, from, exact, step), (int) strips);
  }

  /**
   * A rabbet is open at the edge, so its width is made by the guide alone. Every cutter runs off
   * the edge by as much as two passes overlap, at once or in a first pass with a strip: one that
   * only just covered it would leave a fin at the edge when it is a little under its mark. The
   * strip may then be anything about half the width.
   */
  static Widening rabbetWidening(
      Worked<Length> width, StraightCutter cutter, Conditions conditions) {
    var overlap = conditions.limits().router().leastOverlap().value();
    if (cutter.diameter().isAtLeast(width.value().plus(overlap))) {
      return Widening.none();
    }
    var least = width.value().half().plus(overlap);
    if (cutter.diameter().isLessThan(least)) {
      return Widening.no(tooNarrow(cutter, width, least, 2, conditions));
    }
    var exact =
        Worked.called("thickness of the spacer strip")
            .by("width ÷ 2: each pass takes half, and the first runs off the edge")
            .with("width", width)
            .is(width.value().half());
    return Widening.by(
        Setting.of(
            Setting.Role.STRIP,
            "its thickness, about: the last pass makes the width",
            exact,
            conditions.limits().settings().markStep()),
        1);
  }

  private static Refusal tooNarrow(
      Cutter cutter, Worked<Length> width, Length least, int mostPasses, Conditions conditions) {
    return new Refusal(
        Refusal.Reason.CUTTER_TOO_NARROW,
        cutter.name()
            + " can't make a width of "
            + conditions.caliper(width.value())
            + " in "
            + (mostPasses == 2 ? "two" : mostPasses)
            + " passes that overlap",
        "Use a cutter of " + conditions.shown(least) + " or more");
  }

  /** So many strips of a pack. */
  static Length share(Length pack, int strips, int ofStrips) {
    return ofStrips == 0
        ? Length.ZERO
        : new Length(Math.multiplyExact(pack.picometres(), strips) / ofStrips);
  }

  static Measure width(Worked<Length> target, Band accepted, Optional<Setting.Role> by) {
    return new Measure(
        Measure.Dimension.WIDTH,
        "across the cut: both ends and the middle of the scrap",
        target,
        accepted,
        THREE_READINGS,
        by,
        Optional.empty());
  }

  static Measure depth(Worked<Length> target, SetupLimits limits, Setting.Role by) {
    return new Measure(
        Measure.Dimension.DEPTH,
        "from the face of the scrap to the floor of the cut: both ends and the middle",
        target,
        Band.around(target.value(), limits.settings().depthTolerance().value()),
        THREE_READINGS,
        Optional.of(by),
        Optional.empty());
  }

  /**
   * @param strip whether a thicker strip brings the near wall nearer to the reference edge
   */
  static Measure distance(
      Worked<Length> target, SetupLimits limits, Setting.Role by, boolean strip) {
    return new Measure(
        Measure.Dimension.DISTANCE,
        "from the reference edge of the scrap to the near wall: both ends",
        target,
        Band.around(target.value(), limits.settings().distanceTolerance().value()),
        TWO_READINGS,
        Optional.of(by),
        strip ? Optional.of(Setting.Role.STRIP) : Optional.empty());
  }

  /**
   * Whether a strip is needed, and which; or why the cutter can't make the width.
   *
   * @param strip all strips of the pack together
   * @param strips how many
   */
  record Widening(Optional<Setting> strip, int strips, Optional<Refusal> refusal) {

    static Widening none() {
      return new Widening(Optional.empty(), 0, Optional.empty());
    }

    static Widening by(Setting strip, int strips) {
      return new Widening(Optional.of(strip), strips, Optional.empty());
    }

    static Widening no(Refusal refusal) {
      return new Widening(Optional.empty(), 0, Optional.of(refusal));
    }

    /** Thickness of the strip as set; zero without one. */
    Length thickness() {
      return strip.map(setting -> setting.set().value()).orElse(Length.ZERO);
    }

    List<Boolean> stripOnByPass() {
      return strip.isPresent() ? List.of(true, false) : List.of(false);
    }
  }
}
