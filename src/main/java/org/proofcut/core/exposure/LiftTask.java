package org.proofcut.core.exposure;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.proofcut.core.evidence.Amount;
import org.proofcut.core.evidence.Citation;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.exposure.Lift.NotCovered;
import org.proofcut.core.exposure.LiftTable.Grip;
import org.proofcut.core.exposure.LiftTable.Span;
import org.proofcut.core.measure.Angle;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.LengthUnit;

/**
 * Something lifted from one place to another, judged where it is taken up and, where it has to be
 * put down with care, there as well: the end at which less is recommended decides.
 *
 * @param weight what is lifted
 * @param from how it is reached where it is taken up
 * @param fromHigh height of the hands there
 * @param placed how it is reached where it is put down with care; empty where it may be let go
 * @param toHigh height of the hands where it is put down
 */
public record LiftTask(
    Worked<Amount> weight,
    Reach from,
    Worked<Length> fromHigh,
    Optional<Reach> placed,
    Worked<Length> toHigh,
    Worked<BigDecimal> often,
    Span span,
    Grip grip,
    List<NotCovered> notCovered) {

  /**
   * How far the hands have to go for it.
   *
   * @param out from the middle between the ankles to the middle between the hands
   * @param turn from straight ahead
   */
  public record Reach(Worked<Length> out, Worked<Angle> turn) {}

  /** One end of the way. */
  public enum End {
    START("where it is taken up"),
    FINISH("where it is put down");

    private final String words;

    End(String words) {
      this.words = words;
    }

    public String words() {
      return words;
    }
  }

  /** What the lifting index says. */
  public enum Strain {
    /** Index to 1. */
    WITHIN("Within what is recommended"),
    /** Index over 1. */
    RAISED("More than is recommended: the risk to the back rises"),
    /** Index over 3. */
    GRAVE("Far too much: nearly every worker is at risk"),
    /** Nothing at all is recommended to be lifted so. */
    OUT_OF_REACH("Nothing should be lifted like this");

    private final String words;

    Strain(String words) {
      this.words = words;
    }

    public String words() {
      return words;
    }
  }

  /**
   * One end, judged.
   *
   * @param most weight recommended as most
   * @param index lifting index; empty where nothing is recommended to be lifted
   */
  public record Judged(
      End end, Lift lift, Worked<Amount> most, Optional<Worked<BigDecimal>> index, Strain strain) {}

  /**
   * One thing done otherwise.
   *
   * @param change what, in words
   * @param then what decides after it
   */
  public record Better(String change, Judged then) {}

  private static final Citation INDEX =
      new Citation(Lift.EQUATION.kind(), Lift.EQUATION.source(), "p. 20");

  private static final BigDecimal GRAVELY = BigDecimal.valueOf(3);
  private static final BigDecimal SELDOM = new BigDecimal("0.2");

  public LiftTask {
    notCovered = List.copyOf(notCovered);
  }

  private Worked<Length> travel() {
    return Worked.called("way of the hands")
        .by("height at the end − height at the start, upward or downward")
        .with("height at the end", toHigh)
        .with("height at the start", fromHigh)
        .is(toHigh.value().minus(fromHigh.value()).abs());
  }

  private Lift lift(End end) {
    var reach = end == End.START ? from : placed.orElseThrow();
    var high = end == End.START ? fromHigh : toHigh;
    return new Lift(reach.out(), high, travel(), reach.turn(), often, span, grip, notCovered);
  }

  /** Both ends, or the first alone; none where the equation was not made for such a lift. */
  public List<Judged> judged(LengthUnit unit) {
    if (!notCovered.isEmpty()) {
      return List.of();
    }
    var ends = new ArrayList<Judged>();
    ends.add(judged(End.START, unit));
    if (placed.isPresent()) {
      ends.add(judged(End.FINISH, unit));
    }
    return ends;
  }

  /** The end at which less is recommended. */
  public Optional<Judged> decides(LengthUnit unit) {
    return judged(unit).stream().min(Comparator.comparing(one -> one.most().value().value()));
  }

  private Judged judged(End end, LengthUnit unit) {
    var lift = lift(end);
    var most = lift.most(unit).orElseThrow();
    var load = WeightUnit.beside(unit).of(weight.value());
    var limit = most.value().value();
    if (limit.signum() == 0) {
      return new Judged(end, lift, most, Optional.empty(), Strain.OUT_OF_REACH);
    }
    var index =
        Worked.called("lifting index")
            .by("weight ÷ weight recommended as most, to 0.01 upward")
            .with("weight", weight)
            .with(most)
            .from(INDEX)
            .is(load.divide(limit, 2, RoundingMode.CEILING));
    // Judged before rounding: 1.004 is more than 1.
    var strain =
        load.compareTo(limit) <= 0
            ? Strain.WITHIN
            : load.compareTo(limit.multiply(GRAVELY)) <= 0 ? Strain.RAISED : Strain.GRAVE;
    return new Judged(end, lift, most, Optional.of(index), strain);
  }

  /**
   * What would come of each thing that helps if it alone is done otherwise, the most helpful first.
   */
  public List<Better> better(LengthUnit unit) {
    var now = decides(unit);
    if (now.isEmpty()) {
      return List.of();
    }
    var lift = now.get().lift();
    var start = now.get().end() == End.START;
    var better = new ArrayList<Better>();
    if (isLessThanOne(lift.nearness(unit))) {
      add(
          better,
          "Nearer: hold it close",
          with(near(from, unit), placed.map(r -> near(r, unit))),
          unit);
    }
    if (isLessThanOne(lift.height(unit))) {
      var knuckles = Worked.entered("height where the knuckles hang", Lift.knuckles(unit));
      add(
          better,
          start ? "Taken up where the knuckles hang" : "Put down where the knuckles hang",
          with(start ? knuckles : fromHigh, start ? toHigh : knuckles),
          unit);
    }
    if (isLessThanOne(lift.way(unit))) {
      add(
          better,
          start ? "Put down no higher than it is taken up" : "Taken up as high as it is put down",
          start ? with(fromHigh, fromHigh) : with(toHigh, toHigh),
          unit);
    }
    if (isLessThanOne(lift.straightness())) {
      add(
          better,
          "Straight ahead, feet turned instead of the back",
          with(ahead(from), placed.map(LiftTask::ahead)),
          unit);
    }
    if (isLessThanOne(lift.seldomness())) {
      add(better, "Seldomer: once in five minutes, for an hour at most", seldom(), unit);
    }
    if (isLessThanOne(lift.hold())) {
      add(better, "With handles on it", gripped(Grip.GOOD), unit);
    }
    // One thing alone may change nothing at the end that decides, or lengthen the way.
    better.removeIf(
        one -> one.then().most().value().value().compareTo(now.get().most().value().value()) <= 0);
    better.sort(Comparator.comparing((Better one) -> one.then().most().value().value()).reversed());
    return better;
  }

  private static void add(List<Better> to, String change, LiftTask task, LengthUnit unit) {
    task.decides(unit).ifPresent(then -> to.add(new Better(change, then)));
  }

  private static boolean isLessThanOne(Worked<BigDecimal> multiplier) {
    return multiplier.value().compareTo(BigDecimal.ONE) < 0;
  }

  private static Reach near(Reach reach, LengthUnit unit) {
    return new Reach(Worked.entered("as near as counts", Lift.nearest(unit)), reach.turn());
  }

  private static Reach ahead(Reach reach) {
    return new Reach(reach.out(), Worked.entered("straight ahead", Angle.ZERO));
  }

  private LiftTask with(Reach first, Optional<Reach> last) {
    return new LiftTask(weight, first, fromHigh, last, toHigh, often, span, grip, notCovered);
  }

  private LiftTask with(Worked<Length> first, Worked<Length> last) {
    return new LiftTask(weight, from, first, placed, last, often, span, grip, notCovered);
  }

  private LiftTask seldom() {
    return new LiftTask(
        weight,
        from,
        fromHigh,
        placed,
        toHigh,
        Worked.entered("once in five minutes", SELDOM),
        Span.ONE_HOUR,
        grip,
        notCovered);
  }

  private LiftTask gripped(Grip other) {
    return new LiftTask(weight, from, fromHigh, placed, toHigh, often, span, other, notCovered);
  }

  /** What to do where the equation gives no figure, by what it is and what it weighs. */
  public List<String> instead(LengthUnit unit) {
    var rules = new ArrayList<String>();
    if (notCovered.contains(NotCovered.UNSTABLE)) {
      rules.add("Break it down where it lies: cut it smaller before it is moved.");
    }
    rules.add("Move it on a cart, or slide it on a support at the height where it is wanted.");
    var heavy =
        WeightUnit.beside(unit).of(weight.value()).compareTo(Lift.atBest(unit).value().value()) > 0;
    rules.add(
        heavy
            ? "Never alone: it weighs more than "
                + Lift.atBest(unit).value()
                + ", the most that is recommended under the best conditions."
            : "With a second person, one at each end, and agree who says when.");
    for (var one : notCovered) {
      remedy(one).ifPresent(rules::add);
    }
    return List.copyOf(rules);
  }

  private static Optional<String> remedy(NotCovered one) {
    return switch (one) {
      case ONE_HAND -> Optional.of("Take both hands to it: put down what the other hand holds.");
      case LONG_DAY -> Optional.of("End the lifting within eight hours, or share it.");
      case NOT_STANDING -> Optional.of("Bring it up to where you can stand to it.");
      case CONFINED -> Optional.of("Clear room to stand upright with both feet free.");
      case SLIPPERY -> Optional.of("Sweep and dry the floor first: dust on a smooth floor slides.");
      case FAST -> Optional.of("Lift it slowly, without a jerk.");
      case HOT_OR_COLD -> Optional.of("Rest oftener, and lift less at a time.");
      case UNSTABLE, CARRIED -> Optional.empty();
    };
  }
}
