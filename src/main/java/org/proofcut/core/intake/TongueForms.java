package org.proofcut.core.intake;

import static org.proofcut.core.intake.CutFields.ACROSS;
import static org.proofcut.core.intake.CutFields.ALONG;
import static org.proofcut.core.intake.CutFields.DEPTHS;
import static org.proofcut.core.intake.CutFields.STRAIGHT;
import static org.proofcut.core.intake.CutFields.piece;
import static org.proofcut.core.intake.CutFields.stock;
import static org.proofcut.core.intake.CutFields.work;
import static org.proofcut.core.intake.StepForms.SLOT;
import static org.proofcut.core.intake.StepForms.TONGUE;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.fit.FitLimits;
import org.proofcut.core.operation.OperationKind;
import org.proofcut.core.operation.SingleCut;
import org.proofcut.core.setup.CutAsked;
import org.proofcut.core.setup.Measure.Dimension;
import org.proofcut.core.shop.RouterTable;

/** Tongues by a straight cutter, from both faces. */
final class TongueForms {

  private static final String TITLE = "Tongue on the router table";

  private TongueForms() {}

  static List<CutForm> all(FitLimits fit) {
    return List.of(
        new CutForm(
            "tongue-routed",
            TITLE,
            "A tongue in the middle of an edge, by two cuts from both faces, for a slot that is"
                + " there.",
            List.of(new CutForm.Group("The tongue", List.of(SLOT, TONGUE)), piece(ALONG, ACROSS)),
            List.of(RouterTable.class),
            STRAIGHT,
            Map.of(Dimension.SIZE, 3, Dimension.WIDTH, 3),
            form -> {
              var length = Worked.entered("length of the tongue", form.length(TONGUE, DEPTHS));
              var stock = stock(form);
              var tongue = StepForms.fitted(form, stock, fit);
              var work = work(form, stock);
              return form.result(
                  () ->
                      new SingleCut(
                          OperationKind.TONGUE,
                          TITLE,
                          new CutAsked.Tongue(length, tongue.thickness(), tongue.accepted(), work),
                          stock,
                          Optional.empty()));
            }));
  }
}
