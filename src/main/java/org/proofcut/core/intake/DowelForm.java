package org.proofcut.core.intake;

import static org.proofcut.core.intake.CutFields.SIZES;
import static org.proofcut.core.intake.CutFields.THICKNESSES;
import static org.proofcut.core.intake.CutFields.at;
import static org.proofcut.core.intake.CutFields.band;
import static org.proofcut.core.intake.CutFields.stock;
import static org.proofcut.core.intake.Field.choice;
import static org.proofcut.core.intake.Field.count;
import static org.proofcut.core.intake.Field.length;
import static org.proofcut.core.intake.HoleFields.BITS;
import static org.proofcut.core.intake.HoleFields.DRILLS;
import static org.proofcut.core.intake.HoleFields.PLACED_AND_DEEP;
import static org.proofcut.core.intake.HoleFields.PLACES;

import java.util.List;
import java.util.Optional;
import org.proofcut.core.boring.BoringLimits;
import org.proofcut.core.boring.Dowels;
import org.proofcut.core.evidence.Problem;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.operation.OperationKind;
import org.proofcut.core.operation.SingleCut;
import org.proofcut.core.setup.CutAsked;
import org.proofcut.core.setup.Work;

/** Holes for the dowels of one joint, in the face of one part or the end of the other. */
final class DowelForm {

  private static final Field DOWELLED =
      choice(
          "part",
          "Which part is bored now",
          List.of(
              new Field.Choice("face", "the one bored into its face"),
              new Field.Choice("end", "the one bored into its end")));

  private static final Field DOWEL = length("dowel", "Diameter of the dowels", "by caliper");

  private static final Field DOWEL_LENGTH = length("dowel-length", "Length of the dowels", "");

  private static final Field DOWELS = count("dowels", "How many dowels", "in the joint");

  private static final Field DOWEL_EDGE =
      length("dowel-edge", "First dowel", "from either edge of the joint to its centre");

  private static final Field GLUE_ROOM =
      length("glue-room", "Glue room", "left empty at the bottom of each hole; 1 or 2 mm");

  private static final Field FACE_TO_MIDDLE =
      length(
              "from-edge",
              "Middle of the other part",
              "from the reference edge to where it will stand; flush with that edge if left empty")
          .mayStayEmpty();

  private static final Field END_THICKNESS =
      length("end-thickness", "Its thickness", "by caliper: the dowels stand in its middle");

  private static final Field END_LENGTH =
      length("end-length", "Its length", "from the end that is bored to the other");

  private static final Field FACE_REACH =
      length("across", "Reach", "how far it goes out from its reference edge");

  private static final Field JOINT =
      length("along", "Width of the joint", "along it, where both parts meet");

  private DowelForm() {}

  static CutForm form(BoringLimits limits) {
    return new CutForm(
        "dowels",
        "Dowels across a joint",
        "One joint, two set-ups: holes in the face of one part, and in the end of the other.",
        List.of(
            new CutForm.Group(
                "The joint",
                List.of(DOWELLED, DOWEL, DOWEL_LENGTH, DOWELS, JOINT, DOWEL_EDGE, GLUE_ROOM)),
            new CutForm.Group("The part bored into its end", List.of(END_THICKNESS, END_LENGTH)),
            new CutForm.Group(
                "The part bored into its face",
                List.of(CutFields.THINNEST, CutFields.THICKEST, FACE_TO_MIDDLE, FACE_REACH)),
            new CutForm.Group("Both parts", List.of(CutFields.MATERIAL))),
        DRILLS,
        BITS,
        PLACED_AND_DEEP,
        form -> {
          boolean inFace = !form.choice(DOWELLED).equals("end");
          var diameter =
              Worked.entered("diameter of the dowels", form.length(DOWEL, band("3 mm", "25 mm")));
          var length =
              Worked.entered(
                  "length of the dowels", form.length(DOWEL_LENGTH, band("10 mm", "150 mm")));
          int count = form.count(DOWELS, 1, 20);
          var edge =
              Worked.entered(
                  "edge of the joint to the first dowel", form.length(DOWEL_EDGE, PLACES));
          var room =
              Worked.entered(
                  "glue room at the bottom of each hole",
                  form.length(GLUE_ROOM, band("0 mm", "10 mm")));
          var place = form.optionalLength(FACE_TO_MIDDLE, PLACES);
          var end =
              Worked.entered(
                  "thickness of the part bored into its end",
                  form.length(END_THICKNESS, THICKNESSES));
          var stock = stock(form);
          var joint = Worked.entered("width of the joint", form.length(JOINT, SIZES));
          var across = form.length(FACE_REACH, SIZES);
          var endLength = form.length(END_LENGTH, SIZES);
          var face =
              Worked.measured(
                  "thinnest reading of the part bored into its face",
                  stock.thickness().ends().least());
          var pair =
              new Dowels(
                  joint, count, edge, diameter, length, room, face, end, limits.leastUnderDowel());
          if (form.isSound(
              DOWEL,
              DOWEL_LENGTH,
              DOWELS,
              DOWEL_EDGE,
              GLUE_ROOM,
              END_THICKNESS,
              CutFields.THINNEST,
              CutFields.THICKEST,
              JOINT)) {
            pair.problems(form.unit()).stream()
                .filter(Problem::stops)
                .forEach(
                    problem ->
                        form.problem(
                            dowelField(problem.where()), problem.what(), problem.allowed()));
          }
          if (inFace
              && form.isSound(FACE_TO_MIDDLE, FACE_REACH)
              && place.isPresent()
              && place.get().isAtLeast(across)) {
            form.problem(
                FACE_TO_MIDDLE,
                "That is off the part",
                "less than its reach, " + form.shown(across));
          }
          // In the face: where the other part's middle will stand; in the end: its own middle.
          var fromEdge =
              inFace
                  ? place
                      .map(
                          one ->
                              Worked.entered("reference edge to the middle of the other part", one))
                      .orElseGet(pair::centre)
                  : pair.centre();
          var work =
              inFace
                  ? new Work(at(joint.value()), at(across), stock.thickness().ends())
                  : new Work(at(joint.value()), at(end.value()), at(endLength));
          return form.result(
              () ->
                  new SingleCut(
                      OperationKind.DOWEL_HOLES,
                      inFace ? "Dowel holes in the face" : "Dowel holes in the end",
                      new CutAsked.Holes(
                          diameter,
                          Optional.empty(),
                          Optional.of(inFace ? pair.depthInFace() : pair.depthInEnd()),
                          false,
                          new CutAsked.Row(fromEdge, pair.positions()),
                          stock.material(),
                          work),
                      stock,
                      Optional.empty()));
        });
  }

  private static Field dowelField(String of) {
    return switch (of) {
      case "edge" -> DOWEL_EDGE;
      case "count" -> DOWELS;
      case "diameter" -> DOWEL;
      default -> DOWEL_LENGTH;
    };
  }
}
