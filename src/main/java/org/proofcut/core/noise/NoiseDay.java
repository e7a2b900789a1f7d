package org.proofcut.core.noise;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.proofcut.core.evidence.Amount;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.exposure.DayAsked;
import org.proofcut.core.exposure.ExposureLimits;
import org.proofcut.core.exposure.HearingRating;
import org.proofcut.core.exposure.NoiseLaw;
import org.proofcut.core.exposure.NoiseRule;
import org.proofcut.core.exposure.SoundEnergy;
import org.proofcut.core.exposure.Stay;
import org.proofcut.core.plan.OperationSheet;
import org.proofcut.core.plan.Plan;
import org.proofcut.core.shop.OwnedGear;
import org.proofcut.core.shop.Shop;

/**
 * A day's noise.
 *
 * @param parts every sheet of the job, whether it is done that day or not, and what else is loud
 * @param doses by both published rules, in the order of {@link NoiseRule}
 * @param dailyLevel as Europe reckons it; empty for a day without noise
 * @param law what holds where the shop stands
 * @param steps of the law that the day comes under, from the quietest on
 * @param protections what each protector at hand leaves, and those that are thought of
 * @param needed the least rating of each kind that is enough as worn; none where nothing is needed
 */
public record NoiseDay(
    List<DayPart> parts,
    List<Dose> doses,
    Optional<Worked<Amount>> dailyLevel,
    NoiseLaw law,
    List<NoiseLaw.Step> steps,
    List<Protection> protections,
    List<Needed> needed) {

  static final String EAR_PROTECTION = "ear-protection";
  private static final int TENTHS = 1;
  private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);

  /**
   * The dose by one rule.
   *
   * @param steady the steady level of eight hours that comes to the same; empty where the dose is
   *     none
   */
  public record Dose(NoiseRule rule, Worked<Amount> dose, Optional<Worked<Amount>> steady) {

    /** Of these stays. */
    public static Dose of(NoiseRule rule, List<Stay> stays) {
      var dose = rule.dose(stays);
      return new Dose(
          rule,
          dose,
          dose.value().value().signum() > 0
              ? Optional.of(rule.steadyLevel(dose))
              : Optional.empty());
    }
  }

  /**
   * What a protector has to be marked with.
   *
   * @param least of its kind; empty where no protector alone is enough
   */
  public record Needed(HearingRating.Kind kind, Optional<HearingRating> least) {}

  public NoiseDay {
    needed = List.copyOf(needed);
    parts = List.copyOf(parts);
    doses = List.copyOf(doses);
    steps = List.copyOf(steps);
    protections = List.copyOf(protections);
  }

  /**
   * The noise of a day.
   *
   * @param plan whose sheets are done; empty for a day without a job
   * @param shop whose protectors are at hand
   * @param law what holds where the shop stands
   */
  public static NoiseDay dayOf(
      Optional<Plan> plan,
      Shop shop,
      NoiseLevels levels,
      ExposureLimits limits,
      NoiseLaw law,
      DayAsked asked) {
    var parts =
        Stream.concat(
                plan.stream()
                    .flatMap(one -> one.sheets().stream())
                    .map(sheet -> part(sheet, levels, limits, asked)),
                asked.others().stream().map(NoiseDay::part))
            .toList();
    var stays = parts.stream().flatMap(part -> part.stay().stream()).toList();
    var doses = Stream.of(NoiseRule.values()).map(rule -> Dose.of(rule, stays)).toList();
    var daily =
        stays.isEmpty()
            ? Optional.<Worked<Amount>>empty()
            : Optional.of(SoundEnergy.dailyLevel(stays));
    var steady =
        switch (law.measure()) {
          case FIVE_DECIBEL_DOSE -> steady(doses, NoiseRule.PERMITTED_US);
          case THREE_DECIBEL_DOSE -> steady(doses, NoiseRule.RECOMMENDED);
          case DAILY_LEVEL -> daily;
        };
    var loudest = Ears.loudest(stays.stream().map(Stay::level).toList());
    var ears =
        steady.map(
            level -> new Ears(level, loudest.orElse(level), asked.dbcOverDba(), law, limits));
    return new NoiseDay(
        parts,
        doses,
        daily,
        law,
        law.steps().stream()
            .filter(step -> steady.map(level -> step.isReached(level.value())).orElse(false))
            .toList(),
        protections(shop, ears, asked),
        needed(ears, law));
  }

  private static Optional<Worked<Amount>> steady(List<Dose> doses, NoiseRule rule) {
    return doses.stream().filter(dose -> dose.rule() == rule).findFirst().flatMap(Dose::steady);
  }

  private static DayPart part(
      OperationSheet sheet, NoiseLevels levels, ExposureLimits limits, DayAsked asked) {
    var machine = sheet.operation().setup().map(setup -> setup.machine());
    var heard = machine.flatMap(levels::of);
    var planned = RunTime.of(sheet, limits);
    return new DayPart(
        Optional.of(sheet.number()),
        sheet.id(),
        sheet.operation().title(),
        machine.map(one -> one.name()),
        heard.map(NoiseLevels.Heard::level),
        heard.map(NoiseLevels.Heard::from).orElse(NoiseLevels.From.NONE),
        planned,
        machine.isEmpty()
            ? Optional.empty()
            : Optional.ofNullable(asked.times().get(sheet.number())).or(() -> planned),
        !asked.leftOut().contains(sheet.number()));
  }

  private static DayPart part(DayAsked.Other other) {
    return new DayPart(
        Optional.empty(),
        "",
        other.what(),
        Optional.empty(),
        Optional.of(other.level()),
        NoiseLevels.From.TYPED,
        Optional.empty(),
        Optional.of(other.time()),
        true);
  }

  private static List<Needed> needed(Optional<Ears> ears, NoiseLaw law) {
    return ears.filter(one -> !Protection.isAtMost(one.level(), law.better().at().value())).stream()
        .flatMap(
            one ->
                Stream.of(HearingRating.Kind.values())
                    .map(kind -> new Needed(kind, least(one, kind))))
        .toList();
  }

  private static Optional<HearingRating> least(Ears ears, HearingRating.Kind kind) {
    return HearingRating.all(kind)
        .filter(rating -> ears.under("", "", rating).verdict() == Protection.Verdict.ENOUGH)
        .findFirst();
  }

  private static List<Protection> protections(Shop shop, Optional<Ears> ears, DayAsked asked) {
    var found = new ArrayList<Protection>();
    for (var gear : shop.gear()) {
      if (gear.kind().equals(EAR_PROTECTION) && !gear.outOfUse()) {
        owned(gear, ears, asked.second()).forEach(one -> found.add(one.of(gear)));
      }
    }
    asked
        .tried()
        .ifPresent(
            rating ->
                found.addAll(
                    rated("another protector", rating.text(), rating, ears, asked.second())));
    return found;
  }

  private static List<Protection> owned(
      OwnedGear gear, Optional<Ears> ears, Optional<HearingRating> second) {
    // The figure that was entered counts before what else is marked.
    var marked =
        gear.rated().map(rated -> rated.scale() + " " + rated.decibels()).orElse(gear.rating());
    var ratings = HearingRating.read(marked);
    return ratings.isEmpty()
        ? List.of(
            Protection.without(gear.name(), marked, Optional.empty(), Protection.Verdict.NOT_READ))
        : ratings.stream()
            .flatMap(rating -> rated(gear.name(), rating.text(), rating, ears, second).stream())
            .toList();
  }

  private static List<Protection> rated(
      String name,
      String marked,
      HearingRating rating,
      Optional<Ears> ears,
      Optional<HearingRating> second) {
    if (ears.isEmpty()) {
      return List.of(
          Protection.without(name, marked, Optional.of(rating), Protection.Verdict.QUIET_DAY));
    }
    var found = new ArrayList<Protection>();
    found.add(ears.get().under(name, marked, rating));
    second.ifPresent(
        other ->
            found.add(
                ears.get()
                    .under(
                        name + ", with a second one",
                        marked + " and " + other.text(),
                        rating,
                        other)));
    return found;
  }

  /** The steady level that the law looks at; empty for a day without noise. */
  public Optional<Worked<Amount>> steadyByLaw() {
    return law.measure() == NoiseLaw.Measure.DAILY_LEVEL ? dailyLevel : dose(rule()).steady();
  }

  /** The parts that are louder than the law allows for any time. */
  public List<DayPart> aboveCeiling() {
    return parts.stream()
        .filter(
            part ->
                part.stay()
                    .flatMap(
                        stay ->
                            law.ceiling()
                                .map(
                                    most ->
                                        stay.level().value().value().compareTo(most.at().value())
                                            > 0))
                    .orElse(false))
        .toList();
  }

  /** The rule by which shares are told: that of the law, or the one with the same halving. */
  public NoiseRule rule() {
    return law.measure() == NoiseLaw.Measure.FIVE_DECIBEL_DOSE
        ? NoiseRule.PERMITTED_US
        : NoiseRule.RECOMMENDED;
  }

  /** The dose by a rule. */
  public Dose dose(NoiseRule rule) {
    return doses.stream().filter(dose -> dose.rule() == rule).findFirst().orElseThrow();
  }

  /** What share of the day's dose a part brings by {@link #rule}, in per cent to 0.1. */
  public BigDecimal share(DayPart part) {
    var all = dose(rule()).dose().value().value();
    return all.signum() == 0
        ? BigDecimal.ZERO.setScale(TENTHS)
        : doseOf(part).multiply(HUNDRED).divide(all, TENTHS, RoundingMode.HALF_UP);
  }

  private BigDecimal doseOf(DayPart part) {
    return rule().dose(part.stay().stream().toList()).value().value();
  }

  /** The parts that bring anything, the one that brings most first. */
  public List<DayPart> loudestFirst() {
    return parts.stream()
        .filter(part -> doseOf(part).signum() > 0)
        .sorted(Comparator.comparing(this::doseOf).reversed())
        .toList();
  }

  /** How long it is loud that day. */
  public Duration time() {
    return parts.stream()
        .flatMap(part -> part.stay().stream())
        .map(stay -> stay.time().value())
        .reduce(Duration.ZERO, Duration::plus);
  }
}
