package org.proofcut.core.geometry;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import org.proofcut.core.evidence.Problem;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.measure.Angle;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.LengthUnit;
import org.proofcut.core.measure.Rounding;
import org.proofcut.core.measure.display.Scale;

/**
 * A piece that narrows along its length, cut on a carrier whose own edge rides the fence. The piece
 * lies on the carrier so that the line of the cut is the carrier's edge; two stops behind it hold
 * it there.
 *
 * @param run over which it narrows, along the piece's straight edge
 * @param wide where it begins
 * @param narrow where it ends
 * @param bothEdges whether both edges run in, each by half; else one edge takes it all
 */
public record Taper(
    Worked<Length> run, Worked<Length> wide, Worked<Length> narrow, boolean bothEdges) {

  private static final MathContext DIGITS = new MathContext(50);

  public Taper {
    run.value().requirePositive(run.name());
    wide.value().requirePositive(wide.name());
    if (narrow.value().isNegative()) {
      throw new IllegalArgumentException(narrow.name() + " is negative: " + narrow.value());
    }
  }

  /**
   * How far one edge runs in over the whole run.
   *
   * @throws IllegalArgumentException if {@link #problems} stops it
   */
  public Worked<Length> runsIn() {
    return Worked.called("how far one edge runs in")
        .by(bothEdges ? "(wide − narrow) ÷ 2" : "wide − narrow")
        .with("wide", wide)
        .with("narrow", narrow)
        .is(edge().requirePositive("how far one edge runs in"));
  }

  /** Between the cut and the piece's straight edge. */
  public Worked<Angle> angle() {
    var slope = runsIn().value().inMillimetres().divide(run.value().inMillimetres(), DIGITS);
    return Worked.called("angle of the taper")
        .by("the angle whose tangent is how far the edge runs in ÷ run, to 0.001°")
        .with("how far the edge runs in", runsIn())
        .with("run", run)
        .is(Angle.ofTangent(slope, Angle.THOUSANDTH, Rounding.NEAREST));
  }

  /**
   * How much farther one of the carrier's stops stands off its edge than the other.
   *
   * <p>The straight edge lies against both, and leaves the carrier's edge as it leaves the cut:
   * {@code apart · tan(angle) = apart · runs in ÷ run}.
   *
   * @param apart between the stops, measured along the carrier's edge
   */
  public Worked<Length> stopOffset(Worked<Length> apart) {
    apart.value().requirePositive(apart.name());
    return Worked.called("one stop farther from the carrier's edge than the other")
        .by("stops apart × how far the edge runs in ÷ run, to the nearest 0.01 mm")
        .with("stops apart", apart)
        .with("how far the edge runs in", runsIn())
        .with("run", run)
        .is(
            apart
                .value()
                .inProportion(runsIn().value(), run.value(), Length.HUNDREDTH, Rounding.NEAREST));
  }

  /**
   * The same for the second of both edges: the first one, already cut, lies against the stops, so
   * the piece has to turn by twice the angle: {@code tan 2a = 2·tan a ÷ (1 − tan² a)}, which is
   * {@code 2·e·r ÷ (r² − e²)} for an edge that runs in by {@code e} over {@code r}.
   *
   * @param apart between the stops, measured along the carrier's edge
   */
  public Worked<Length> secondStopOffset(Worked<Length> apart) {
    apart.value().requirePositive(apart.name());
    if (!bothEdges) {
      throw new IllegalStateException("only one edge is tapered");
    }
    if (!edge().isLessThan(run.value())) {
      throw new IllegalArgumentException("an edge that runs in by as much as it runs along");
    }
    // In millimetres, as squares of picometres overflow; both are exact decimals.
    var in = runsIn().value().inMillimetres();
    var along = run.value().inMillimetres();
    var doubled =
        in.multiply(along)
            .multiply(BigDecimal.valueOf(2))
            .divide(along.pow(2).subtract(in.pow(2)), DIGITS);
    return Worked.called("one stop farther than the other, for the second edge")
        .by(
            "stops apart × 2 × runs in × run ÷ (run² − runs in²): twice the angle, as the first"
                + " edge lies against them; to the nearest 0.01 mm")
        .with("stops apart", apart)
        .with("runs in", runsIn())
        .with("run", run)
        .is(apart.value().times(doubled, Length.HUNDREDTH, Rounding.NEAREST));
  }

  /** How wide the narrow end is after a cut: with a second one to come it keeps that one's part. */
  public Worked<Length> endAfter(boolean second) {
    if (!bothEdges || second) {
      return narrow;
    }
    return Worked.called("narrow end after the first cut")
        .by("narrow + how far one edge runs in")
        .with("narrow", narrow)
        .with("how far one edge runs in", runsIn())
        .is(narrow.value().plus(runsIn().value()));
  }

  /**
   * Where the corner of the narrow end lies on the carrier that the cut does not take.
   *
   * <p>The end is square to the straight edge, so it leaves the cut's line by a right angle less
   * the taper's; for the second of both edges it is square to the middle line, which makes the same
   * angle with the cut. So the corner stands {@code end · cos(angle)} off the carrier's edge in
   * either.
   */
  public Worked<Length> heel(boolean second) {
    return Worked.called("carrier's edge to the corner of the narrow end")
        .by("narrow end after this cut × cos(angle), to the nearest 0.01 mm")
        .with("narrow end after this cut", endAfter(second))
        .with("angle", angle())
        .is(
            endAfter(second)
                .value()
                .times(angle().value().cosine(), Length.HUNDREDTH, Rounding.NEAREST));
  }

  /**
   * How far apart two stops, and two places to measure at, may be to lie on the taper.
   *
   * <p>One edge: as far as the run. The second of both is measured square to the first, which lands
   * farther along by no more than {@code wide · tan 2a}.
   */
  public Length mostApart(boolean second) {
    return second ? run.value().minus(secondStopOffset(wide).value()) : run.value();
  }

  /** How wide the piece is so far along the run; a figure to measure the first piece by. */
  public Worked<Length> widthAt(Worked<Length> along) {
    if (along.value().isNegative() || along.value().isGreaterThan(run.value())) {
      throw new IllegalArgumentException(along.value() + " is not on the run");
    }
    var lost =
        along
            .value()
            .inProportion(
                wide.value().minus(narrow.value()),
                run.value(),
                Length.HUNDREDTH,
                Rounding.NEAREST);
    return Worked.called("width there")
        .by("wide − (wide − narrow) × along ÷ run, to the nearest 0.01 mm")
        .with("wide", wide)
        .with("narrow", narrow)
        .with("along", along)
        .with("run", run)
        .is(wide.value().minus(lost));
  }

  /** What is wrong with what was asked; names {@code narrow} or {@code run}. */
  public List<Problem> problems(LengthUnit unit) {
    var scale = Scale.rule(unit);
    if (!narrow.value().isLessThan(wide.value())) {
      return List.of(
          Problem.stops(
              "narrow",
              "The narrow end is " + scale.show(narrow.value()).text() + " wide",
              "less than the wide end, " + scale.show(wide.value()).text(),
              "Enter the wide end first, or rip it straight"));
    }
    if (!edge().isLessThan(run.value())) {
      return List.of(
          Problem.stops(
              "run",
              "The edge runs in by as much as it runs along: that is a mitre",
              "a run longer than " + scale.show(edge()).text(),
              "Enter a longer run, or cut it as a mitre"));
    }
    return List.of();
  }

  private Length edge() {
    var both = wide.value().minus(narrow.value());
    return bothEdges ? both.half() : both;
  }
}
