package org.proofcut.core.setup;

import java.util.List;
import java.util.Optional;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.measure.Band;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.Rounding;
import org.proofcut.core.setup.CutAsked.Tapered;
import org.proofcut.core.setup.Measure.Dimension;
import org.proofcut.core.shop.SawBlade;
import org.proofcut.core.shop.TableSaw;

/**
 * A taper at the table saw. The work is clamped on a flat carrier, whose straight edge rides the
 * fence; what the cut makes is the carrier's other edge, so the fence stands at its width from the
 * near side of the teeth: they graze that edge. The waste lies beyond it, away from the fence.
 *
 * <p>Two stops give the work its direction. The heel, a notch, takes the corner of the narrow end
 * that stays; the side stop touches the straight edge so much ahead of it. With {@code a} the angle
 * of the taper and {@code d} between the stops along the carrier's edge, the heel stands {@code end
 * · cos a} off that edge ({@link org.proofcut.core.geometry.Taper#heel}), the side stop {@code d ·
 * tan a} farther; for the second of both edges {@code d · tan 2a}.
 *
 * <p>Each stop has a measure of its own, and moves the other's by nothing that a caliper finds:
 *
 * <ul>
 *   <li>The heel makes the narrow end. It moves that by {@code 1 ÷ cos a}, at most 3 % more than
 *       one for one in the steepest taper that is cut so.
 *   <li>The offset makes how much narrower the piece gets over {@code d} along the edge that lay on
 *       the stops: {@code d · tan} of the angle between the cut and that edge, which is the offset
 *       itself. So it is put right one for one, exactly.
 * </ul>
 *
 * Geometry; that the wide end goes first, and on a carrier, is common practice.
 */
public final class TaperSetup {

  private static final String PLANE = "plane it to the line by hand";

  private final Tapered asked;
  private final TableSaw saw;
  private final SawBlade blade;
  private final Conditions conditions;
  private final SetupLimits limits;

  private TaperSetup(Tapered asked, TableSaw saw, SawBlade blade, Conditions conditions) {
    this.asked = asked;
    this.saw = saw;
    this.blade = blade;
    this.conditions = conditions;
    this.limits = conditions.limits();
  }

  /** One cut of a taper, or why this saw and blade can't make it. */
  public static Answer cut(Tapered asked, TableSaw saw, SawBlade blade, Conditions conditions) {
    return new TaperSetup(asked, saw, blade, conditions).cut();
  }

  private Answer cut() {
    var none = noTaper();
    if (none.isPresent()) {
      return none.get();
    }
    var unfit =
        Refusal.firstOf(
            SawSetup.takes(saw, saw.blades(), blade, conditions),
            carrierThere(),
            tooSteep(),
            tooShort(),
            tooNarrow(),
            thinEnd(),
            stopsOffTheTaper());
    return unfit.isPresent() ? unfit.get() : onCarrier();
  }

  private Answer onCarrier() {
    var fine = limits.settings().fineStep();
    var exactHeel = asked.taper().heel(asked.second());
    var heel =
        Setting.of(
            Setting.Role.STOP,
            "on the carrier, from its edge at the blade to the corner of the heel",
            exactHeel,
            fine);
    var offset =
        Setting.of(
            Setting.Role.STOP_OFFSET,
            "how much farther from that edge the side stop stands than the heel",
            asked.offset(),
            fine);
    var ahead =
        Setting.of(
            Setting.Role.STOPS_APART,
            "along the carrier's edge, from the corner of the heel to the corner of the side stop",
            apart(),
            limits.settings().markStep());
    var fence =
        Setting.of(
            Setting.Role.FENCE,
            "to the near side of the teeth, which graze the carrier's edge",
            asked.carrier().width().as("fence to the blade"),
            fine);
    var height =
        Setting.of(
            Setting.Role.HEIGHT, "from the table to the top tooth", height(), saw.heightStep());
    var end = end();
    var run = run();
    var endAsSet = end.target().value().plus(heel.set().value()).minus(exactHeel.value());
    var speed = Speeds.choose(saw, blade, limits);
    var refusal =
        Refusal.firstOf(
            carrierWideEnough(heel.set().value().plus(offset.set().value())),
            SawSetup.atMost(
                fence.set().value(),
                saw.fenceReach(),
                "The fence would stand",
                Refusal.Reason.OUT_OF_REACH,
                "Make a narrower carrier",
                conditions),
            SawSetup.atMost(
                height.set().value(),
                saw.greatestHeight(),
                "The blade would stand",
                Refusal.Reason.TOO_DEEP,
                "Make a carrier with a thinner base, or " + PLANE,
                conditions),
            RouterCuts.settable(end, endAsSet, conditions),
            RouterCuts.settable(run, offset.set().value(), conditions),
            speed.refusal());
    if (refusal.isPresent()) {
      return refusal.get();
    }
    var edge = fence.set().value();
    return new Setup(
        asked,
        saw,
        blade,
        Guide.CARRIER,
        List.of(heel, offset, ahead, fence, height),
        List.of(
            new Pass(
                1,
                false,
                height.set(),
                new Band(edge, edge.plus(blade.kerf())),
                Pass.Engages.BOTH_SIDES)),
        speed.speed().orElseThrow(),
        Feed.INTO_THE_BLADE,
        List.of(end, run));
  }

  private Worked<Length> apart() {
    return asked.carrier().apart();
  }

  private Worked<Length> height() {
    var base = asked.carrier().base();
    var above =
        SawSetup.above(
            asked.work(), "blade above the carrier", "above it", limits.saw().bladeAbove());
    return Worked.called("height of the blade")
        .by("carrier's base + blade above the carrier")
        .with("carrier's base", base)
        .with("blade above the carrier", above)
        .from(above.source())
        .is(base.value().plus(above.value()));
  }

  private Measure end() {
    var target = asked.taper().endAfter(asked.second());
    return new Measure(
        Dimension.SIZE,
        "along the narrow end, from corner to corner, on both faces",
        target,
        Band.around(target.value(), limits.settings().sizeTolerance().value()),
        RouterCuts.TWO_READINGS,
        Optional.of(Setting.Role.STOP),
        Optional.empty());
  }

  /** What it may be off is its share of what the whole run may be. */
  private Measure run() {
    var tolerance =
        limits
            .settings()
            .sizeTolerance()
            .value()
            .inProportion(
                apart().value(), asked.taper().run().value(), Length.HUNDREDTH, Rounding.DOWN);
    return new Measure(
        Dimension.RUN_ALONG,
        "width "
            + conditions.shown(apart().value())
            + " from the narrow end less width at its corner, both square to the edge that lay on"
            + " the stops",
        asked.offset(),
        Band.around(asked.offset().value(), tolerance),
        RouterCuts.TWO_READINGS,
        Optional.of(Setting.Role.STOP_OFFSET),
        Optional.empty());
  }

  // ---- limits --------------------------------------------------------------------------------

  private Optional<Refusal> carrierThere() {
    if (conditions.aids().contains("flat-carrier")) {
      return Optional.empty();
    }
    return Refusal.because(
        Refusal.Reason.AID_MISSING,
        "There is no flat carrier in the shop. A taper is never cut free-hand, nor with the"
            + " fence alone: the work would turn into the blade",
        "Make a carrier with a heel, a side stop and clamps, and enter it in the shop; or "
            + PLANE);
  }

  private Optional<Refusal> noTaper() {
    return asked.taper().problems(conditions.unit()).stream()
        .findFirst()
        .map(
            problem ->
                new Refusal(Refusal.Reason.WORK_TOO_SMALL, problem.what(), problem.doThis()));
  }

  private Optional<Refusal> tooSteep() {
    var in = asked.taper().runsIn().value();
    int times = limits.saw().steepestTaper().value();
    if (asked.taper().run().value().isAtLeast(in.times(times))) {
      return Optional.empty();
    }
    return Refusal.because(
        Refusal.Reason.OUT_OF_REACH,
        "The edge runs in by "
            + conditions.shown(in)
            + ": over less than "
            + conditions.shown(in.times(times))
            + " that is steeper than stops hold",
        "Cut it along a track laid on the line");
  }

  private Optional<Refusal> tooShort() {
    var shortest = asked.work().alongGuide().least();
    var least = limits.saw().shortestOnCarrier().value();
    if (shortest.isAtLeast(least)) {
      return Optional.empty();
    }
    return Refusal.because(
        Refusal.Reason.WORK_TOO_SMALL,
        "A piece of "
            + conditions.shown(shortest)
            + " is too short for stops and clamps; at least "
            + conditions.shown(least)
            + " is wanted",
        "Taper a longer piece and cut it to length afterwards, or " + PLANE);
  }

  private Optional<Refusal> tooNarrow() {
    var wide = asked.taper().wide().value();
    var least = limits.saw().narrowestAtSaw().value();
    if (wide.isAtLeast(least)) {
      return Optional.empty();
    }
    return Refusal.because(
        Refusal.Reason.WORK_TOO_SMALL,
        "A piece "
            + conditions.shown(wide)
            + " wide leaves no room for a clamp beside the blade; at least "
            + conditions.shown(least)
            + " does",
        "Taper the edge of a wider board and rip the piece off it, or " + PLANE);
  }

  private Optional<Refusal> thinEnd() {
    var end = asked.taper().endAfter(asked.second()).value();
    var least = limits.saw().narrowestEnd().value();
    if (end.isAtLeast(least)) {
      return Optional.empty();
    }
    return Refusal.because(
        Refusal.Reason.WORK_TOO_SMALL,
        "An end only "
            + conditions.shown(end)
            + " wide breaks at the heel; at least "
            + conditions.shown(least)
            + " holds",
        "Taper a longer piece and cut its thin end off afterwards, or saw it wider and " + PLANE);
  }

  private Optional<Refusal> stopsOffTheTaper() {
    var least = limits.saw().leastStopsApart().value();
    var most = asked.taper().mostApart(asked.second());
    if (most.isLessThan(least)) {
      return Refusal.because(
          Refusal.Reason.WORK_TOO_SMALL,
          "The taper holds stops "
              + (most.isPositive() ? conditions.shown(most) + " apart at most" : "nowhere")
              + "; closer than "
              + conditions.shown(least)
              + " they give no direction",
          "Taper a longer piece and cut it to length afterwards, or " + PLANE);
    }
    var apart = apart().value();
    if (apart.isAtLeast(least) && apart.isAtMost(most)) {
      return Optional.empty();
    }
    return Refusal.because(
        Refusal.Reason.OUT_OF_REACH,
        "Stops "
            + conditions.shown(apart)
            + " apart "
            + (apart.isLessThan(least)
                ? "give the work no direction"
                : "lie beyond the taper, where it can't be measured"),
        "Set them between "
            + conditions.shown(least)
            + " and "
            + conditions.shown(most)
            + " apart");
  }

  private Optional<Refusal> carrierWideEnough(Length farthestStop) {
    var least = farthestStop.plus(limits.saw().behindStops().value());
    var width = asked.carrier().width().value();
    if (width.isAtLeast(least)) {
      return Optional.empty();
    }
    return Refusal.because(
        Refusal.Reason.OUT_OF_REACH,
        "The side stop stands "
            + conditions.shown(farthestStop)
            + " from the edge of a carrier that is "
            + conditions.shown(width)
            + " wide",
        "Make the carrier at least " + conditions.shown(least) + " wide");
  }
}
