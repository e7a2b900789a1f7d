package org.proofcut.core.setup;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.measure.Band;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.Rounding;
import org.proofcut.core.setup.CutAsked.CentredGroove;
import org.proofcut.core.setup.Pass.Engages;
import org.proofcut.core.setup.Pass.Lies;
import org.proofcut.core.shop.Cutter;
import org.proofcut.core.shop.Machine;
import org.proofcut.core.shop.RouterTable;
import org.proofcut.core.shop.SawBlade;
import org.proofcut.core.shop.StraightCutter;
import org.proofcut.core.shop.TableSaw;

/**
 * A groove in the middle of an edge, cut with both faces against the fence in turn. The work stands
 * on the edge; whatever the fence is set to, the groove lies in the middle of each piece.
 *
 * <p>With the cutter's near side {@code n} from the fence and a cutter of {@code b}, a piece of
 * thickness {@code T} is cut from {@code n} to {@code n + b}, and turned over from {@code T − n −
 * b} to {@code T − n}: together {@code w = 2·(n + b) − T}. So {@code n = (T + w)/2 − b}, moving the
 * fence by δ moves the width by 2δ, and a piece that is thicker by δ gets a groove narrower by δ.
 * Geometry.
 *
 * <p>Both cuts meet if {@code 2b − w} is at least what passes overlap. On a router table the pass
 * with the other face at the fence may find new wood only away from the fence, which is so while
 * {@code w > b}; a fence that stands too near by {@code (w − b)/2} would turn it into a climb cut.
 * So {@code b} stays under {@code w} by twice what a fence may be off. (At {@code n = (T − w)/2}
 * the groove would be the same and that pass a climb cut: never used.)
 */
public final class CentredGrooveSetup {

  /** Both walls move when the fence does. */
  private static final int WALLS = 2;

  private final CentredGroove asked;
  private final Cutter cutter;
  private final Worked<Length> cuts;
  private final Conditions conditions;
  private final SetupLimits limits;
  private final Setting fence;

  private CentredGrooveSetup(
      CentredGroove asked, Cutter cutter, Worked<Length> cuts, String edge, Conditions conditions) {
    this.asked = asked;
    this.cutter = cutter;
    this.cuts = cuts;
    this.conditions = conditions;
    this.limits = conditions.limits();
    var thickness =
        Worked.measured(
            "thickness, half way between both readings", asked.work().thickness().middle());
    var exact =
        Worked.called("fence to the " + edge)
            .by("(thickness + width) ÷ 2 − width of one pass")
            .with("thickness", thickness)
            .with("width", asked.width())
            .with("width of one pass", cuts)
            .is(thickness.value().plus(asked.width().value()).half().minus(cuts.value()));
    this.fence =
        Setting.of(
            Setting.Role.FENCE,
            "to the " + edge + ", by caliper",
            exact,
            limits.settings().fineStep());
  }

  /** The set-up on a router table, or why this table and cutter can't make it. */
  public static Answer table(
      CentredGroove asked, RouterTable table, StraightCutter cutter, Conditions conditions) {
    return new CentredGrooveSetup(
            asked, cutter, conditions.cuts(cutter), "nearest cutting edge", conditions)
        .onTable(table, cutter);
  }

  /**
   * The set-up at a table saw, where its knife can stay, or why this saw and blade can't make it.
   */
  public static Answer saw(
      CentredGroove asked, TableSaw saw, SawBlade blade, Conditions conditions) {
    return new CentredGrooveSetup(asked, blade, conditions.cuts(blade), "nearest tooth", conditions)
        .atSaw(saw, blade);
  }

  private Answer onTable(RouterTable table, StraightCutter straight) {
    var height =
        height(
            "height of the cutter", "from the table to the top of the cutter", table.heightStep());
    var speed = Speeds.choose(table, cutter, limits);
    var refusal =
        Refusal.firstOf(
            RouterCuts.fits(straight, table.largestCutter(), conditions),
            widthInReach(),
            tooDeep(height),
            tooShort(straight, height),
            Depths.tooCoarse(height, straight, conditions),
            settable(height),
            RouterTableSetup.ridesFence(asked.work(), conditions),
            speed.refusal());
    return refusal
        .<Answer>map(why -> why)
        .orElseGet(
            () ->
                setup(
                    table,
                    height,
                    Depths.reach(height, straight, limits),
                    speed,
                    Feed.RIGHT_TO_LEFT,
                    conditions.widthLearned(straight).map(List::of)));
  }

  private Answer atSaw(TableSaw saw, SawBlade blade) {
    var height = height("height of the blade", "from the table to the top tooth", saw.heightStep());
    var speed = Speeds.choose(saw, cutter, limits);
    var refusal =
        Refusal.firstOf(
            SawSetup.takes(saw, saw.blades(), blade, conditions),
            SawSlotSetup.knifeStays(saw),
            widthInReach(),
            tooDeep(height),
            SawSlotSetup.deeperThanItReaches(saw, blade, height, conditions),
            settable(height),
            SawSlotSetup.longEnough(asked.work(), conditions),
            SawSlotSetup.pressed(conditions),
            speed.refusal());
    return refusal
        .<Answer>map(why -> why)
        .orElseGet(
            () ->
                setup(
                    saw,
                    height,
                    List.of(height.set()),
                    speed,
                    Feed.INTO_THE_BLADE,
                    conditions.widthLearned(blade).map(List::of)));
  }

  private Setting height(String name, String from, Length step) {
    return Setting.of(Setting.Role.HEIGHT, from, asked.depth().as(name), step);
  }

  private Setup setup(
      Machine machine,
      Setting height,
      List<Worked<Length>> depths,
      Speeds.Choice speed,
      Feed feed,
      Optional<List<Taught>> learned) {
    var near = fence.set().value();
    var first = new Band(near, near.plus(cuts.value()));
    var thickness = asked.work().thickness().middle();
    // Seen from the marked face, the cut made from the other one is its mirror image.
    var mirrored = new Band(thickness.minus(first.most()), thickness.minus(first.least()));
    var passes = new ArrayList<Pass>();
    // Both faces at each height: so the height is never set twice, and a proof holds for both.
    for (var depth : depths) {
      passes.add(
          new Pass(passes.size() + 1, false, depth, first, Engages.BOTH_SIDES)
              .turnedTo(Lies.MARKED_FACE_AT_FENCE));
      passes.add(
          new Pass(passes.size() + 1, false, depth, mirrored, Engages.AWAY_FROM_GUIDE)
              .turnedTo(Lies.OTHER_FACE_AT_FENCE));
    }
    return new Setup(
            asked,
            machine,
            cutter,
            Guide.FENCE,
            List.of(fence, height),
            passes,
            speed.speed().orElseThrow(),
            feed,
            List.of(width(), sides(), RouterCuts.depth(asked.depth(), limits, Setting.Role.HEIGHT)))
        .using(learned);
  }

  /** Thicker pieces get a narrower groove, so both ends of the readings count. */
  private Band made() {
    var walls = fence.set().value().plus(cuts.value()).times(WALLS);
    var thickness = asked.work().thickness();
    return new Band(walls.minus(thickness.most()), walls.minus(thickness.least()));
  }

  private Measure width() {
    return new Measure(
            Measure.Dimension.WIDTH,
            "across the groove: both ends and the middle of the scrap",
            asked.width(),
            asked.accepted(),
            RouterCuts.THREE_READINGS,
            Optional.of(Setting.Role.FENCE),
            Optional.empty())
        .movingTimes(WALLS);
  }

  /** The wood on each side: alike where both faces lay flat on the fence. */
  private Measure sides() {
    var thickness =
        Worked.measured(
            "thickness, half way between both readings", asked.work().thickness().middle());
    var side =
        Worked.called("wood on each side of the groove")
            .by("(thickness − width) ÷ 2")
            .with("thickness", thickness)
            .with("width", asked.width())
            .is(thickness.value().minus(asked.width().value()).half());
    return new Measure(
        Measure.Dimension.DISTANCE,
        "the wood beside the groove, both ends of the marked side, then both ends of the other",
        side,
        Band.around(side.value(), limits.settings().distanceTolerance().value()),
        2 * RouterCuts.TWO_READINGS,
        Optional.empty(),
        Optional.of(Setting.Role.FENCE));
  }

  private Optional<Refusal> widthInReach() {
    var width = asked.width().value();
    var one = cuts.value();
    var off = limits.settings().distanceTolerance().value().times(WALLS);
    if (one.isGreaterThan(width.minus(off))) {
      return Refusal.because(
          Refusal.Reason.CUTTER_TOO_WIDE,
          cutter.name()
              + " cuts "
              + conditions.caliper(one)
              + ", too near to the groove's "
              + conditions.caliper(width)
              + ": with the fence a little off, the second face's pass would be a climb cut",
          "Use a cutter of " + conditions.shown(width.minus(off)) + " or less");
    }
    var least = width.plus(limits.router().leastOverlap().value()).half();
    if (one.isLessThan(least)) {
      return Refusal.because(
          Refusal.Reason.CUTTER_TOO_NARROW,
          cutter.name()
              + " can't make a width of "
              + conditions.caliper(width)
              + " in two passes that overlap",
          "Use a cutter of "
              + conditions.shown(least.roundedTo(limits.settings().markStep().value(), Rounding.UP))
              + " or more");
    }
    return Optional.empty();
  }

  private Optional<Refusal> tooDeep(Setting height) {
    var standing = asked.standing().least();
    if (height.set().value().isAtMost(standing.half())) {
      return thinSides();
    }
    return Refusal.because(
        Refusal.Reason.TOO_DEEP,
        "A groove "
            + conditions.shown(height.set().value())
            + " deep takes more than half of a piece that stands "
            + conditions.shown(standing)
            + " high, and leaves too little to hold",
        "Make the groove shallower, or groove a wider piece and rip it afterwards");
  }

  private Optional<Refusal> thinSides() {
    var thinnest = asked.work().thickness().least();
    var side = thinnest.minus(asked.width().value()).half();
    if (side.isAtLeast(limits.router().leastCheek().value())) {
      return Optional.empty();
    }
    return Refusal.because(
        Refusal.Reason.WORK_TOO_SMALL,
        "Only "
            + conditions.caliper(side)
            + " of wood would stay on each side of the groove; at least "
            + conditions.caliper(limits.router().leastCheek().value())
            + " is wanted",
        "Use thicker wood, or a thinner panel");
  }

  private Optional<Refusal> tooShort(StraightCutter straight, Setting height) {
    return RouterCuts.longEnough(straight, height.set().value(), conditions);
  }

  private Optional<Refusal> settable(Setting height) {
    var made = made();
    return Refusal.firstOf(
        tooUneven(made),
        RouterCuts.settable(
            RouterCuts.depth(asked.depth(), limits, Setting.Role.HEIGHT),
            height.set().value(),
            conditions));
  }

  private Optional<Refusal> tooUneven(Band made) {
    if (asked.accepted().contains(made.least()) && asked.accepted().contains(made.most())) {
      return Optional.empty();
    }
    return Refusal.because(
        Refusal.Reason.STEP_TOO_COARSE,
        "The width follows the thickness of each piece: it would come to "
            + conditions.caliper(made.least())
            + " in the thickest and "
            + conditions.caliper(made.most())
            + " in the thinnest, and may be "
            + conditions.caliper(asked.accepted().least())
            + " to "
            + conditions.caliper(asked.accepted().most()),
        "Sort the pieces by thickness, or plane them alike first");
  }
}
