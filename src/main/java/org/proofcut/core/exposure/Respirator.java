package org.proofcut.core.exposure;

import java.math.BigDecimal;
import org.proofcut.core.evidence.Amount;
import org.proofcut.core.evidence.Citation;
import org.proofcut.core.evidence.Worked;

/**
 * Kinds of respirator that clean the air of the room, by how many times less of what is in it comes
 * through one that fits and is worn by the rules of a respirator programme. Beard under the seal,
 * and none of this holds.
 */
public enum Respirator {
  QUARTER_MASK("quarter mask", 5),
  /** Also a mask that is all filter, such as FFP2 or N95. */
  HALF_MASK("half mask, or a mask that is all filter", 10),
  FULL_FACE("mask over the whole face", 50),
  /** A hood or helmet with a fan, loose at its edge. */
  LOOSE_WITH_FAN("loose hood with a fan", 25);

  private static final Citation FACTORS =
      new Citation(
          Citation.Kind.LAW, "29 CFR 1910.134, Respiratory protection", "(d)(3)(i)(A), Table 1");

  private final String words;
  private final int factor;

  Respirator(String words, int factor) {
    this.words = words;
    this.factor = factor;
  }

  public String words() {
    return words;
  }

  /** How many times less comes through: its assigned protection factor. */
  public Worked<Integer> factor() {
    return Worked.given("protection factor of a " + words, factor, FACTORS);
  }

  /** The most that may be in the air around it, where so much is allowed to be breathed. */
  public Worked<Amount> mostAround(Worked<Amount> limit) {
    return Worked.called("most that may be in the air")
        .by("protection factor × limit")
        .with("protection factor", factor())
        .with("limit", limit)
        .from(FACTORS)
        .is(
            new Amount(
                limit.value().value().multiply(BigDecimal.valueOf(factor)), limit.value().unit()));
  }
}
