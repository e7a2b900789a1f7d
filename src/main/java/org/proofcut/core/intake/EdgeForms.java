package org.proofcut.core.intake;

import static org.proofcut.core.intake.CutFields.DEPTHS;
import static org.proofcut.core.intake.CutFields.SIZES;
import static org.proofcut.core.intake.CutFields.at;
import static org.proofcut.core.intake.CutFields.piece;
import static org.proofcut.core.intake.CutFields.stock;
import static org.proofcut.core.intake.Field.length;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.fit.FitLimits;
import org.proofcut.core.fit.SlotFit;
import org.proofcut.core.operation.OperationKind;
import org.proofcut.core.operation.SingleCut;
import org.proofcut.core.setup.CutAsked;
import org.proofcut.core.setup.Measure.Dimension;
import org.proofcut.core.setup.Work;
import org.proofcut.core.shop.RouterTable;
import org.proofcut.core.shop.SawBlade;
import org.proofcut.core.shop.StraightCutter;
import org.proofcut.core.shop.TableSaw;

/** Cuts along an edge: a groove in its middle. */
final class EdgeForms {

  private static final Field DEPTH = length("depth", "Depth", "into the edge");

  private static final Field EDGE_LENGTH =
      length("along", "Length of the edge", "that stands on the table");

  private static final Field STANDING =
      length("standing", "Height on edge", "how high the piece stands on that edge");

  private EdgeForms() {}

  static List<CutForm> all(FitLimits fit) {
    return List.of(centredGroove(fit));
  }

  private static CutForm centredGroove(FitLimits fit) {
    return new CutForm(
        "centred-groove",
        "Groove in the middle of an edge",
        "Cut with one face against the fence and then the other, so that it lies in the middle.",
        List.of(
            HousingForms.ENTERING,
            new CutForm.Group("The groove", List.of(DEPTH)),
            piece(EDGE_LENGTH, STANDING)),
        List.of(RouterTable.class, TableSaw.class),
        List.of(StraightCutter.class, SawBlade.class),
        Map.of(Dimension.WIDTH, 3, Dimension.DISTANCE, 4, Dimension.DEPTH, 3),
        form -> {
          var entering = HousingForms.entering(form);
          var depth = Worked.entered("depth of the groove", form.length(DEPTH, DEPTHS));
          var stock = stock(form);
          var along = form.length(EDGE_LENGTH, SIZES);
          var standing = form.length(STANDING, SIZES);
          var slot = SlotFit.of(entering, fit);
          HousingForms.evenEnough(form, entering, SlotFit.mostSpread(fit));
          if (form.isSound(DEPTH, STANDING) && depth.value().isAtLeast(standing)) {
            form.problem(DEPTH, "That goes through the piece", "less than " + form.shown(standing));
          }
          var thickness = stock.thickness().ends();
          return form.result(
              () ->
                  new SingleCut(
                      OperationKind.CENTRED_GROOVE,
                      "Groove in the middle of an edge",
                      new CutAsked.CentredGroove(
                          slot.target(),
                          slot.accepted().orElseThrow(),
                          depth,
                          at(standing),
                          new Work(at(along), thickness, thickness)),
                      stock,
                      Optional.of(HousingForms.goesIn(stock, entering))));
        });
  }
}
