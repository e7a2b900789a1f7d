package org.proofcut.core.fit;

import java.util.Optional;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.measure.Band;
import org.proofcut.core.measure.Length;
import org.proofcut.core.readings.Readings;

/**
 * The width a rabbet should have. A rabbet is open on one side, so it has no room to judge: the cut
 * part ends proud of the covering one by nothing or by a little, and that little is trimmed.
 *
 * @param covering readings of the part that lies in the rabbet
 * @param target the width aimed at
 * @param accepted widths that leave the cut part flush or a little proud at both ends of the
 *     readings; empty where the covering part varies too much
 */
public record FlushFit(Readings covering, Worked<Length> target, Optional<Band> accepted) {

  /** The fit of a rabbet whose covering part lies {@code setIn} below the edge. */
  public static FlushFit of(Readings covering, Worked<Length> setIn, FitLimits limits) {
    var thickest = covering.maximum();
    var thinnest = covering.minimum();
    var least = thickest.value().plus(setIn.value());
    var most = thinnest.value().plus(setIn.value()).plus(limits.mostProud().value());
    var accepted =
        least.isAtMost(most) ? Optional.of(new Band(least, most)) : Optional.<Band>empty();
    var target =
        Worked.called("width of the rabbet to aim at")
            .by("(thinnest + thickest + most proud) ÷ 2 + set-in: between flush and most proud")
            .with("thinnest", thinnest)
            .with("thickest", thickest)
            .with("most proud", limits.mostProud())
            .with("set-in", setIn)
            .from(limits.mostProud().source())
            .is(least.plus(most).half());
    return new FlushFit(covering, target, accepted);
  }
}
