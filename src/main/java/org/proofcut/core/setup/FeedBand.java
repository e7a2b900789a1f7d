package org.proofcut.core.setup;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.proofcut.core.evidence.Amount;
import org.proofcut.core.evidence.Citation;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.measure.Length;
import org.proofcut.core.shop.RouterCutter;

/**
 * How fast work or router are moved so that each cutting edge takes a chip of the right thickness:
 * slower and it rubs and burns, faster and it tears.
 *
 * @param least slowest feed
 * @param most fastest feed
 */
public record FeedBand(Worked<Amount> least, Worked<Amount> most) {

  /** The feeds of a cutter at a speed, rounded to the inside of the band. */
  static FeedBand of(RouterCutter cutter, int perMinute, SetupLimits limits) {
    return new FeedBand(
        feed(
            "slowest feed",
            limits.router().leastChip(),
            cutter.edges(),
            perMinute,
            RoundingMode.CEILING),
        feed(
            "fastest feed",
            limits.router().mostChip(),
            cutter.edges(),
            perMinute,
            RoundingMode.FLOOR));
  }

  /**
   * Feed = chip per edge · edges · revolutions, in m/min to 0.1. Formula: checked against published
   * values in {@code SpeedsPublishedTest}.
   */
  static Worked<Amount> feed(
      String name, Worked<Length> chip, int edges, int perMinute, RoundingMode rounding) {
    var metres =
        chip.value()
            .inMillimetres()
            .multiply(BigDecimal.valueOf(edges))
            .multiply(BigDecimal.valueOf(perMinute))
            .movePointLeft(3)
            .setScale(1, rounding);
    return Worked.called(name)
        .by("chip per edge × edges × speed, to 0.1 m/min")
        .with("chip per edge", chip)
        .with("edges", Worked.given("cutting edges", edges, Citation.ENTERED))
        .with("speed", Worked.given("revolutions a minute", perMinute, Citation.ENTERED))
        .from(chip.source())
        .is(new Amount(metres, "m/min"));
  }

  /** Both ends in words, such as {@code 1.8 to 5.4 m/min}. */
  public String text() {
    return least.value().value().toPlainString() + " to " + most.value();
  }
}
