package org.proofcut.core.exposure;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import org.proofcut.core.evidence.Amount;
import org.proofcut.core.evidence.Citation;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.measure.Angle;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.LengthUnit;

/**
 * Two hands lift or lower something, standing. How much it may weigh for nearly all healthy
 * workers, by the revised lifting equation: {@code LC · HM · VM · DM · AM · FM · CM}, a load that
 * is lifted under the best conditions and a multiplier for each of them that is worse. It is
 * printed for inches and for centimetres, which differ a little; both are kept as printed.
 *
 * <p>Not for what {@link NotCovered} names, such as carrying: then there is no figure at all.
 *
 * @param horizontal from the middle between the ankles to the middle between the hands
 * @param vertical from the floor to the hands
 * @param travel how far up or down the hands go
 * @param turn from straight ahead to where the load is, with the shoulders turned
 * @param often lifts in a minute, over a quarter of an hour
 * @param span how long a day it goes on
 * @param grip how the load can be held
 * @param notCovered what of it the equation was not made for
 */
public record Lift(
    Worked<Length> horizontal,
    Worked<Length> vertical,
    Worked<Length> travel,
    Worked<Angle> turn,
    Worked<BigDecimal> often,
    LiftTable.Span span,
    LiftTable.Grip grip,
    List<NotCovered> notCovered) {

  static final Citation EQUATION =
      new Citation(
          Citation.Kind.HANDBOOK,
          "NIOSH 94-110, Applications manual for the revised lifting equation, 2021",
          "1.1");

  private static final Citation ESTIMATE =
      new Citation(EQUATION.kind(), EQUATION.source(), "1.3.1.1");

  /** What the equation was not made for; any of them, and there is no figure. */
  public enum NotCovered {
    ONE_HAND("lifted with one hand"),
    LONG_DAY("lifted for more than eight hours"),
    NOT_STANDING("lifted sitting or kneeling"),
    CONFINED("lifted where there is no room to stand freely"),
    UNSTABLE("a load that bends, shifts or catches the wind, such as a whole sheet"),
    CARRIED("carried, pushed or pulled"),
    SLIPPERY("lifted on a slippery floor"),
    FAST("jerked up or lowered fast"),
    HOT_OR_COLD("lifted where it is hot or cold");

    private final String words;

    NotCovered(String words) {
      this.words = words;
    }

    public String words() {
      return words;
    }
  }

  private static final MathContext DIGITS = new MathContext(20);
  private static final BigDecimal CENTIMETRES = BigDecimal.TEN;

  /** The constants of one of both printed forms, lengths in inches or centimetres. */
  private enum Form {
    INCH("in", "51", "lb", "10", "25", "30", "0.0075", "1.8", "70", "10", "70", "8", "10"),
    METRIC("cm", "23", "kg", "25", "63", "75", "0.003", "4.5", "175", "25", "175", "20", "25");

    private final String lengths;
    private final BigDecimal load;
    private final String unit;
    private final BigDecimal nearest;
    private final BigDecimal farthest;
    private final BigDecimal knuckles;
    private final BigDecimal perHeight;
    private final BigDecimal overTravel;
    private final BigDecimal highest;
    private final BigDecimal leastTravel;
    private final BigDecimal mostTravel;
    private final String body;
    private final String lowBody;

    Form(
        String lengths,
        String load,
        String unit,
        String nearest,
        String farthest,
        String knuckles,
        String perHeight,
        String overTravel,
        String highest,
        String leastTravel,
        String mostTravel,
        String body,
        String lowBody) {
      this.lengths = lengths;
      this.load = new BigDecimal(load);
      this.unit = unit;
      this.nearest = new BigDecimal(nearest);
      this.farthest = new BigDecimal(farthest);
      this.knuckles = new BigDecimal(knuckles);
      this.perHeight = new BigDecimal(perHeight);
      this.overTravel = new BigDecimal(overTravel);
      this.highest = new BigDecimal(highest);
      this.leastTravel = new BigDecimal(leastTravel);
      this.mostTravel = new BigDecimal(mostTravel);
      this.body = body;
      this.lowBody = lowBody;
    }

    private Length length(String number) {
      return this == INCH
          ? Length.of(new BigDecimal(number), LengthUnit.INCH)
          : Length.of(new BigDecimal(number).multiply(CENTIMETRES), LengthUnit.MILLIMETRE);
    }

    private BigDecimal of(Length length) {
      return this == INCH ? length.inInches() : length.inMillimetres().divide(CENTIMETRES, DIGITS);
    }
  }

  public Lift {
    notCovered = List.copyOf(notCovered);
    if (horizontal.value().isNegative()
        || vertical.value().isNegative()
        || travel.value().isNegative()
        || often.value().signum() < 0) {
      throw new IllegalArgumentException("a lift of less than nothing");
    }
  }

  /** The nearer the load, the more of it: {@code HM}. */
  public Worked<BigDecimal> nearness(LengthUnit unit) {
    var form = form(unit);
    var h = form.of(horizontal.value()).max(form.nearest);
    return multiplier(
        "multiplier of nearness",
        form.nearest + " " + form.lengths + " ÷ how far out the hands are",
        "how far out the hands are",
        horizontal,
        h.compareTo(form.farthest) > 0 ? BigDecimal.ZERO : form.nearest.divide(h, DIGITS));
  }

  /** Best where the knuckles hang: {@code VM}. */
  public Worked<BigDecimal> height(LengthUnit unit) {
    var form = form(unit);
    var v = form.of(vertical.value());
    return multiplier(
        "multiplier of height",
        "1 − "
            + form.perHeight
            + " × distance of the hands' height from "
            + form.knuckles
            + " "
            + form.lengths
            + ", in "
            + form.lengths,
        "height of the hands",
        vertical,
        v.compareTo(form.highest) > 0
            ? BigDecimal.ZERO
            : BigDecimal.ONE.subtract(form.perHeight.multiply(v.subtract(form.knuckles).abs())));
  }

  /** The shorter the way, the more: {@code DM}. */
  public Worked<BigDecimal> way(LengthUnit unit) {
    var form = form(unit);
    var d = form.of(travel.value()).max(form.leastTravel);
    return multiplier(
        "multiplier of the way",
        "0.82 + " + form.overTravel + " " + form.lengths + " ÷ way of the hands",
        "way of the hands",
        travel,
        d.compareTo(form.mostTravel) > 0
            ? BigDecimal.ZERO
            : new BigDecimal("0.82").add(form.overTravel.divide(d, DIGITS)));
  }

  /** Best straight ahead: {@code AM}. */
  public Worked<BigDecimal> straightness() {
    var degrees =
        BigDecimal.valueOf(turn.value().hundredthsOfAnArcSecond())
            .divide(BigDecimal.valueOf(Angle.ofDegrees(1).hundredthsOfAnArcSecond()), DIGITS)
            .abs();
    return multiplier(
        "multiplier of turning",
        "1 − 0.0032 × degrees of the turn",
        "turn",
        turn,
        degrees.compareTo(BigDecimal.valueOf(135)) > 0
            ? BigDecimal.ZERO
            : BigDecimal.ONE.subtract(new BigDecimal("0.0032").multiply(degrees)));
  }

  /** The seldomer, the more: {@code FM}, from its table. */
  public Worked<BigDecimal> seldomness() {
    return multiplier(
        "multiplier of how often",
        "from the table of how often, how long a day and how high",
        "lifts in a minute",
        often,
        LiftTable.frequency(often.value(), span, low()));
  }

  /** How the hands can hold it: {@code CM}, from its table. */
  public Worked<BigDecimal> hold() {
    return multiplier(
        "multiplier of the grip",
        "from the table of grips",
        "height of the hands",
        vertical,
        LiftTable.grip(grip, low()));
  }

  /** Both tables part at 30 in, 75 cm. */
  private boolean low() {
    return vertical.value().isLessThan(Length.ofInches(30, 1));
  }

  /** All six multipliers, in the order of the equation. */
  public List<Worked<BigDecimal>> multipliers(LengthUnit unit) {
    return List.of(nearness(unit), height(unit), way(unit), straightness(), seldomness(), hold());
  }

  /**
   * How far out the hands are, guessed from how deep the load is: where it can't be measured while
   * the load is held close.
   *
   * @param deep size of the load from the person outward
   * @param high from the floor to the hands
   */
  public static Worked<Length> estimatedOut(
      Worked<Length> deep, Worked<Length> high, LengthUnit unit) {
    var form = form(unit);
    boolean low = form.of(high.value()).compareTo(form.nearest) < 0;
    var body = form.length(low ? form.lowBody : form.body);
    return Worked.called("how far out the hands are, estimated")
        .by(
            "half of how deep the load is + "
                + (low ? form.lowBody : form.body)
                + " "
                + form.lengths)
        .with("how deep the load is", deep)
        .with("height of the hands", high)
        .from(ESTIMATE)
        .is(deep.value().half().plus(body));
  }

  /** As near as counts: 10 in, 25 cm. */
  static Length nearest(LengthUnit unit) {
    return form(unit).length(form(unit).nearest.toPlainString());
  }

  /** Where the knuckles hang: 30 in, 75 cm. */
  static Length knuckles(LengthUnit unit) {
    return form(unit).length(form(unit).knuckles.toPlainString());
  }

  /** What may be lifted under the best conditions: 51 lb, 23 kg. */
  public static Worked<Amount> atBest(LengthUnit unit) {
    var form = form(unit);
    return Worked.given(
        "weight recommended as most under the best conditions",
        new Amount(form.load, form.unit),
        EQUATION);
  }

  /**
   * The weight that is recommended as most, to a tenth downward; zero where it is out of reach.
   * Empty where the equation was not made for such a lift.
   */
  public Optional<Worked<Amount>> most(LengthUnit unit) {
    if (!notCovered.isEmpty()) {
      return Optional.empty();
    }
    var form = form(unit);
    var product = form.load;
    var working =
        Worked.called("weight recommended as most")
            .by(form.load + " " + form.unit + " × all multipliers")
            .from(EQUATION);
    for (var one : multipliers(unit)) {
      working = working.with(one);
      product = product.multiply(one.value(), DIGITS);
    }
    return Optional.of(working.is(new Amount(product.setScale(1, RoundingMode.DOWN), form.unit)));
  }

  private static Form form(LengthUnit unit) {
    return unit == LengthUnit.INCH ? Form.INCH : Form.METRIC;
  }

  private static Worked<BigDecimal> multiplier(
      String name, String by, String as, Worked<?> input, BigDecimal exact) {
    return Worked.called(name)
        .by(by + ", down to 0.0001")
        .with(as, input)
        .from(EQUATION)
        .is(exact.max(BigDecimal.ZERO).setScale(4, RoundingMode.DOWN));
  }
}
