package org.proofcut.core.intake;

import static org.proofcut.core.intake.CutFields.ACROSS;
import static org.proofcut.core.intake.CutFields.DEPTHS;
import static org.proofcut.core.intake.CutFields.DISTANCES;
import static org.proofcut.core.intake.CutFields.SIZES;
import static org.proofcut.core.intake.CutFields.at;
import static org.proofcut.core.intake.CutFields.band;
import static org.proofcut.core.intake.CutFields.piece;
import static org.proofcut.core.intake.CutFields.stock;
import static org.proofcut.core.intake.Field.choice;
import static org.proofcut.core.intake.Field.count;
import static org.proofcut.core.intake.Field.length;
import static org.proofcut.core.intake.HoleFields.BITS;
import static org.proofcut.core.intake.HoleFields.DRILLS;
import static org.proofcut.core.intake.HoleFields.FROM_EDGE;
import static org.proofcut.core.intake.HoleFields.MOST_HOLES;
import static org.proofcut.core.intake.HoleFields.PLACED_AND_DEEP;
import static org.proofcut.core.intake.HoleFields.PLACES;
import static org.proofcut.core.intake.HoleFields.within;

import java.util.List;
import java.util.Optional;
import org.proofcut.core.boring.ShelfPins;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.measure.Length;
import org.proofcut.core.operation.OperationKind;
import org.proofcut.core.operation.SingleCut;
import org.proofcut.core.part.Edge;
import org.proofcut.core.setup.CutAsked;
import org.proofcut.core.setup.Work;
import org.proofcut.core.stock.Sheet;

/** A row of holes for shelf pins down the side of a case. */
final class ShelfPinsForm {

  private static final Field ROW =
      choice(
          "row",
          "Which row",
          List.of(
              new Field.Choice("front", "front row, front edge as reference"),
              new Field.Choice("rear", "rear row, rear edge as reference")));

  private static final Field PIN = length("pin", "Diameter of the pins", "5 mm for most");

  private static final Field PIN_DEPTH = length("depth", "Depth", "of the holes");

  private static final Field PIN_PITCH = length("pitch", "Pitch", "hole to hole, centre to centre");

  private static final Field MARGIN =
      length("margin", "Least margin", "from either end to the nearest hole");

  private static final Field PINS =
      count("holes", "How many holes", "as many as there is room for if left empty").mayStayEmpty();

  private static final Field SIDE =
      length("along", "Length of the side", "from its lower end to its top end");

  private ShelfPinsForm() {}

  static CutForm form() {
    return new CutForm(
        "shelf-pins",
        "Row of shelf pins",
        "Holes at one pitch down both sides of a case, with equal margins at both ends.",
        List.of(
            new CutForm.Group(
                "The row", List.of(ROW, FROM_EDGE, PIN, PIN_DEPTH, PIN_PITCH, MARGIN, PINS)),
            piece(SIDE, ACROSS)),
        DRILLS,
        BITS,
        PLACED_AND_DEEP,
        form -> {
          var edge = form.choice(ROW).equals("rear") ? Edge.REAR : Edge.FRONT;
          var fromEdge =
              Worked.entered(edge.words() + " to the row", form.length(FROM_EDGE, PLACES));
          var diameter =
              Worked.entered("diameter of the pin", form.length(PIN, band("2 mm", "20 mm")));
          var depth = Worked.entered("depth of the holes", form.length(PIN_DEPTH, DEPTHS));
          var pitch = Worked.entered("pitch", form.length(PIN_PITCH, band("8 mm", "500 mm")));
          var margin = Worked.entered("least margin at both ends", form.length(MARGIN, DISTANCES));
          var wanted = form.optionalCount(PINS, 1, MOST_HOLES);
          var stock = stock(form);
          var side = Worked.entered("length of the side", form.length(SIDE, SIZES));
          var work =
              new Work(at(side.value()), at(form.length(ACROSS, SIZES)), stock.thickness().ends());
          var pins = new ShelfPins(side, pitch, margin, wanted);
          if (form.isSound(SIDE, PIN_PITCH, MARGIN, PINS)) {
            pins.problems(form.unit())
                .forEach(
                    problem ->
                        form.problem(field(problem.where()), problem.what(), problem.allowed()));
          }
          if (form.isSound(SIDE, PIN_PITCH, MARGIN, PINS) && pins.holes().value() > MOST_HOLES) {
            form.problem(
                PIN_PITCH,
                "That makes " + pins.holes().value() + " holes",
                "at most " + MOST_HOLES);
          }
          leavesWood(form, PIN_DEPTH, depth, stock);
          within(form, FROM_EDGE, fromEdge.value(), work);
          return form.result(
              () ->
                  new SingleCut(
                      OperationKind.SHELF_PINS,
                      "Row of shelf pins, " + (edge == Edge.FRONT ? "front" : "rear"),
                      new CutAsked.Holes(
                          diameter,
                          Optional.empty(),
                          Optional.of(depth),
                          false,
                          new CutAsked.Row(fromEdge, pins.positions()),
                          stock.material(),
                          work),
                      stock,
                      Optional.empty(),
                      Optional.of(edge)));
        });
  }

  private static Field field(String of) {
    return switch (of) {
      case "margin" -> MARGIN;
      case "pitch" -> PIN_PITCH;
      default -> PINS;
    };
  }

  private static void leavesWood(FormReader form, Field field, Worked<Length> depth, Sheet stock) {
    var thinnest = stock.thickness().ends().least();
    if (form.isSound(field, CutFields.THINNEST) && depth.value().isAtLeast(thinnest)) {
      form.problem(field, "That goes through the piece", "less than " + form.shown(thinnest));
    }
  }
}
