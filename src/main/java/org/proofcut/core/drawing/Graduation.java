package org.proofcut.core.drawing;

import java.util.List;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.LengthUnit;
import org.proofcut.core.measure.Rounding;

/** How the maker's own rule is divided along the edge that is read. */
public enum Graduation {
  MILLIMETRE(LengthUnit.MILLIMETRE, Length.ofMillimetres(1), ""),
  HALF_MILLIMETRE(LengthUnit.MILLIMETRE, Length.ofMicrometres(500), ""),
  SIXTEENTH(LengthUnit.INCH, Length.ofInches(1, 16), " (1/16 edge)"),
  THIRTY_SECOND(LengthUnit.INCH, Length.ofInches(1, 32), " (1/32 edge)"),
  SIXTY_FOURTH(LengthUnit.INCH, Length.ofInches(1, 64), " (1/64 edge)");

  private final LengthUnit unit;
  private final Length step;
  private final String words;

  Graduation(LengthUnit unit, Length step, String words) {
    this.unit = unit;
    this.step = step;
    this.words = words;
  }

  /** The coarsest edge that has a tick at this figure; the finest where none has. */
  public static Graduation fitting(Length figure, LengthUnit unit) {
    var edges =
        unit == LengthUnit.INCH
            ? List.of(SIXTEENTH, THIRTY_SECOND, SIXTY_FOURTH)
            : List.of(MILLIMETRE, HALF_MILLIMETRE);
    return edges.stream()
        .filter(edge -> edge.hasTickAt(figure))
        .findFirst()
        .orElse(edges.get(edges.size() - 1));
  }

  boolean hasTickAt(Length figure) {
    return figure.roundedTo(step, Rounding.DOWN).equals(figure);
  }

  LengthUnit unit() {
    return unit;
  }

  /** From one tick to the next. */
  Length step() {
    return step;
  }

  /** Which edge of the rule to turn to, where it has several. */
  String words() {
    return words;
  }
}
