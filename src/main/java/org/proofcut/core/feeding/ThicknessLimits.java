package org.proofcut.core.feeding;

import java.util.List;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.measure.Length;

/**
 * What a machine with knives in a turning head may be asked for.
 *
 * @param deepest most that one pass may take
 * @param light what the last pass on each face takes
 * @param shortest shortest piece it may be fed
 * @param thinnest thinnest it may leave
 * @param snipe length at each end that comes out too thin and is cut off afterwards; may be zero
 * @param step that its thickness can be set on
 */
public record ThicknessLimits(
    Worked<Length> deepest,
    Worked<Length> light,
    Worked<Length> shortest,
    Worked<Length> thinnest,
    Worked<Length> snipe,
    Worked<Length> step) {

  public ThicknessLimits {
    for (var one : List.of(deepest, light, shortest, thinnest, step)) {
      one.value().requirePositive(one.name());
    }
    if (snipe.value().isNegative()) {
      throw new IllegalArgumentException(snipe.name() + " is negative: " + snipe.value());
    }
    if (light.value().isGreaterThan(deepest.value())) {
      throw new IllegalArgumentException("a light pass that is deeper than the deepest");
    }
  }
}
