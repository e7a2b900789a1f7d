package org.proofcut.bench;

import org.junit.jupiter.api.Test;
import org.proofcut.core.drawing.CaseElevation;
import org.proofcut.core.drawing.CaseSection;
import org.proofcut.core.drawing.CutSection;
import org.proofcut.core.drawing.MachinePlan;
import org.proofcut.core.drawing.Seen;
import org.proofcut.core.measure.LengthUnit;

/** Every drawing of the demo job. */
class DemoDrawingsTest {

  private static final int[] WIDTHS = {600, 350};

  @Test
  void demo_everyDrawingInBothUnitsAndWidths_isLegible() {
    var plan = DemoJobTest.plan();
    for (var unit : LengthUnit.values()) {
      for (int width : WIDTHS) {
        var size = " in " + unit + " at " + width;
        for (var sheet : plan.sheets()) {
          var what = sheet.id() + size;
          sheet
              .operation()
              .setup()
              .ifPresent(
                  setup -> {
                    var operation = sheet.operation();
                    Seen.in(MachinePlan.of(operation, setup, unit, width)).isLegible(what);
                    Seen.in(CutSection.of(operation, setup, unit, width)).isLegible(what);
                  });
        }
        Seen.in(CaseElevation.of(plan.designed(), unit, width)).isLegible("elevation" + size);
        Seen.in(CaseSection.of(plan.designed(), unit, width)).isLegible("section" + size);
      }
    }
  }
}
