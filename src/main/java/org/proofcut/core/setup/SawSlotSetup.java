package org.proofcut.core.setup;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.measure.Band;
import org.proofcut.core.measure.Length;
import org.proofcut.core.setup.CutAsked.Slot;
import org.proofcut.core.setup.Pass.Engages;
import org.proofcut.core.shop.Cutter;
import org.proofcut.core.shop.SawBlade;
import org.proofcut.core.shop.StackedCutter;
import org.proofcut.core.shop.TableSaw;

/**
 * Slots on a table saw: cut face down, the reference edge against the fence or against the stop of
 * the sled, never with both.
 *
 * <p>With a blade of kerf {@code b} a slot of width {@code w} at distance {@code a} takes several
 * passes: fence or stop stands at {@code a + s} from the nearest tooth, and between it and the work
 * lies a pack of strips that is {@code s = w − b} thick together. All strips in, the blade takes
 * {@code a … a + b}; with one strip less in each pass it moves over, and without any it takes
 * {@code a + s … a + w}. Fence or stop never moves, so one proof holds for all passes, and only the
 * pack as a whole makes the width. A strip is no thicker than the kerf less what passes overlap, so
 * that no fin is left; how thick each is matters no more than that. Geometry; that fence and gauge
 * never guide at once, nor in a blind cut, is ours and stricter than common practice.
 *
 * <p>A stacked cutter makes the slot in one pass, where saw, guarding and local rule allow it.
 */
public final class SawSlotSetup {

  private final Slot asked;
  private final TableSaw saw;
  private final Conditions conditions;
  private final SetupLimits limits;

  private SawSlotSetup(Slot asked, TableSaw saw, Conditions conditions) {
    this.asked = asked;
    this.saw = saw;
    this.conditions = conditions;
    this.limits = conditions.limits();
  }

  /** A slot in several passes with one blade, or why this saw and blade can't make it. */
  public static Answer passes(Slot asked, TableSaw saw, SawBlade blade, Conditions conditions) {
    return new SawSlotSetup(asked, saw, conditions).passes(blade);
  }

  /**
   * A slot in one pass with the best stack that a stacked cutter makes for it, or why there is
   * none.
   */
  public static Answer stacked(
      Slot asked, TableSaw saw, StackedCutter owned, Conditions conditions) {
    var allowed = new SawSlotSetup(asked, saw, conditions).mayStack(owned);
    if (allowed.isPresent()) {
      return allowed.get();
    }
    return stacks(asked, saw, owned, conditions).stream()
        .findFirst()
        .map(stack -> withStack(asked, saw, stack, conditions))
        .orElseGet(() -> noStack(asked, owned, conditions));
  }

  /**
   * The best few stacks of what is owned that come to a slot's width; of those that fit on the
   * saw's arbor, where any does.
   */
  public static List<StackedCutter> stacks(
      Slot asked, TableSaw saw, StackedCutter owned, Conditions conditions) {
    // Parts are chosen by what they come to, and the stack cuts wider by what proofs have shown.
    var wider = wider(owned, conditions);
    var width = asked.width().value().minus(wider);
    var accepted =
        new Band(asked.accepted().least().minus(wider), asked.accepted().most().minus(wider));
    var widest = saw.widestStack().orElse(accepted.most()).min(accepted.most());
    var onArbor =
        widest.isLessThan(accepted.least())
            ? List.<StackedCutter>of()
            : Stacks.best(width, new Band(accepted.least(), widest), owned, Stacks.FEW, conditions);
    return onArbor.isEmpty()
        ? Stacks.best(width, accepted, owned, Stacks.FEW, conditions)
        : onArbor;
  }

  /**
   * The same, with the room that each leaves.
   *
   * @param entering thinnest and thickest reading of what goes in
   */
  public static List<StackChoice> choices(
      Slot asked, TableSaw saw, StackedCutter owned, Band entering, Conditions conditions) {
    return stacks(asked, saw, owned, conditions).stream()
        .map(stack -> StackChoice.of(stack, entering, conditions))
        .toList();
  }

  /** By how much a stack cuts wider than its parts come to; zero until a proof has shown it. */
  private static Length wider(StackedCutter stack, Conditions conditions) {
    return conditions.cuts(stack).value().minus(stack.cutWidth());
  }

  /** A slot in one pass with a stack as it is on the arbor, or why this saw can't make it so. */
  public static Answer withStack(
      Slot asked, TableSaw saw, StackedCutter stack, Conditions conditions) {
    return new SawSlotSetup(asked, saw, conditions).withStack(stack);
  }

  private Answer passes(SawBlade blade) {
    var widening =
        RouterCuts.widening(
            asked.width(),
            asked.accepted(),
            blade,
            "kerf",
            conditions.cuts(blade),
            limits.saw().mostPassesAtSaw().value(),
            conditions);
    return slot(
        blade,
        widening,
        Refusal.firstOf(
            SawSetup.takes(saw, saw.blades(), blade, conditions),
            knifeStays(saw),
            widening.refusal().map(SawSlotSetup::routOrStack)));
  }

  /** What helps a blade that is too narrow is not a wider blade. */
  private static Refusal routOrStack(Refusal refusal) {
    return refusal.reason() == Refusal.Reason.CUTTER_TOO_NARROW
        ? new Refusal(
            refusal.reason(),
            refusal.what(),
            "Rout it, or use a stacked cutter where manual, guarding and local rule allow one")
        : refusal;
  }

  private Answer withStack(StackedCutter stack) {
    return slot(
        stack,
        RouterCuts.Widening.none(),
        Refusal.firstOf(mayStack(stack), ofTheWidth(stack), onTheArbor(stack)));
  }

  private Optional<Refusal> ofTheWidth(StackedCutter stack) {
    var accepted = asked.accepted();
    var cuts = conditions.cuts(stack).value();
    if (accepted.contains(cuts)) {
      return Optional.empty();
    }
    return Refusal.because(
        Refusal.Reason.NO_STACK_FITS,
        stack.name()
            + " cuts "
            + conditions.caliper(cuts)
            + "; the slot should be "
            + widths(accepted, conditions),
        "Take the chippers and shims of another stack");
  }

  private static String widths(Band accepted, Conditions conditions) {
    return conditions.caliper(accepted.least()) + " to " + conditions.caliper(accepted.most());
  }

  private Answer slot(Cutter cutter, RouterCuts.Widening widening, Optional<Refusal> atOnce) {
    boolean onSled = onFence(widening).isPresent() && saw.sledStopReach().isPositive();
    var place = place(widening, onSled);
    var height =
        Setting.of(
            Setting.Role.HEIGHT,
            onSled ? "from the sled's base to the top tooth" : "from the table to the top tooth",
            asked.depth().as("height of the blade"),
            saw.heightStep());
    var strip = widening.thickness();
    var made = cuts(cutter).plus(strip);
    var near = place.set().value();
    var width =
        RouterCuts.width(asked.width(), asked.accepted(), widening.strip().map(Setting::role));
    var depth = RouterCuts.depth(asked.depth(), limits, Setting.Role.HEIGHT);
    // What the work rides stays: a thicker pack sets the first pass, and the near wall, nearer.
    var distance =
        RouterCuts.distance(asked.distance(), limits, place.role(), widening.strip().isPresent());
    var speed = Speeds.choose(saw, cutter, limits);
    var refusal =
        Refusal.firstOf(
            atOnce,
            widening.refusal(),
            RouterCuts.goesThrough(height, asked.work(), conditions),
            deeperThanItReaches(saw, cutter, height, conditions),
            RouterCuts.staysOnWork(asked.distance().value(), made, asked.work(), conditions),
            leavesAWall(near.minus(strip)),
            RouterCuts.settable(width, made, conditions),
            RouterCuts.settable(depth, height.set().value(), conditions),
            RouterCuts.settable(distance, near.minus(strip), conditions),
            onSled ? sledReach(near) : onFence(widening),
            heldDown(onSled, conditions),
            speed.refusal());
    if (refusal.isPresent()) {
      return refusal.get();
    }
    var settings = new ArrayList<Setting>();
    settings.add(place);
    widening.strip().ifPresent(settings::add);
    settings.add(height);
    return new Setup(
            asked,
            saw,
            cutter,
            onSled ? Guide.SLED : Guide.FENCE,
            settings,
            passes(cutter, widening, near, height),
            speed.speed().orElseThrow(),
            Feed.INTO_THE_BLADE,
            List.of(width, depth, distance))
        .using(conditions.widthLearned(cutter).map(List::of));
  }

  private Length cuts(Cutter cutter) {
    return conditions.cuts(cutter).value();
  }

  private List<Pass> passes(
      Cutter cutter, RouterCuts.Widening widening, Length near, Setting height) {
    var passes = new ArrayList<Pass>();
    for (int in = widening.strips(); in >= 0; in--) {
      var from = near.minus(RouterCuts.share(widening.thickness(), in, widening.strips()));
      passes.add(
          new Pass(
                  passes.size() + 1,
                  in > 0,
                  height.set(),
                  new Band(from, from.plus(cuts(cutter))),
                  passes.isEmpty() ? Engages.BOTH_SIDES : Engages.AWAY_FROM_GUIDE)
              .ofPack(widening.strips() > 1 ? Optional.of(in) : Optional.empty()));
    }
    return passes;
  }

  private Setting place(RouterCuts.Widening widening, boolean onSled) {
    var name = onSled ? "nearest tooth to the stop" : "fence to the nearest tooth";
    var exact =
        widening
            .strip()
            .map(
                strip ->
                    Worked.called(name)
                        .by("distance from the reference edge + spacer strip")
                        .with("distance from the reference edge", asked.distance())
                        .with("spacer strip", strip.set())
                        .is(asked.distance().value().plus(strip.set().value())))
            .orElse(asked.distance().as(name));
    return Setting.of(
        onSled ? Setting.Role.STOP : Setting.Role.FENCE,
        (onSled ? "from the nearest tooth to the stop on the sled" : "to the nearest tooth")
            + (widening.strip().isPresent() ? ", for every pass" : ""),
        exact,
        saw.fenceStep());
  }

  /**
   * The riving knife keeps a cut open behind the blade, and a guard that it carries has to come off
   * in a blind cut: only a knife below the top tooth can stay.
   */
  static Optional<Refusal> knifeStays(TableSaw saw) {
    if (saw.knifeStaysInBlindCuts()) {
      return Optional.empty();
    }
    return Refusal.because(
        Refusal.Reason.NOT_ALLOWED,
        "In a cut that does not come out above, "
            + saw.name()
            + " has no riving knife entered that can stay: one below the top tooth",
        "Rout it, or fit such a knife and enter it in the shop");
  }

  private Optional<Refusal> mayStack(StackedCutter cutter) {
    if (saw.widestStack().isPresent()) {
      return Optional.empty();
    }
    return Refusal.because(
        Refusal.Reason.NOT_ALLOWED,
        saw.name()
            + " is not entered as one that may take a stacked cutter; "
            + cutter.name()
            + " stays off it",
        "Rout it; enter a stack only where manual, guarding and local rule allow it");
  }

  private Optional<Refusal> onTheArbor(StackedCutter stack) {
    var widest = saw.widestStack().orElse(Length.ZERO);
    if (stack.cutWidth().isGreaterThan(widest)) {
      return Refusal.because(
          Refusal.Reason.CUTTER_DOES_NOT_FIT_MACHINE,
          "A stack of "
              + conditions.caliper(stack.cutWidth())
              + " is too wide: the arbor of "
              + saw.name()
              + " takes "
              + conditions.shown(widest)
              + " with its nut fully on",
          "Rout it, or widen a narrower slot");
    }
    if (stack.diameter().isGreaterThan(saw.blades().most())) {
      return Refusal.because(
          Refusal.Reason.CUTTER_DOES_NOT_FIT_MACHINE,
          stack.name()
              + " does not fit: "
              + saw.name()
              + " takes up to "
              + conditions.shown(saw.blades().most()),
          "Use a smaller stacked cutter");
    }
    return Optional.empty();
  }

  private static Refusal noStack(Slot asked, StackedCutter owned, Conditions conditions) {
    var accepted = asked.accepted();
    var wider = wider(owned, conditions);
    var blades = owned.outerKerf().times(2).plus(wider);
    var all = owned.cutWidth().plus(wider);
    var wanted = widths(accepted, conditions);
    if (blades.isGreaterThan(accepted.most())) {
      return new Refusal(
          Refusal.Reason.CUTTER_TOO_WIDE,
          "The two outer blades of "
              + owned.name()
              + " alone cut "
              + conditions.caliper(blades)
              + "; the slot may be "
              + wanted,
          "Use a single blade in several passes, or rout it");
    }
    if (all.isLessThan(accepted.least())) {
      return new Refusal(
          Refusal.Reason.CUTTER_TOO_NARROW,
          "All of "
              + owned.name()
              + " together cuts "
              + conditions.caliper(all)
              + "; the slot should be "
              + wanted,
          "Add a chipper, or rout it");
    }
    var any = new Band(owned.outerKerf().times(2), owned.cutWidth());
    var nearest =
        Stacks.best(asked.width().value().minus(wider), any, owned, 1, conditions)
            .get(0)
            .cutWidth()
            .plus(wider);
    return new Refusal(
        Refusal.Reason.NO_STACK_FITS,
        "Of "
            + owned.name()
            + " no stack comes to "
            + wanted
            + "; the nearest cuts "
            + conditions.caliper(nearest),
        nearest.isLessThan(accepted.least())
            ? "Add a shim of "
                + conditions.caliper(accepted.least().minus(nearest))
                + " to "
                + conditions.caliper(accepted.most().minus(nearest))
            : "Add thinner shims or chippers");
  }

  /** Geometry: a smaller cutter stands lower by half of what its diameter is less. */
  static Optional<Refusal> deeperThanItReaches(
      TableSaw saw, Cutter cutter, Setting height, Conditions conditions) {
    var less = saw.blades().most().minus(cutter.diameter()).max(Length.ZERO).half();
    var reach = saw.greatestHeight().minus(less);
    if (height.set().value().isAtMost(reach)) {
      return Optional.empty();
    }
    return Refusal.because(
        Refusal.Reason.TOO_DEEP,
        "The cut is "
            + conditions.shown(height.set().value())
            + " deep; on "
            + saw.name()
            + " "
            + cutter.name()
            + " reaches "
            + conditions.shown(reach.max(Length.ZERO)),
        "Rout it, or make the housing shallower");
  }

  /** A slot may lie so far off; one nearer the edge than that could run out at it. */
  private Optional<Refusal> leavesAWall(Length nearWall) {
    if (nearWall.isGreaterThan(limits.settings().distanceTolerance().value())) {
      return Optional.empty();
    }
    return Refusal.because(
        Refusal.Reason.OUT_OF_REACH,
        "Set on its steps the slot would begin "
            + conditions.caliper(nearWall)
            + " from the edge, and could run out at it",
        "Cut it as a rabbet, or farther from the edge");
  }

  /** Why so short an edge must not ride the saw's fence, if so. */
  static Optional<Refusal> longEnough(Work work, Conditions conditions) {
    return OnFence.longEnough(
        work,
        conditions.limits().saw().shortestAtSaw().value(),
        "Cut it on a longer piece, on the sled with the fence off the table, or rout it",
        conditions);
  }

  /** Why the work can't ride the fence, if so. */
  private Optional<Refusal> onFence(RouterCuts.Widening widening) {
    return onFence(asked.work(), place(widening, false).set().value(), saw, conditions);
  }

  /** The same for any blind cut, with the fence so far from the blade. */
  static Optional<Refusal> onFence(Work work, Length fence, TableSaw saw, Conditions conditions) {
    var tooShort = longEnough(work, conditions);
    if (tooShort.isPresent()) {
      return tooShort;
    }
    if (OnFence.tips(work, conditions)) {
      return OnFence.doesNotGuide(
          work, "Cut it on the sled with the fence off the table, or rout it", conditions);
    }
    return SawSetup.atMost(
        fence,
        saw.fenceReach(),
        "The fence would stand",
        Refusal.Reason.OUT_OF_REACH,
        "Cut it on the sled with the fence off the table, or rout it",
        conditions);
  }

  private Optional<Refusal> sledReach(Length stop) {
    return sledReach(asked.work(), stop, saw, conditions);
  }

  static Optional<Refusal> sledReach(Work work, Length stop, TableSaw saw, Conditions conditions) {
    return Refusal.firstOf(
        SawSetup.atMost(
            stop,
            saw.sledStopReach(),
            "The stop on the sled would stand",
            Refusal.Reason.OUT_OF_REACH,
            "Rout it",
            conditions),
        SawSetup.atMost(
            work.alongGuide().most(),
            saw.sledDepth(),
            "Along the cut the work is",
            Refusal.Reason.OUT_OF_REACH,
            "Rout it",
            conditions));
  }

  /**
   * Without the usual guard a comb or a jig holds the work: 29 CFR 1910.213(a)(15), from memory.
   */
  static Optional<Refusal> heldDown(boolean onSled, Conditions conditions) {
    return onSled && conditions.aids().contains("sled") ? Optional.empty() : pressed(conditions);
  }

  /** The same, where only a featherboard will do. */
  static Optional<Refusal> pressed(Conditions conditions) {
    if (conditions.aids().contains("featherboard")) {
      return Optional.empty();
    }
    return Refusal.because(
        Refusal.Reason.AID_MISSING,
        "The usual guard can't stay in a cut that does not come out above, and nothing but hands"
            + " would hold the work down",
        "Rout it, or make a featherboard and enter it in the shop");
  }
}
