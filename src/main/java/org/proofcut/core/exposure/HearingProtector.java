package org.proofcut.core.exposure;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.proofcut.core.evidence.Amount;
import org.proofcut.core.evidence.Citation;
import org.proofcut.core.evidence.Worked;

/**
 * What muffs or plugs let through, from the rating on them. The rating was made for a level that is
 * weighted another way (dBC); where the meter reads dBA, 7 dB of it are taken off first.
 *
 * @param rating noise reduction rating, as marked, in dB
 */
public record HearingProtector(Worked<Integer> rating) {

  /** What the meter read. */
  public enum Weighting {
    A("dBA"),
    C("dBC");

    private final String unit;

    Weighting(String unit) {
      this.unit = unit;
    }

    /** As the meter prints it. */
    public String unit() {
      return unit;
    }
  }

  private static final String APPENDIX = "29 CFR 1910.95, Occupational noise exposure";

  private static final Citation AS_RATED = new Citation(Citation.Kind.LAW, APPENDIX, "Appendix B");

  /** Seen in secondary copies. */
  private static final Citation HALVED =
      new Citation(
          Citation.Kind.HANDBOOK,
          "practice of OSHA's inspectors, as seen in secondary copies",
          "half of the rating");

  private static final Citation BOTH =
      new Citation(
          Citation.Kind.HANDBOOK,
          "practice of OSHA's inspectors, as seen in secondary copies",
          "plugs and muffs together");

  private static final Worked<Integer> DIFFERENCE =
      Worked.given("difference between dBC and dBA", 7, AS_RATED);

  /** What a second protector adds to the better one, in dB. */
  public static final int SECOND_ADDS = 5;

  private static final Worked<Integer> SECOND =
      Worked.given("what a second protector adds", SECOND_ADDS, BOTH);

  private static final Worked<Integer> SECOND_AS_WORN =
      Worked.given(
          "what a second protector adds",
          SECOND_ADDS,
          new Citation(
              Citation.Kind.HANDBOOK,
              "OSHA Technical Manual, noise",
              "two protectors, from memory"));

  /** The one that lets less through alone. */
  public HearingProtector better(HearingProtector other) {
    return rating.value() >= other.rating.value() ? this : other;
  }

  /** The level under it, as it was rated in a laboratory: seldom reached at work. */
  public Worked<Amount> asRated(Worked<Amount> level, Weighting weighting) {
    return rated(level, weighting, Math.max(0, taken(weighting)));
  }

  /** The level under it with half of that, as it is worn at work. */
  public Worked<Amount> asWorn(Worked<Amount> level, Weighting weighting) {
    return worn(level, weighting, Math.max(0, taken(weighting)));
  }

  /** The level under plugs and muffs at once: the better one as rated, and 5 dB more. */
  public Worked<Amount> withSecond(
      HearingProtector other, Worked<Amount> level, Weighting weighting) {
    var better = better(other);
    return withSecond(
        "level under both protectors",
        better.rated(level, weighting, better.taken(weighting)),
        SECOND);
  }

  /** The same with half of the better rating, as both are worn at work. */
  public Worked<Amount> asWornWithSecond(
      HearingProtector other, Worked<Amount> level, Weighting weighting) {
    var better = better(other);
    return withSecond(
        "level under both protectors, as worn",
        better.worn(level, weighting, better.taken(weighting)),
        SECOND_AS_WORN);
  }

  private static Worked<Amount> withSecond(
      String name, Worked<Amount> alone, Worked<Integer> second) {
    return Worked.called(name)
        .by("level under the better one − what a second adds")
        .with("level under the better one", alone)
        .with("what a second adds", second)
        .from(second.source())
        .is(new Amount(alone.value().value().subtract(BigDecimal.valueOf(second.value())), "dBA"));
  }

  private Worked<Amount> rated(Worked<Amount> level, Weighting weighting, int taken) {
    var working = under(weighting, "level − ", "level − (rating − difference)").from(AS_RATED);
    return levelled(working, level, weighting, BigDecimal.valueOf(taken));
  }

  private Worked<Amount> worn(Worked<Amount> level, Weighting weighting, int taken) {
    var working =
        under(weighting, "level − ½ × ", "level − ½ × (rating − difference)").from(HALVED);
    return levelled(
        working,
        level,
        weighting,
        BigDecimal.valueOf(taken).divide(BigDecimal.valueOf(2), 1, RoundingMode.FLOOR));
  }

  /** What it takes off, in dB; less than nothing for a rating below 7 where the level is in dBA. */
  private int taken(Weighting weighting) {
    return weighting == Weighting.A ? rating.value() - DIFFERENCE.value() : rating.value();
  }

  private Worked.Working under(Weighting weighting, String byC, String byA) {
    var working = Worked.called("level under the protector");
    return weighting == Weighting.A
        ? working.by(byA).with("rating", rating).with("difference", DIFFERENCE)
        : working.by(byC + "rating").with("rating", rating);
  }

  private static Worked<Amount> levelled(
      Worked.Working working, Worked<Amount> level, Weighting weighting, BigDecimal less) {
    if (!level.value().unit().equals(weighting.unit())) {
      throw new IllegalArgumentException(
          level.name() + " is not in " + weighting.unit() + ": " + level.value());
    }
    return working.with("level", level).is(new Amount(level.value().value().subtract(less), "dBA"));
  }
}
