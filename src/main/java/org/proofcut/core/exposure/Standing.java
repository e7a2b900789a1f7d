package org.proofcut.core.exposure;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.proofcut.core.evidence.Amount;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.measure.Length;

/**
 * Something that stands free on its feet, and what pulls it over the front ones: it stands while
 * the weights behind the front feet turn it back by more than those before them, and whoever pulls,
 * turn it over. Statics. All weights and pulls are in one unit; a pull counts as a spring balance
 * shows it.
 *
 * @param masses all that weighs on it: its parts, what it holds, doors, drawers
 * @param pulls what draws it straight forward
 * @param drop how much lower the front feet stand than the rear ones
 * @param base from the front feet to the rear ones
 */
public record Standing(
    List<Mass> masses, List<Pull> pulls, Worked<Length> drop, Worked<Length> base) {

  /**
   * One weight, which is known between two ends; the worse one counts.
   *
   * @param behind how far its middle of gravity lies behind the front feet; negative before them
   * @param high how high it lies above the feet
   */
  public record Mass(
      String name,
      Worked<Amount> least,
      Worked<Amount> most,
      Worked<Length> behind,
      Worked<Length> high) {

    /** One whose weight is known. */
    public static Mass of(
        String name, Worked<Amount> weight, Worked<Length> behind, Worked<Length> high) {
      return new Mass(name, weight, weight, behind, high);
    }
  }

  /**
   * A pull straight forward.
   *
   * @param high at what height above the feet
   */
  public record Pull(String name, Worked<Amount> force, Worked<Length> high) {}

  private static final MathContext DIGITS = new MathContext(30);

  public Standing {
    masses = List.copyOf(masses);
    pulls = List.copyOf(pulls);
    if (drop.value().isNegative() || !drop.value().isLessThan(base.value())) {
      throw new IllegalArgumentException(
          "a floor that drops by " + drop.value() + " over " + base.value());
    }
    var units =
        Stream.concat(
                masses.stream().flatMap(mass -> Stream.of(mass.least(), mass.most())),
                pulls.stream().map(Pull::force))
            .map(weight -> weight.value().unit())
            .distinct()
            .toList();
    if (units.size() > 1) {
      throw new IllegalArgumentException("weights in several units: " + units);
    }
  }

  /** On a level floor. */
  public static Standing level(List<Mass> masses, List<Pull> pulls, Worked<Length> base) {
    return new Standing(masses, pulls, Worked.entered("drop of the floor", Length.ZERO), base);
  }

  /** What holds it less what pulls it over, a weight times a millimetre; it tips from zero down. */
  public Worked<Amount> margin() {
    var working =
        Worked.called("what is left before it tips")
            .by("sum of all that turns it back, less all that turns it over");
    var left = BigDecimal.ZERO;
    for (var turning : turnings()) {
      working = working.with(turning);
      left = left.add(turning.value().value());
    }
    return working.is(new Amount(left, unit() + " mm"));
  }

  public boolean tips() {
    return margin().value().value().signum() <= 0;
  }

  /**
   * How much harder it can be pulled forward at a height until it tips, to a tenth downward; zero
   * where it tips already.
   */
  public Worked<Amount> morePull(Worked<Length> high) {
    var margin = margin();
    var arm = high.value().inMillimetres().multiply(cosine());
    var more =
        arm.signum() > 0
            ? margin.value().value().max(BigDecimal.ZERO).divide(arm, 1, RoundingMode.DOWN)
            : BigDecimal.ZERO;
    return Worked.called("further pull that tips it")
        .by("what is left ÷ height of the pull" + (isLevel() ? "" : " ÷ secant of the slope"))
        .with("what is left", margin)
        .with("height of the pull", high)
        .is(new Amount(more, unit()));
  }

  private List<Worked<Amount>> turnings() {
    var turnings = new ArrayList<Worked<Amount>>();
    masses.forEach(mass -> turnings.add(turning(mass)));
    pulls.forEach(pull -> turnings.add(turning(pull)));
    return turnings;
  }

  /** Whether its middle of gravity hangs before the front feet, as the floor lies. */
  public boolean isTurnedOverBy(Mass mass) {
    return arm(mass).signum() < 0;
  }

  /** How far behind the front feet it hangs, in millimetres. */
  private BigDecimal arm(Mass mass) {
    return mass.behind()
        .value()
        .inMillimetres()
        .multiply(cosine())
        .subtract(mass.high().value().inMillimetres().multiply(sine()));
  }

  /** Positive where it turns the case back onto its feet. */
  private Worked<Amount> turning(Mass mass) {
    var arm = arm(mass);
    var weight = arm.signum() >= 0 ? mass.least() : mass.most();
    var working =
        Worked.called("turned by the " + mass.name())
            .by(
                isLevel()
                    ? "weight × behind the front feet"
                    : "weight × (behind the front feet × cosine of the slope − height × its sine)")
            .with("weight", weight)
            .with("behind the front feet", mass.behind());
    if (!isLevel()) {
      working = working.with("height", mass.high()).with("drop", drop).with("base", base);
    }
    return working.is(down(weight.value().value().multiply(arm)));
  }

  private Worked<Amount> turning(Pull pull) {
    var arm = pull.high().value().inMillimetres().multiply(cosine());
    return Worked.called("turned by the " + pull.name())
        .by("− pull × height" + (isLevel() ? "" : " × cosine of the slope"))
        .with("pull", pull.force())
        .with("height", pull.high())
        .is(down(pull.force().value().value().multiply(arm).negate()));
  }

  /** To a tenth, and always against it. */
  private Amount down(BigDecimal turning) {
    return new Amount(turning.setScale(1, RoundingMode.FLOOR), unit() + " mm");
  }

  private boolean isLevel() {
    return drop.value().isZero();
  }

  private BigDecimal sine() {
    return drop.value().inMillimetres().divide(base.value().inMillimetres(), DIGITS);
  }

  private BigDecimal cosine() {
    return isLevel()
        ? BigDecimal.ONE
        : BigDecimal.ONE.subtract(sine().multiply(sine(), DIGITS)).sqrt(DIGITS);
  }

  private String unit() {
    return Stream.concat(
            masses.stream().map(mass -> mass.least().value().unit()),
            pulls.stream().map(pull -> pull.force().value().unit()))
        .findFirst()
        .orElse("kg");
  }
}
