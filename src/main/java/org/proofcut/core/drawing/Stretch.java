package org.proofcut.core.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.proofcut.core.measure.Band;
import org.proofcut.core.measure.Length;

/**
 * What is shown of one direction of a drawing: pieces in order, all to one scale, and between two
 * of them a break of fixed size. A long part with a small cut in it is so drawn without shrinking
 * the cut or stretching anything.
 */
final class Stretch {

  private final List<Band> shown;
  private final Length gap;

  private Stretch(List<Band> shown, Length gap) {
    this.shown = shown;
    this.gap = gap;
  }

  /**
   * Shows these pieces; two that lie so close that a break would save nothing become one.
   *
   * @param gap what a break takes up in the drawing
   */
  static Stretch of(Length gap, Band... wanted) {
    var worthBreaking = gap.times(2);
    var shown = new ArrayList<Band>();
    for (var piece : Stream.of(wanted).sorted(Comparator.comparing(Band::least)).toList()) {
      int last = shown.size() - 1;
      if (last >= 0 && piece.least().minus(shown.get(last).most()).isLessThan(worthBreaking)) {
        var before = shown.get(last);
        shown.set(last, new Band(before.least(), before.most().max(piece.most())));
      } else {
        shown.add(piece);
      }
    }
    return new Stretch(List.copyOf(shown), gap);
  }

  /** Where a place lies in the drawing, from the start of the first piece. */
  Length at(Length place) {
    var start = Length.ZERO;
    for (int i = 0; i < shown.size(); i++) {
      var piece = shown.get(i);
      if (i > 0 && place.isLessThan(piece.least())) {
        return start.minus(gap.half());
      }
      if (place.isAtMost(piece.most()) || i == shown.size() - 1) {
        return start.plus(place.minus(piece.least()));
      }
      start = start.plus(piece.extent()).plus(gap);
    }
    throw new AssertionError("a stretch shows at least one piece");
  }

  /** Whether a place is shown, and not in a break. */
  boolean shows(Length place) {
    return shown.stream().anyMatch(piece -> piece.contains(place));
  }

  /** Size in the drawing. */
  Length extent() {
    return at(shown.get(shown.size() - 1).most());
  }

  boolean isBroken() {
    return shown.size() > 1;
  }

  /** Where each break begins in the drawing; it is one gap wide. */
  List<Length> breaks() {
    var breaks = new ArrayList<Length>();
    for (var piece : shown.subList(0, shown.size() - 1)) {
      breaks.add(at(piece.most()));
    }
    return breaks;
  }
}
