package org.proofcut.core.setup;

import java.util.ArrayList;
import java.util.List;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.Rounding;
import org.proofcut.core.shop.StraightCutter;

/**
 * How a router cutter gets down to a depth: in one pass where it may, else in equal ones and a
 * light last.
 */
final class Depths {

  private Depths() {}

  /** The least of half the diameter, the deepest pass allowed, and the cutting length. */
  static Worked<Length> deepestPass(StraightCutter cutter, SetupLimits limits) {
    var half = cutter.diameter().half();
    return Worked.called("deepest pass for this cutter")
        .by("the least of half the diameter, the deepest pass, and the cutting length")
        .with("half the diameter", Worked.entered("half the cutter's diameter", half))
        .with("the deepest pass", limits.deepestPass())
        .with("the cutting length", Worked.entered("cutting length", cutter.cuttingLength()))
        .from(limits.deepestPass().source())
        .is(half.min(limits.deepestPass().value()).min(cutter.cuttingLength()));
  }

  /** The depth reached after each pass; the last is the depth itself. */
  static List<Worked<Length>> reach(
      Worked<Length> depth, StraightCutter cutter, SetupLimits limits) {
    var deepest = deepestPass(cutter, limits);
    if (depth.value().isAtMost(deepest.value())) {
      return List.of(depth);
    }
    var light = limits.lightPass();
    var rough = depth.value().minus(light.value());
    long count = rough.dividedBy(deepest.value(), Rounding.UP);
    var reached = new ArrayList<Worked<Length>>();
    for (long i = 1; i <= count; i++) {
      var share = new Length(Math.multiplyExact(rough.picometres(), i) / count);
      reached.add(
          Worked.called("depth after pass " + i)
              .by("(depth − light last pass) shared over " + count + " passes, " + i + " of them")
              .with("depth", depth)
              .with("light last pass", light)
              .with("deepest pass", deepest)
              .is(share.roundedTo(Length.ofMicrometres(100), Rounding.DOWN)));
    }
    reached.add(depth);
    return reached;
  }
}
