package org.proofcut.core.feeding;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.proofcut.core.evidence.Amount;
import org.proofcut.core.evidence.Citation;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.Rounding;

/**
 * Cutting edges that turn while wood goes by. Each takes its turn once a revolution, so in a minute
 * {@code revolutions · edges} of them share the feed of that minute: {@code chip = feed ÷
 * (revolutions · edges)}. The same length is, on a planed face, the distance from one knife mark to
 * the next.
 *
 * @param perMinute revolutions a minute
 * @param edges that cut in one revolution: teeth, flutes or knives
 */
public record Turning(int perMinute, int edges) {

  /** A thousandth of a millimetre: chips are thin. */
  private static final Length CHIP_STEP = Length.ofMicrometres(1);

  private static final Length INCH = Length.ofInches(1, 1);

  public Turning {
    if (perMinute <= 0 || edges <= 0) {
      throw new IllegalArgumentException(perMinute + " revolutions of " + edges + " edges");
    }
  }

  /**
   * What each edge takes.
   *
   * @param feed of one minute
   */
  public Worked<Length> chip(Worked<Length> feed) {
    feed.value().requirePositive(feed.name());
    return spacing("chip of each edge", feed);
  }

  /** The feed of one minute at which each edge takes this chip. */
  public Worked<Length> feed(Worked<Length> chip) {
    chip.value().requirePositive(chip.name());
    return Worked.called("feed of one minute")
        .by("chip × revolutions × edges")
        .with("chip", chip)
        .with("revolutions", revolutions())
        .with("edges", edgesGiven())
        .is(chip.value().times(cutsPerMinute()));
  }

  /**
   * From one knife mark to the next on a planed face.
   *
   * @param feed of one minute
   */
  public Worked<Length> markSpacing(Worked<Length> feed) {
    feed.value().requirePositive(feed.name());
    return spacing("from one knife mark to the next", feed);
  }

  /**
   * Knife marks on an inch of planed face, to one decimal downward: never finer than it is.
   *
   * @param feed of one minute
   */
  public Worked<Amount> marksPerInch(Worked<Length> feed) {
    return Worked.called("knife marks to the inch")
        .by("revolutions × edges × 1 in ÷ feed, to 0.1 downward")
        .with("revolutions", revolutions())
        .with("edges", edgesGiven())
        .with("feed", feed)
        .is(new Amount(marks(INCH, feed), "to the inch"));
  }

  /** The same on a centimetre. */
  public Worked<Amount> marksPerCentimetre(Worked<Length> feed) {
    return Worked.called("knife marks to the centimetre")
        .by("revolutions × edges × 10 mm ÷ feed, to 0.1 downward")
        .with("revolutions", revolutions())
        .with("edges", edgesGiven())
        .with("feed", feed)
        .is(new Amount(marks(Length.ofMillimetres(10), feed), "to the centimetre"));
  }

  /** The fastest feed of one minute that still leaves so many knife marks on an inch. */
  public Worked<Length> fastestFeed(Worked<Integer> leastPerInch) {
    if (leastPerInch.value() <= 0) {
      throw new IllegalArgumentException(leastPerInch.value() + " knife marks to the inch");
    }
    var feed =
        INCH.inProportion(
            new Length(cutsPerMinute()),
            new Length(leastPerInch.value()),
            Length.ofMillimetres(1),
            Rounding.DOWN);
    return Worked.called("fastest feed of one minute")
        .by("revolutions × edges × 1 in ÷ marks wanted, to 1 mm downward")
        .with("revolutions", revolutions())
        .with("edges", edgesGiven())
        .with("marks wanted", leastPerInch)
        .from(leastPerInch.source())
        .is(feed);
  }

  private Worked<Length> spacing(String name, Worked<Length> feed) {
    return Worked.called(name)
        .by("feed ÷ (revolutions × edges), to 0.001 mm upward")
        .with("feed", feed)
        .with("revolutions", revolutions())
        .with("edges", edgesGiven())
        .is(CHIP_STEP.times(feed.value().dividedBy(CHIP_STEP.times(cutsPerMinute()), Rounding.UP)));
  }

  private BigDecimal marks(Length on, Worked<Length> feed) {
    feed.value().requirePositive(feed.name());
    return on.inMillimetres()
        .multiply(BigDecimal.valueOf(cutsPerMinute()))
        .divide(feed.value().inMillimetres(), 1, RoundingMode.FLOOR);
  }

  private long cutsPerMinute() {
    return Math.multiplyExact((long) perMinute, edges);
  }

  private Worked<Integer> revolutions() {
    return Worked.given("revolutions a minute", perMinute, Citation.ENTERED);
  }

  private Worked<Integer> edgesGiven() {
    return Worked.given("edges that cut in one revolution", edges, Citation.ENTERED);
  }
}
