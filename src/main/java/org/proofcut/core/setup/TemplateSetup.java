package org.proofcut.core.setup;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.geometry.TemplateGuide;
import org.proofcut.core.measure.Band;
import org.proofcut.core.measure.Length;
import org.proofcut.core.setup.CutAsked.TemplateRecess;
import org.proofcut.core.setup.Pass.Engages;
import org.proofcut.core.shop.HandRouter;
import org.proofcut.core.shop.StraightCutter;

/**
 * A recess or mortise with a router in the hands, its guide bush inside the opening of a template
 * clamped on the work: {@link TemplateGuide} has the arithmetic. The template's opening is larger
 * than the recess by {@code bush − cutter}; the cutter stands out by the template's thickness more
 * than the recess is deep.
 *
 * <p>The router is plunged in the middle and led clockwise in widening rounds until the bush runs
 * along the template, each depth for itself: so new wood lies on the outside of every round, where
 * the cut is against the feed. Common practice.
 */
public final class TemplateSetup {

  private final TemplateRecess asked;
  private final HandRouter router;
  private final StraightCutter cutter;
  private final Conditions conditions;
  private final SetupLimits limits;
  private final TemplateGuide guide;

  private TemplateSetup(
      TemplateRecess asked, HandRouter router, StraightCutter cutter, Conditions conditions) {
    this.asked = asked;
    this.router = router;
    this.cutter = cutter;
    this.conditions = conditions;
    this.limits = conditions.limits();
    var bush = asked.bush();
    this.guide = new TemplateGuide(bush.outside(), bush.bore(), conditions.cuts(cutter));
  }

  /** The set-up, or why this router and cutter can't make it. */
  public static Answer hand(
      TemplateRecess asked, HandRouter router, StraightCutter cutter, Conditions conditions) {
    return new TemplateSetup(asked, router, cutter, conditions).answer();
  }

  private Answer answer() {
    var inWood =
        Setting.of(
            Setting.Role.DEPTH,
            "from the template's face",
            asked.depth().as("depth of the recess"),
            router.depthStep());
    var depth =
        Setting.of(
            Setting.Role.DEPTH,
            "from the base to the end of the cutter, the template's thickness included",
            guide.cutterOut(asked.template(), asked.depth()),
            router.depthStep());
    var made = depth.set().value().minus(asked.template().value());
    var byDepth = RouterCuts.depth(asked.depth(), limits, Setting.Role.DEPTH);
    var speed = Speeds.choose(router, cutter, limits);
    var refusal =
        Refusal.firstOf(
            RouterCuts.fits(cutter, router.largestCutter(), conditions),
            bushAndTemplate(),
            corners(),
            roundsMeet(),
            RouterCuts.reaches(cutter, inWood, asked.work(), conditions),
            RouterCuts.settable(byDepth, made, conditions),
            within(asked.length().value(), asked.work().alongGuide().least()),
            within(asked.width().value(), asked.work().acrossGuide().least()),
            speed.refusal());
    if (refusal.isPresent()) {
      return refusal.get();
    }
    var length = opening(Setting.Role.OPENING_LENGTH, asked.length(), "the longer way");
    var width = opening(Setting.Role.OPENING_WIDTH, asked.width(), "the shorter way");
    var passes = new ArrayList<Pass>();
    for (var reached : Depths.reach(inWood, cutter, limits)) {
      var takes = new Band(Length.ZERO, asked.width().value());
      passes.add(new Pass(passes.size() + 1, false, reached, takes, Engages.AT_THE_TEMPLATE));
    }
    return new Setup(
            asked,
            router,
            cutter,
            Guide.TEMPLATE,
            List.of(length, width, depth),
            passes,
            speed.speed().orElseThrow(),
            Feed.CLOCKWISE_IN_THE_TEMPLATE,
            List.of(across(width), byDepth))
        .using(conditions.widthLearned(cutter).map(List::of));
  }

  private Setting opening(Setting.Role role, Worked<Length> recess, String way) {
    return Setting.of(
        role,
        "of the template's opening, " + way + ", by caliper",
        guide.opening(recess),
        limits.settings().fineStep());
  }

  private Measure across(Setting opening) {
    return new Measure(
        Measure.Dimension.WIDTH,
        "across the recess, the shorter way: both ends and the middle",
        asked.width(),
        Band.around(asked.width().value(), limits.settings().sizeTolerance().value()),
        RouterCuts.THREE_READINGS,
        Optional.of(opening.role()),
        Optional.empty());
  }

  private Optional<Refusal> bushAndTemplate() {
    return guide
        .problems(asked.bush().collar().value(), asked.template().value(), conditions.unit())
        .stream()
        .findFirst()
        .map(
            problem ->
                new Refusal(
                    Refusal.Reason.CUTTER_DOES_NOT_FIT_MACHINE, problem.what(), problem.doThis()));
  }

  /** A round cutter leaves its own radius in every corner. */
  private Optional<Refusal> corners() {
    var radius = guide.leastInsideRadius().value();
    if (radius.isAtMost(asked.corner().value())) {
      return Optional.empty();
    }
    return Refusal.because(
        Refusal.Reason.CUTTER_TOO_WIDE,
        cutter.name()
            + " leaves a radius of "
            + conditions.caliper(radius)
            + " in the corners; at most "
            + conditions.caliper(asked.corner().value())
            + " is wanted",
        "Use a smaller cutter, or square the corners with a chisel");
  }

  /** The cutter goes in, with room for the rounds to widen against the feed. */
  private Optional<Refusal> roundsMeet() {
    return guide.problemsOfRecess(asked.width().value(), conditions.unit()).stream()
        .findFirst()
        .map(
            problem ->
                new Refusal(Refusal.Reason.CUTTER_TOO_WIDE, problem.what(), problem.doThis()));
  }

  private Optional<Refusal> within(Length recess, Length piece) {
    if (recess.isLessThan(piece)) {
      return Optional.empty();
    }
    return Refusal.because(
        Refusal.Reason.WORK_TOO_SMALL,
        "A recess of "
            + conditions.shown(recess)
            + " leaves no wood round it in a piece of "
            + conditions.shown(piece),
        "Make the recess smaller, or the piece larger");
  }
}
