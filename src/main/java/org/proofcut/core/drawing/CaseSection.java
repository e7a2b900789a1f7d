package org.proofcut.core.drawing;

import org.proofcut.core.casework.Case;
import org.proofcut.core.drawing.Drawing.Anchor;
import org.proofcut.core.drawing.Drawing.Type;
import org.proofcut.core.measure.LengthUnit;
import org.proofcut.core.measure.display.Scale;

/** A case cut through from front to rear, seen from its right. */
public final class CaseSection {

  private CaseSection() {}

  /**
   * The case, to scale, whatever is wrong with its design.
   *
   * @param widthPx width at which the page shows it
   */
  public static Picture of(Case design, LengthUnit unit, int widthPx) {
    var outside = design.design().outside();
    var scale = Scale.rule(unit);
    var words =
        "%s: %s wide, %s high, %s deep."
            .formatted(
                design.design().name(),
                scale.show(outside.width()),
                scale.show(outside.height()),
                scale.show(outside.depth()));
    var sheet = Drawing.of(widthPx, widthPx, words);
    return sheet.text(sheet.px(8, 40), words, Type.CAPTION, Anchor.START).picture();
  }
}
