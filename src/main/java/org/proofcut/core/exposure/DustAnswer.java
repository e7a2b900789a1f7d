package org.proofcut.core.exposure;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.proofcut.core.evidence.Amount;
import org.proofcut.core.evidence.Worked;

/**
 * What the dust of some work comes to.
 *
 * @param counted what it counts as where limits part
 * @param here limits where the shop stands, the lowest first
 * @param elsewhere the others
 * @param heldTo the one that masks are reckoned by; empty where none is known
 * @param strength how much fine dust there is, in order and not in milligrams
 * @param level what was measured
 * @param air what the extraction has to draw
 * @param mask which mask is needed, the last thing of all
 */
public record DustAnswer(
    List<Wood> woods,
    AirLimit.Substance counted,
    Set<DustEffect> effects,
    List<AirLimit> here,
    List<AirLimit> elsewhere,
    Optional<AirLimit> heldTo,
    Worked<DustStrength> strength,
    Optional<Worked<Amount>> level,
    Air air,
    Optional<Mask.Need> mask) {

  /**
   * Extraction at its opening.
   *
   * @param drawnOff whether an extractor is there
   * @param hood what it draws through
   * @param usual whether that is the port such a machine usually has, and not one that was measured
   * @param velocity that the air must have there
   * @param needed airflow, in the unit of the shop
   * @param there what the extractor draws; empty where it is not known or there is none
   * @param reached how fast it goes through the opening
   * @param enough whether that is enough; false where nothing is known
   */
  public record Air(
      boolean drawnOff,
      Hood hood,
      boolean usual,
      Worked<Amount> velocity,
      Worked<Amount> needed,
      Optional<Worked<Amount>> there,
      Optional<Worked<Amount>> reached,
      boolean enough) {}

  /**
   * @param unit of airflow
   * @throws IllegalArgumentException if the book has no such machine, or no figures of air
   */
  public static DustAnswer of(DustAsked asked, DustBook book, String region, String unit) {
    var strength =
        book.strength(asked.machine(), asked.woods())
            .orElseThrow(() -> new IllegalArgumentException("no machine " + asked.machine()));
    var heldTo = book.heldTo(asked.woods(), region);
    return new DustAnswer(
        asked.woods(),
        AirLimit.counted(asked.woods()),
        book.effects(asked.woods()),
        book.dustLimits(asked.woods(), region),
        book.dustLimitsElsewhere(asked.woods(), region),
        heldTo,
        strength,
        asked.level(),
        air(asked, book, unit),
        mask(asked, book, region, heldTo, strength));
  }

  private static Air air(DustAsked asked, DustBook book, String unit) {
    var limits = figures(book);
    var hood =
        asked.hood().orElseGet(() -> new Hood.Round(book.machines().get(asked.machine()).port()));
    var velocity =
        hood instanceof Hood.Round ? limits.transportVelocity() : limits.captureVelocity();
    var airflow = asked.airflow();
    return new Air(
        asked.drawnOff(),
        hood,
        asked.hood().isEmpty(),
        velocity,
        hood.needed(velocity, unit),
        airflow,
        airflow.map(hood::velocity),
        airflow.map(flow -> hood.isEnough(flow, velocity)).orElse(false));
  }

  private static Optional<Mask.Need> mask(
      DustAsked asked,
      DustBook book,
      String region,
      Optional<AirLimit> heldTo,
      Worked<DustStrength> strength) {
    var masks = book.masks(region);
    if (asked.level().isPresent() && heldTo.isPresent()) {
      return Optional.of(Mask.least(masks, asked.level().get(), heldTo.get().most()));
    }
    var limits = figures(book);
    var factor =
        strength.value().isAtLeast(DustStrength.MUCH)
            ? limits.factorForMuchDust()
            : limits.factorForLittleDust();
    return Mask.weakest(masks, factor.value())
        .map(mask -> new Mask.Need.ByStrength(strength, factor, mask));
  }

  private static ExtractionLimits figures(DustBook book) {
    return book.air().orElseThrow(() -> new IllegalArgumentException("no figures of air"));
  }

  /** Whether more was measured than a limit allows; never of one that can't be held against it. */
  public boolean isOver(AirLimit limit) {
    return limit.isComparable()
        && level
            .filter(one -> one.value().value().compareTo(limit.most().value().value()) > 0)
            .isPresent();
  }

  /** Whether any of it is a glued panel. */
  public boolean hasPanel() {
    return woods.stream().anyMatch(Wood::isPanel);
  }
}
