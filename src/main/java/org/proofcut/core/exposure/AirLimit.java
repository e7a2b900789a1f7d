package org.proofcut.core.exposure;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.proofcut.core.evidence.Amount;
import org.proofcut.core.evidence.Citation;
import org.proofcut.core.evidence.Worked;

/**
 * How much of something may be in the air that is breathed.
 *
 * @param of what is limited
 * @param woods ids of the woods that alone it is for; empty for all
 * @param most such as {@code 3 mg/m³}
 * @param over the time that it is a mean of
 * @param fraction which part of the dust is weighed; two of them can't be compared
 * @param above what its source says of breathing more than that; empty where it says nothing
 * @param regions where its source binds or speaks, smaller regions within them included
 * @throws IllegalArgumentException if nothing at all is allowed, or the unit is none that it is
 *     limited in
 */
public record AirLimit(
    String id,
    Substance of,
    List<String> woods,
    Worked<Amount> most,
    Span over,
    Fraction fraction,
    Optional<String> above,
    List<String> regions) {

  /** What a limit is for. */
  public enum Substance {
    /** Hardwood, and any mixture with it. */
    HARDWOOD_DUST("hardwood dust", "mg/m³"),
    SOFTWOOD_DUST("softwood dust", "mg/m³"),
    WOOD_DUST("wood dust", "mg/m³"),
    /** Dust of any kind that no other limit speaks of. */
    ANY_DUST("any dust", "mg/m³"),
    FORMALDEHYDE("formaldehyde", "ppm", "mg/m³");

    private final String words;
    private final List<String> units;

    Substance(String words, String... units) {
      this.words = words;
      this.units = List.of(units);
    }

    public String words() {
      return words;
    }
  }

  /** The time that it is a mean of. */
  public enum Span {
    EIGHT_HOURS("over eight hours"),
    TEN_HOURS("over up to ten hours"),
    QUARTER_HOUR("over fifteen minutes");

    private final String words;

    Span(String words) {
      this.words = words;
    }

    public String words() {
      return words;
    }
  }

  /** Which part of what hangs in the air is weighed. */
  public enum Fraction {
    /** What nose and mouth take in. */
    INHALABLE("inhalable"),
    /** What an older, closed filter holder catches: somewhat less than what is inhalable. */
    TOTAL("total"),
    /** What reaches the depth of the lungs: a small part of it. */
    RESPIRABLE("respirable"),
    GAS("gas");

    private final String words;

    Fraction(String words) {
      this.words = words;
    }

    public String words() {
      return words;
    }
  }

  public AirLimit {
    woods = List.copyOf(woods);
    regions = List.copyOf(regions);
    if (most.value().value().signum() <= 0) {
      throw new IllegalArgumentException("a limit must be more than nothing, not " + most.value());
    }
    if (!of.units.contains(most.value().unit())) {
      throw new IllegalArgumentException(
          "%s is limited in %s, not to %s"
              .formatted(of.words, String.join(" or ", of.units), most.value()));
    }
  }

  /** The same limit in these regions. */
  public AirLimit in(List<String> others) {
    return new AirLimit(id, of, woods, most, over, fraction, above, others);
  }

  public boolean isLaw() {
    return most.source().kind() == Citation.Kind.LAW;
  }

  public boolean isOf(String region) {
    return regions.contains(region);
  }

  /** Whether it speaks of the dust of such a mix: any hardwood in it makes it hardwood's. */
  boolean isForDustOf(Collection<Wood> mix) {
    return of == counted(mix) && isForOneOf(mix)
        || (of == Substance.WOOD_DUST || of == Substance.ANY_DUST) && isForOneOf(mix);
  }

  private boolean isForOneOf(Collection<Wood> mix) {
    return woods.isEmpty() || mix.stream().anyMatch(wood -> woods.contains(wood.id()));
  }

  /** Whether what a dust sampler at the collar weighs can be held against it. */
  boolean isComparable() {
    return fraction == Fraction.INHALABLE || fraction == Fraction.TOTAL;
  }

  /** What the dust of a mix counts as: one hardwood, or a panel of unknown make-up, is enough. */
  static Substance counted(Collection<Wood> mix) {
    return mix.stream().allMatch(wood -> wood.countsAs() == Wood.Group.SOFTWOOD)
        ? Substance.SOFTWOOD_DUST
        : Substance.HARDWOOD_DUST;
  }
}
