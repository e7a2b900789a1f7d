package org.proofcut.core.setup;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.measure.Band;
import org.proofcut.core.measure.Length;
import org.proofcut.core.setup.CutAsked.Rabbet;
import org.proofcut.core.setup.CutAsked.Slot;
import org.proofcut.core.setup.Pass.Engages;
import org.proofcut.core.shop.HandRouter;
import org.proofcut.core.shop.StraightCutter;

/**
 * Slots and rabbets with a router in the hands, along a clamped straightedge: face up, pushed away,
 * straightedge on the left.
 *
 * <p>From the base edge to the nearest cutting edge is {@code g = B − b/2}. The straightedge lies
 * {@code g} from the near wall of the slot. A wider slot takes two passes with a strip of {@code s
 * = w − b} between straightedge and base: with it the cutter takes the far wall, without it the
 * near one, so that the new wood lies on the side of the guide. That is the other way round from
 * the table, because the cutter turns the other way.
 */
public final class HandRouterSetup {

  private final HandRouter router;
  private final StraightCutter cutter;
  private final Conditions conditions;
  private final SetupLimits limits;

  private HandRouterSetup(HandRouter router, StraightCutter cutter, Conditions conditions) {
    this.router = router;
    this.cutter = cutter;
    this.conditions = conditions;
    this.limits = conditions.limits();
  }

  /** The set-up for a slot, or why this router and cutter can't make it. */
  public static Answer slot(
      Slot asked, HandRouter router, StraightCutter cutter, Conditions conditions) {
    return new HandRouterSetup(router, cutter, conditions)
        .cut(asked, asked.width(), asked.accepted(), asked.depth(), asked.distance(), true);
  }

  /**
   * The set-up for a rabbet: a slot at the very edge, with the straightedge inside the part and the
   * cutter running off the edge.
   */
  public static Answer rabbet(
      Rabbet asked, HandRouter router, StraightCutter cutter, Conditions conditions) {
    var atEdge = Worked.entered("distance from the reference edge", Length.ZERO);
    return new HandRouterSetup(router, cutter, conditions)
        .cut(asked, asked.width(), asked.accepted(), asked.depth(), atEdge, false);
  }

  private Answer cut(
      CutAsked asked,
      Worked<Length> width,
      Band accepted,
      Worked<Length> depth,
      Worked<Length> distance,
      boolean slot) {
    var speed = Speeds.choose(router, cutter, limits);
    var widening =
        slot
            ? RouterCuts.widening(width, accepted, cutter, conditions)
            : RouterCuts.rabbetWidening(width, cutter, conditions);
    var made = slot ? cuts().plus(widening.thickness()) : width.value();
    var guide = straightedge(width, distance, made, slot);
    var depthSetting =
        Setting.of(
            Setting.Role.DEPTH,
            "from the base to the end of the cutter",
            depth.as("depth of the cutter"),
            router.depthStep());
    var measures = measures(width, accepted, depth, distance, widening, guide, slot);
    var refusal =
        Refusal.firstOf(
            RouterCuts.fits(cutter, router.largestCutter(), conditions),
            insideBase(),
            widening.refusal(),
            RouterCuts.reaches(cutter, depthSetting, asked.work(), conditions),
            RouterCuts.staysOnWork(distance.value(), made, asked.work(), conditions),
            settable(measures, guide, made, depthSetting),
            carried(guide, asked.work()),
            aid("straightedge", "a straightedge with clamps"),
            speed.refusal());
    if (refusal.isPresent()) {
      return refusal.get();
    }
    var settings = new ArrayList<Setting>();
    settings.add(guide.setting());
    widening.strip().ifPresent(settings::add);
    settings.add(depthSetting);
    return new Setup(
            asked,
            router,
            cutter,
            Guide.STRAIGHTEDGE,
            settings,
            passes(guide, widening, depthSetting),
            speed.speed().orElseThrow(),
            Feed.AWAY_FROM_YOU,
            measures)
        .using(learned(slot));
  }

  private Length cuts() {
    return conditions.cuts(cutter).value();
  }

  /** A rabbet's width comes from the straightedge alone. */
  private Optional<List<Taught>> learned(boolean slot) {
    var width = slot ? conditions.widthLearned(cutter) : Optional.<Taught>empty();
    var base = conditions.learned().baseToEdge(router, cutter, reckonedBaseEdgeToCuttingEdge());
    var both = Stream.concat(width.stream(), base.stream()).toList();
    return both.isEmpty() ? Optional.empty() : Optional.of(both);
  }

  /** The cutter has to turn inside the base edge, or it cuts into the straightedge. */
  private Optional<Refusal> insideBase() {
    var gap = baseEdgeToCuttingEdge().value();
    if (gap.isPositive()) {
      return Optional.empty();
    }
    return Refusal.because(
        Refusal.Reason.CUTTER_DOES_NOT_FIT_MACHINE,
        cutter.name()
            + " would reach to the base edge or past it, into the straightedge: the centre is "
            + conditions.shown(router.baseEdgeToCentre())
            + " inside it",
        "Use a smaller cutter, or measure the base of " + router.name() + " again");
  }

  /** The straightedge is clamped on the piece itself, so that it lies as high as the base. */
  private Optional<Refusal> carried(Straightedge guide, Work work) {
    var at = guide.setting().set().value();
    var across = work.acrossGuide().least();
    if (at.isAtMost(across)) {
      return Optional.empty();
    }
    return Refusal.because(
        Refusal.Reason.WORK_TOO_SMALL,
        "The straightedge would lie "
            + conditions.shown(at)
            + " from the reference edge, off a piece that reaches out "
            + conditions.shown(across),
        "Cut it on a larger piece and cut that to size afterwards");
  }

  private Optional<Refusal> settable(
      List<Measure> measures, Straightedge guide, Length made, Setting depth) {
    for (var measure : measures) {
      var asSet =
          switch (measure.dimension()) {
            case WIDTH -> measures.size() == 3 ? made : guide.nearestEdge();
            case DEPTH -> depth.set().value();
            case DISTANCE ->
                guide.nearSide() ? guide.nearestEdge() : guide.nearestEdge().minus(made);
            case SIZE, RUN_ACROSS, RUN_THROUGH, RUN_ALONG, DIAMETER, FROM_END ->
                throw new AssertionError("nothing is parted or bored by a router");
          };
      var refusal = RouterCuts.settable(measure, asSet, conditions);
      if (refusal.isPresent()) {
        return refusal;
      }
    }
    return Optional.empty();
  }

  /** Where the straightedge lies, and on which side of the cut. */
  private record Straightedge(Setting setting, boolean nearSide, Length nearestEdge) {}

  private Straightedge straightedge(
      Worked<Length> width, Worked<Length> distance, Length made, boolean slot) {
    var gap = baseEdgeToCuttingEdge();
    boolean nearSide = slot && distance.value().isAtLeast(gap.value());
    var working =
        Worked.called("reference edge to the straightedge")
            .with("distance from the reference edge", distance)
            .with("base edge to cutting edge", gap);
    Worked<Length> exact;
    if (nearSide) {
      exact =
          working
              .by("distance from the reference edge − base edge to cutting edge")
              .is(distance.value().minus(gap.value()));
    } else {
      exact =
          working
              .by("distance from the reference edge + width + base edge to cutting edge")
              .with("width", width)
              .is(distance.value().plus(made).plus(gap.value()));
    }
    var setting =
        Setting.of(
            Setting.Role.STRAIGHTEDGE,
            nearSide
                ? "from the reference edge; it lies between that edge and the cut"
                : "from the reference edge; it lies beyond the cut",
            exact,
            slot ? limits.settings().markStep() : limits.settings().fineStep());
    var nearest =
        nearSide
            ? setting.set().value().plus(gap.value())
            : setting.set().value().minus(gap.value());
    return new Straightedge(setting, nearSide, nearest);
  }

  private Worked<Length> baseEdgeToCuttingEdge() {
    var reckoned = reckonedBaseEdgeToCuttingEdge();
    return conditions
        .learned()
        .baseToEdge(router, cutter, reckoned)
        .map(Taught::use)
        .orElse(reckoned);
  }

  private Worked<Length> reckonedBaseEdgeToCuttingEdge() {
    var centre = Worked.entered("base edge to the centre of the cutter", router.baseEdgeToCentre());
    return Worked.called("base edge to the nearest cutting edge")
        .by(
            "base edge to centre − half the diameter; better measured, at the same point of the base")
        .with("base edge to centre", centre)
        .with("diameter", Conditions.marked(cutter))
        .is(centre.value().minus(cutter.diameter().half()));
  }

  private List<Pass> passes(Straightedge guide, RouterCuts.Widening widening, Setting depth) {
    var passes = new ArrayList<Pass>();
    for (boolean stripOn : widening.stripOnByPass()) {
      var away = stripOn ? widening.thickness() : Length.ZERO;
      // The strip moves the cutter away from the guide, whichever side that lies on.
      var wall =
          guide.nearSide() ? guide.nearestEdge().plus(away) : guide.nearestEdge().minus(away);
      var takes =
          guide.nearSide() ? new Band(wall, wall.plus(cuts())) : new Band(wall.minus(cuts()), wall);
      boolean partWidth = !passes.isEmpty() && !stripOn || takes.least().isNegative();
      for (var reached : Depths.reach(depth, cutter, limits)) {
        passes.add(
            new Pass(
                passes.size() + 1,
                stripOn,
                reached,
                takes,
                partWidth ? Engages.TOWARD_GUIDE : Engages.BOTH_SIDES));
      }
    }
    return passes;
  }

  private List<Measure> measures(
      Worked<Length> width,
      Band accepted,
      Worked<Length> depth,
      Worked<Length> distance,
      RouterCuts.Widening widening,
      Straightedge guide,
      boolean slot) {
    var byDepth = RouterCuts.depth(depth, limits, Setting.Role.DEPTH);
    if (!slot) {
      return List.of(
          RouterCuts.width(width, accepted, Optional.of(Setting.Role.STRAIGHTEDGE)), byDepth);
    }
    return List.of(
        RouterCuts.width(width, accepted, widening.strip().map(Setting::role)),
        byDepth,
        // The strip moves the cutter away from the straightedge: beyond it, off the near wall.
        RouterCuts.distance(
            distance,
            limits,
            Setting.Role.STRAIGHTEDGE,
            widening.strip().isPresent() && !guide.nearSide()));
  }

  private Optional<Refusal> aid(String kind, String words) {
    if (conditions.aids().contains(kind)) {
      return Optional.empty();
    }
    return Refusal.because(
        Refusal.Reason.AID_MISSING,
        "A router in the hands needs " + words + ", and the shop has none entered",
        "Enter " + words + " in the shop if there is one");
  }
}
