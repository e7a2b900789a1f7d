package org.proofcut.core.intake;

import static org.proofcut.core.intake.CutFields.SIZES;
import static org.proofcut.core.intake.CutFields.THICKNESSES;
import static org.proofcut.core.intake.CutFields.at;
import static org.proofcut.core.intake.CutFields.band;
import static org.proofcut.core.intake.CutFields.piece;
import static org.proofcut.core.intake.CutFields.stock;
import static org.proofcut.core.intake.Field.length;
import static org.proofcut.core.intake.HoleFields.BITS;
import static org.proofcut.core.intake.HoleFields.HOLES;
import static org.proofcut.core.intake.HoleFields.PITCH;
import static org.proofcut.core.intake.HoleFields.PLACES;
import static org.proofcut.core.intake.HoleFields.SCREW_LENGTHS;
import static org.proofcut.core.intake.HoleFields.along;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.proofcut.core.evidence.Citation;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.measure.Angle;
import org.proofcut.core.measure.Band;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.Rounding;
import org.proofcut.core.operation.OperationKind;
import org.proofcut.core.operation.SingleCut;
import org.proofcut.core.setup.CutAsked;
import org.proofcut.core.setup.Measure.Dimension;
import org.proofcut.core.setup.Work;
import org.proofcut.core.shop.HandDrill;

/** Slanted holes for screws, bored through a jig. */
final class PocketHoleForm {

  /** Of the trade's jigs, from memory. */
  private static final Worked<Angle> POCKET_ANGLE =
      Worked.given("angle of the jig", Angle.ofDegrees(15), Citation.COMMON_PRACTICE);

  private static final Band SIZES_OF_JIGS = band("0 mm", "150 mm");

  private static final Field JIG_GUIDE =
      length(
          "guide",
          "Jig: face to the collar's seat",
          "along the bit, from the face of the work to where the collar lands");

  private static final Field JIG_EXIT =
      length(
              "exit",
              "Where the screw leaves the end",
              "from the face with the pocket; the middle if left empty")
          .mayStayEmpty();

  private static final Field STOP_SHORT =
      length(
          "stop-short",
          "Bit stops short of the end",
          "along the bit: 3 mm keeps its tip off the jig");

  private static final Field POCKET_SCREW =
      length("screw-length", "Length of the screw", "under its head");

  private static final Field OTHER_DEEP =
      length(
          "other-deep",
          "From the joint to its far side",
          "a stile's width, or a panel's thickness");

  private static final Field OTHER_THICK =
      length(
              "other-thick",
              "Its thickness",
              "where both faces lie flush; empty where it goes on past")
          .mayStayEmpty();

  private static final Field POCKET_FIRST =
      length("first", "First pocket", "from the reference edge to its middle");

  private static final Field JOINED =
      length("along", "Width of the part", "along the end that is joined");

  private static final Field JOINED_LENGTH =
      length("across", "Length of the part", "from the end that is joined to the other");

  private PocketHoleForm() {}

  static CutForm form() {
    return new CutForm(
        "pocket-holes",
        "Pocket holes",
        "Slanted holes for screws through the end of a part, at the 15° of the usual jig.",
        List.of(
            new CutForm.Group(
                "Jig and screw", List.of(JIG_GUIDE, JIG_EXIT, STOP_SHORT, POCKET_SCREW)),
            new CutForm.Group(
                "The part that the screw goes into", List.of(OTHER_DEEP, OTHER_THICK)),
            new CutForm.Group("Where they go", List.of(POCKET_FIRST, HOLES, PITCH)),
            piece(JOINED, JOINED_LENGTH)),
        List.of(HandDrill.class),
        BITS,
        Map.of(Dimension.DEPTH, 2),
        form -> {
          var guide =
              Worked.entered(
                  "face of the work to the collar's seat, along the bit",
                  form.length(JIG_GUIDE, SIZES_OF_JIGS));
          var exit = form.optionalLength(JIG_EXIT, THICKNESSES);
          var stopShort =
              Worked.entered(
                  "what the bit stops short of the end",
                  form.length(STOP_SHORT, band("0.5 mm", "15 mm")));
          var screw =
              Worked.entered("length of the screw", form.length(POCKET_SCREW, SCREW_LENGTHS));
          var deep =
              Worked.entered("other part, away from the joint", form.length(OTHER_DEEP, SIZES));
          var thick =
              form.optionalLength(OTHER_THICK, THICKNESSES)
                  .map(one -> Worked.entered("thickness of the other part", one));
          var first =
              Worked.entered("reference edge to pocket 1", form.length(POCKET_FIRST, PLACES));
          var along = along(form, first, "reference edge to pocket ");
          var stock = stock(form);
          var work =
              new Work(
                  at(form.length(JOINED, SIZES)),
                  at(form.length(JOINED_LENGTH, SIZES)),
                  stock.thickness().ends());
          var thinnest =
              Worked.measured("thinnest reading of the part", stock.thickness().ends().least());
          var leaves =
              exit.map(one -> Worked.entered("face to where the axis leaves the end", one))
                  .orElseGet(
                      () ->
                          Worked.called("face to where the axis leaves the end")
                              .by("thinnest reading ÷ 2")
                              .with("thinnest reading", thinnest)
                              .is(thinnest.value().half()));
          var mouth =
              Worked.called("end to the middle of the pocket's mouth")
                  .by("face to where the axis leaves the end ÷ tan(angle), to 0.01 mm")
                  .with("face to where the axis leaves the end", leaves)
                  .with("angle", POCKET_ANGLE)
                  .is(
                      leaves
                          .value()
                          .times(
                              Angle.RIGHT.minus(POCKET_ANGLE.value()).tangent(),
                              Length.HUNDREDTH,
                              Rounding.NEAREST));
          var row = new CutAsked.Row(mouth, along);
          if (form.isSound(POCKET_FIRST, HOLES, PITCH, JOINED)
              && row.last().value().isAtLeast(work.alongGuide().least())) {
            form.problem(
                along.size() > 1 ? PITCH : POCKET_FIRST,
                "The last pocket would be off the part, "
                    + form.shown(row.last().value())
                    + " from its edge",
                "less than its width, " + form.shown(work.alongGuide().least()));
          }
          return form.result(
              () ->
                  new SingleCut(
                      OperationKind.POCKET_HOLES,
                      "Pocket holes",
                      new CutAsked.Pocket(
                          POCKET_ANGLE,
                          leaves,
                          guide,
                          stopShort,
                          screw,
                          deep,
                          thick,
                          row,
                          stock.material(),
                          work),
                      stock,
                      Optional.empty()));
        });
  }
}
