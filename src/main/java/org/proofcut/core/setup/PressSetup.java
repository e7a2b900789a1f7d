package org.proofcut.core.setup;

import java.util.List;
import java.util.Optional;
import org.proofcut.core.measure.Length;
import org.proofcut.core.setup.CutAsked.Row;
import org.proofcut.core.shop.DrillPress;

/**
 * Holes at a drill press.
 *
 * <p>The fence stands as far behind the centre of the bit as the holes lie from the reference edge,
 * and the depth stop is counted from where the outer edges touch the face: point or spur then goes
 * deeper than the wall.
 */
final class PressSetup {

  private final Boring boring;
  private final DrillPress press;

  private PressSetup(Boring boring, DrillPress press) {
    this.boring = boring;
    this.press = press;
  }

  /** The set-up, or why this press and bit can't make it. */
  static Answer of(Boring boring, DrillPress press) {
    return new PressSetup(boring, press).answer();
  }

  private Answer answer() {
    var row = boring.bored.row();
    var fence =
        Setting.of(
            Setting.Role.FENCE,
            "to the centre of the bit: half its diameter beyond its near side",
            row.fromEdge().as("fence to the centre of the bit"),
            press.fenceStep());
    var place = alongPress(row);
    var depth =
        Setting.of(
            Setting.Role.DEPTH,
            "of the stop, counted from its reading " + boring.task.zeroedOn(),
            boring.task.depth(),
            press.depthStep());
    var measures = boring.measures(fence, place);
    var speed = Speeds.choose(press, boring.bit, boring.bored.material(), boring.limits);
    var refusal =
        Refusal.firstOf(
            boring.otherHole(),
            boring.turns(press, press.largestBit()),
            boring.staysInside(),
            fenceReaches(),
            boring.goesDeepEnough(depth.set().value()),
            strokeReaches(depth.set().value(), boring.task.below().value()),
            standsUnder(),
            heldAtPress(),
            boring.settable(measures, fence, place, depth.set().value()),
            speed.refusal());
    if (refusal.isPresent()) {
      return refusal.get();
    }
    return new Setup(
        boring.task.asked(),
        press,
        boring.bit,
        Guide.FENCE,
        List.of(fence, place, depth),
        boring.plunges(depth.set()),
        speed.speed().orElseThrow(),
        Feed.DOWN_INTO_THE_WORK,
        measures);
  }

  /** A stop for a few holes within its reach; else marks, that nothing adds up along. */
  private Setting alongPress(Row row) {
    boolean stop =
        row.last().value().isAtMost(press.stopReach())
            && row.along().size() <= boring.limits.drill().mostStops().value();
    if (!stop) {
      return boring.mark();
    }
    return Setting.of(
        Setting.Role.STOP,
        row.along().size() == 1
            ? "on the fence, to the centre of the bit; the reference end lies against it"
            : "for the first hole, to the centre of the bit; moved for each further one",
        row.first().as("stop to the centre of the bit"),
        boring.limits.settings().markStep());
  }

  private Optional<Refusal> fenceReaches() {
    var wanted = boring.bored.row().fromEdge().value();
    return wanted.isAtMost(press.fenceReach())
        ? Optional.empty()
        : Refusal.because(
            Refusal.Reason.OUT_OF_REACH,
            "The fence would stand "
                + boring.conditions.shown(wanted)
                + " behind the bit; this press has room for "
                + boring.conditions.shown(press.fenceReach()),
            "Take the other edge as reference, or bore it with a drill in the hands");
  }

  private Optional<Refusal> strokeReaches(Length depth, Length below) {
    // The tip starts above the face.
    var stroke = depth.plus(below);
    return stroke.isAtMost(press.travel())
        ? Optional.empty()
        : Refusal.because(
            Refusal.Reason.TOO_DEEP,
            "A stroke of "
                + boring.conditions.shown(stroke)
                + " is wanted, and the press has "
                + boring.conditions.shown(press.travel()),
            "Use a press with a longer stroke, or bore it with a drill in the hands");
  }

  private Optional<Refusal> standsUnder() {
    var high = boring.work.thickness().most().plus(boring.bit.length()).plus(boring.bit.point());
    return high.isAtMost(press.underChuck())
        ? Optional.empty()
        : Refusal.because(
            Refusal.Reason.OUT_OF_REACH,
            "Work and bit together stand "
                + boring.conditions.shown(high)
                + " high, and there is "
                + boring.conditions.shown(press.underChuck())
                + " from table to chuck",
            "Bore it with a drill in the hands");
  }

  /** A short piece has no end that fence or column would stop. */
  private Optional<Refusal> heldAtPress() {
    var shortest = boring.work.alongGuide().least();
    return shortest.isAtLeast(boring.limits.drill().shortestAtDrill().value())
            || boring.conditions.aids().contains("clamps")
        ? Optional.empty()
        : Refusal.because(
            Refusal.Reason.WORK_TOO_SMALL,
            "A piece only "
                + boring.conditions.shown(shortest)
                + " long can't be held by hand against a bit that grabs, and the shop has no clamps"
                + " entered",
            "Enter clamps in the shop, or bore it in a piece of "
                + boring.conditions.shown(boring.limits.drill().shortestAtDrill().value())
                + " or more and cut that afterwards");
  }
}
