package org.proofcut.core.drawing;

import org.proofcut.core.casework.Case;
import org.proofcut.core.drawing.Drawing.Fill;
import org.proofcut.core.drawing.Drawing.Line;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.LengthUnit;

/** A case seen from the front: outer size, bottom, shelves, plinth. */
public final class CaseElevation {

  private CaseElevation() {}

  /**
   * The case, to scale, whatever is wrong with its design.
   *
   * @param unit in which figures are written
   * @param widthPx width at which the page shows it, at least 300
   */
  public static Picture of(Case design, LengthUnit unit, int widthPx) {
    var words =
        CaseFrame.size(design, unit)
            + " From the front: sides from the floor to the top edge, the top between them in"
            + " rabbets, bottom and shelves in dados, the plinth under the bottom. "
            + CaseFrame.heights(design, unit);
    var outside = design.design().outside();
    var frame = new CaseFrame(design, unit, widthPx, outside.width(), words);
    if (!frame.canBeDrawn()) {
      return frame.withoutDrawing();
    }
    frame.begin("From the front.");
    var width = outside.width();
    var height = outside.height();
    var left = frame.thickness("left-side");
    var right = frame.thickness("right-side");
    var plinth = design.design().plinth().height();
    var inside = width.minus(right);
    frame.board(Length.ZERO, width, Length.ZERO, height, Fill.SHEET, Line.PLAIN);
    frame.board(left, inside, Length.ZERO, plinth, Fill.WASTE, Line.THIN);
    frame.board(Length.ZERO, left, Length.ZERO, height, Fill.WOOD, Line.PLAIN);
    frame.board(inside, width, Length.ZERO, height, Fill.WOOD, Line.PLAIN);
    shelf(frame, width, "top", height.minus(frame.thickness("top")));
    shelf(frame, width, "bottom", plinth);
    for (int i = 0; i < design.design().shelves().size(); i++) {
      var id = "shelf-" + (i + 1);
      shelf(frame, width, id, design.design().shelves().get(i));
    }
    frame.heights();
    return frame.done(
        "Heights from the floor to the underside.",
        "Hatched: the plinth, set back from the front. To scale.");
  }

  /** A board that reaches into its housings, which run through to the front. */
  private static void shelf(CaseFrame frame, Length width, String id, Length underside) {
    var leftSide = "left-side:" + id;
    var rightSide = "right-side:" + id;
    frame.board(
        frame.thickness("left-side").minus(frame.housed(leftSide)),
        width.minus(frame.thickness("right-side")).plus(frame.housed(rightSide)),
        underside,
        underside.plus(frame.thickness(id)),
        Fill.WOOD,
        Line.PLAIN);
  }
}
