package org.proofcut.core.weight;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.proofcut.core.evidence.Citation;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.exposure.Lift;
import org.proofcut.core.exposure.Lift.NotCovered;
import org.proofcut.core.exposure.LiftLimits;
import org.proofcut.core.exposure.LiftTable.Grip;
import org.proofcut.core.exposure.LiftTable.Span;
import org.proofcut.core.exposure.LiftTask;
import org.proofcut.core.exposure.LiftTask.Reach;
import org.proofcut.core.measure.Angle;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.LengthUnit;
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
    return new PartAtTheSaw(
        part,
        weight,
        tooLarge,
        new LiftTask(
            weight.most(),
            reach(part, limits, limits.sawHandsFrom()),
            limits.sawHandsFrom(),
            Optional.of(reach(part, limits, limits.sawHandsTo())),
            limits.sawHandsTo(),
            often(limits.sawLiftsPerMinute()),
            Span.ONE_HOUR,
            Grip.POOR,
            List.copyOf(notCovered)));
  }

  /** As far out as is taken for granted, or further, where the part is deep. */
  private static Reach reach(Part part, LiftLimits limits, Worked<Length> high) {
    var deep = Worked.given("shorter side of the part", deep(part), Citation.GEOMETRY);
    var estimated = Lift.estimatedOut(deep, high, LengthUnit.MILLIMETRE);
    var out = limits.sawHandsOut();
    return new Reach(
        estimated.value().isGreaterThan(out.value()) ? estimated : out,
        Worked.entered("straight ahead", Angle.ZERO));
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
