package org.proofcut.core.setup;

import java.util.List;
import java.util.Optional;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.measure.Band;
import org.proofcut.core.measure.Length;
import org.proofcut.core.setup.CutAsked.FlushTrim;
import org.proofcut.core.setup.Pass.Engages;
import org.proofcut.core.shop.BearingCutter;
import org.proofcut.core.shop.HandRouter;

/**
 * What stands out over an edge is taken off level with it, with a router in the hands: its base on
 * the layer that stands out, the bearing on the edge below. The cutter is as wide as its bearing,
 * so nothing that is set decides how level it comes out, and nothing is proven. Its edges reach a
 * little below the layer, the bearing rides below that. Common practice.
 */
public final class FlushTrimSetup {

  private FlushTrimSetup() {}

  /** The set-up for a router in the hands, or why this router and cutter can't make it. */
  public static Answer hand(
      FlushTrim asked, HandRouter router, BearingCutter cutter, Conditions conditions) {
    var limits = conditions.limits();
    var depth =
        Setting.of(
            Setting.Role.DEPTH,
            "from the base to the end of the cutting edges, above the bearing",
            Worked.called("depth of the cutting edges")
                .by("thickness of the layer + what the edges reach below it")
                .with("thickness of the layer", asked.layer())
                .with("what the edges reach below it", limits.router().leastOverlap())
                .is(asked.layer().value().plus(limits.router().leastOverlap().value())),
            router.depthStep());
    var set = depth.set().value();
    var below = set.minus(asked.layer().value());
    var speed = Speeds.choose(router, cutter, limits);
    var refusal =
        Refusal.firstOf(
            RouterCuts.fits(cutter, router.largestCutter(), conditions),
            level(cutter, conditions),
            overhang(asked, cutter, conditions),
            RouterCuts.longEnough(cutter, set, conditions),
            EdgeProfileSetup.ridesTheEdge(
                asked.under().value().minus(below),
                conditions,
                "Trim it with a plane, or before the part below is cut to size"),
            EdgeProfileSetup.heldByHand(asked.work(), router, conditions),
            speed.refusal());
    if (refusal.isPresent()) {
      return refusal.get();
    }
    // One height only: a shallower cut would bring the bearing against the layer itself.
    var takes = new Band(cutter.diameter().negated(), Length.ZERO);
    return new Setup(
        asked,
        router,
        cutter,
        Guide.BEARING,
        List.of(depth),
        List.of(new Pass(1, false, depth.set(), takes, Engages.AT_THE_BEARING)),
        speed.speed().orElseThrow(),
        EdgeProfileSetup.roundOrInside(asked.edge()),
        List.of());
  }

  private static Optional<Refusal> level(BearingCutter cutter, Conditions conditions) {
    var step = cutter.cutWidth();
    if (step.abs().isAtMost(conditions.limits().settings().fineStep().value())) {
      return Optional.empty();
    }
    return Refusal.because(
        step.isPositive() ? Refusal.Reason.CUTTER_TOO_WIDE : Refusal.Reason.CUTTER_TOO_NARROW,
        cutter.name()
            + " and its bearing differ: it would "
            + (step.isPositive() ? "cut into the edge by " : "leave a step of ")
            + conditions.caliper(step.abs()),
        "Use a bearing exactly as large as the cutter");
  }

  /** Beyond the cutter's centre its edges run with the feed. */
  private static Optional<Refusal> overhang(
      FlushTrim asked, BearingCutter cutter, Conditions conditions) {
    var most = conditions.limits().router().mostOverhang().value().min(cutter.diameter().half());
    if (asked.overhang().value().isAtMost(most)) {
      return Optional.empty();
    }
    return Refusal.because(
        Refusal.Reason.TOO_DEEP,
        conditions.caliper(asked.overhang().value())
            + " stands out; at most "
            + conditions.caliper(most)
            + " is trimmed at once",
        "Saw it off to less than " + conditions.shown(most) + " first");
  }
}
