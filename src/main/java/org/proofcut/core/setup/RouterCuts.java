package org.proofcut.core.setup;

import java.util.List;
import java.util.Optional;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.measure.Band;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.Rounding;
import org.proofcut.core.shop.StraightCutter;

/** What slots and rabbets on the table and by hand have in common: widening and its limits. */
final class RouterCuts {

  /** Readings of a width or depth: both ends of the cut and the middle. */
  static final int THREE_READINGS = 3;

  /** Readings of a distance: both ends, which shows whether the work stayed on its guide. */
  static final int TWO_READINGS = 2;

  private RouterCuts() {}

  /** Why the cutter can't be used on a machine at all, if so. */
  static Optional<Refusal> fits(StraightCutter cutter, Length largest, Conditions conditions) {
    if (cutter.diameter().isGreaterThan(largest)) {
      return Optional.of(
          new Refusal(
              Refusal.Reason.CUTTER_DOES_NOT_FIT_MACHINE,
              cutter.name() + " is larger than the machine takes: " + conditions.shown(largest),
              "Use a smaller cutter"));
    }
    return Optional.empty();
  }

  static Optional<Refusal> deepEnough(StraightCutter cutter, Length depth, Conditions conditions) {
    if (depth.isGreaterThan(cutter.cuttingLength())) {
      return Optional.of(
          new Refusal(
              Refusal.Reason.CUTTER_TOO_SHORT,
              "The edges of "
                  + cutter.name()
                  + " are "
                  + conditions.shown(cutter.cuttingLength())
                  + " long, the cut is "
                  + conditions.shown(depth)
                  + " deep",
              "Use a cutter with longer edges"));
    }
    return Optional.empty();
  }

  /**
   * A narrower cutter makes a width in two passes, one with a strip of exactly what is missing.
   *
   * @param width the width aimed at
   * @return the strip as set, or why this cutter is too narrow
   */
  static Widening widening(
      Worked<Length> width, Band accepted, StraightCutter cutter, Conditions conditions) {
    var limits = conditions.limits();
    var diameter = cutter.diameter();
    if (diameter.isGreaterThan(accepted.most())) {
      return Widening.no(
          new Refusal(
              Refusal.Reason.CUTTER_TOO_WIDE,
              cutter.name()
                  + " cuts "
                  + conditions.caliper(diameter)
                  + ", the slot may be at most "
                  + conditions.caliper(accepted.most()),
              "Use a narrower cutter"));
    }
    if (accepted.contains(diameter)) {
      return Widening.none();
    }
    var missing = width.value().minus(diameter);
    var advance = diameter.minus(limits.leastOverlap().value());
    // One strip, one step aside: a third pass would need a second strip and a second proof.
    if (missing.isGreaterThan(advance)) {
      long passes = 1 + missing.dividedBy(advance.max(new Length(1)), Rounding.UP);
      return Widening.no(
          new Refusal(
              Refusal.Reason.CUTTER_TOO_NARROW,
              cutter.name()
                  + " would need "
                  + passes
                  + " passes side by side for a width of "
                  + conditions.caliper(width.value()),
              "Use a cutter of "
                  + conditions.shown(width.value().plus(limits.leastOverlap().value()).half())
                  + " or more"));
    }
    var exact =
        Worked.called("thickness of the spacer strip")
            .by("width − diameter of the cutter")
            .with("width", width)
            .with("diameter of the cutter", diameter(cutter))
            .is(missing);
    return Widening.by(
        Setting.of(
            Setting.Role.STRIP,
            "its thickness by caliper: it makes the width",
            exact,
            limits.fineStep().value()));
  }

  static Worked<Length> diameter(StraightCutter cutter) {
    return Worked.entered("marked diameter of " + cutter.name(), cutter.diameter());
  }

  static Measure width(Worked<Length> target, Band accepted, Optional<Setting.Role> by) {
    return new Measure(
        Measure.Dimension.WIDTH,
        "across the cut: both ends and the middle of the scrap",
        target,
        accepted,
        THREE_READINGS,
        by);
  }

  static Measure depth(Worked<Length> target, SetupLimits limits, Setting.Role by) {
    return new Measure(
        Measure.Dimension.DEPTH,
        "from the face of the scrap to the floor of the cut: both ends and the middle",
        target,
        Band.around(target.value(), limits.depthTolerance().value()),
        THREE_READINGS,
        Optional.of(by));
  }

  static Measure distance(Worked<Length> target, SetupLimits limits, Setting.Role by) {
    return new Measure(
        Measure.Dimension.DISTANCE,
        "from the reference edge of the scrap to the near wall: both ends",
        target,
        Band.around(target.value(), limits.distanceTolerance().value()),
        TWO_READINGS,
        Optional.of(by));
  }

  /** Whether a strip is needed, and which; or why the cutter can't make the width. */
  record Widening(Optional<Setting> strip, Optional<Refusal> refusal) {

    static Widening none() {
      return new Widening(Optional.empty(), Optional.empty());
    }

    static Widening by(Setting strip) {
      return new Widening(Optional.of(strip), Optional.empty());
    }

    static Widening no(Refusal refusal) {
      return new Widening(Optional.empty(), Optional.of(refusal));
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
