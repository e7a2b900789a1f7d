package org.proofcut.core.setup;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Comparator;
import java.util.Optional;
import org.proofcut.core.boring.DrillSpeed;
import org.proofcut.core.evidence.Amount;
import org.proofcut.core.evidence.Citation;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.measure.Angle;
import org.proofcut.core.measure.Length;
import org.proofcut.core.shop.Bit;
import org.proofcut.core.shop.Cutter;
import org.proofcut.core.shop.KnifeHead;
import org.proofcut.core.shop.Machine;
import org.proofcut.core.shop.RouterCutter;
import org.proofcut.core.stock.Material;

/** How fast a cutter may turn, and which step of the machine's dial that is. */
public final class Speeds {

  private Speeds() {}

  /**
   * Speed of the cutting edges: {@code π · diameter · revolutions}. In m/s to one decimal, rounded
   * up, the side on which a limit is reached sooner. Formula: checked against published values in
   * {@code SpeedsPublishedTest}.
   */
  public static Worked<Amount> rimSpeed(Length diameter, int perMinute) {
    var metresPerMinute =
        Angle.PI
            .multiply(diameter.inMillimetres())
            .multiply(BigDecimal.valueOf(perMinute))
            .movePointLeft(3);
    var metresPerSecond = metresPerMinute.divide(BigDecimal.valueOf(60), 1, RoundingMode.CEILING);
    return Worked.called("rim speed")
        .by("π × diameter × speed, to 0.1 m/s upward")
        .with("diameter", Worked.given("diameter of the cutter", diameter, Citation.ENTERED))
        .with("speed", Worked.given("revolutions a minute", perMinute, Citation.ENTERED))
        .is(new Amount(metresPerSecond, "m/s"));
  }

  /**
   * The highest speed for a cutter: the lower of its mark and, for router cutters, of its
   * diameter's band. Empty where nothing says: a blade or stacked cutter without a mark, a router
   * cutter beyond all bands.
   */
  static Optional<Worked<Integer>> limit(Cutter cutter, SetupLimits limits) {
    if (cutter instanceof KnifeHead head) {
      return Optional.of(
          Worked.entered("speed of the head, from the machine's plate", head.perMinute()));
    }
    var marked = cutter.markedTopSpeed().map(Speeds::marked);
    if (!(cutter instanceof RouterCutter router)) {
      return marked;
    }
    var bands = limits.router().topSpeeds();
    var byDiameter =
        bands.value().stream()
            .filter(band -> router.diameter().isAtMost(band.upTo()))
            .min(Comparator.comparing(SpeedBand::upTo))
            .map(
                band ->
                    Worked.given("top speed for this diameter", band.perMinute(), bands.source()));
    if (byDiameter.isEmpty() || marked.isEmpty()) {
      return byDiameter;
    }
    return Optional.of(lower(byDiameter.get(), marked.get()));
  }

  /** The machine's fastest step that the cutter allows, or why there is none. */
  static Choice choose(Machine machine, Cutter cutter, SetupLimits limits) {
    var limit = limit(cutter, limits);
    return limit
        .map(most -> fastest(machine, cutter, most, limits))
        .orElseGet(
            () ->
                Choice.no(
                    cutter instanceof RouterCutter
                        ? cutter.name() + " is larger than any size whose speed is known"
                        : cutter.name() + " has no top speed entered",
                    cutter instanceof RouterCutter
                        ? "Use a smaller cutter"
                        : "Read the top speed on the blade and enter it in the shop"));
  }

  /** The machine's fastest step for a bit in this wood, or why there is none. */
  static Choice choose(Machine machine, Bit bit, Material material, SetupLimits limits) {
    return fastest(machine, bit, limit(bit, material, limits), limits);
  }

  /** The highest speed of a bit: the lower of its mark and of what its rim may run at. */
  static Worked<Integer> limit(Bit bit, Material material, SetupLimits limits) {
    var rims = limits.drill().rimSpeeds();
    var rim =
        rims.value().stream()
            .filter(one -> one.kind() == bit.kind())
            .findFirst()
            .orElseThrow(() -> new IllegalStateException("no rim speed of a " + bit.kind()));
    var byRim =
        DrillSpeed.highest(
            Worked.entered("diameter of the bit", bit.diameter()),
            Worked.given(
                "speed of the rim of this kind of bit in " + material.words(),
                new Amount(BigDecimal.valueOf(rim.metresPerMinuteIn(material)), "m/min"),
                rims.source()));
    return bit.markedTopSpeed().map(top -> lower(byRim, marked(top))).orElse(byRim);
  }

  private static Worked<Integer> marked(int top) {
    return Worked.given("top speed marked on the cutter", top, Citation.ENTERED);
  }

  private static Worked<Integer> lower(Worked<Integer> one, Worked<Integer> other) {
    return Worked.called("highest speed for this cutter")
        .by("the lower of both")
        .with(one)
        .with(other)
        .is(Math.min(one.value(), other.value()));
  }

  private static Choice fastest(
      Machine machine, Cutter cutter, Worked<Integer> limit, SetupLimits limits) {
    var step =
        machine.speeds().stream()
            .filter(one -> one.perMinute() <= limit.value())
            .max(Comparator.comparingInt(one -> one.perMinute()));
    return step.map(
            one ->
                new Choice(
                    Optional.of(
                        new Speed(
                            one,
                            limit,
                            rimSpeed(cutter.diameter(), one.perMinute()),
                            cutter instanceof RouterCutter router
                                ? Optional.of(FeedBand.of(router, one.perMinute(), limits))
                                : Optional.empty())),
                    Optional.empty()))
        .orElseGet(
            () ->
                Choice.no(
                    cutter.name()
                        + " may turn at most at "
                        + limit.value()
                        + "/min; "
                        + machine.name()
                        + " can't run so slowly",
                    "Use a machine with a slower step, or a smaller cutter"));
  }

  /** A speed, or a refusal. */
  record Choice(Optional<Speed> speed, Optional<Refusal> refusal) {

    static Choice no(String what, String instead) {
      return new Choice(Optional.empty(), Refusal.because(Refusal.Reason.TOO_FAST, what, instead));
    }
  }
}
