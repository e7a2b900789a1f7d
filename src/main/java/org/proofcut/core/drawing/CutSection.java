package org.proofcut.core.drawing;

import org.proofcut.core.drawing.Drawing.Anchor;
import org.proofcut.core.drawing.Drawing.Type;
import org.proofcut.core.measure.LengthUnit;
import org.proofcut.core.measure.display.Scale;
import org.proofcut.core.operation.Operation;
import org.proofcut.core.setup.Setup;

/** What a cut leaves, seen in section. */
public final class CutSection {

  private CutSection() {}

  /**
   * The section through a cut.
   *
   * @param widthPx width at which the page shows it
   */
  public static Picture of(Operation operation, Setup setup, LengthUnit unit, int widthPx) {
    var words =
        operation.title()
            + ", in section: thinnest stock "
            + Scale.caliper(unit).show(setup.asked().work().thickness().least())
            + ".";
    var sheet = Drawing.of(widthPx, widthPx / 2, words);
    return sheet.text(sheet.px(8, 40), words, Type.CAPTION, Anchor.START).picture();
  }
}
