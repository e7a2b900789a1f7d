package org.proofcut.core.intake;

import static org.proofcut.core.intake.CutFields.BLADES;
import static org.proofcut.core.intake.CutFields.SIZES;
import static org.proofcut.core.intake.CutFields.at;
import static org.proofcut.core.intake.CutFields.piece;
import static org.proofcut.core.intake.CutFields.stock;
import static org.proofcut.core.intake.Field.angle;
import static org.proofcut.core.intake.Field.choice;
import static org.proofcut.core.intake.Field.length;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.geometry.BevelRip;
import org.proofcut.core.measure.Angle;
import org.proofcut.core.operation.OperationKind;
import org.proofcut.core.operation.SingleCut;
import org.proofcut.core.setup.CutAsked;
import org.proofcut.core.setup.Measure.Dimension;
import org.proofcut.core.setup.Work;
import org.proofcut.core.shop.Machine;
import org.proofcut.core.shop.TableSaw;
import org.proofcut.core.shop.TrackSaw;

/** Rips whose edge slopes. */
final class BevelForms {

  private static final List<Class<? extends Machine>> SAWS =
      List.of(TableSaw.class, TrackSaw.class);

  private static final Angle LEAST = Angle.ofDegrees(1);

  private static final Angle MOST = Angle.ofDegrees(60);

  private static final String WIDE = "wide";

  private static final Field BEVEL =
      angle("bevel", "Tilt of the blade", "from upright: 0° would be a square edge");

  private static final Field WIDTH = length("size", "Width wanted", "on the good face");

  private static final Field GOOD =
      choice(
          "good-is",
          "The good face is",
          List.of(
              new Field.Choice(WIDE, "the wider one"),
              new Field.Choice("narrow", "the narrower one")));

  private static final Field LENGTH =
      length("along", "Length of the piece", "along the edge that rides the guide");

  private BevelForms() {}

  static List<CutForm> all() {
    return List.of(
        new CutForm(
            "bevel-rip",
            "Rip with a sloping edge",
            "A cut along the piece with the blade tilted.",
            List.of(new CutForm.Group("The cut", List.of(WIDTH, GOOD, BEVEL)), piece(LENGTH)),
            SAWS,
            BLADES,
            Map.of(Dimension.SIZE, 2, Dimension.RUN_THROUGH, 2),
            BevelForms::read));
  }

  private static Read<SingleCut> read(FormReader form) {
    var width = Worked.entered("width wanted", form.length(WIDTH, SIZES));
    var wide = form.choice(GOOD).equals(WIDE);
    var bevel = Worked.entered("tilt of the blade", form.angle(BEVEL, LEAST, MOST));
    var along = form.length(LENGTH, SIZES);
    var stock = stock(form);
    var thickest = Worked.measured("thickest reading", stock.thickness().ends().most());
    if (form.isSound(WIDTH, BEVEL, CutFields.THINNEST, CutFields.THICKEST)) {
      new BevelRip(bevel, thickest, width, wide)
          .problems(form.unit())
          .forEach(problem -> form.problem(WIDTH, problem.what(), problem.allowed()));
    }
    var work = new Work(at(along), at(width.value()), stock.thickness().ends());
    return form.result(
        () ->
            new SingleCut(
                OperationKind.BEVEL_RIP,
                "Rip with a sloping edge",
                new CutAsked.Bevel(bevel, width, wide, work),
                stock,
                Optional.empty()));
  }
}
