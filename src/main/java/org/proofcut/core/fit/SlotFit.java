package org.proofcut.core.fit;

import java.util.Optional;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.measure.Band;
import org.proofcut.core.measure.Length;
import org.proofcut.core.readings.Readings;

/**
 * The width a slot should have for what goes into it.
 *
 * @param entering readings of the part that goes in
 * @param target the width aimed at
 * @param accepted widths that leave room between the limits at both ends of the readings; empty
 *     where the entering part varies more than any one width can serve
 */
public record SlotFit(Readings entering, Worked<Length> target, Optional<Band> accepted) {

  /** The fit of a slot for glue. */
  public static SlotFit of(Readings entering, FitLimits limits) {
    var thinnest = entering.minimum();
    var thickest = entering.maximum();
    var target =
        Worked.called("width of the slot to aim at")
            .by("(thinnest + thickest) ÷ 2 + room to aim at")
            .with("thinnest", thinnest)
            .with("thickest", thickest)
            .with("room to aim at", limits.targetRoom())
            .from(limits.targetRoom().source())
            .is(entering.ends().middle().plus(limits.targetRoom().value()));
    var least = thickest.value().plus(limits.leastRoom().value());
    var most = thinnest.value().plus(limits.mostRoom().value());
    var accepted =
        least.isAtMost(most) ? Optional.of(new Band(least, most)) : Optional.<Band>empty();
    return new SlotFit(entering, target, accepted);
  }

  /** How much the entering part may vary before no single width serves. */
  public static Length mostSpread(FitLimits limits) {
    return limits.mostRoom().value().minus(limits.leastRoom().value());
  }

  /** The room that a slot of these widths leaves, from its narrowest with the thickest part on. */
  public Band room(Band slot) {
    return new Band(
        slot.least().minus(entering.ends().most()), slot.most().minus(entering.ends().least()));
  }
}
