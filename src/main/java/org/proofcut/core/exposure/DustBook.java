package org.proofcut.core.exposure;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.proofcut.core.evidence.Citation;
import org.proofcut.core.evidence.Worked;

/**
 * All that the house knows of dust. Handed in, never fetched.
 *
 * @param woods by id
 * @param machines by id; more than a shop's machines, such as a sander
 * @param limits of what may be in the air, everywhere
 * @param masks of regions that reckon with factors of their own
 */
public record DustBook(
    Map<String, Wood> woods,
    Map<String, MachineDust> machines,
    List<AirLimit> limits,
    List<Mask> masks,
    List<PanelMark> marks,
    Optional<ExtractionLimits> air) {

  /** Where nothing is known. */
  public static final DustBook EMPTY =
      new DustBook(Map.of(), Map.of(), List.of(), List.of(), List.of(), Optional.empty());

  public DustBook {
    limits = List.copyOf(limits);
    masks = List.copyOf(masks);
    marks = List.copyOf(marks);
  }

  /**
   * The wood of a sheet: what the maker called it, else what its material alone tells.
   *
   * @param material such as {@code plywood}; a wood of that id stands for one that is not named
   */
  public Optional<Wood> wood(Optional<String> called, String material) {
    return called.flatMap(this::wood).or(() -> Optional.ofNullable(woods.get(material)));
  }

  /** The wood that a maker means, if it is known here. */
  public Optional<Wood> wood(String called) {
    return woods.values().stream().filter(wood -> wood.isCalled(called)).findFirst();
  }

  /** What the dust of a mix does, the mildest first. Hardwood dust as such can cause cancer. */
  public Set<DustEffect> effects(Collection<Wood> mix) {
    var effects = EnumSet.noneOf(DustEffect.class);
    mix.forEach(wood -> wood.effects().forEach(one -> effects.add(one.does())));
    if (mix.stream().anyMatch(wood -> wood.countsAs() == Wood.Group.HARDWOOD)) {
      effects.add(DustEffect.CARCINOGEN);
    }
    return effects;
  }

  /** How much fine dust a machine makes of a mix; empty where the machine is not known here. */
  public Optional<Worked<DustStrength>> strength(String machine, Collection<Wood> mix) {
    return Optional.ofNullable(machines.get(machine))
        .map(MachineDust::strength)
        .map(
            usual ->
                mix.stream().anyMatch(Wood::finer)
                    ? Worked.called("how much fine dust")
                        .by("that of the machine, one step more in board of fibres or chips")
                        .with("that of the machine", usual)
                        .from(Citation.OWN_CHOICE)
                        .is(usual.value().oneMore())
                    : usual);
  }

  /** The limits of a region that speak of the dust of a mix, the lowest first. */
  public List<AirLimit> dustLimits(Collection<Wood> mix, String region) {
    return dustLimits(mix).stream().filter(limit -> limit.isOf(region)).toList();
  }

  /** The same of everywhere else. */
  public List<AirLimit> dustLimitsElsewhere(Collection<Wood> mix, String region) {
    return dustLimits(mix).stream().filter(limit -> !limit.isOf(region)).toList();
  }

  private List<AirLimit> dustLimits(Collection<Wood> mix) {
    return limits.stream().filter(limit -> limit.isForDustOf(mix)).sorted(LOWEST_FIRST).toList();
  }

  /** Limits of formaldehyde in the air, those of the region first. */
  public List<AirLimit> formaldehydeLimits(String region) {
    var found = new ArrayList<AirLimit>();
    for (boolean here : List.of(true, false)) {
      limits.stream()
          .filter(limit -> limit.of() == AirLimit.Substance.FORMALDEHYDE)
          .filter(limit -> limit.isOf(region) == here)
          .forEach(found::add);
    }
    return found;
  }

  /**
   * The limit that work is held to: the lowest of the region, law or advice, and of those that were
   * printed anywhere for this very wood; where there is none, the lowest printed anywhere. Only
   * such as can be held against what a sampler at the collar weighs.
   */
  public Optional<AirLimit> heldTo(Collection<Wood> mix, String region) {
    var comparable = dustLimits(mix).stream().filter(AirLimit::isComparable).toList();
    return comparable.stream()
        .filter(limit -> limit.isOf(region) || !limit.woods().isEmpty())
        .findFirst()
        .or(() -> comparable.stream().findFirst());
  }

  /** The law that decides in a region for the dust of a mix: the lowest, where there is one. */
  public Optional<AirLimit> law(Collection<Wood> mix, String region) {
    return dustLimits(mix, region).stream()
        .filter(AirLimit::isComparable)
        .filter(AirLimit::isLaw)
        .findFirst();
  }

  /** The masks that a region reckons with; the American table where it has none of its own. */
  public List<Mask> masks(String region) {
    var own = masks.stream().filter(mask -> mask.regions().contains(region)).toList();
    return own.isEmpty() ? Mask.ofTheTable(List.of(region)) : own;
  }

  private static final Comparator<AirLimit> LOWEST_FIRST =
      Comparator.comparing(limit -> limit.most().value().value());
}
