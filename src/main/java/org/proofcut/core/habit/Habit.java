package org.proofcut.core.habit;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.proofcut.core.evidence.Citation;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.LengthUnit;
import org.proofcut.core.measure.Rounding;
import org.proofcut.core.measure.display.Scale;

/**
 * What proof cuts have taught of one trait, and how much of it the next set-up should use.
 *
 * <p>Using the mean of n proofs adds its own chance, variance {@code c² = s² ÷ n}, to a set-up;
 * staying with the mark leaves the whole of what is off, {@code m²}. So it is the more worth using
 * the larger {@code m²} is against {@code c²}, and of m this share is used:
 *
 * <pre>{@code 1 − c² ÷ m²}, or nothing where that is negative</pre>
 *
 * What is known of s from n proofs alone is poor, and from one nothing. So it is taken as if one
 * more had come in with the usual scatter u: {@code s² = (u² + (n − 1) · s²) ÷ n}. One proof far
 * off the mark is then used almost whole; one that lies within the usual scatter is not used at
 * all. Our choice among several, by what they did for simulated shops: docs/learning.md.
 *
 * @param learned the observations that count, in order
 * @param open those that the maker has to be asked about
 * @param leftOut those that the maker has left out
 * @param since when and why it was started afresh, if it was
 * @param aside why it is not used, if the maker said so
 * @param estimate what those that count come to; empty before the first
 */
public record Habit(
    Trait trait,
    List<Observation> learned,
    List<Lesson.AskFirst> open,
    List<Lesson.LeftOut> leftOut,
    Optional<Ruling.StartedAfresh> since,
    Optional<Ruling.SetAside> aside,
    Optional<Estimate> estimate) {

  private static final Citation BY_SIMULATION =
      new Citation(Citation.Kind.CHOSEN, "tried on simulated shops", "docs/learning.md");

  private static final MathContext DIGITS = MathContext.DECIMAL64;

  public Habit {
    learned = List.copyOf(learned);
    open = List.copyOf(open);
    leftOut = List.copyOf(leftOut);
  }

  static Habit unknown(Trait trait) {
    return new Habit(
        trait,
        List.of(),
        List.of(),
        List.of(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty());
  }

  /** Each observation since the last start, with what became of it, as they happened. */
  public List<Lesson> lessons() {
    return Stream.of(learned.stream().map(Lesson.Learned::new), open.stream(), leftOut.stream())
        .<Lesson>flatMap(lessons -> lessons)
        .sorted(Comparator.comparing(lesson -> lesson.observation().at()))
        .toList();
  }

  /**
   * The size to reckon with in place of a mark.
   *
   * @param marked the width marked on the cutter, or the distance that base and mark come to
   */
  public Advice size(Worked<Length> marked, HabitLimits limits, LengthUnit unit) {
    if (!trait.isSize()) {
      throw new IllegalStateException("no size of its own: " + trait);
    }
    return advise(marked, limits, unit);
  }

  /** What to add to the figure that a scale is set to, so that the cut comes to it. */
  public Advice correction(HabitLimits limits, LengthUnit unit) {
    if (!(trait instanceof Trait.ScaleOffset scale)) {
      throw new IllegalStateException("only a scale is corrected, not " + trait);
    }
    var nothing = Worked.entered("offset of the " + scale.datum().words(), Length.ZERO);
    var advice = advise(nothing, limits, unit);
    if (!advice.isLearned()) {
      return advice;
    }
    var correction =
        Worked.called("correction of the " + scale.datum().words())
            .by("0 − offset")
            .with("offset", advice.use())
            .is(advice.use().value().negated());
    return new Advice(correction, true, advice.words());
  }

  /** By how much a stack cuts wider than its parts come to. */
  public Advice wider(HabitLimits limits, LengthUnit unit) {
    if (!(trait instanceof Trait.StackWider)) {
      throw new IllegalStateException("only a stack has parts, not " + trait);
    }
    return advise(Worked.entered("what its parts leave out", Length.ZERO), limits, unit);
  }

  private Advice advise(Worked<Length> marked, HabitLimits limits, LengthUnit unit) {
    if (estimate.isEmpty()) {
      return new Advice(marked, false, "No proof cut has shown it yet.");
    }
    var found = found(unit);
    if (aside.isPresent()) {
      return new Advice(marked, false, found + " Set aside: " + aside.get().because() + ".");
    }
    var use = use(marked, estimate.get(), limits);
    if (use.value().equals(marked.value())) {
      return new Advice(marked, false, found + " That is too near to tell from chance.");
    }
    return new Advice(use, true, found);
  }

  private Worked<Length> use(Worked<Length> marked, Estimate known, HabitLimits limits) {
    var mean = Worked.measured("mean of " + Lesson.proofs(known.proofs()), known.mean());
    var usual = limits.usualScatter(trait);
    var chance = chance(known, usual);
    var off = known.mean().minus(marked.value());
    return Worked.called(marked.name() + ", as proof cuts found it")
        .by(
            "mark + (mean − mark) × (1 − chance² ÷ (mean − mark)²), the mark itself where the mean"
                + " is nearer to it than chance")
        .with("mark", marked)
        .with("mean", mean)
        .with("chance", chance)
        .from(BY_SIMULATION)
        .is(marked.value().plus(standsOut(off, chance.value())));
  }

  /** How far the mean may be off by chance: one standard deviation of it. */
  private static Worked<Length> chance(Estimate known, Worked<Length> usual) {
    var own = known.scatter().map(Estimate.Scatter::deviation).orElse(Length.ZERO);
    var scatter = Worked.measured("scatter among " + Lesson.proofs(known.proofs()), own);
    var n = BigDecimal.valueOf(known.proofs());
    var variance =
        squared(usual.value())
            .add(squared(own).multiply(n.subtract(BigDecimal.ONE)))
            .divide(n.multiply(n), DIGITS);
    return Worked.called("chance in the mean")
        .by("√((usual² + (n − 1) × scatter²) ÷ n) ÷ √n, to 0.001 mm")
        .with("usual", usual)
        .with("scatter", scatter)
        .with("n", Worked.given("number of proofs", known.proofs(), Citation.MEASURED))
        .from(BY_SIMULATION)
        .is(Estimate.onStep(variance.sqrt(DIGITS), Rounding.UP));
  }

  /** {@code m − c² ÷ m}, to 0.001 mm; nothing where m is within c. */
  private static Length standsOut(Length off, Length chance) {
    if (off.abs().isAtMost(chance)) {
      return Length.ZERO;
    }
    var kept =
        BigDecimal.valueOf(off.picometres())
            .subtract(squared(chance).divide(BigDecimal.valueOf(off.picometres()), DIGITS));
    return Estimate.onStep(kept, Rounding.NEAREST);
  }

  private static BigDecimal squared(Length length) {
    return BigDecimal.valueOf(length.picometres()).pow(2);
  }

  /** What was found, with its interval. */
  private String found(LengthUnit unit) {
    var known = estimate.orElseThrow();
    var scale = Scale.caliper(unit);
    var interval =
        known
            .scatter()
            .map(
                scatter ->
                    ", ±"
                        + scale
                            .show(
                                scatter
                                    .plusOrMinus()
                                    .roundedTo(scale.step(), Rounding.UP)
                                    .max(scale.step()))
                            .text())
            .orElse("; one alone gives no interval");
    return cameTo(known.mean(), scale) + ": " + Lesson.proofs(known.proofs()) + interval + ".";
  }

  private String cameTo(Length mean, Scale scale) {
    if (trait instanceof Trait.CutWidth) {
      return "Your cutter has cut " + scale.show(mean).text() + " wide";
    }
    if (trait instanceof Trait.BaseToEdge) {
      return "From base edge to cutting edge it has been " + scale.show(mean).text();
    }
    if (trait instanceof Trait.StackWider) {
      return "Your stacks have cut "
          + scale.show(mean.abs()).text()
          + (mean.isNegative() ? " narrower" : " wider")
          + " than their parts come to";
    }
    var datum = ((Trait.ScaleOffset) trait).datum().words();
    if (mean.roundedTo(scale.step(), Rounding.NEAREST).isZero()) {
      return "Set by your " + datum + ", cuts have come out as set";
    }
    return "Set by your "
        + datum
        + ", cuts have come out "
        + scale.show(mean.abs()).text()
        + (mean.isPositive() ? " more" : " less")
        + " than set";
  }
}
