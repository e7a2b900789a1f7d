package org.proofcut.core.setup;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.measure.Band;
import org.proofcut.core.measure.Length;
import org.proofcut.core.setup.CutAsked.Tongue;
import org.proofcut.core.setup.Measure.Dimension;
import org.proofcut.core.setup.Pass.Engages;
import org.proofcut.core.setup.Pass.Lies;
import org.proofcut.core.shop.RouterTable;
import org.proofcut.core.shop.StraightCutter;

/**
 * A tongue along an edge on the router table: two rabbets of one height, from both faces, the work
 * flat on the table and its edge on the fence.
 *
 * <p>Lying flat it can't tip, and the cutter works under it, partly buried in the fence, so that
 * nothing is ever between the two. On edge a tongue could be set from the face on the fence,
 * whatever the thickness; but the cheek away from the fence would be cut by the side of the cutter
 * that looks at it: a climb cut, the tongue between both. Never used.
 *
 * <p>With the cutter {@code h} over the table each cheek goes {@code h} into the face that lies
 * down, so in a piece of thickness {@code T} the tongue is {@code T − 2·h}, in its middle, and
 * {@code h = (T − tongue) ÷ 2}. A cutter raised by δ makes it thinner by 2δ, and a piece thicker by
 * δ gets a tongue thicker by δ: what the pieces vary by is taken from what the fit allows, and if
 * that is too little they are sorted. (At the saw a tongue is set from one face, whatever the
 * thickness: {@link SawStepSetup}.) Geometry.
 *
 * <p>How thick the scrap was nobody asks, so its tongue tells nothing of the scale of height; its
 * length tells of the fence as a rabbet's width does.
 */
public final class TongueSetup {

  /** Both cheeks move when the cutter is raised, and the tongue gets thinner. */
  private static final int CHEEKS = -2;

  private final Tongue asked;
  private final RouterTable table;
  private final StraightCutter cutter;
  private final Conditions conditions;
  private final SetupLimits limits;

  private TongueSetup(
      Tongue asked, RouterTable table, StraightCutter cutter, Conditions conditions) {
    this.asked = asked;
    this.table = table;
    this.cutter = cutter;
    this.conditions = conditions;
    this.limits = conditions.limits();
  }

  /** The set-up, or why this table and cutter can't make it. */
  public static Answer table(
      Tongue asked, RouterTable table, StraightCutter cutter, Conditions conditions) {
    return new TongueSetup(asked, table, cutter, conditions).onTable();
  }

  private Answer onTable() {
    var weak = Refusal.firstOf(thinTongue(), noCheek());
    if (weak.isPresent()) {
      return weak.get();
    }
    var fence = RouterTableSetup.toFarthestEdge(asked.length(), limits);
    var height = height();
    var length = length();
    var far = fence.set().value();
    var speed = Speeds.choose(table, cutter, limits);
    var refusal =
        Refusal.firstOf(
            RouterCuts.fits(cutter, table.largestCutter(), conditions),
            tooNarrow(),
            tooUneven(height.set().value()),
            RouterCuts.longEnough(cutter, height.set().value(), conditions),
            Depths.tooCoarse(height, cutter, conditions),
            RouterCuts.settable(length, far, conditions),
            hands(),
            RouterCuts.staysOnWork(Length.ZERO, far, asked.work(), conditions),
            RouterTableSetup.supports(asked.work(), conditions),
            speed.refusal());
    if (refusal.isPresent()) {
      return refusal.get();
    }
    var takes = new Band(far.minus(conditions.cuts(cutter).value()), far);
    var passes = new ArrayList<Pass>();
    // Both faces at each height: so the height is never set twice, and both cheeks are alike.
    for (var reached : Depths.reach(height, cutter, limits)) {
      for (var lies : List.of(Lies.MARKED_FACE_DOWN, Lies.OTHER_FACE_DOWN)) {
        passes.add(
            new Pass(passes.size() + 1, false, reached, takes, Engages.AWAY_FROM_GUIDE)
                .turnedTo(lies));
      }
    }
    return new Setup(
        asked,
        table,
        cutter,
        RouterTableSetup.guide(asked.work(), conditions),
        List.of(height, fence),
        passes,
        speed.speed().orElseThrow(),
        Feed.RIGHT_TO_LEFT,
        List.of(thickness(), length));
  }

  private Setting height() {
    var middle =
        Worked.measured(
            "thickness, half way between both readings", asked.work().thickness().middle());
    return Setting.of(
        Setting.Role.HEIGHT,
        "from the table to the top of the cutter",
        Worked.called("height of the cutter")
            .by("(thickness − tongue) ÷ 2")
            .with("thickness", middle)
            .with("tongue", asked.thickness())
            .is(middle.value().minus(asked.thickness().value()).half()),
        table.heightStep());
  }

  private Measure thickness() {
    return new Measure(
            Dimension.SIZE,
            "the thickness of the tongue: both ends and the middle",
            asked.thickness(),
            asked.accepted(),
            RouterCuts.THREE_READINGS,
            Optional.of(Setting.Role.HEIGHT),
            Optional.empty())
        .movingTimes(CHEEKS);
  }

  private Measure length() {
    return new Measure(
        Dimension.WIDTH,
        "from the edge of the tongue to the shoulder: both ends and the middle",
        asked.length(),
        Band.around(asked.length().value(), limits.settings().sizeTolerance().value()),
        RouterCuts.THREE_READINGS,
        Optional.of(Setting.Role.FENCE),
        Optional.empty());
  }

  /** From the tongue in the thinnest piece to that in the thickest. */
  private Band made(Length height) {
    var thickness = asked.work().thickness();
    return new Band(
        thickness.least().minus(height.times(2)), thickness.most().minus(height.times(2)));
  }

  // ---- limits --------------------------------------------------------------------------------

  private Optional<Refusal> thinTongue() {
    var least = limits.router().leastTongue().value();
    if (asked.thickness().value().isAtLeast(least)) {
      return Optional.empty();
    }
    return Refusal.because(
        Refusal.Reason.WORK_TOO_SMALL,
        "A tongue of "
            + conditions.caliper(asked.thickness().value())
            + " breaks, and rides the fence badly above the cutter; at least "
            + conditions.caliper(least)
            + " is wanted",
        "Make slot and tongue thicker, or groove both edges and put a loose strip in");
  }

  private Optional<Refusal> noCheek() {
    var cheek = asked.work().thickness().least().minus(asked.thickness().value()).half();
    if (cheek.isAtLeast(table.heightStep())) {
      return Optional.empty();
    }
    return Refusal.because(
        Refusal.Reason.WORK_TOO_SMALL,
        "At its thinnest the stock is "
            + conditions.caliper(asked.work().thickness().least())
            + ": beside a tongue of "
            + conditions.caliper(asked.thickness().value())
            + " nothing is left to cut",
        "Take thicker stock, or let the whole edge into the slot");
  }

  private Optional<Refusal> tooNarrow() {
    var least = asked.length().value().plus(limits.router().leastOverlap().value());
    if (cutter.diameter().isAtLeast(least)) {
      return Optional.empty();
    }
    return Refusal.because(
        Refusal.Reason.CUTTER_TOO_NARROW,
        cutter.name()
            + " does not cover a tongue of "
            + conditions.shown(asked.length().value())
            + " and run off its edge",
        "Use a cutter of " + conditions.shown(least) + " or more, or cut the tongue at the saw");
  }

  private Optional<Refusal> tooUneven(Length height) {
    var made = made(height);
    if (asked.accepted().contains(made.least()) && asked.accepted().contains(made.most())) {
      return Optional.empty();
    }
    boolean varies = made.extent().isGreaterThan(asked.accepted().extent());
    return Refusal.because(
        Refusal.Reason.STEP_TOO_COARSE,
        "The tongue follows the thickness of each piece: it would come to "
            + conditions.caliper(made.least())
            + " in the thinnest and "
            + conditions.caliper(made.most())
            + " in the thickest, and may be "
            + conditions.caliper(asked.accepted().least())
            + " to "
            + conditions.caliper(asked.accepted().most()),
        (varies
                ? "Sort the pieces by thickness, or plane them alike first"
                : "Use a table that can be set more finely")
            + "; at the saw a tongue is set from one face, whatever the thickness");
  }

  private Optional<Refusal> hands() {
    var narrowest = asked.work().acrossGuide().least();
    var least = limits.router().narrowestAtRouter().value();
    if (narrowest.isAtLeast(least)) {
      return Optional.empty();
    }
    return Refusal.because(
        Refusal.Reason.WORK_TOO_SMALL,
        "A piece "
            + conditions.shown(narrowest)
            + " wide brings the hands to the cutter; at least "
            + conditions.shown(least)
            + " is wanted",
        "Cut the tongue on a wider board and rip it afterwards");
  }
}
