package org.proofcut.core.habit;

import org.proofcut.core.evidence.Worked;
import org.proofcut.core.measure.Length;

/**
 * How far observations may lie from one another, and from the mark, before the maker is asked.
 *
 * @param usualWidthScatter how widths of one cutter differ from proof to proof in most shops, as a
 *     standard deviation
 * @param usualScaleScatter the same of what a scale was set to
 * @param farWidth a width this far from what is expected is never learned unasked
 * @param farScale the same of what a scale was set to
 * @param oddOneIn one proof in so many would be asked about though nothing was wrong with it
 */
public record HabitLimits(
    Worked<Length> usualWidthScatter,
    Worked<Length> usualScaleScatter,
    Worked<Length> farWidth,
    Worked<Length> farScale,
    Worked<Integer> oddOneIn) {

  Worked<Length> usualScatter(Trait trait) {
    return isWidth(trait) ? usualWidthScatter : usualScaleScatter;
  }

  Length far(Trait trait) {
    return (isWidth(trait) ? farWidth : farScale).value();
  }

  private static boolean isWidth(Trait trait) {
    return trait instanceof Trait.CutWidth || trait instanceof Trait.StackWider;
  }
}
