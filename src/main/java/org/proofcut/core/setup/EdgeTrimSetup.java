package org.proofcut.core.setup;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.measure.Band;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.Rounding;
import org.proofcut.core.setup.CutAsked.EdgeTrim;
import org.proofcut.core.setup.Pass.Engages;
import org.proofcut.core.shop.RouterTable;
import org.proofcut.core.shop.StraightCutter;

/**
 * An edge trimmed straight on a router table, as on a jointer: the outfeed half of the fence stands
 * forward of the infeed half by what a pass takes, with a shim behind it, and in line with the
 * cutting edges where they reach out farthest. New wood lies only away from the fence. The piece is
 * never between cutter and fence, where its far edge would be cut with the feed. Common practice.
 *
 * <p>What is to come off is shared evenly over {@code ceil(all of it / most of a pass)} passes, on
 * the steps that a shim is calipered to, rounded down: the piece is never left under its size.
 */
public final class EdgeTrimSetup {

  private EdgeTrimSetup() {}

  /** The set-up, or why this table and cutter can't make it. */
  public static Answer table(
      EdgeTrim asked, RouterTable table, StraightCutter cutter, Conditions conditions) {
    var limits = conditions.limits();
    var off =
        Worked.called("what comes off in all")
            .by("size now − size wanted")
            .with("size now", asked.now())
            .with("size wanted", asked.size())
            .is(asked.now().value().minus(asked.size().value()));
    var step = limits.settings().fineStep().value();
    long count = off.value().dividedBy(limits.router().mostTrim().value(), Rounding.UP);
    var take =
        Worked.called("what a pass takes")
            .by("what comes off in all ÷ passes, to a step that can be set, downward")
            .with("what comes off in all", off)
            .with(
                "passes", Worked.given("passes", (int) count, limits.router().mostTrim().source()))
            .is(new Length(off.value().picometres() / count).roundedTo(step, Rounding.DOWN));
    var shim =
        Setting.of(
            Setting.Role.SHIM,
            "behind the outfeed half of the fence, its thickness by caliper",
            take.as("thickness of the shim"),
            step);
    var fence =
        Setting.of(
            Setting.Role.FENCE,
            "infeed half to the farthest cutting edge: a straightedge along the outfeed half"
                + " touches that edge",
            take.as("infeed half of the fence to the farthest cutting edge"),
            step);
    var height =
        Setting.of(
            Setting.Role.HEIGHT,
            "from the table to the top of the cutter",
            Worked.called("height of the cutter")
                .by("thickest reading + what the edges reach above it")
                .with(
                    "thickest reading",
                    Worked.measured("thickest reading", asked.work().thickness().most()))
                .with("what the edges reach above it", limits.router().leastOverlap())
                .is(asked.work().thickness().most().plus(limits.router().leastOverlap().value())),
            table.heightStep());
    var speed = Speeds.choose(table, cutter, limits);
    var refusal =
        Refusal.firstOf(
            enough(off.value(), take.value(), conditions),
            RouterCuts.fits(cutter, table.largestCutter(), conditions),
            RouterCuts.longEnough(cutter, height.set().value(), conditions),
            RouterTableSetup.supports(asked.work(), conditions),
            EdgeProfileSetup.wideEnough(asked.work(), conditions),
            speed.refusal());
    if (refusal.isPresent()) {
      return refusal.get();
    }
    var far = fence.set().value();
    var takes = new Band(far.minus(cutter.diameter()), far);
    var passes = new ArrayList<Pass>();
    for (int i = 1; i <= count; i++) {
      passes.add(new Pass(i, false, height.set(), takes, Engages.AWAY_FROM_GUIDE));
    }
    return new Setup(
        asked,
        table,
        cutter,
        RouterTableSetup.guide(asked.work(), conditions),
        List.of(shim, fence, height),
        passes,
        speed.speed().orElseThrow(),
        Feed.RIGHT_TO_LEFT,
        List.of(taken(take, (int) count, limits)));
  }

  private static Measure taken(Worked<Length> take, int passes, SetupLimits limits) {
    // The tolerance of the size is shared by the passes, but never under what a caliper tells.
    var each =
        new Length(limits.settings().sizeTolerance().value().picometres() / passes)
            .max(limits.settings().fineStep().value());
    return new Measure(
        Measure.Dimension.WIDTH,
        "what one pass takes off: width before less width after, both ends and the middle",
        take,
        Band.around(take.value(), each),
        RouterCuts.THREE_READINGS,
        Optional.of(Setting.Role.FENCE),
        Optional.empty());
  }

  private static Optional<Refusal> enough(Length off, Length take, Conditions conditions) {
    var least = conditions.limits().settings().leastStrip().value();
    if (take.isAtLeast(least)) {
      return Optional.empty();
    }
    return Refusal.because(
        Refusal.Reason.STRIP_TOO_THIN,
        conditions.caliper(off)
            + " is to come off; a shim of at least "
            + conditions.caliper(least)
            + " stays where it is",
        "Leave it, or take it off with a plane");
  }
}
