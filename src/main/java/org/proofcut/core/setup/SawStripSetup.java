package org.proofcut.core.setup;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.measure.Band;
import org.proofcut.core.measure.Length;
import org.proofcut.core.setup.CutAsked.Strips;
import org.proofcut.core.shop.SawBlade;
import org.proofcut.core.shop.TableSaw;

/**
 * Thin strips at the table saw. Between blade and fence a strip has no room for a push stick, and
 * jammed there it is thrown; so the board rides the fence and each strip falls on the free side.
 *
 * <p>What makes a strip's thickness {@code s} is a stop on the free side, {@code s} from the side
 * of the teeth that looks away from the fence: the board is slid against it, and the fence after
 * the board. The stop ends before the teeth, or the strip would jam between them. The board is
 * {@code W} wide, the kerf {@code b}: the fence stands at {@code W − s − b} from the near side of
 * the teeth for the first strip, and nearer by {@code s + b} for each that follows (geometry). A
 * board that is not straight or not quite {@code W} changes where the fence stands, but no strip.
 */
public final class SawStripSetup {

  private SawStripSetup() {}

  /** All strips of one thickness off one board, or why this saw and blade can't cut them. */
  public static Answer strips(Strips asked, TableSaw saw, SawBlade blade, Conditions conditions) {
    var limits = conditions.limits();
    var width = Worked.entered("width of the board", asked.work().acrossGuide().most());
    var kerf = conditions.cuts(blade);
    var stop =
        Setting.of(
            Setting.Role.STOP,
            "from the side of the teeth away from the fence to the stop, which ends before them",
            asked.thickness().as("teeth to the stop"),
            limits.settings().fineStep());
    var strip = stop.set();
    var fences = new ArrayList<Worked<Length>>();
    for (int i = 1; i <= asked.count(); i++) {
      fences.add(fence(i, width, strip, kerf));
    }
    var fence =
        Setting.of(
            Setting.Role.FENCE,
            "to the near side of the teeth, for the first strip, the board against the stop",
            fences.get(0),
            saw.fenceStep());
    var height =
        Setting.of(
            Setting.Role.HEIGHT,
            "from the table to the top tooth",
            SawSetup.above(
                asked.work(),
                "height of the blade",
                "height above the table",
                limits.saw().bladeAbove()),
            saw.heightStep());
    var size =
        new Measure(
            Measure.Dimension.SIZE,
            "the thickness of the strip, near both ends",
            asked.thickness(),
            Band.around(asked.thickness().value(), limits.settings().sizeTolerance().value()),
            RouterCuts.TWO_READINGS,
            Optional.of(Setting.Role.STOP),
            Optional.empty());
    var speed = Speeds.choose(saw, blade, limits);
    var left = fences.get(fences.size() - 1).value();
    var refusal =
        Refusal.firstOf(
            SawSetup.takes(saw, saw.blades(), blade, conditions),
            tooNarrowAtLast(asked, left, conditions),
            tooShort(asked, fences.get(0).value(), conditions),
            SawSetup.atMost(
                fences.get(0).value(),
                saw.fenceReach(),
                "The fence would stand",
                Refusal.Reason.OUT_OF_REACH,
                "Rip the board narrower first",
                conditions),
            RouterCuts.settable(size, strip.value(), conditions),
            SawSetup.atMost(
                height.set().value(),
                saw.greatestHeight(),
                "The blade would stand",
                Refusal.Reason.TOO_DEEP,
                "Use a larger saw",
                conditions),
            speed.refusal());
    if (refusal.isPresent()) {
      return refusal.get();
    }
    var passes = new ArrayList<Pass>();
    for (int i = 0; i < asked.count(); i++) {
      var at = fences.get(i).value();
      passes.add(
          new Pass(
                  i + 1,
                  false,
                  height.set(),
                  new Band(at, at.plus(kerf.value())),
                  Pass.Engages.BOTH_SIDES)
              .withFenceAt(fences.get(i)));
    }
    return new Setup(
            asked,
            saw,
            blade,
            Guide.FENCE,
            List.of(stop, fence, height),
            passes,
            speed.speed().orElseThrow(),
            Feed.INTO_THE_BLADE,
            List.of(size))
        .using(conditions.widthLearned(blade).map(List::of));
  }

  private static Worked<Length> fence(
      int number, Worked<Length> width, Worked<Length> strip, Worked<Length> kerf) {
    return Worked.called("fence for strip " + number)
        .by("width − " + number + " × (strip + kerf)")
        .with("width", width)
        .with("strip", strip)
        .with("kerf", kerf)
        .is(width.value().minus(strip.value().plus(kerf.value()).times(number)));
  }

  private static Optional<Refusal> tooNarrowAtLast(
      Strips asked, Length left, Conditions conditions) {
    var least = conditions.limits().saw().narrowestAtSaw().value();
    if (left.isAtLeast(least)) {
      return Optional.empty();
    }
    return Refusal.because(
        Refusal.Reason.WORK_TOO_SMALL,
        "After the last of "
            + asked.count()
            + " the board between blade and fence would be "
            + (left.isPositive() ? conditions.shown(left) + " wide" : "gone")
            + "; at least "
            + conditions.shown(least)
            + " takes a push stick",
        "Cut fewer strips of this board, or start with a wider one");
  }

  private static Optional<Refusal> tooShort(Strips asked, Length onFence, Conditions conditions) {
    var length = asked.work().alongGuide().least();
    var least = conditions.limits().saw().shortestAtSaw().value();
    if (length.isLessThan(least)) {
      return Refusal.because(
          Refusal.Reason.WORK_TOO_SMALL,
          "A board only " + conditions.shown(length) + " long is too short to rip along the fence",
          "Cut the strips off a longer board and crosscut them afterwards");
    }
    if (length.isLessThan(onFence)) {
      return Refusal.because(
          Refusal.Reason.END_TOO_SHORT_ON_FENCE,
          "A board wider than it is long would ride the fence with its short edge",
          "Rip the board narrower first, on the sled or along a track");
    }
    return Optional.empty();
  }
}
