package org.proofcut.core.setup;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.measure.Band;
import org.proofcut.core.measure.Length;
import org.proofcut.core.setup.CutAsked.Rabbet;
import org.proofcut.core.setup.CutAsked.Slot;
import org.proofcut.core.setup.Pass.Engages;
import org.proofcut.core.shop.RouterTable;
import org.proofcut.core.shop.StraightCutter;

/**
 * Slots and rabbets on a router table: fence behind the cutter, face down, fed right to left.
 *
 * <p>A slot of width {@code w} at distance {@code a}, cut with a narrower cutter of diameter {@code
 * b}: the fence stands at {@code a + s} from the nearest cutting edge, with a strip of thickness
 * {@code s = w − b}. With the strip between fence and work the cutter takes {@code a … a + b};
 * without it {@code a + s … a + w}, and the new wood lies on the side away from the fence, where
 * the cut goes against the feed. The fence never moves, so one proof holds for both passes.
 */
public final class RouterTableSetup {

  private final RouterTable table;
  private final StraightCutter cutter;
  private final Conditions conditions;
  private final SetupLimits limits;

  private RouterTableSetup(RouterTable table, StraightCutter cutter, Conditions conditions) {
    this.table = table;
    this.cutter = cutter;
    this.conditions = conditions;
    this.limits = conditions.limits();
  }

  /** The set-up for a slot, or why this table and cutter can't make it. */
  public static Answer slot(
      Slot asked, RouterTable table, StraightCutter cutter, Conditions conditions) {
    return new RouterTableSetup(table, cutter, conditions).slot(asked);
  }

  /** The set-up for a rabbet, or why this table and cutter can't make it. */
  public static Answer rabbet(
      Rabbet asked, RouterTable table, StraightCutter cutter, Conditions conditions) {
    return new RouterTableSetup(table, cutter, conditions).rabbet(asked);
  }

  private Answer slot(Slot asked) {
    var speed = Speeds.choose(table, cutter, limits);
    var widening = RouterCuts.widening(asked.width(), asked.accepted(), cutter, conditions);
    var strip = widening.thickness();
    var fence = slotFence(asked, widening);
    var height = height(asked.depth());
    var made = cuts().plus(strip);
    var near = fence.set().value();
    var width =
        RouterCuts.width(asked.width(), asked.accepted(), widening.strip().map(Setting::role));
    var depth = RouterCuts.depth(asked.depth(), limits, Setting.Role.HEIGHT);
    // The fence stays: a thicker strip sets the first pass, and with it the near wall, nearer.
    var distance =
        RouterCuts.distance(
            asked.distance(), limits, Setting.Role.FENCE, widening.strip().isPresent());
    var refusal =
        Refusal.firstOf(
            RouterCuts.fits(cutter, table.largestCutter(), conditions),
            widening.refusal(),
            RouterCuts.reaches(cutter, height, asked.work(), conditions),
            RouterCuts.staysOnWork(asked.distance().value(), made, asked.work(), conditions),
            RouterCuts.settable(width, made, conditions),
            RouterCuts.settable(depth, height.set().value(), conditions),
            RouterCuts.settable(distance, near.minus(strip), conditions),
            outOfReach(near),
            supports(asked.work(), conditions),
            speed.refusal());
    if (refusal.isPresent()) {
      return refusal.get();
    }
    var settings = new ArrayList<Setting>();
    settings.add(fence);
    widening.strip().ifPresent(settings::add);
    settings.add(height);
    var passes = new ArrayList<Pass>();
    for (boolean stripOn : widening.stripOnByPass()) {
      var from = stripOn ? near.minus(strip) : near;
      var takes = new Band(from, from.plus(cuts()));
      // The first pass across meets wood on both sides; a second one only what is left, away from
      // the fence.
      boolean second = !passes.isEmpty() && !stripOn;
      for (var reached : Depths.reach(height, cutter, limits)) {
        passes.add(
            new Pass(
                passes.size() + 1,
                stripOn,
                reached,
                takes,
                second ? Engages.AWAY_FROM_GUIDE : Engages.BOTH_SIDES));
      }
    }
    return new Setup(
            asked,
            table,
            cutter,
            guide(asked.work(), conditions),
            settings,
            passes,
            speed.speed().orElseThrow(),
            Feed.RIGHT_TO_LEFT,
            List.of(width, depth, distance))
        .using(conditions.widthLearned(cutter).map(List::of));
  }

  private Length cuts() {
    return conditions.cuts(cutter).value();
  }

  private Setting slotFence(Slot asked, RouterCuts.Widening widening) {
    var exact =
        widening
            .strip()
            .map(
                strip ->
                    Worked.called("fence to the nearest cutting edge")
                        .by("distance from the reference edge + spacer strip")
                        .with("distance from the reference edge", asked.distance())
                        .with("spacer strip", strip.set())
                        .is(asked.distance().value().plus(strip.set().value())))
            .orElse(asked.distance().as("fence to the nearest cutting edge"));
    return Setting.of(
        Setting.Role.FENCE,
        widening.strip().isPresent()
            ? "to the nearest cutting edge, for both passes"
            : "to the nearest cutting edge",
        exact,
        table.fenceStep());
  }

  /**
   * For a rabbet the fence stands so that its face is one width from the farthest cutting edge; a
   * cutter wider than that is partly buried in the fence.
   */
  private Answer rabbet(Rabbet asked) {
    var speed = Speeds.choose(table, cutter, limits);
    var widening = RouterCuts.rabbetWidening(asked.width(), cutter, conditions);
    var fence = toFarthestEdge(asked.width(), limits);
    var height = height(asked.depth());
    var far = fence.set().value();
    var width = RouterCuts.width(asked.width(), asked.accepted(), Optional.of(Setting.Role.FENCE));
    var depth = RouterCuts.depth(asked.depth(), limits, Setting.Role.HEIGHT);
    var refusal =
        Refusal.firstOf(
            RouterCuts.fits(cutter, table.largestCutter(), conditions),
            widening.refusal(),
            RouterCuts.reaches(cutter, height, asked.work(), conditions),
            RouterCuts.staysOnWork(Length.ZERO, far, asked.work(), conditions),
            RouterCuts.settable(width, far, conditions),
            RouterCuts.settable(depth, height.set().value(), conditions),
            supports(asked.work(), conditions),
            speed.refusal());
    if (refusal.isPresent()) {
      return refusal.get();
    }
    var settings = new ArrayList<Setting>();
    settings.add(fence);
    widening.strip().ifPresent(settings::add);
    settings.add(height);
    var passes = new ArrayList<Pass>();
    for (boolean stripOn : widening.stripOnByPass()) {
      var to = stripOn ? far.minus(widening.thickness()) : far;
      var takes = new Band(to.minus(cuts()), to);
      for (var reached : Depths.reach(height, cutter, limits)) {
        // New wood lies only away from the fence: at the edge itself there is none on its side.
        passes.add(new Pass(passes.size() + 1, stripOn, reached, takes, Engages.AWAY_FROM_GUIDE));
      }
    }
    return new Setup(
        asked,
        table,
        cutter,
        guide(asked.work(), conditions),
        settings,
        passes,
        speed.speed().orElseThrow(),
        Feed.RIGHT_TO_LEFT,
        List.of(width, depth));
  }

  /** The fence for a cut that is open at the edge and so wide. */
  static Setting toFarthestEdge(Worked<Length> width, SetupLimits limits) {
    return Setting.of(
        Setting.Role.FENCE,
        "to the farthest cutting edge, turned by hand until it points away from the fence",
        width.as("fence to the farthest cutting edge"),
        limits.settings().fineStep());
  }

  private Setting height(Worked<Length> depth) {
    return Setting.of(
        Setting.Role.HEIGHT,
        "from the table to the top of the cutter",
        depth.as("height of the cutter"),
        table.heightStep());
  }

  private Optional<Refusal> outOfReach(Length fence) {
    if (fence.isAtMost(table.fenceReach())) {
      return Optional.empty();
    }
    return Refusal.because(
        Refusal.Reason.OUT_OF_REACH,
        "The fence would stand "
            + conditions.shown(fence)
            + " from the cutter; on "
            + table.name()
            + " it reaches "
            + conditions.shown(table.fenceReach()),
        "Rout it by hand along a straightedge");
  }

  /** Why so short an edge must not ride a router table's fence, if so. */
  static Optional<Refusal> ridesFence(Work work, Conditions conditions) {
    return OnFence.longEnough(
        work,
        conditions.limits().router().shortestAtRouter().value(),
        "Cut it on a longer piece and crosscut afterwards",
        conditions);
  }

  /** Why the work can't be led along the fence, if so. */
  static Optional<Refusal> supports(Work work, Conditions conditions) {
    var tooShort = ridesFence(work, conditions);
    if (tooShort.isPresent()) {
      return tooShort;
    }
    if (OnFence.tips(work, conditions) && !conditions.aids().contains("square-block")) {
      return OnFence.doesNotGuide(
          work, "Push it with a square block, or rout it by hand along a straightedge", conditions);
    }
    return Optional.empty();
  }

  static Guide guide(Work work, Conditions conditions) {
    return OnFence.tips(work, conditions) ? Guide.FENCE_WITH_BLOCK : Guide.FENCE;
  }
}
