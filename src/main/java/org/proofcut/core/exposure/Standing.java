package org.proofcut.core.exposure;

import java.math.BigDecimal;
import java.util.List;
import org.proofcut.core.evidence.Amount;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.measure.Length;

/**
 * A cabinet that stands free, and what pulls it over its front feet: it stands while {@code weight
 * · behind} is more than the sum of {@code load · before}, both from the front feet. Statics.
 *
 * @param weight of the cabinet with what it holds behind its front
 * @param behind how far its middle of gravity lies behind the front feet
 * @param loads what hangs or lies before them: doors, drawers, a hand
 */
public record Standing(Worked<Amount> weight, Worked<Length> behind, List<Load> loads) {

  /**
   * One thing before the front feet.
   *
   * @param before how far before them it pulls down
   */
  public record Load(Worked<Amount> weight, Worked<Length> before) {}

  public Standing {
    loads = List.copyOf(loads);
    for (var load : loads) {
      if (!load.weight().value().unit().equals(weight.value().unit())) {
        throw new IllegalArgumentException(
            load.weight().value() + " against " + weight.value() + ": two units");
      }
    }
  }

  /** What holds it less what pulls it over, a weight times a millimetre; it tips from zero down. */
  public Worked<Amount> margin() {
    var working =
        Worked.called("what is left before it tips")
            .by("weight × behind − sum of load × before")
            .with("weight", weight)
            .with("behind", behind);
    var left = moment(weight, behind);
    for (var load : loads) {
      working = working.with("load", load.weight()).with("before", load.before());
      left = left.subtract(moment(load.weight(), load.before()));
    }
    return working.is(new Amount(left, weight.value().unit() + " mm"));
  }

  public boolean tips() {
    return margin().value().value().signum() <= 0;
  }

  private static BigDecimal moment(Worked<Amount> weight, Worked<Length> arm) {
    return weight.value().value().multiply(arm.value().inMillimetres());
  }
}
