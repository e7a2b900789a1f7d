package org.proofcut.core.drawing;

import org.proofcut.core.casework.Case;
import org.proofcut.core.drawing.Drawing.Fill;
import org.proofcut.core.drawing.Drawing.Line;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.LengthUnit;
import org.proofcut.core.measure.display.Scale;

/**
 * A case cut through from front to rear, seen from its right, so that the left side lies behind the
 * cut and the front is on the left: top, bottom and shelves in section, the back in its rabbet, the
 * plinth set back.
 */
public final class CaseSection {

  private CaseSection() {}

  /**
   * The case, to scale, whatever is wrong with its design.
   *
   * @param unit in which figures are written
   * @param widthPx width at which the page shows it, at least 300
   */
  public static Picture of(Case design, LengthUnit unit, int widthPx) {
    var scale = Scale.rule(unit);
    var outside = design.design().outside();
    var plinth = design.design().plinth();
    var joinery = design.design().joinery();
    var setIn = joinery.backSetIn();
    var housings =
        "In the sides: rabbet for the top %s deep, dado for the bottom %s, dados for shelves %s, rabbet for the back %s."
            .formatted(
                scale.show(joinery.topRabbet()),
                scale.show(joinery.bottomDado()),
                scale.show(joinery.shelfDado()),
                scale.show(joinery.backRabbet()));
    var setBack = "Plinth set back " + scale.show(plinth.setBack()) + " from the front.";
    var words =
        CaseFrame.size(design, unit)
            + " Cut through from front to rear, the front on the left: the top reaches over the"
            + " whole depth, bottom and shelves end at the back, which stands in a rabbet of sides"
            + " and top and covers the rear edge of the bottom. "
            + setBack
            + " "
            + housings
            + " "
            + CaseFrame.heights(design, unit);
    var frame = new CaseFrame(design, unit, widthPx, outside.depth(), words);
    if (!frame.canBeDrawn()) {
      return frame.withoutDrawing();
    }
    frame.begin("Cut from front to rear; the front is on the left.");
    var depth = outside.depth();
    var height = outside.height();
    var rabbet = frame.housingWidth("left-side:back");
    var shoulder = depth.minus(rabbet);
    var top = height.minus(frame.thickness("top"));
    frame.board(Length.ZERO, depth, Length.ZERO, height, Fill.SHEET, Line.PLAIN);
    frame.board(Length.ZERO, depth, top, height, Fill.WOOD, Line.PLAIN);
    // The back stands on the underside of the bottom's level and reaches into the top's rabbet.
    var backRear = depth.minus(setIn);
    frame.board(
        backRear.minus(frame.thickness("back")),
        backRear,
        plinth.height(),
        top.plus(frame.housed("top:back")),
        Fill.WASTE,
        Line.PLAIN);
    board(frame, "bottom", shoulder, plinth.height());
    for (int i = 0; i < design.design().shelves().size(); i++) {
      board(frame, "shelf-" + (i + 1), shoulder, design.design().shelves().get(i));
    }
    frame.board(
        plinth.setBack(),
        plinth.setBack().plus(frame.thickness("plinth")),
        Length.ZERO,
        plinth.height(),
        Fill.WOOD,
        Line.PLAIN);
    frame.heights();
    return frame.done(
        "Heights from the floor to the underside.",
        setBack,
        housings,
        "Hatched: the back. To scale.");
  }

  private static void board(CaseFrame frame, String id, Length shoulder, Length underside) {
    frame.board(
        Length.ZERO,
        shoulder,
        underside,
        underside.plus(frame.thickness(id)),
        Fill.WOOD,
        Line.PLAIN);
  }
}
