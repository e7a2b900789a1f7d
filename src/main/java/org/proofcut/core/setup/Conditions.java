package org.proofcut.core.setup;

import java.util.List;
import java.util.Optional;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.measure.Angle;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.LengthUnit;
import org.proofcut.core.measure.display.Degrees;
import org.proofcut.core.measure.display.Scale;
import org.proofcut.core.shop.Cutter;
import org.proofcut.core.shop.SawBlade;
import org.proofcut.core.shop.StackedCutter;

/**
 * What holds for every set-up of a job.
 *
 * @param aids ids of the kinds of work aid at hand
 * @param unit the unit that words are written in; no figure depends on it
 * @param learned what proof cuts have taught
 */
public record Conditions(SetupLimits limits, List<String> aids, LengthUnit unit, Learned learned) {

  /** Where nothing was learned yet. */
  public Conditions(SetupLimits limits, List<String> aids, LengthUnit unit) {
    this(limits, aids, unit, Learned.NOTHING);
  }

  public Conditions {
    aids = List.copyOf(aids);
  }

  String shown(Length length) {
    return Scale.rule(unit).show(length).text();
  }

  String caliper(Length length) {
    return Scale.caliper(unit).show(length).text();
  }

  String degrees(Angle angle) {
    return Degrees.text(angle, 2);
  }

  /** The width that a cutter cuts in one pass: as proof cuts have found it, else its mark. */
  Worked<Length> cuts(Cutter cutter) {
    return widthLearned(cutter).map(Taught::use).orElseGet(() -> marked(cutter));
  }

  /** What was learned of a cutter's width; empty where its mark is used. */
  Optional<Taught> widthLearned(Cutter cutter) {
    return learned.width(cutter, marked(cutter));
  }

  /** The width that a cutter is marked with; of a stack, what its parts come to. */
  static Worked<Length> marked(Cutter cutter) {
    return Worked.entered(as(cutter) + cutter.name(), cutter.cutWidth());
  }

  private static String as(Cutter cutter) {
    if (cutter instanceof SawBlade) {
      return "kerf of ";
    }
    return cutter instanceof StackedCutter ? "width of " : "marked diameter of ";
  }
}
