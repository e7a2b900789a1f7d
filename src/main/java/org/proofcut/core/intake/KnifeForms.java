package org.proofcut.core.intake;

import static org.proofcut.core.intake.CutFields.SIZES;
import static org.proofcut.core.intake.CutFields.THICKEST;
import static org.proofcut.core.intake.CutFields.THICKNESSES;
import static org.proofcut.core.intake.CutFields.at;
import static org.proofcut.core.intake.CutFields.band;
import static org.proofcut.core.intake.CutFields.piece;
import static org.proofcut.core.intake.CutFields.stock;
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
import org.proofcut.core.shop.Jointer;
import org.proofcut.core.shop.Planer;

/** Boards made flat, straight and of one thickness. */
final class KnifeForms {

  private static final Band GAPS = band("0.1 mm", "25 mm");

  private static final Field HOLLOW =
      length(
          "off",
          "Widest gap under the face",
          "hollow face down on something flat: by feeler, or strips of known thickness");

  private static final Field BOW =
      length(
          "off",
          "Widest gap under the edge",
          "hollow edge down on something straight: by feeler, or strips of known thickness");

  private static final Field THICKNESS =
      length("thickness", "Thickness wanted", "one face is flat already");

  private static final Field FINISHED =
      length("finished", "Length wanted", "what is left when the ends are cut off");

  private static final Field ALONG =
      length("along", "Length of the board", "along the grain, as it is now");

  private static final Field ACROSS =
      length("across", "Width of the board", "across the grain, as it is now");

  private KnifeForms() {}

  static List<CutForm> all() {
    return List.of(flatten(), straighten(), plane());
  }

  private static CutForm flatten() {
    return jointing(
        "flatten",
        "Flatten a face",
        "The first face of a board, made flat over the jointer.",
        HOLLOW,
        OperationKind.FLATTEN);
  }

  private static CutForm straighten() {
    return jointing(
        "straighten",
        "Straighten an edge",
        "An edge made straight over the jointer, and square to the flat face.",
        BOW,
        OperationKind.STRAIGHTEN);
  }

  private static CutForm jointing(
      String kind, String title, String says, Field off, OperationKind operation) {
    return new CutForm(
        kind,
        title,
        says,
        List.of(new CutForm.Group("What it is out", List.of(off)), piece(ALONG, ACROSS)),
        List.of(Jointer.class),
        List.of(),
        Map.of(),
        form -> {
          var gap = Worked.measured("widest gap", form.length(off, GAPS));
          var stock = stock(form);
          var work = work(form, stock.thickness().ends());
          return form.result(
              () ->
                  new SingleCut(
                      operation,
                      title,
                      new CutAsked.Jointing(gap, operation == OperationKind.STRAIGHTEN, work),
                      stock,
                      Optional.empty()));
        });
  }

  private static CutForm plane() {
    return new CutForm(
        "plane",
        "Plane to thickness",
        "A board of one thickness, both faces in turn under the planer.",
        List.of(
            new CutForm.Group("What is wanted", List.of(THICKNESS, FINISHED)),
            piece(ALONG, ACROSS)),
        List.of(Planer.class),
        List.of(),
        Map.of(Dimension.SIZE, 3),
        form -> {
          var thickness = Worked.entered("thickness wanted", form.length(THICKNESS, THICKNESSES));
          var finished = Worked.entered("length wanted", form.length(FINISHED, SIZES));
          var stock = stock(form);
          var work = work(form, stock.thickness().ends());
          var thickest = stock.thickness().ends().most();
          if (form.isSound(THICKNESS, THICKEST) && thickness.value().isAtLeast(thickest)) {
            form.problem(
                THICKNESS, "Nothing is to be taken off", "less than " + form.shown(thickest));
          }
          return form.result(
              () ->
                  new SingleCut(
                      OperationKind.PLANE,
                      "Plane to thickness",
                      new CutAsked.Planing(thickness, finished, work),
                      stock,
                      Optional.empty()));
        });
  }

  private static Work work(FormReader form, Band thickness) {
    return new Work(at(form.length(ALONG, SIZES)), at(form.length(ACROSS, SIZES)), thickness);
  }
}
