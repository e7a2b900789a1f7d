package org.proofcut.core.drawing;

import org.proofcut.core.drawing.Drawing.Anchor;
import org.proofcut.core.drawing.Drawing.Type;
import org.proofcut.core.measure.LengthUnit;
import org.proofcut.core.measure.display.Scale;
import org.proofcut.core.operation.Operation;
import org.proofcut.core.setup.Setup;

/** A cut as seen from above by the person at the machine. */
public final class MachinePlan {

  private MachinePlan() {}

  /**
   * The plan of one set-up, to scale.
   *
   * @param widthPx width at which the page shows it
   */
  public static Picture of(Operation operation, Setup setup, LengthUnit unit, int widthPx) {
    var place = setup.settings().get(0);
    var words =
        operation.title()
            + ". "
            + place.role().words()
            + " "
            + Scale.caliper(unit).show(place.set().value())
            + " "
            + place.from()
            + ". "
            + setup.feed().words()
            + ".";
    var sheet = Drawing.of(widthPx, widthPx * 3 / 4, words);
    return sheet.text(sheet.px(8, 40), words, Type.CAPTION, Anchor.START).picture();
  }
}
