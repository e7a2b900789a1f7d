package org.proofcut.core.readings;

import java.util.Collection;
import java.util.List;
import org.proofcut.core.evidence.Citation;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.measure.Band;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.Rounding;

/**
 * Several readings of one thing.
 *
 * <p>Which figure serves for what (common practice): the mean for the lengths of parts; the maximum
 * of the part that enters a housing for its width; the minimum of the part that is cut for the wood
 * left; both ends for the fit.
 *
 * @param of what was measured, such as "birch sheet"
 * @param all every reading, in the order taken; at least one
 */
public record Readings(String of, List<Length> all) {

  private static final Length MEAN_STEP = Length.ofMicrometres(10);

  public Readings {
    all = List.copyOf(all);
    if (all.isEmpty()) {
      throw new IllegalArgumentException("no reading of " + of);
    }
  }

  /** The readings of several sheets whose parts go through one set-up. */
  public static Readings pooled(String of, Collection<Readings> several) {
    return new Readings(of, several.stream().flatMap(one -> one.all.stream()).toList());
  }

  public Worked<Length> minimum() {
    return Worked.measured("thinnest reading of " + of, ends().least());
  }

  public Worked<Length> maximum() {
    return Worked.measured("thickest reading of " + of, ends().most());
  }

  /** Thinnest and thickest reading. */
  public Band ends() {
    return new Band(
        all.stream().min(Length::compareTo).orElseThrow(),
        all.stream().max(Length::compareTo).orElseThrow());
  }

  /**
   * The mean of all readings, to the nearest 0.01 mm, rounded once, here.
   *
   * <p>A mean never lies outside its readings: where rounding would put it there (four readings of
   * 0.705 in are 17.907 mm each, not 17.91), it stays at the nearest reading.
   */
  public Worked<Length> mean() {
    var working =
        Worked.called("mean thickness of " + of)
            .by("sum of the readings ÷ their number, to the nearest 0.01 mm, within the readings")
            .from(Citation.GEOMETRY);
    for (int i = 0; i < all.size(); i++) {
      working.with(
          "reading " + (i + 1), Worked.measured("reading " + (i + 1) + " of " + of, all.get(i)));
    }
    var rounded = Length.mean(all, MEAN_STEP, Rounding.NEAREST);
    return working.is(rounded.max(ends().least()).min(ends().most()));
  }

  /** Thickest less thinnest. */
  public Worked<Length> spread() {
    return Worked.called("spread of " + of)
        .by("thickest − thinnest")
        .with("thickest", maximum())
        .with("thinnest", minimum())
        .is(ends().extent());
  }
}
