package org.proofcut.core.noise;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.proofcut.core.evidence.Amount;
import org.proofcut.core.evidence.Citation;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.exposure.ExposureLimits;
import org.proofcut.core.exposure.HearingProtector;
import org.proofcut.core.exposure.HearingProtector.Weighting;
import org.proofcut.core.exposure.HearingRating;
import org.proofcut.core.exposure.HearingRating.Kind;
import org.proofcut.core.exposure.NoiseLaw;

/**
 * What protectors leave of one steady level. Both kinds of rating are made for a level in dBC;
 * where only dBA is known, 7 dB are reckoned against the protector: as the American appendix says
 * for an NRR, and by our own choice for an SNR.
 *
 * @param level steady level of the day
 * @param loudest level of the day
 * @param difference of dBC and dBA, where it was measured
 */
record Ears(
    Worked<Amount> level,
    Worked<Amount> loudest,
    Optional<Worked<Integer>> difference,
    NoiseLaw law,
    ExposureLimits limits) {

  private static final Citation SNR =
      new Citation(Citation.Kind.STANDARD, "ISO 4869-2, SNR method", "from memory");

  /** What one protector leaves. */
  Protection under(String name, String marked, HearingRating rating) {
    var rated = notLouder(asRated(rating));
    var worn = notLouder(asWorn(rating));
    return judged(name, marked, rating, rated, worn, rating.decibels());
  }

  /** What two leave at once, of which one is plugs; of SNR no such rule is known to us. */
  Protection under(String name, String marked, HearingRating one, HearingRating other) {
    if (one.kind() != Kind.NRR || other.kind() != Kind.NRR) {
      return Protection.without(name, marked, Optional.of(one), Protection.Verdict.NO_FIGURE);
    }
    var better = one.decibels() >= other.decibels() ? one : other;
    var rated = notLouder(protector(one).withSecond(protector(other), measured(), weighting()));
    var worn =
        notLouder(protector(one).asWornWithSecond(protector(other), measured(), weighting()));
    return judged(
        name, marked, better, rated, worn, better.decibels() + HearingProtector.SECOND_ADDS);
  }

  private Protection judged(
      String name,
      String marked,
      HearingRating rating,
      Worked<Amount> rated,
      Worked<Amount> worn,
      int atMostTaken) {
    var leastLeft = loudest.value().value().subtract(BigDecimal.valueOf(atMostTaken));
    return new Protection(
        Optional.empty(),
        name,
        marked,
        Optional.of(rating),
        Optional.of(rated),
        Optional.of(worn),
        Protection.judged(worn, law),
        leastLeft.compareTo(BigDecimal.valueOf(limits.tooQuiet().value())) < 0);
  }

  private Worked<Amount> asRated(HearingRating rating) {
    if (rating.kind() == Kind.NRR) {
      return protector(rating).asRated(measured(), weighting());
    }
    var inDbc = inDbc(difference.orElse(limits.dbcOverDba()));
    return Worked.called("level under the protector")
        .by("level in dBC − SNR")
        .with("level in dBC", inDbc)
        .with("SNR", marked(rating))
        .from(SNR)
        .is(dba(inDbc.value().value().subtract(BigDecimal.valueOf(rating.decibels()))));
  }

  private Worked<Amount> asWorn(HearingRating rating) {
    if (rating.kind() == Kind.NRR) {
      return protector(rating).asWorn(measured(), weighting());
    }
    var rated = asRated(rating);
    var less = limits.snrDerating();
    return Worked.called("level under the protector, as worn")
        .by("level as rated + what wear at work takes")
        .with("level as rated", rated)
        .with("what wear at work takes", less)
        .from(less.source())
        .is(dba(rated.value().value().add(BigDecimal.valueOf(less.value()))));
  }

  /** No protector makes it louder, whatever a small rating would come to. */
  private Worked<Amount> notLouder(Worked<Amount> under) {
    return under.value().value().compareTo(level.value().value()) <= 0
        ? under
        : Worked.called(under.name())
            .by("no more than the level without it")
            .with("level without it", level)
            .is(level.value());
  }

  private Weighting weighting() {
    return difference.isPresent() ? Weighting.C : Weighting.A;
  }

  private Worked<Amount> measured() {
    return difference.map(this::inDbc).orElse(level);
  }

  private Worked<Amount> inDbc(Worked<Integer> by) {
    return Worked.called("level in dBC")
        .by("level in dBA + difference")
        .with("level in dBA", level)
        .with("difference", by)
        .from(by.source())
        .is(new Amount(level.value().value().add(BigDecimal.valueOf(by.value())), "dBC"));
  }

  private static HearingProtector protector(HearingRating rating) {
    return new HearingProtector(marked(rating));
  }

  private static Worked<Integer> marked(HearingRating rating) {
    return Worked.given(rating.kind() + " as marked, in dB", rating.decibels(), Citation.ENTERED);
  }

  private static Amount dba(BigDecimal level) {
    return new Amount(level, "dBA");
  }

  /** The loudest of these levels. */
  static Optional<Worked<Amount>> loudest(List<Worked<Amount>> levels) {
    return levels.stream()
        .reduce(
            (one, other) ->
                one.value().value().compareTo(other.value().value()) >= 0 ? one : other);
  }
}
