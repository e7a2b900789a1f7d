package org.proofcut.core.drawing;

import org.proofcut.core.casework.Case;
import org.proofcut.core.drawing.Drawing.Fill;
import org.proofcut.core.drawing.Drawing.Line;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.LengthUnit;
import org.proofcut.core.measure.display.Scale;

/** A case from the side on the floor, the front on the left, with its middle of gravity. */
public final class CaseOnFeet {

  private static final long MARK = 14;

  private CaseOnFeet() {}

  /**
   * The case, to scale, empty.
   *
   * @param behind from the front edges to the middle of gravity
   * @param high from the floor to it
   * @param widthPx width at which the page shows it, at least 300
   */
  public static Picture of(Case sound, Length behind, Length high, LengthUnit unit, int widthPx) {
    var scale = Scale.rule(unit);
    var where =
        "Middle of gravity of the empty case: %s behind the front edges, %s above the floor."
            .formatted(scale.show(behind), scale.show(high));
    var outside = sound.design().outside();
    var words =
        CaseFrame.size(sound, unit)
            + " From the side, the front on the left: it stands on the lower ends of its sides and"
            + " tips over the front one. "
            + where;
    var frame = new CaseFrame(sound, unit, widthPx, outside.depth(), words);
    if (!frame.canBeDrawn()) {
      return frame.withoutDrawing();
    }
    frame.begin("From the side; the front is on the left.");
    frame.board(Length.ZERO, outside.depth(), Length.ZERO, outside.height(), Fill.WOOD, Line.PLAIN);
    var plan = frame.sheet().drawing();
    var middle = frame.at(behind, high);
    plan.line(Line.CHAIN, middle, frame.at(behind, Length.ZERO));
    plan.circle(middle, MARK * 1000 / 2, Fill.INK, Line.PLAIN);
    plan.line(Line.THIN, middle.left(MARK), middle.right(MARK));
    plan.line(Line.THIN, middle.up(MARK), middle.down(MARK));
    // The foot that it tips over.
    var foot = frame.at(Length.ZERO, Length.ZERO);
    plan.outline(
        Fill.INK,
        Line.PLAIN,
        foot,
        foot.left(MARK / 2).down(MARK),
        foot.right(MARK / 2).down(MARK));
    frame.sheet().lower(MARK);
    return frame.done(where, "The black wedge: the edge that it tips over. To scale.");
  }
}
