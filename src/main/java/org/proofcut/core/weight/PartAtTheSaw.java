package org.proofcut.core.weight;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.exposure.Lift.NotCovered;
import org.proofcut.core.exposure.LiftLimits;
import org.proofcut.core.exposure.LiftTable.Grip;
import org.proofcut.core.exposure.LiftTable.Span;
import org.proofcut.core.exposure.LiftTask;
import org.proofcut.core.exposure.LiftTask.Reach;
import org.proofcut.core.measure.Angle;
import org.proofcut.core.measure.Length;
import org.proofcut.core.part.Part;

/**
 * A part laid on the table of the saw by one person, as such lifts usually go.
 *
 * @param isTooLarge whether it is too large to be held steady: then there is no figure
 */
public record PartAtTheSaw(Part part, Weight weight, boolean isTooLarge, LiftTask lift) {

  public static PartAtTheSaw of(Part part, Densities densities, LiftLimits limits) {
    var weight = Weight.of(part, densities);
    boolean tooLarge = limits.isTooLarge(longest(part), deep(part));
    var notCovered = new ArrayList<NotCovered>();
    if (tooLarge) {
      notCovered.add(NotCovered.UNSTABLE);
    }
    var reach = new Reach(limits.sawHandsOut(), Worked.entered("straight ahead", Angle.ZERO));
    return new PartAtTheSaw(
        part,
        weight,
        tooLarge,
        new LiftTask(
            weight.most(),
            reach,
            limits.sawHandsFrom(),
            Optional.of(reach),
            limits.sawHandsTo(),
            often(limits.sawLiftsPerMinute()),
            Span.ONE_HOUR,
            Grip.POOR,
            List.copyOf(notCovered)));
  }

  private static Worked<BigDecimal> often(Worked<Integer> lifts) {
    return Worked.given(lifts.name(), BigDecimal.valueOf(lifts.value()), lifts.source());
  }

  /** The longer side of its face. */
  public static Length longest(Part part) {
    return part.length().value().max(part.width().value());
  }

  /** The shorter side of its face, which reaches outward from the person. */
  public static Length deep(Part part) {
    return part.length().value().min(part.width().value());
  }
}
