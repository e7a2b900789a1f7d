package org.proofcut.core.setup;

import java.util.List;
import java.util.Optional;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.measure.Band;
import org.proofcut.core.measure.Length;
import org.proofcut.core.setup.CutAsked.Step;
import org.proofcut.core.shop.SawBlade;
import org.proofcut.core.shop.TableSaw;

/**
 * A step along an edge, a rabbet or the cheek of a tongue, in two cuts of a saw blade.
 *
 * <p>A set-up is one state of one machine, and the two cuts are two: other fence, other height, the
 * work turned. So each is a set-up of its own, with its own proof and its own marks, and what holds
 * them together is the joint that both are worked out from. One set-up of both would ask for the
 * second fence to be read back while the first still stands, and one proof would be lost with half
 * of what it proved.
 *
 * <p>The step is {@code w} wide from the edge, and {@code s} of the thickness stays beside it.
 *
 * <ul>
 *   <li><b>First, flat.</b> The face that is cut lies down, the edge rides the fence, which stands
 *       at {@code w} from the far side of the teeth: that side makes the wall, whatever the kerf.
 *       The blade is {@code t − s} high by the thinnest reading {@code t}, so it never cuts into
 *       what stays.
 *   <li><b>Second, on edge.</b> The face that stays is against the fence, or the carrier that rides
 *       it, {@code c} thick there; the fence stands at {@code s + c} from the near side of the
 *       teeth, so that {@code s} is the same in every piece and the spread of the sheet goes out
 *       with the waste. The blade is {@code w} high. The waste lies away from the fence and falls
 *       free; between blade and fence it would be thrown.
 * </ul>
 *
 * <p>The cuts meet where the first ends {@code t − s} deep inside the kerf of the second: as long
 * as a thicker piece is thicker by less than a kerf. Geometry.
 */
public final class SawStepSetup {

  private final Step asked;
  private final TableSaw saw;
  private final SawBlade blade;
  private final Conditions conditions;
  private final SetupLimits limits;

  private SawStepSetup(Step asked, TableSaw saw, SawBlade blade, Conditions conditions) {
    this.asked = asked;
    this.saw = saw;
    this.blade = blade;
    this.conditions = conditions;
    this.limits = conditions.limits();
  }

  /** One of the two cuts of a step, or why this saw and blade can't make it. */
  public static Answer cut(Step asked, TableSaw saw, SawBlade blade, Conditions conditions) {
    var step = new SawStepSetup(asked, saw, blade, conditions);
    return asked.onEdge() ? step.onEdge() : step.flat();
  }

  private Answer flat() {
    boolean onSled = rides().isPresent() && saw.sledStopReach().isPositive();
    var place =
        Setting.of(
            onSled ? Setting.Role.STOP : Setting.Role.FENCE,
            onSled
                ? "from the far side of the teeth to the stop on the sled"
                : "to the far side of the teeth",
            asked.width().as("wall of the step"),
            saw.fenceStep());
    var thinnest = Worked.measured("thinnest reading of the stock", thickness().least());
    var height =
        Setting.of(
            Setting.Role.HEIGHT,
            onSled ? "from the sled's base to the top tooth" : "from the table to the top tooth",
            Worked.called("height of the blade")
                .by("thinnest stock − what stays")
                .with("thinnest stock", thinnest)
                .with("what stays", asked.stays())
                .is(thinnest.value().minus(asked.stays().value())),
            saw.heightStep());
    var width = width(place.role());
    var depth = RouterCuts.depth(height.set(), limits, Setting.Role.HEIGHT);
    var wall = place.set().value();
    return setup(
        onSled ? Guide.SLED : Guide.FENCE,
        place,
        height,
        new Band(wall.minus(blade.kerf()), wall),
        List.of(width, depth),
        Refusal.firstOf(
            RouterCuts.settable(width, wall, conditions),
            onSled ? sledReach(wall) : rides(),
            SawSlotSetup.heldDown(onSled, conditions)));
  }

  private Answer onEdge() {
    var between =
        asked
            .carrier()
            .orElseGet(() -> Worked.entered("nothing between fence and work", Length.ZERO));
    var place =
        Setting.of(
            Setting.Role.FENCE,
            asked.carrier().isPresent()
                ? "to the near side of the teeth, the carrier between"
                : "to the near side of the teeth",
            Worked.called("fence to the blade")
                .by("what stays + what is between fence and work")
                .with("what stays", asked.stays())
                .with("what is between fence and work", between)
                .is(asked.stays().value().plus(between.value())),
            limits.settings().fineStep());
    var height =
        Setting.of(
            Setting.Role.HEIGHT,
            "from the table to the top tooth",
            asked.width().as("width of the step"),
            saw.heightStep());
    var stays = place.set().value().minus(between.value());
    var width = width(Setting.Role.HEIGHT);
    var size =
        new Measure(
            Measure.Dimension.SIZE,
            "the thickness that stays beside the step: both ends and the middle",
            asked.stays(),
            asked
                .acceptedStays()
                .orElseGet(
                    () ->
                        Band.around(
                            asked.stays().value(), limits.settings().depthTolerance().value())),
            RouterCuts.THREE_READINGS,
            Optional.of(Setting.Role.FENCE),
            Optional.empty());
    return setup(
        Guide.FENCE,
        place,
        height,
        new Band(stays, stays.plus(blade.kerf())),
        List.of(size, width),
        Refusal.firstOf(
            RouterCuts.settable(size, stays, conditions),
            RouterCuts.settable(width, height.set().value(), conditions),
            asked.carrier().isPresent() ? inCarrier() : standsOnFence(),
            reach(place.set().value())));
  }

  private Answer setup(
      Guide guide,
      Setting place,
      Setting height,
      Band takes,
      List<Measure> measures,
      Optional<Refusal> ofThisCut) {
    var speed = Speeds.choose(saw, blade, limits);
    var refusal =
        Refusal.firstOf(
            SawSetup.takes(saw, saw.blades(), blade, conditions),
            SawSlotSetup.knifeStays(saw),
            cutsMeet(),
            narrowerThanTheKerf(),
            RouterCuts.staysOnWork(Length.ZERO, asked.width().value(), asked.work(), conditions),
            ofThisCut,
            SawSlotSetup.deeperThanItReaches(saw, blade, height, conditions),
            speed.refusal());
    if (refusal.isPresent()) {
      return refusal.get();
    }
    return new Setup(
        asked,
        saw,
        blade,
        guide,
        List.of(place, height),
        List.of(new Pass(1, false, height.set(), takes, Pass.Engages.BOTH_SIDES)),
        speed.speed().orElseThrow(),
        Feed.INTO_THE_BLADE,
        measures);
  }

  private Measure width(Setting.Role by) {
    return new Measure(
        Measure.Dimension.WIDTH,
        "from the edge to the wall: both ends and the middle",
        asked.width(),
        Band.around(asked.width().value(), limits.settings().sizeTolerance().value()),
        RouterCuts.THREE_READINGS,
        Optional.of(by),
        Optional.empty());
  }

  private Band thickness() {
    return asked.work().thickness();
  }

  /** A piece thicker by a kerf would keep a fin between both cuts. */
  private Optional<Refusal> cutsMeet() {
    var depth = thickness().least().minus(asked.stays().value());
    var overlap = blade.kerf().minus(limits.router().leastOverlap().value());
    if (depth.isLessThan(saw.heightStep())) {
      return Refusal.because(
          Refusal.Reason.WORK_TOO_SMALL,
          "At its thinnest the stock is "
              + conditions.caliper(thickness().least())
              + ": beside what stays, "
              + conditions.caliper(asked.stays().value())
              + ", nothing is left to cut",
          "Take thicker stock, or let less of it stay");
    }
    if (thickness().extent().isLessThan(overlap)) {
      return Optional.empty();
    }
    return Refusal.because(
        Refusal.Reason.STEP_TOO_COARSE,
        "The stock varies by "
            + conditions.caliper(thickness().extent())
            + ": in the thickest piece the two cuts would not meet",
        "Sort the parts by thickness");
  }

  private Optional<Refusal> narrowerThanTheKerf() {
    if (asked.width().value().isGreaterThan(blade.kerf())) {
      return Optional.empty();
    }
    return Refusal.because(
        Refusal.Reason.CUTTER_TOO_WIDE,
        blade.name()
            + " cuts "
            + conditions.caliper(blade.kerf())
            + ", and the step is only "
            + conditions.caliper(asked.width().value())
            + " wide: the blade would cut the fence",
        "Rout it");
  }

  /** Why the edge can't ride the fence as it lies flat, if so. */
  private Optional<Refusal> rides() {
    return SawSlotSetup.onFence(asked.work(), asked.width().value(), saw, conditions);
  }

  private Optional<Refusal> sledReach(Length stop) {
    return SawSlotSetup.sledReach(asked.work(), stop, saw, conditions);
  }

  private Optional<Refusal> standsOnFence() {
    var shortest = asked.work().alongGuide().least();
    if (shortest.isLessThan(limits.saw().shortestAtSaw().value())) {
      return Refusal.because(
          Refusal.Reason.WORK_TOO_SMALL,
          "An edge of only "
              + conditions.shown(shortest)
              + " does not stand safely on the table; at least "
              + conditions.shown(limits.saw().shortestAtSaw().value())
              + " is wanted",
          "Clamp it in a carrier jig that rides the fence, or rout it");
    }
    return SawSlotSetup.heldDown(false, conditions);
  }

  private Optional<Refusal> inCarrier() {
    if (conditions.aids().contains("carrier-jig")) {
      return Optional.empty();
    }
    return Refusal.because(
        Refusal.Reason.AID_MISSING,
        "There is no carrier jig in the shop to clamp the work upright in",
        "Make one that rides the fence and enter it in the shop, or rout it");
  }

  private Optional<Refusal> reach(Length fence) {
    return SawSetup.atMost(
        fence,
        saw.fenceReach(),
        "The fence would stand",
        Refusal.Reason.OUT_OF_REACH,
        "Rout it",
        conditions);
  }
}
