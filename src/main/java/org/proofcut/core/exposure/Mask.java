package org.proofcut.core.exposure;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.proofcut.core.evidence.Amount;
import org.proofcut.core.evidence.Citation;
import org.proofcut.core.evidence.Worked;

/**
 * A kind of mask as it is named and reckoned with in one part of the world.
 *
 * @param words with the filter that it takes
 * @param factor how many times less comes through
 * @param seals whether it has to lie close on shaven skin
 * @param regions where it is reckoned so
 */
public record Mask(
    String id, String words, Worked<Integer> factor, boolean seals, List<String> regions) {

  private static final MathContext DIGITS = new MathContext(20);

  public Mask {
    regions = List.copyOf(regions);
    if (factor.value() < 1) {
      throw new IllegalArgumentException("a mask with a factor below 1: " + id);
    }
  }

  /** Which mask is needed. */
  public sealed interface Need {

    /** There is no more in the air than may be breathed. */
    record None(Worked<Amount> factor) implements Need {}

    /**
     * The weakest mask that is enough.
     *
     * @param mostAround the most that may hang around it
     */
    record Least(Worked<Amount> factor, Mask mask, Worked<Amount> mostAround) implements Need {}

    /** None that cleans the air of the room is enough. */
    record BeyondAll(Worked<Amount> factor) implements Need {}

    /** Nothing was measured: by how much dust such work makes, and by no figure. */
    record ByStrength(Worked<DustStrength> strength, Worked<Integer> factor, Mask mask)
        implements Need {}
  }

  /** Those of the United States, which serve where a region has none of its own. */
  static List<Mask> ofTheTable(List<String> regions) {
    return Arrays.stream(Respirator.values())
        .map(
            one ->
                new Mask(
                    one.name().toLowerCase(Locale.ROOT).replace('_', '-'),
                    one.words() + filters(one),
                    one.factor(),
                    one != Respirator.LOOSE_WITH_FAN,
                    regions))
        .toList();
  }

  /**
   * From memory: marks of 42 CFR 84, and NIOSH's respirator selection logic of 2004. An N95 filter
   * may let one part in twenty through, so a mask counts for more than that only with one that
   * holds back nearly all.
   */
  private static String filters(Respirator one) {
    return switch (one) {
      case QUARTER_MASK, HALF_MASK -> ", with N95 filters or better; P100 holds back most";
      case FULL_FACE -> ", with P100 filters";
      case LOOSE_WITH_FAN -> ", with HE filters";
    };
  }

  /** The most that may be in the air around it, where so much is allowed to be breathed. */
  public Worked<Amount> mostAround(Worked<Amount> limit) {
    return Worked.called("most that may be in the air")
        .by("protection factor × limit")
        .with("protection factor", factor)
        .with("limit", limit)
        .from(factor.source())
        .is(
            new Amount(
                limit.value().value().multiply(BigDecimal.valueOf(factor.value())),
                limit.value().unit()));
  }

  /** The weakest of these that is enough for a measured level. */
  static Need least(Collection<Mask> masks, Worked<Amount> level, Worked<Amount> limit) {
    var factor = neededFactor(level, limit);
    if (level.value().value().compareTo(limit.value().value()) <= 0) {
      return new Need.None(factor);
    }
    return fromWeakest(masks)
        .filter(mask -> isEnough(mask, level, limit))
        .findFirst()
        .<Need>map(mask -> new Need.Least(factor, mask, mask.mostAround(limit)))
        .orElseGet(() -> new Need.BeyondAll(factor));
  }

  private static boolean isEnough(Mask mask, Worked<Amount> level, Worked<Amount> limit) {
    return mask.mostAround(limit).value().value().compareTo(level.value().value()) >= 0;
  }

  /** The weakest of these that takes out at least so many times. */
  static Optional<Mask> weakest(Collection<Mask> masks, int factor) {
    return fromWeakest(masks).filter(mask -> mask.factor.value() >= factor).findFirst();
  }

  private static Stream<Mask> fromWeakest(Collection<Mask> masks) {
    return masks.stream().sorted(Comparator.comparing(mask -> mask.factor.value()));
  }

  /** {@code level ÷ limit}, to a tenth upward. */
  static Worked<Amount> neededFactor(Worked<Amount> level, Worked<Amount> limit) {
    if (!level.value().unit().equals(limit.value().unit())) {
      throw new IllegalArgumentException(level.value() + " against " + limit.value());
    }
    return Worked.called("how many times less must come through")
        .by("level ÷ limit, rounded up")
        .with("level", level)
        .with("limit", limit)
        .from(Citation.GEOMETRY)
        .is(
            new Amount(
                level
                    .value()
                    .value()
                    .divide(limit.value().value(), DIGITS)
                    .setScale(1, RoundingMode.CEILING),
                "times"));
  }
}
