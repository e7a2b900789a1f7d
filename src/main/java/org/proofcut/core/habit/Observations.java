package org.proofcut.core.habit;

import java.time.Instant;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.Rounding;
import org.proofcut.core.setup.CutAsked;
import org.proofcut.core.setup.Measure;
import org.proofcut.core.setup.Measure.Dimension;
import org.proofcut.core.setup.Setting;
import org.proofcut.core.setup.Setup;
import org.proofcut.core.shop.HandRouter;
import org.proofcut.core.shop.RouterTable;
import org.proofcut.core.shop.StackedCutter;
import org.proofcut.core.shop.TableSaw;

/**
 * What a proof cut tells of machine and cutter, proven or not. Follows from where each wall of the
 * cut comes from. Written below: {@code F} what the fence is set to, {@code s} the spacer strip (0
 * without one), {@code b} the width that the cutter really cuts, {@code o} what the fence's scale
 * leaves out, {@code a} the distance found, {@code w} the width found.
 *
 * <ul>
 *   <li><b>Slot on the router table.</b> The fence is set to the cutter's <em>nearest</em> edge, so
 *       that edge runs at {@code F + o} and the other at {@code F + o + b}. With the strip on, the
 *       work is held {@code s} farther off and the near wall comes to {@code F + o − s}; without it
 *       the far wall comes to {@code F + o + b}. So {@code w = b + s}, whatever the fence does:
 *       {@code b = w − s}. And {@code a = F + o − s}, whatever the cutter's width: {@code o = a + s
 *       − F}. A cutter wider than its mark moves the far wall alone, because the fence is measured
 *       to the edge that makes the near one. (Where it cuts wider because it runs out, the edge at
 *       rest is not where the wall comes; that half stays in {@code o}, which is one reason to keep
 *       {@code o} by cutter.)
 *   <li><b>Rabbet on the router table.</b> The fence is set to the <em>farthest</em> edge, and the
 *       last pass is without the strip: {@code w = F + o}. The cutter's width does not show. A
 *       tongue's length tells the same; its thickness nothing, as that of the scrap is not known.
 *   <li><b>By hand along a straightedge</b> at {@code S} from the reference edge. What decides is
 *       {@code g}, from the base edge to the cutting edge on its side. Straightedge before the cut:
 *       the near wall is cut without the strip, {@code a = S + g}. Beyond the cut: the far wall is,
 *       {@code a + w = S − g}; in a rabbet {@code a = 0}. The slot's width is {@code w = b + s}
 *       again.
 *   <li><b>Slot at the saw.</b> Fence, or stop of the sled, is set to the blade's <em>nearest</em>
 *       tooth, and the pack of strips holds the work off as the strip does on the table: {@code w =
 *       b + s} with b the kerf, {@code a = F + o − s}. A stacked cutter has no strip: what it cuts
 *       wider than its parts come to is {@code w − b}.
 *   <li><b>Rip, crosscut, track.</b> Fence, stop or track stand at the side of the blade that makes
 *       the piece: {@code size = F + o}. The kerf falls on the waste and does not show.
 *   <li><b>Mitre.</b> The blade turns about a point on the fence, so that the stop tells as in a
 *       crosscut: {@code size = F + o} between the long points.
 *   <li><b>Thickness under a planer.</b> The last pass is planed at the height as set: {@code size
 *       = H + o}.
 *   <li><b>Step on edge at the saw</b>, with a carrier {@code c} thick or none: the near side of
 *       the teeth makes what stays, {@code stays + c = F + o}, and the blade's height makes the
 *       width.
 *   <li><b>Depth.</b> The last pass is cut at the height or depth as set: {@code depth = H + o}.
 * </ul>
 *
 * <p>Only the first proof cut after a setting was made tells how its scale is off: one that was
 * corrected by a nudge keeps the rest of the error it had, and would count the same chance twice.
 */
public final class Observations {

  private final String proof;
  private final Setup setup;
  private final Instant at;
  private final Map<Dimension, Length> means = new EnumMap<>(Dimension.class);
  private final List<Observation> observations = new ArrayList<>();

  private Observations(String proof, Setup setup, Instant at) {
    this.proof = proof;
    this.setup = setup;
    this.at = at;
  }

  /**
   * The observations of one proof cut; none of a measure that lacks readings, or whose readings lie
   * farther apart than it accepts: there the work moved.
   *
   * @param proof id of the proof
   * @param setup as it was set for this cut
   * @param found the readings of each measure
   */
  public static List<Observation> of(
      String proof, Setup setup, Function<Measure, List<Length>> found, Instant at) {
    var these = new Observations(proof, setup, at);
    for (var measure : setup.measures()) {
      var readings = found.apply(measure);
      if (readings.size() >= measure.readings() && isEven(readings, measure)) {
        these.means.put(measure.dimension(), mean(readings));
      }
    }
    these.observe();
    return List.copyOf(these.observations);
  }

  private void observe() {
    var asked = setup.asked();
    // What is not derived above tells nothing of its guide: better unknown than wrong.
    if (asked instanceof CutAsked.Slot slot) {
      if (setup.machine() instanceof RouterTable) {
        slotOnTable();
      } else if (setup.machine() instanceof HandRouter router) {
        slotByHand(slot, router);
      } else if (setup.machine() instanceof TableSaw) {
        slotAtSaw();
      }
    } else if (asked instanceof CutAsked.Rabbet || asked instanceof CutAsked.Tongue) {
      rabbet();
    } else if (asked instanceof CutAsked.Parting) {
      parting();
    } else if (asked instanceof CutAsked.Holes) {
      holes();
    } else if (asked instanceof CutAsked.Mitre) {
      // The stop alone: where it is cut to a mark, no scale was read.
      found(Dimension.SIZE).ifPresent(size -> scale(Setting.Role.STOP, Trait.Datum.STOP, size));
    } else if (asked instanceof CutAsked.Step step && step.onEdge()) {
      var between = step.carrier().map(Worked::value).orElse(Length.ZERO);
      found(Dimension.SIZE)
          .ifPresent(
              stays ->
                  scale(
                      Setting.Role.FENCE, Trait.Datum.FENCE_TO_NEAREST_EDGE, stays.plus(between)));
      found(Dimension.WIDTH)
          .ifPresent(high -> scale(Setting.Role.HEIGHT, Trait.Datum.HEIGHT, high));
    } else if (asked instanceof CutAsked.Planing) {
      found(Dimension.SIZE).ifPresent(size -> scale(Setting.Role.HEIGHT, Trait.Datum.HEIGHT, size));
    }
    found(Dimension.DEPTH)
        // Of a seat only the head is measured, not how deep the cone is.
        .filter(depth -> !(asked instanceof CutAsked.Countersink))
        .ifPresent(
            depth -> {
              scale(Setting.Role.HEIGHT, Trait.Datum.HEIGHT, depth);
              scale(Setting.Role.DEPTH, Trait.Datum.DEPTH, depth);
            });
  }

  private void slotOnTable() {
    cutWidth();
    found(Dimension.DISTANCE)
        .ifPresent(
            near ->
                scale(Setting.Role.FENCE, Trait.Datum.FENCE_TO_NEAREST_EDGE, near.plus(strip())));
  }

  private void slotAtSaw() {
    cutWidth();
    found(Dimension.DISTANCE)
        .map(near -> near.plus(strip()))
        .ifPresent(
            place -> {
              scale(Setting.Role.FENCE, Trait.Datum.FENCE_TO_NEAREST_EDGE, place);
              scale(Setting.Role.STOP, Trait.Datum.STOP, place);
            });
  }

  private void slotByHand(CutAsked.Slot asked, HandRouter router) {
    cutWidth();
    var straightedge = set(Setting.Role.STRAIGHTEDGE).orElseThrow();
    var width = found(Dimension.WIDTH);
    var distance = found(Dimension.DISTANCE);
    boolean before = straightedge.isLessThan(asked.distance().value());
    if (before) {
      distance.ifPresent(near -> baseToEdge(router, near.minus(straightedge)));
    } else if (distance.isPresent() && width.isPresent()) {
      baseToEdge(router, straightedge.minus(distance.get().plus(width.get())));
    }
  }

  private void cutWidth() {
    var cutter = setup.cutter();
    var trait =
        cutter instanceof StackedCutter
            ? new Trait.StackWider(cutter.id())
            : new Trait.CutWidth(cutter.id());
    found(Dimension.WIDTH)
        .ifPresent(wide -> observe(trait, cutter.cutWidth(), wide.minus(strip())));
  }

  private void rabbet() {
    var width = found(Dimension.WIDTH);
    if (setup.machine() instanceof RouterTable) {
      width.ifPresent(far -> scale(Setting.Role.FENCE, Trait.Datum.FENCE_TO_FARTHEST_EDGE, far));
    } else if (setup.machine() instanceof HandRouter router) {
      var straightedge = set(Setting.Role.STRAIGHTEDGE).orElseThrow();
      width.ifPresent(far -> baseToEdge(router, straightedge.minus(far)));
    }
  }

  private void parting() {
    found(Dimension.SIZE)
        .ifPresent(
            size -> {
              scale(Setting.Role.FENCE, Trait.Datum.FENCE_TO_NEAREST_EDGE, size);
              scale(Setting.Role.STOP, Trait.Datum.STOP, size);
              scale(Setting.Role.MARK, Trait.Datum.TRACK, size);
            });
  }

  /** A caliper finds the near wall; the centre lies half of the diameter as found beyond it. */
  private void holes() {
    var half = found(Dimension.DIAMETER).map(Length::half);
    half.flatMap(radius -> found(Dimension.DISTANCE).map(radius::plus))
        .ifPresent(centre -> scale(Setting.Role.FENCE, Trait.Datum.FENCE_TO_CENTRE, centre));
    half.flatMap(radius -> found(Dimension.FROM_END).map(radius::plus))
        .ifPresent(centre -> scale(Setting.Role.STOP, Trait.Datum.STOP, centre));
  }

  /** What a scale that was set says, if this set-up has it. */
  private void scale(Setting.Role role, Trait.Datum datum, Length cameTo) {
    set(role)
        .ifPresent(
            set ->
                observe(
                    new Trait.ScaleOffset(setup.machine().id(), setup.cutter().id(), datum),
                    set,
                    cameTo));
  }

  private void baseToEdge(HandRouter router, Length found) {
    observe(
        new Trait.BaseToEdge(router.id(), setup.cutter().id()),
        router.baseEdgeToCentre().minus(setup.cutter().diameter().half()),
        found);
  }

  private void observe(Trait trait, Length set, Length found) {
    observations.add(new Observation(proof, trait, set, found, at));
  }

  private Length strip() {
    return set(Setting.Role.STRIP).orElse(Length.ZERO);
  }

  private Optional<Length> set(Setting.Role role) {
    return setup.setting(role).map(setting -> setting.read().value());
  }

  private Optional<Length> found(Dimension dimension) {
    return Optional.ofNullable(means.get(dimension));
  }

  private static Length mean(List<Length> readings) {
    return Length.mean(readings, Estimate.STEP, Rounding.NEAREST);
  }

  private static boolean isEven(List<Length> readings, Measure measure) {
    var least = readings.stream().min(Length::compareTo).orElseThrow();
    var most = readings.stream().max(Length::compareTo).orElseThrow();
    return most.minus(least).isAtMost(measure.accepted().extent());
  }
}
