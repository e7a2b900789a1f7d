package org.proofcut.core.intake;

import static org.proofcut.core.intake.CutFields.BLADES;
import static org.proofcut.core.intake.CutFields.SIZES;
import static org.proofcut.core.intake.CutFields.at;
import static org.proofcut.core.intake.CutFields.band;
import static org.proofcut.core.intake.CutFields.piece;
import static org.proofcut.core.intake.CutFields.stock;
import static org.proofcut.core.intake.Field.count;
import static org.proofcut.core.intake.Field.length;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.measure.Band;
import org.proofcut.core.operation.OperationKind;
import org.proofcut.core.operation.SingleCut;
import org.proofcut.core.setup.CutAsked;
import org.proofcut.core.setup.Measure.Dimension;
import org.proofcut.core.setup.Work;
import org.proofcut.core.shop.TableSaw;

/** Strips that are too thin to run between blade and fence. */
final class StripForms {

  private static final Band THIN = band("1 mm", "25 mm");
  private static final int MOST = 20;

  private static final Field THICKNESS =
      length("size", "Thickness of a strip", "across the board, as sawn");

  private static final Field COUNT = count("count", "Strips", "how many off this board");

  private static final Field ALONG =
      length("along", "Length of the board", "along the edge that rides the fence");

  private static final Field ACROSS =
      length("across", "Width of the board", "from the fence to its free edge, before the first");

  private StripForms() {}

  static CutForm strips() {
    return new CutForm(
        "thin-strip",
        "Thin strips",
        "Strips of one thickness, off the edge away from the fence.",
        List.of(new CutForm.Group("The strips", List.of(THICKNESS, COUNT)), piece(ALONG, ACROSS)),
        List.of(TableSaw.class),
        BLADES,
        Map.of(Dimension.SIZE, 2),
        form -> {
          var thickness = Worked.entered("thickness of a strip", form.length(THICKNESS, THIN));
          int count = form.count(COUNT, 1, MOST);
          var stock = stock(form);
          var along = form.length(ALONG, SIZES);
          var work = new Work(at(along), at(form.length(ACROSS, SIZES)), stock.thickness().ends());
          return form.result(
              () ->
                  new SingleCut(
                      OperationKind.THIN_STRIP,
                      "Thin strips",
                      new CutAsked.Strips(thickness, count, work),
                      stock,
                      Optional.empty()));
        });
  }
}
