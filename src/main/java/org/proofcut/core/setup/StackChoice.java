package org.proofcut.core.setup;

import org.proofcut.core.evidence.Worked;
import org.proofcut.core.measure.Band;
import org.proofcut.core.measure.Length;
import org.proofcut.core.shop.StackedCutter;

/**
 * One stack that makes a slot; fence and height are the same with each.
 *
 * @param stack what is on the arbor
 * @param cuts the width that it cuts
 * @param room of what goes in, both sides together: at its thickest reading, and at its thinnest
 */
public record StackChoice(StackedCutter stack, Worked<Length> cuts, Band room) {

  static StackChoice of(StackedCutter stack, Band entering, Conditions conditions) {
    var cuts = conditions.cuts(stack);
    return new StackChoice(
        stack,
        cuts,
        new Band(cuts.value().minus(entering.most()), cuts.value().minus(entering.least())));
  }
}
