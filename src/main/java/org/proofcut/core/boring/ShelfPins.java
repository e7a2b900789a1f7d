package org.proofcut.core.boring;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.proofcut.core.evidence.Citation;
import org.proofcut.core.evidence.Problem;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.LengthUnit;
import org.proofcut.core.measure.Rounding;
import org.proofcut.core.measure.display.Scale;

/**
 * A row of holes for shelf pins. Its margins at both ends are equal, so that a side can be turned
 * end for end and one stop bores the left and the right one.
 *
 * @param side length of the side that the row runs along
 * @param pitch from hole to hole, centre to centre
 * @param leastMargin least from either end to the first hole
 * @param wanted how many holes; as many as there is room for if empty
 */
public record ShelfPins(
    Worked<Length> side,
    Worked<Length> pitch,
    Worked<Length> leastMargin,
    Optional<Integer> wanted) {

  public ShelfPins {
    side.value().requirePositive(side.name());
    pitch.value().requirePositive(pitch.name());
    if (leastMargin.value().isNegative() || wanted.orElse(1) < 1) {
      throw new IllegalArgumentException(
          "a margin of " + leastMargin.value() + ", holes " + wanted);
    }
  }

  /**
   * How many holes the row has.
   *
   * @throws IllegalArgumentException if {@link #problems} stops it
   */
  public Worked<Integer> holes() {
    int fit = fitting();
    if (fit < wanted.orElse(1)) {
      throw new IllegalArgumentException("there is room for " + fit + " holes");
    }
    return wanted
        .map(count -> Worked.given("holes in the row", count, Citation.ENTERED))
        .orElseGet(
            () ->
                Worked.called("holes in the row")
                    .by("(side − 2 × least margin) ÷ pitch, whole ones, and one more")
                    .with("side", side)
                    .with("least margin", leastMargin)
                    .with("pitch", pitch)
                    .is(fit));
  }

  /** From either end to the first hole, centre. */
  public Worked<Length> margin() {
    var holes = holes();
    return Worked.called("from either end to the first hole")
        .by("(side − (holes − 1) × pitch) ÷ 2")
        .with("side", side)
        .with("holes", holes)
        .with("pitch", pitch)
        .is(side.value().minus(pitch.value().times(holes.value() - 1L)).half());
  }

  /** From one end to the centre of each hole, the nearest first. */
  public List<Worked<Length>> positions() {
    var margin = margin();
    var positions = new ArrayList<Worked<Length>>();
    for (int i = 0; i < holes().value(); i++) {
      positions.add(
          Worked.called("end to hole " + (i + 1))
              .by("margin + " + i + " × pitch")
              .with("margin", margin)
              .with("pitch", pitch)
              .is(margin.value().plus(pitch.value().times(i))));
    }
    return positions;
  }

  /** What is wrong with what was asked; names {@code margin}, {@code pitch} or {@code holes}. */
  public List<Problem> problems(LengthUnit unit) {
    var scale = Scale.rule(unit);
    var room = room();
    if (room.isNegative()) {
      return List.of(
          Problem.stops(
              "margin",
              "The margins at both ends are longer than the side",
              "half of " + scale.show(side.value()).text() + " at most",
              "Enter a smaller margin"));
    }
    if (fitting() < 2 && wanted.orElse(2) > 1) {
      return List.of(
          Problem.stops(
              "pitch",
              "A pitch of "
                  + scale.show(pitch.value()).text()
                  + " is longer than the row, "
                  + scale.show(room).text(),
              "up to " + scale.show(room).text(),
              "Enter a smaller pitch or a smaller margin, or ask for one hole"));
    }
    if (wanted.orElse(1) > fitting()) {
      return List.of(
          Problem.stops(
              "holes",
              wanted.get() + " holes do not fit between the margins",
              "1 to " + fitting(),
              "Ask for fewer holes, or enter a smaller pitch or margin"));
    }
    return List.of();
  }

  private Length room() {
    return side.value().minus(leastMargin.value().times(2));
  }

  private int fitting() {
    return room().isNegative()
        ? 0
        : Math.toIntExact(room().dividedBy(pitch.value(), Rounding.DOWN) + 1);
  }
}
