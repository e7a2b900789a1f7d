package org.proofcut.core.intake;

import static org.proofcut.core.intake.CutFields.ACROSS;
import static org.proofcut.core.intake.CutFields.DEPTHS;
import static org.proofcut.core.intake.CutFields.SIZES;
import static org.proofcut.core.intake.CutFields.STRAIGHT;
import static org.proofcut.core.intake.CutFields.THINNEST;
import static org.proofcut.core.intake.CutFields.band;
import static org.proofcut.core.intake.CutFields.piece;
import static org.proofcut.core.intake.CutFields.stock;
import static org.proofcut.core.intake.CutFields.work;
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
import org.proofcut.core.shop.HandRouter;

/** Cuts inside a template. */
final class TemplateForms {

  private static final Band BUSHES = band("4 mm", "80 mm");

  private static final Field LENGTH = length("length", "Length", "of the recess, the longer way");

  private static final Field WIDTH = length("width", "Width", "of the recess, the shorter way");

  private static final Field DEPTH = length("depth", "Depth", "into the face that is cut");

  private static final Field CORNER =
      length("corner", "Corners", "largest radius that they may keep");

  private static final Field TEMPLATE =
      length("template", "Thickness of the template", "by caliper");

  private static final Field BUSH = length("bush", "Bush, outside", "diameter of the collar");

  private static final Field BORE = length("bore", "Bush, inside", "diameter of the collar");

  private static final Field COLLAR =
      length("collar", "Collar", "how far it stands out below the base");

  private static final Field PIECE_LENGTH =
      length("along", "Length of the piece", "the same way as the recess");

  private TemplateForms() {}

  static List<CutForm> all() {
    return List.of(recess());
  }

  private static CutForm recess() {
    return new CutForm(
        "template-recess",
        "Mortise or recess in a template",
        "A pocket with a guide bush inside a template, and the opening that the template needs.",
        List.of(
            new CutForm.Group("The recess", List.of(LENGTH, WIDTH, DEPTH, CORNER)),
            new CutForm.Group(
                "Guide bush and template, by caliper", List.of(BUSH, BORE, COLLAR, TEMPLATE)),
            piece(PIECE_LENGTH, ACROSS)),
        List.of(HandRouter.class),
        STRAIGHT,
        Map.of(Dimension.WIDTH, 3, Dimension.DEPTH, 3),
        form -> {
          var length = Worked.entered("length of the recess", form.length(LENGTH, SIZES));
          var width = Worked.entered("width of the recess", form.length(WIDTH, SIZES));
          var depth = Worked.entered("depth of the recess", form.length(DEPTH, DEPTHS));
          var corner = Worked.entered("radius of the corners", form.length(CORNER, DEPTHS));
          var bush = Worked.measured("bush, outside", form.length(BUSH, BUSHES));
          var bore = Worked.measured("bush, inside", form.length(BORE, BUSHES));
          var collar = Worked.measured("collar of the bush", form.length(COLLAR, DEPTHS));
          var template =
              Worked.measured("thickness of the template", form.length(TEMPLATE, DEPTHS));
          var stock = stock(form);
          var work = work(form, stock);
          var thinnest = stock.thickness().ends().least();
          if (form.isSound(DEPTH, THINNEST) && depth.value().isAtLeast(thinnest)) {
            form.problem(DEPTH, "That goes through the piece", "less than " + form.shown(thinnest));
          }
          if (form.isSound(LENGTH, WIDTH) && length.value().isLessThan(width.value())) {
            form.problem(
                LENGTH, "It is shorter than it is wide", form.shown(width.value()) + " or more");
          }
          return form.result(
              () ->
                  new SingleCut(
                      OperationKind.TEMPLATE_RECESS,
                      "Mortise or recess in a template",
                      new CutAsked.TemplateRecess(
                          length,
                          width,
                          depth,
                          corner,
                          template,
                          new CutAsked.Bush(bush, bore, collar),
                          work),
                      stock,
                      Optional.empty()));
        });
  }
}
