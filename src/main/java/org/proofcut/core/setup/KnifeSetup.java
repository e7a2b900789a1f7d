package org.proofcut.core.setup;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.proofcut.core.evidence.Problem;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.feeding.ThicknessLimits;
import org.proofcut.core.feeding.Thicknessing;
import org.proofcut.core.feeding.Turning;
import org.proofcut.core.measure.Band;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.Rounding;
import org.proofcut.core.setup.CutAsked.Jointing;
import org.proofcut.core.setup.CutAsked.Planing;
import org.proofcut.core.shop.Jointer;
import org.proofcut.core.shop.KnifeMachine;
import org.proofcut.core.shop.Planer;

/**
 * Faces and edges over a jointer's knives, and thicknesses under a planer's.
 *
 * <p>At the jointer every pass takes what the infeed table stands below the outfeed table. What a
 * face is out of flat is shared evenly over as few passes as the deepest pass allows, so the tables
 * are set once; that many passes are the least, for the gap was measured at one place.
 *
 * <p>At the planer the height is set anew for each pass, on both faces in turn: {@link
 * Thicknessing} shares it out.
 *
 * <p>Which way the grain has to slope follows from the way the knives leave the wood. They run
 * against the feed, toward the trailing end: below the work they come out of its lower face, above
 * it out of its upper one. Fibres that come out the same way are cut off; fibres that run the other
 * way are split ahead of the knife, into the face. So the grain slopes down toward the trailing end
 * over a jointer and up under a planer (geometry).
 */
public final class KnifeSetup {

  private final KnifeMachine machine;
  private final Work work;
  private final Conditions conditions;
  private final SetupLimits limits;

  private KnifeSetup(KnifeMachine machine, Work work, Conditions conditions) {
    this.machine = machine;
    this.work = work;
    this.conditions = conditions;
    this.limits = conditions.limits();
  }

  /** A face or an edge over the jointer, or why it can't go. */
  public static Answer jointing(Jointing asked, Jointer jointer, Conditions conditions) {
    return new KnifeSetup(jointer, asked.work(), conditions).jointing(asked, jointer);
  }

  /** A thickness under the planer, or why it can't go. */
  public static Answer planing(Planing asked, Planer planer, Conditions conditions) {
    return new KnifeSetup(planer, asked.work(), conditions).planing(asked, planer);
  }

  private Answer jointing(Jointing asked, Jointer jointer) {
    var refused =
        Refusal.firstOf(
            stepTooCoarse(),
            asked.edge() ? Optional.empty() : tooWide(),
            tooShort(),
            tooLong(jointer),
            tooThin(work.thickness().least()));
    if (refused.isPresent()) {
      return refused.get();
    }
    var deepest = deepest();
    long count = asked.off().value().dividedBy(deepest.value(), Rounding.UP);
    var each =
        Worked.called("infeed table below the outfeed table")
            .by("what it is out ÷ " + count + " passes, to a step of the table upward")
            .with("what it is out", asked.off())
            .with("deepest pass", deepest)
            .with("step of the table", step())
            .is(share(asked.off().value(), count).roundedTo(jointer.step(), Rounding.UP));
    var leaves = asked.edge() ? work.acrossGuide().least() : work.thickness().least();
    var left = leaves.minus(each.value().times(count));
    if (left.isLessThan(thinnest().value())) {
      return new Refusal(
          Refusal.Reason.WORK_TOO_SMALL,
          "Of "
              + conditions.caliper(leaves)
              + " only "
              + conditions.caliper(left.max(Length.ZERO))
              + " would be left; at least "
              + conditions.caliper(thinnest().value())
              + " stays safe to hold",
          "Crosscut it into shorter pieces, each of which is less out, or take thicker stock");
    }
    var most = asked.edge() ? work.acrossGuide().most() : work.thickness().most();
    var passes = new ArrayList<Pass>();
    for (int i = 1; i <= count; i++) {
      passes.add(
          pass(
              i,
              each,
              asked.edge() ? "edge" : "hollow face",
              each.value(),
              most.minus(each.value().times(i))));
    }
    return setup(
        asked,
        Guide.FENCE,
        new Setting(
            Setting.Role.DEPTH,
            "infeed table below the outfeed table, for every pass",
            each,
            jointer.step()),
        passes,
        Feed.OVER_THE_KNIVES,
        List.of(),
        turning().fastestFeed(limits.knives().leastKnifeMarks()));
  }

  private Answer planing(Planing asked, Planer planer) {
    var start = Worked.measured("thickest reading of the stock", work.thickness().most());
    var refused =
        Refusal.firstOf(
            stepTooCoarse(),
            tooWide(),
            tooShort(),
            tooThick(start.value(), planer),
            tooThin(work.thickness().least()));
    if (refused.isPresent()) {
      return refused.get();
    }
    var last =
        Setting.of(
            Setting.Role.HEIGHT,
            "from the bed to the knives, for the last pass",
            asked.thickness().as("height of the knives"),
            planer.step());
    var measure = thickness(asked);
    var thicknessing =
        new Thicknessing(
            start,
            last.set(),
            asked.finished(),
            new ThicknessLimits(
                deepest(),
                limits.knives().lightKnifePass().value().isGreaterThan(deepest().value())
                    ? deepest()
                    : limits.knives().lightKnifePass(),
                shortest(),
                thinnest(),
                limits.knives().snipe(),
                step()));
    var wrong =
        Refusal.firstOf(
            thicknessing.problems(conditions.unit()).stream().findFirst().map(KnifeSetup::refusal),
            leavesHollows(last.set().value()),
            RouterCuts.settable(measure, last.set().value(), conditions),
            losesItsSnipe(thicknessing));
    if (wrong.isPresent()) {
      return wrong.get();
    }
    var passes = new ArrayList<Pass>();
    for (var pass : thicknessing.passes()) {
      passes.add(
          pass(
              pass.number(),
              pass.setTo(),
              pass.face() == Thicknessing.Face.FIRST ? "rough face up" : "flat face up",
              pass.takes(),
              pass.setTo().value()));
    }
    return setup(
        asked,
        Guide.ROLLERS,
        last,
        passes,
        Feed.UNDER_THE_KNIVES,
        List.of(measure),
        Worked.entered("feed of one minute", planer.feed()));
  }

  private Measure thickness(Planing asked) {
    return new Measure(
        Measure.Dimension.SIZE,
        "the thickness: in the middle and inside the snipe at both ends",
        asked.thickness(),
        Band.around(asked.thickness().value(), limits.knives().thicknessTolerance().value()),
        RouterCuts.THREE_READINGS,
        Optional.of(Setting.Role.HEIGHT),
        Optional.empty());
  }

  private Pass pass(int number, Worked<Length> set, String where, Length takes, Length leaves) {
    return new Pass(
            number,
            false,
            set,
            new Band(Length.ZERO, work.acrossGuide().most()),
            Pass.Engages.WHOLE_FACE)
        .planing(new Pass.Planed(where, takes, leaves));
  }

  private Setup setup(
      CutAsked asked,
      Guide guide,
      Setting setting,
      List<Pass> passes,
      Feed feed,
      List<Measure> measures,
      Worked<Length> fed) {
    var head = machine.head();
    return new Setup(
            asked,
            machine,
            head,
            guide,
            List.of(setting),
            passes,
            Speeds.choose(machine, head, limits).speed().orElseThrow(),
            feed,
            measures)
        .leaving(
            new KnifeMarks(
                fed,
                turning().markSpacing(fed),
                turning().marksPerInch(fed),
                limits.knives().leastKnifeMarks()));
  }

  private Turning turning() {
    return new Turning(machine.knives().perMinute(), machine.knives().count());
  }

  // ---- what the machine bears ----------------------------------------------------------------

  private Worked<Length> step() {
    return Worked.entered("step that can be set", machine.step());
  }

  /** Upward, in whole picometres: what is shared is never less than the whole. */
  private static Length share(Length all, long count) {
    return new Length(-Math.floorDiv(-all.picometres(), count));
  }

  private Worked<Length> deepest() {
    var manual = Worked.entered("deepest pass of the machine", machine.deepestPass());
    return Worked.called("deepest pass")
        .by("the lesser of both, to a step that can be set downward")
        .with("the machine's", manual)
        .with(limits.knives().deepestKnifePass())
        .with("step", step())
        .from(limits.knives().deepestKnifePass().source())
        .is(
            machine
                .deepestPass()
                .min(limits.knives().deepestKnifePass().value())
                .roundedTo(machine.step(), Rounding.DOWN));
  }

  private Worked<Length> shortest() {
    return larger(
        "shortest piece",
        Worked.entered("shortest piece of the machine", machine.shortestWork()),
        limits.knives().shortestAtKnives());
  }

  private Worked<Length> thinnest() {
    return larger(
        "thinnest piece",
        Worked.entered("thinnest piece of the machine", machine.thinnestWork()),
        limits.knives().thinnestAtKnives());
  }

  private static Worked<Length> larger(String name, Worked<Length> manual, Worked<Length> limit) {
    return Worked.called(name)
        .by("the larger of both")
        .with("the machine's", manual)
        .with(limit)
        .from(limit.source())
        .is(manual.value().max(limit.value()));
  }

  private Optional<Refusal> stepTooCoarse() {
    return when(
        !deepest().value().isPositive(),
        Refusal.Reason.STEP_TOO_COARSE,
        "Steps of "
            + conditions.caliper(machine.step())
            + " are coarser than the deepest pass, "
            + conditions.caliper(
                limits.knives().deepestKnifePass().value().min(machine.deepestPass())),
        "Set it by caliper, and enter the step that you reach so");
  }

  private Optional<Refusal> tooWide() {
    return when(
        work.acrossGuide().most().isGreaterThan(machine.widestWork()),
        Refusal.Reason.OUT_OF_REACH,
        "The piece is "
            + conditions.shown(work.acrossGuide().most())
            + " wide; the knives of "
            + machine.name()
            + " take "
            + conditions.shown(machine.widestWork()),
        "Rip it, work the pieces, and glue them together again");
  }

  private Optional<Refusal> tooShort() {
    return when(
        work.alongGuide().least().isLessThan(shortest().value()),
        Refusal.Reason.WORK_TOO_SMALL,
        "A piece only "
            + conditions.shown(work.alongGuide().least())
            + " long can tip into the opening or stick between the rollers; at least "
            + conditions.shown(shortest().value())
            + " is wanted",
        "Work a longer piece and crosscut it afterwards");
  }

  private Optional<Refusal> tooLong(Jointer jointer) {
    var tables = jointer.infeedLength().plus(jointer.outfeedLength());
    var longest = tables.times(limits.knives().tableLengths().value());
    return when(
        work.alongGuide().most().isGreaterThan(longest),
        Refusal.Reason.OUT_OF_REACH,
        "A piece "
            + conditions.shown(work.alongGuide().most())
            + " long is more than "
            + limits.knives().tableLengths().value()
            + " times as long as the tables, "
            + conditions.shown(tables)
            + ": they can't make it straight",
        "Crosscut it first, or rip it straight along a track");
  }

  private Optional<Refusal> tooThin(Length thickness) {
    return when(
        thickness.isLessThan(thinnest().value()),
        Refusal.Reason.WORK_TOO_SMALL,
        "Stock of "
            + conditions.caliper(thickness)
            + " bends and splits at the knives; at least "
            + conditions.caliper(thinnest().value())
            + " is wanted",
        "Saw the thin piece off a thicker one that is flat");
  }

  private Optional<Refusal> tooThick(Length thickness, Planer planer) {
    return when(
        thickness.isGreaterThan(planer.thickestWork()),
        Refusal.Reason.OUT_OF_REACH,
        "The piece is "
            + conditions.caliper(thickness)
            + " thick; "
            + planer.name()
            + " opens to "
            + conditions.shown(planer.thickestWork()),
        "Resaw it, or take thinner stock");
  }

  private Optional<Refusal> leavesHollows(Length planedTo) {
    var thinnest = work.thickness().least();
    return when(
        thinnest.isLessThan(planedTo),
        Refusal.Reason.WORK_TOO_SMALL,
        "At its thinnest the stock is "
            + conditions.caliper(thinnest)
            + ": planed to "
            + conditions.caliper(planedTo)
            + ", low places would stay",
        "Plane it thinner, or take thicker stock");
  }

  private Optional<Refusal> losesItsSnipe(Thicknessing thicknessing) {
    var rough = thicknessing.roughLength().value();
    var length = work.alongGuide().least();
    return when(
        length.isLessThan(rough),
        Refusal.Reason.WORK_TOO_SMALL,
        "The piece is "
            + conditions.shown(length)
            + " long; with "
            + conditions.shown(limits.knives().snipe().value())
            + " of snipe to cut off at each end it wants "
            + conditions.shown(rough),
        "Take a longer piece, or glue runners to both its edges that reach past its ends");
  }

  private static Refusal refusal(Problem problem) {
    return new Refusal(
        problem.where().equals("step")
            ? Refusal.Reason.STEP_TOO_COARSE
            : Refusal.Reason.WORK_TOO_SMALL,
        problem.what() + "; right is " + problem.allowed(),
        problem.doThis());
  }

  private static Optional<Refusal> when(
      boolean wrong, Refusal.Reason reason, String what, String instead) {
    return wrong ? Refusal.because(reason, what, instead) : Optional.empty();
  }
}
