package org.proofcut.core.exposure;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;
import org.proofcut.core.evidence.Amount;
import org.proofcut.core.evidence.Citation;
import org.proofcut.core.evidence.Worked;

/**
 * How long a noise may last, by one of the two published rules.
 *
 * <p>Both allow eight hours at a criterion level and halve the time for each so many decibels more:
 * {@code T = 8 h ÷ 2^((level − criterion) ÷ halving)}. What a day takes of what it may is its dose,
 * {@code D = 100 % · Σ (time ÷ T)}; the steady level that would come to the same in eight hours is
 * {@code criterion + factor · log10(D ÷ 100 %)}. The factors are as printed; {@code halving ÷
 * log10(2)} gives 16.61 for the first and 9.97, printed as 10, for the second.
 */
public enum NoiseRule {
  /** Eight hours at 90 dBA, half as long for each 5 dB more. */
  PERMITTED_US(
      90,
      5,
      "16.61",
      new Citation(
          Citation.Kind.LAW, "29 CFR 1910.95, Occupational noise exposure", "Appendix A, I")),
  /** Eight hours at 85 dBA, half as long for each 3 dB more. */
  RECOMMENDED(
      85,
      3,
      "10",
      new Citation(
          Citation.Kind.HANDBOOK,
          "NIOSH 98-126, Criteria for a recommended standard: noise",
          "Table 1-1"));

  /** Both rules leave out what is quieter. */
  public static final int QUIET_BELOW = 80;

  private static final String DBA = "dBA";
  private static final MathContext DIGITS = new MathContext(20);
  private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);
  private static final BigDecimal DAY = BigDecimal.valueOf(8);
  private static final BigDecimal SECONDS = BigDecimal.valueOf(3600);

  private final BigDecimal criterion;
  private final BigDecimal halving;
  private final BigDecimal factor;
  private final Citation source;

  NoiseRule(int criterion, int halving, String factor, Citation source) {
    this.criterion = BigDecimal.valueOf(criterion);
    this.halving = BigDecimal.valueOf(halving);
    this.factor = new BigDecimal(factor);
    this.source = source;
  }

  /** How long a day may have of this level, in hours to 0.0001. */
  public Worked<Amount> allowed(Worked<Amount> level) {
    requireDecibels(level);
    return Worked.called("time that is allowed")
        .by("8 h ÷ 2^((level − " + criterion + ") ÷ " + halving + ")")
        .with("level", level)
        .from(source)
        .is(new Amount(hours(level).setScale(4, RoundingMode.HALF_UP), "h"));
  }

  private BigDecimal hours(Worked<Amount> level) {
    var doublings = level.value().value().subtract(criterion).divide(halving, DIGITS);
    return DAY.divide(Powers.ofTwo(doublings), DIGITS);
  }

  /** What these stays take of what a day may have, in per cent to 0.01. */
  public Worked<Amount> dose(List<Stay> stays) {
    var sum = BigDecimal.ZERO;
    var working =
        Worked.called("dose of the day")
            .by(
                "100 % × sum of time ÷ time that is allowed at its level, from "
                    + QUIET_BELOW
                    + " dBA on")
            .from(source);
    for (var stay : stays) {
      if (stay.level().value().value().compareTo(BigDecimal.valueOf(QUIET_BELOW)) >= 0) {
        var hours = BigDecimal.valueOf(stay.time().value().toSeconds()).divide(SECONDS, DIGITS);
        sum = sum.add(hours.divide(hours(stay.level()), DIGITS));
        working = working.with(stay.time()).with(allowed(stay.level()));
      }
    }
    return working.is(new Amount(sum.multiply(HUNDRED).setScale(2, RoundingMode.HALF_UP), "%"));
  }

  /**
   * The steady level that would come to the same dose in eight hours, to 0.01 dBA.
   *
   * @throws IllegalArgumentException if the dose is none
   */
  public Worked<Amount> steadyLevel(Worked<Amount> dose) {
    var share = dose.value().value().divide(HUNDRED, DIGITS);
    return Worked.called("steady level of eight hours")
        .by(criterion + " dBA + " + factor + " × log10(dose ÷ 100 %)")
        .with("dose", dose)
        .from(source)
        .is(
            new Amount(
                criterion
                    .add(factor.multiply(Powers.log10(share), DIGITS))
                    .setScale(2, RoundingMode.HALF_UP),
                DBA));
  }

  static void requireDecibels(Worked<Amount> level) {
    if (!level.value().unit().equals(DBA)) {
      throw new IllegalArgumentException(level.name() + " is not in dBA: " + level.value());
    }
  }
}
