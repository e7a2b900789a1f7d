package org.proofcut.core.setup;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.measure.Band;
import org.proofcut.core.measure.Length;
import org.proofcut.core.setup.CutAsked.EdgeKind;
import org.proofcut.core.setup.CutAsked.EdgeProfile;
import org.proofcut.core.setup.Pass.Engages;
import org.proofcut.core.shop.BearingCutter;
import org.proofcut.core.shop.HandRouter;
import org.proofcut.core.shop.Machine;
import org.proofcut.core.shop.RouterTable;

/**
 * A profile along an edge, by a cutter with a bearing: {@code (diameter − bearing) ÷ 2} wide on the
 * face, whatever is set.
 *
 * <p>A straight edge on a router table rides the fence, which stands in line with the bearing: it
 * guides before and behind the cutter, covers the half that does not cut, and is fed right to left
 * like any cut along it. A curved edge can't ride a fence; it rides the bearing and is swung in
 * from a starting pin, because at its very beginning the bearing has no edge to stop the cutter. In
 * the hands the bearing rides the edge whatever its shape: counter-clockwise round the outside,
 * clockwise inside an opening. Each height is cut all along before the next. Common practice.
 */
public final class EdgeProfileSetup {

  private final EdgeProfile asked;
  private final BearingCutter cutter;
  private final Conditions conditions;
  private final SetupLimits limits;

  private EdgeProfileSetup(EdgeProfile asked, BearingCutter cutter, Conditions conditions) {
    this.asked = asked;
    this.cutter = cutter;
    this.conditions = conditions;
    this.limits = conditions.limits();
  }

  /** The set-up on a router table, or why this table and cutter can't make it. */
  public static Answer table(
      EdgeProfile asked, RouterTable table, BearingCutter cutter, Conditions conditions) {
    return new EdgeProfileSetup(asked, cutter, conditions).onTable(table);
  }

  /** The set-up for a router in the hands, or why this router and cutter can't make it. */
  public static Answer hand(
      EdgeProfile asked, HandRouter router, BearingCutter cutter, Conditions conditions) {
    return new EdgeProfileSetup(asked, cutter, conditions).byHand(router);
  }

  private Answer onTable(RouterTable table) {
    boolean alongFence = asked.edge() == EdgeKind.OUTSIDE_STRAIGHT;
    var height =
        Setting.of(
            Setting.Role.HEIGHT,
            "from the table to where the profile ends, at the bearing",
            asked.height().as("height of the profile"),
            table.heightStep());
    var speed = Speeds.choose(table, cutter, limits);
    var refusal =
        Refusal.firstOf(
            notOverAnOpening(),
            RouterCuts.fits(cutter, table.largestCutter(), conditions),
            shaped(height),
            alongFence
                ? RouterTableSetup.supports(asked.work(), conditions)
                : Refusal.firstOf(RouterTableSetup.ridesFence(asked.work(), conditions), pin()),
            wideEnough(asked.work(), conditions),
            speed.refusal());
    if (refusal.isPresent()) {
      return refusal.get();
    }
    var settings = new ArrayList<Setting>();
    if (alongFence) {
      settings.add(fence(table));
    }
    settings.add(height);
    return setup(
        table,
        alongFence ? RouterTableSetup.guide(asked.work(), conditions) : Guide.BEARING_WITH_PIN,
        settings,
        height,
        speed,
        Feed.RIGHT_TO_LEFT);
  }

  private Setting fence(RouterTable table) {
    var exact =
        Worked.called("fence to the farthest cutting edge")
            .by("(diameter − bearing) ÷ 2: its face is then in line with the bearing")
            .with("diameter", Worked.entered("largest diameter", cutter.diameter()))
            .with("bearing", Worked.entered("diameter of the bearing", cutter.bearing()))
            .is(cutter.cutWidth());
    return Setting.of(
        Setting.Role.FENCE,
        "to the farthest cutting edge: a straightedge along the fence touches the bearing",
        exact,
        table.fenceStep());
  }

  private Answer byHand(HandRouter router) {
    var depth =
        Setting.of(
            Setting.Role.DEPTH,
            "from the base to where the profile ends, at the bearing",
            asked.height().as("depth of the profile"),
            router.depthStep());
    var speed = Speeds.choose(router, cutter, limits);
    var refusal =
        Refusal.firstOf(
            RouterCuts.fits(cutter, router.largestCutter(), conditions),
            shaped(depth),
            heldByHand(asked.work(), router, conditions),
            speed.refusal());
    if (refusal.isPresent()) {
      return refusal.get();
    }
    return setup(router, Guide.BEARING, List.of(depth), depth, speed, roundOrInside(asked.edge()));
  }

  static Feed roundOrInside(EdgeKind edge) {
    return edge == EdgeKind.INSIDE ? Feed.CLOCKWISE_INSIDE : Feed.COUNTER_CLOCKWISE_ROUND;
  }

  private Setup setup(
      Machine machine,
      Guide guide,
      List<Setting> settings,
      Setting height,
      Speeds.Choice speed,
      Feed feed) {
    boolean fence = guide == Guide.FENCE || guide == Guide.FENCE_WITH_BLOCK;
    var far = fence ? settings.get(0).set().value() : cutter.cutWidth();
    var takes = new Band(far.minus(cutter.diameter()), far);
    var passes = new ArrayList<Pass>();
    for (var reached : Depths.reach(height, cutter, limits)) {
      passes.add(
          new Pass(
              passes.size() + 1,
              false,
              reached,
              takes,
              fence ? Engages.AWAY_FROM_GUIDE : Engages.AT_THE_BEARING));
    }
    return new Setup(
        asked,
        machine,
        cutter,
        guide,
        settings,
        passes,
        speed.speed().orElseThrow(),
        feed,
        measures(height.role(), fence));
  }

  private List<Measure> measures(Setting.Role height, boolean fence) {
    var measures = new ArrayList<Measure>();
    // A shallower cut with a rounded or slanted edge ends short of the full width.
    boolean wholeWidth =
        asked.profile() == BearingCutter.Profile.RABBET
            || asked.profile().isAsDeepAsWide()
                && asked.height().value().isAtLeast(cutter.cutWidth());
    if (wholeWidth) {
      measures.add(
          new Measure(
              Measure.Dimension.WIDTH,
              "on the face, from the edge to where the profile ends: both ends and the middle",
              asked.width(),
              accepted(),
              RouterCuts.THREE_READINGS,
              fence ? Optional.of(Setting.Role.FENCE) : Optional.empty(),
              Optional.empty()));
    }
    measures.add(
        new Measure(
            Measure.Dimension.DEPTH,
            "down the edge, from the face to where the profile ends: both ends and the middle",
            asked.height(),
            Band.around(asked.height().value(), limits.settings().depthTolerance().value()),
            RouterCuts.THREE_READINGS,
            Optional.of(height),
            Optional.empty()));
    return measures;
  }

  private Band accepted() {
    return Band.around(asked.width().value(), limits.settings().distanceTolerance().value());
  }

  /** What has to be right of cutter and height on every machine. */
  private Optional<Refusal> shaped(Setting height) {
    return Refusal.firstOf(
        ofTheWidth(),
        RouterCuts.goesThrough(height, asked.work(), conditions),
        ridesTheEdge(
            asked.work().thickness().least().minus(height.set().value()),
            conditions,
            "Clamp a piece with the same edge to it for the bearing, or make the profile smaller"),
        RouterCuts.longEnough(cutter, height.set().value(), conditions),
        Depths.tooCoarse(height, cutter, conditions),
        RouterCuts.settable(
            measures(height.role(), false).get(measures(height.role(), false).size() - 1),
            height.set().value(),
            conditions));
  }

  private Optional<Refusal> ofTheWidth() {
    var made = cutter.cutWidth();
    if (accepted().contains(made)) {
      return Optional.empty();
    }
    boolean wide = made.isGreaterThan(asked.width().value());
    return Refusal.because(
        wide ? Refusal.Reason.CUTTER_TOO_WIDE : Refusal.Reason.CUTTER_TOO_NARROW,
        cutter.name()
            + " reaches "
            + conditions.caliper(made)
            + " over the face with its bearing of "
            + conditions.caliper(cutter.bearing())
            + "; "
            + conditions.caliper(asked.width().value())
            + " is wanted",
        "Use a cutter of that reach, or another bearing on this one");
  }

  /** Why a bearing would not be held by so much of an edge, if so. */
  static Optional<Refusal> ridesTheEdge(Length left, Conditions conditions, String instead) {
    var least = conditions.limits().router().leastBearingEdge().value();
    if (left.isAtLeast(least)) {
      return Optional.empty();
    }
    return Refusal.because(
        Refusal.Reason.TOO_DEEP,
        "Only "
            + conditions.caliper(left.max(Length.ZERO))
            + " of the edge would be left to ride; at least "
            + conditions.caliper(least)
            + " is wanted",
        instead);
  }

  private Optional<Refusal> notOverAnOpening() {
    if (asked.edge() != EdgeKind.INSIDE) {
      return Optional.empty();
    }
    return Refusal.because(
        Refusal.Reason.NOT_ALLOWED,
        "On a router table the piece would hide the cutter inside its opening, and no fence or"
            + " guard can stand there",
        "Rout it by hand, clockwise round the opening");
  }

  private Optional<Refusal> pin() {
    if (conditions.aids().contains("starting-pin")) {
      return Optional.empty();
    }
    return Refusal.because(
        Refusal.Reason.AID_MISSING,
        "A curved edge can't ride the fence, and without a starting pin the cutter snatches it"
            + " where it first meets the bearing",
        "Rout it by hand, or fit a starting pin and enter it in the shop");
  }

  /** Why so narrow a piece is not fed past a router table's cutter, if so. */
  static Optional<Refusal> wideEnough(Work work, Conditions conditions) {
    var across = work.acrossGuide().least();
    var least = conditions.limits().router().narrowestAtRouter().value();
    if (across.isAtLeast(least)) {
      return Optional.empty();
    }
    return Refusal.because(
        Refusal.Reason.WORK_TOO_SMALL,
        "A piece only "
            + conditions.shown(across)
            + " wide brings the hands to the cutter; at least "
            + conditions.shown(least)
            + " is wanted",
        "Cut it on a wider piece and rip it off afterwards");
  }

  /**
   * With the cutter at the edge half of the base stands on the piece; beside it clamps need room.
   * Why this piece is too small for that, if so.
   */
  static Optional<Refusal> heldByHand(Work work, HandRouter router, Conditions conditions) {
    var across = router.baseEdgeToCentre().plus(conditions.limits().router().clampRoom().value());
    var along =
        router.baseEdgeToCentre().times(2).plus(conditions.limits().router().clampRoom().value());
    var isAcross = work.acrossGuide().least();
    var isAlong = work.alongGuide().least();
    if (isAcross.isAtLeast(across) && isAlong.isAtLeast(along)) {
      return Optional.empty();
    }
    return Refusal.because(
        Refusal.Reason.WORK_TOO_SMALL,
        "A piece of "
            + conditions.shown(isAlong)
            + " by "
            + conditions.shown(isAcross)
            + " does not carry "
            + router.name()
            + " and its clamps; "
            + conditions.shown(along)
            + " along the edge and "
            + conditions.shown(across)
            + " out from it are wanted",
        "Use a router table, or cut it on a larger piece and saw it off afterwards");
  }
}
