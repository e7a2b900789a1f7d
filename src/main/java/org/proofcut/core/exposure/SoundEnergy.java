package org.proofcut.core.exposure;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;
import org.proofcut.core.evidence.Amount;
import org.proofcut.core.evidence.Citation;
import org.proofcut.core.evidence.Worked;

/**
 * Levels by the energy that they stand for: {@code 10^(level ÷ 10)}. Two machines at once add up
 * so; so does a day, which comes to the steady level of eight hours with the same energy.
 *
 * <p>Two noises of 100 dB are 103 dB together, and 106 dB with 100 dB are 106.97 dB: examples found
 * in secondary copies.
 */
public final class SoundEnergy {

  private static final String DBA = "dBA";
  private static final MathContext DIGITS = new MathContext(20);
  private static final BigDecimal TEN = BigDecimal.TEN;
  private static final BigDecimal SECONDS_OF_A_DAY = BigDecimal.valueOf(8 * 3600L);

  private static final Citation ENERGY =
      new Citation(
          Citation.Kind.HANDBOOK, "acoustics: energies add up, as seen in secondary copies", "");

  /** The day's level stands in the first article of definitions: from memory. */
  private static final Citation DAILY =
      new Citation(
          Citation.Kind.LAW, "Directive 2003/10/EC, Noise", "Article 2 and ISO 1999, from memory");

  private SoundEnergy() {}

  /** The level of two noises at once, to 0.1 dBA upward. */
  public static Worked<Amount> together(Worked<Amount> one, Worked<Amount> other) {
    NoiseRule.requireDecibels(one);
    NoiseRule.requireDecibels(other);
    var sum = energy(one).add(energy(other));
    return Worked.called(one.name() + ", with " + other.name())
        .by("10 × log10(10^(one ÷ 10) + 10^(other ÷ 10)), up to 0.1 dBA")
        .with("one", one)
        .with("other", other)
        .from(ENERGY)
        .is(
            new Amount(
                TEN.multiply(Powers.log10(sum), DIGITS).setScale(1, RoundingMode.CEILING), DBA));
  }

  /**
   * The daily level {@code LEX,8h} of these stays, to 0.01 dBA. It leaves nothing out, however
   * quiet.
   *
   * @throws IllegalArgumentException if they last no time at all
   */
  public static Worked<Amount> dailyLevel(List<Stay> stays) {
    var sum = BigDecimal.ZERO;
    var working =
        Worked.called("daily level, LEX,8h")
            .by("10 × log10(sum of time ÷ 8 h × 10^(level ÷ 10))")
            .from(DAILY);
    for (var stay : stays) {
      sum =
          sum.add(
              BigDecimal.valueOf(stay.time().value().toSeconds())
                  .multiply(energy(stay.level()))
                  .divide(SECONDS_OF_A_DAY, DIGITS));
      working = working.with("time", stay.time()).with("level", stay.level());
    }
    return working.is(
        new Amount(TEN.multiply(Powers.log10(sum), DIGITS).setScale(2, RoundingMode.HALF_UP), DBA));
  }

  private static BigDecimal energy(Worked<Amount> level) {
    return Powers.ofTen(level.value().value().divide(TEN, DIGITS));
  }
}
