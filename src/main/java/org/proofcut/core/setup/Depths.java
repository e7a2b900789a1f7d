package org.proofcut.core.setup;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.Rounding;
import org.proofcut.core.shop.RouterCutter;

/**
 * How a router cutter gets down to a depth: in one pass where it may, else in equal ones and a
 * light last.
 */
final class Depths {

  private Depths() {}

  /** The least of half the diameter, the deepest pass allowed, and the cutting length. */
  static Worked<Length> deepestPass(RouterCutter cutter, SetupLimits limits) {
    var half = cutter.diameter().half();
    return Worked.called("deepest pass for this cutter")
        .by("the least of half the diameter, the deepest pass, and the cutting length")
        .with("half the diameter", Worked.entered("half the cutter's diameter", half))
        .with("the deepest pass", limits.router().deepestPass())
        .with("the cutting length", Worked.entered("cutting length", cutter.cuttingLength()))
        .from(limits.router().deepestPass().source())
        .is(half.min(limits.router().deepestPass().value()).min(cutter.cuttingLength()));
  }

  /** Why the depth can't be reached in passes that this cutter bears, if so. */
  static Optional<Refusal> tooCoarse(Setting depth, RouterCutter cutter, Conditions conditions) {
    var deepest = deepestPass(cutter, conditions.limits()).value();
    var light = depth.set().value().minus(beforeLast(depth, conditions.limits()));
    if (depth.set().value().isAtMost(deepest)
        || depth.step().isAtMost(deepest) && light.isAtMost(deepest)) {
      return Optional.empty();
    }
    return Refusal.because(
        Refusal.Reason.TOO_DEEP,
        cutter.name()
            + " bears at most "
            + conditions.caliper(deepest)
            + " a pass, less than the machine's depth can be shared into",
        "Use a larger cutter");
  }

  /** Where the light last pass starts, on the machine's steps. */
  private static Length beforeLast(Setting depth, SetupLimits limits) {
    return depth
        .set()
        .value()
        .minus(limits.router().lightPass().value())
        .roundedTo(depth.step(), Rounding.DOWN);
  }

  /** The depth reached after each pass, on the machine's steps; the last is the depth itself. */
  static List<Worked<Length>> reach(Setting setting, RouterCutter cutter, SetupLimits limits) {
    var depth = setting.set();
    var deepest = deepestPass(cutter, limits);
    if (depth.value().isAtMost(deepest.value())) {
      return List.of(depth);
    }
    var light = limits.router().lightPass();
    var rough = beforeLast(setting, limits);
    // Shared by whole steps of the deepest pass, so that rounding a depth never deepens a pass.
    var whole = deepest.value().roundedTo(setting.step(), Rounding.DOWN);
    long count = rough.dividedBy(whole, Rounding.UP);
    var reached = new ArrayList<Worked<Length>>();
    for (long i = 1; i <= count; i++) {
      var share = new Length(Math.multiplyExact(rough.picometres(), i) / count);
      reached.add(
          Worked.called("depth after pass " + i)
              .by(
                  "(depth − light last pass) shared over "
                      + count
                      + " passes, "
                      + i
                      + " of them, to a step of the machine downward")
              .with("depth", depth)
              .with("light last pass", light)
              .with("deepest pass", deepest)
              .is(share.roundedTo(setting.step(), Rounding.DOWN)));
    }
    reached.add(depth);
    return reached;
  }
}
