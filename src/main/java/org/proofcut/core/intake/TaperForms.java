package org.proofcut.core.intake;

import static org.proofcut.core.intake.CutFields.BLADES;
import static org.proofcut.core.intake.CutFields.SIZES;
import static org.proofcut.core.intake.CutFields.at;
import static org.proofcut.core.intake.CutFields.band;
import static org.proofcut.core.intake.CutFields.piece;
import static org.proofcut.core.intake.CutFields.stock;
import static org.proofcut.core.intake.Field.choice;
import static org.proofcut.core.intake.Field.length;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.geometry.Taper;
import org.proofcut.core.measure.Band;
import org.proofcut.core.operation.OperationKind;
import org.proofcut.core.operation.SingleCut;
import org.proofcut.core.setup.CutAsked;
import org.proofcut.core.setup.Measure.Dimension;
import org.proofcut.core.setup.Work;
import org.proofcut.core.shop.TableSaw;

/** Pieces that narrow along their length. What is typed for the first edge serves the second. */
final class TaperForms {

  private static final String TITLE = "Taper on a carrier";

  private static final String FIRST = "first";

  private static final String SECOND = "second";

  private static final Band BASES = band("3 mm", "40 mm");

  private static final Field EDGES =
      choice(
          "edge",
          "This cut",
          List.of(
              new Field.Choice("one", "the only tapered edge"),
              new Field.Choice(FIRST, "first of both edges"),
              new Field.Choice(SECOND, "second of both edges")));

  private static final Field WIDE =
      length("wide", "Wide end", "how wide it is where the taper begins");

  private static final Field NARROW =
      length("narrow", "Narrow end", "how wide it is when all is cut");

  private static final Field RUN =
      length("run", "Run", "from the narrow end to where the taper begins");

  private static final Field ALONG = length("along", "Length of the piece", "from end to end");

  private static final Field CARRIER =
      length("carrier", "Width of the carrier", "from its edge on the fence to its other edge");

  private static final Field BASE = length("base", "Its thickness", "under the work, by caliper");

  private static final Field APART =
      length("apart", "Stops apart", "from heel to side stop, along its edge: as far as can be");

  private TaperForms() {}

  static List<CutForm> all() {
    return List.of(
        new CutForm(
            "taper",
            TITLE,
            "A piece that gets narrower along its length, at one edge or both.",
            List.of(
                new CutForm.Group("The taper", List.of(EDGES, WIDE, NARROW, RUN)),
                piece(ALONG),
                new CutForm.Group("The carrier", List.of(CARRIER, BASE, APART))),
            List.of(TableSaw.class),
            BLADES,
            Map.of(Dimension.SIZE, 2, Dimension.RUN_ALONG, 2),
            TaperForms::read));
  }

  private static Read<SingleCut> read(FormReader form) {
    var edges = form.choice(EDGES);
    var wide = Worked.entered("wide end", form.length(WIDE, SIZES));
    var narrow = Worked.entered("narrow end", form.length(NARROW, SIZES));
    var run = Worked.entered("run", form.length(RUN, SIZES));
    var stock = stock(form);
    var along = form.length(ALONG, SIZES);
    var carrier =
        new CutAsked.Carrier(
            Worked.measured("width of the carrier", form.length(CARRIER, SIZES)),
            Worked.measured("base of the carrier", form.length(BASE, BASES)),
            Worked.entered("stops apart", form.length(APART, SIZES)));
    var taper = new Taper(run, wide, narrow, edges.equals(FIRST) || edges.equals(SECOND));
    if (form.isSound(WIDE, NARROW, RUN)) {
      for (var problem : taper.problems(form.unit())) {
        var field = problem.where().equals(RUN.name()) ? RUN : NARROW;
        form.problem(field, problem.what(), problem.allowed());
      }
    }
    if (form.isSound(RUN, ALONG) && run.value().isGreaterThan(along)) {
      form.problem(RUN, "That is longer than the piece", form.shown(along) + " or less");
    }
    var work = new Work(at(along), at(wide.value()), stock.thickness().ends());
    return form.result(
        () ->
            new SingleCut(
                OperationKind.TAPER,
                TITLE,
                new CutAsked.Tapered(taper, edges.equals(SECOND), carrier, work),
                stock,
                Optional.empty()));
  }
}
