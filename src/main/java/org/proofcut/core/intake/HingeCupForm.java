package org.proofcut.core.intake;

import static org.proofcut.core.intake.CutFields.ACROSS;
import static org.proofcut.core.intake.CutFields.ALONG;
import static org.proofcut.core.intake.CutFields.DEPTHS;
import static org.proofcut.core.intake.CutFields.band;
import static org.proofcut.core.intake.CutFields.piece;
import static org.proofcut.core.intake.CutFields.stock;
import static org.proofcut.core.intake.CutFields.work;
import static org.proofcut.core.intake.Field.length;
import static org.proofcut.core.intake.HoleFields.BITS;
import static org.proofcut.core.intake.HoleFields.DRILLS;
import static org.proofcut.core.intake.HoleFields.FIRST;
import static org.proofcut.core.intake.HoleFields.HOLES;
import static org.proofcut.core.intake.HoleFields.PLACED_AND_DEEP;
import static org.proofcut.core.intake.HoleFields.PLACES;
import static org.proofcut.core.intake.HoleFields.inside;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.proofcut.core.boring.BoringLimits;
import org.proofcut.core.boring.HingeCup;
import org.proofcut.core.evidence.Problem;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.Rounding;
import org.proofcut.core.operation.OperationKind;
import org.proofcut.core.operation.SingleCut;
import org.proofcut.core.setup.CutAsked;
import org.proofcut.core.setup.Work;

/** Cups in the back of a door, placed as the hinge's sheet says. */
final class HingeCupForm {

  private static final Field CUP = length("cup", "Diameter of the cup", "35 mm for most");

  private static final Field CUP_DEPTH =
      length("cup-depth", "Depth of the cup", "from the hinge's sheet");

  private static final Field CUP_DISTANCE =
      length(
          "cup-distance",
          "Door's edge to the cup",
          "to the near edge of the cup, from the hinge's sheet");

  private static final Field FIXED =
      length(
              "fixed-distance",
              "Fixed distance of the hinge",
              "from its sheet; only to check an overlay")
          .mayStayEmpty();

  private static final Field PLATE =
      length("plate", "Height of the plate", "from its sheet; only to check an overlay")
          .mayStayEmpty();

  private static final Field OVERLAY =
      length("overlay", "Overlay wanted", "how far the door covers the case; to be checked")
          .mayStayEmpty();

  private static final Field LAST =
      length("last", "Last hole", "from the far end; as the first one if left empty")
          .mayStayEmpty();

  private HingeCupForm() {}

  static CutForm form(BoringLimits limits) {
    return new CutForm(
        "hinge-cup",
        "Hinge cups",
        "Flat-bottomed holes in the back of a door, as the sheet of the hinge says.",
        List.of(
            new CutForm.Group(
                "From the hinge's sheet",
                List.of(CUP, CUP_DEPTH, CUP_DISTANCE, FIXED, PLATE, OVERLAY)),
            new CutForm.Group("Where they go", List.of(FIRST, HOLES, LAST)),
            piece(ALONG, ACROSS)),
        DRILLS,
        BITS,
        PLACED_AND_DEEP,
        form -> {
          var diameter =
              Worked.entered("diameter of the cup", form.length(CUP, band("15 mm", "60 mm")));
          var depth = Worked.entered("depth of the cup", form.length(CUP_DEPTH, DEPTHS));
          var fromEdge =
              Worked.entered(
                  "door's edge to the cup", form.length(CUP_DISTANCE, band("1 mm", "30 mm")));
          var fixed = form.optionalLength(FIXED, band("0 mm", "40 mm"));
          var plate = form.optionalLength(PLATE, band("0 mm", "40 mm"));
          var overlay = form.optionalLength(OVERLAY, band("0 mm", "60 mm"));
          var stock = stock(form);
          var work = work(form, stock);
          var cup =
              new HingeCup(
                  diameter,
                  depth,
                  fromEdge,
                  Worked.measured("thinnest reading of the door", stock.thickness().ends().least()),
                  limits.leastUnderCup());
          if (form.isSound(CUP_DEPTH, CutFields.THINNEST)) {
            cup.problems(form.unit()).stream()
                .filter(Problem::stops)
                .forEach(problem -> form.problem(CUP_DEPTH, problem.what(), problem.allowed()));
          }
          if (fixed.isPresent() && plate.isPresent() && overlay.isPresent()) {
            overlays(form, cup, fixed.get(), plate.get(), overlay.get());
          }
          var row = new CutAsked.Row(cup.centre(), ends(form, work));
          inside(form, row, work, CUP_DISTANCE, FIRST);
          return form.result(
              () ->
                  new SingleCut(
                      OperationKind.HINGE_CUPS,
                      "Hinge cups",
                      new CutAsked.Holes(
                          diameter,
                          Optional.empty(),
                          Optional.of(depth),
                          true,
                          row,
                          stock.material(),
                          work),
                      stock,
                      Optional.empty()));
        });
  }

  private static void overlays(
      FormReader form, HingeCup cup, Length fixed, Length plate, Length overlay) {
    var comesTo =
        cup.overlay(
            Worked.entered("fixed distance of the hinge", fixed),
            Worked.entered("height of the plate", plate));
    if (!comesTo.value().equals(overlay) && form.isSound(CUP_DISTANCE)) {
      form.problem(
          OVERLAY,
          "With these figures the door covers "
              + form.shown(comesTo.value())
              + ", not "
              + form.shown(overlay),
          "fixed distance + edge to cup − plate: a cup "
              + form.shown(
                  HingeCup.fromEdge(
                          Worked.entered("overlay", overlay),
                          Worked.entered("fixed distance", fixed),
                          Worked.entered("plate", plate))
                      .value())
              + " from the edge, or another plate");
    }
  }

  /** As far from the far end as from the near one, the others evenly between. */
  private static List<Worked<Length>> ends(FormReader form, Work work) {
    var first = Worked.entered("reference end to cup 1", form.length(FIRST, PLACES));
    var last =
        form.optionalLength(LAST, PLACES)
            .map(one -> Worked.entered("far end to the last cup", one));
    int cups = form.optionalCount(HOLES, 1, 7).orElse(2);
    var length = Worked.entered("length of the edge", work.alongGuide().least());
    var fromFar = last.orElse(first);
    var between = length.value().minus(first.value()).minus(fromFar.value());
    if (cups > 1 && !between.isPositive()) {
      form.problem(
          last.isPresent() ? LAST : FIRST,
          "Both ends' cups would meet",
          "less than half of " + form.shown(length.value()));
      return List.of(first);
    }
    var along = new ArrayList<>(List.of(first));
    for (int i = 1; i < cups; i++) {
      along.add(
          Worked.called("reference end to cup " + (i + 1))
              .by("first + (length − first − last) × %d ÷ %d, to 0.01 mm".formatted(i, cups - 1))
              .with("first", first)
              .with("length", length)
              .with("last", fromFar)
              .is(
                  first
                      .value()
                      .plus(
                          between.inProportion(
                              new Length(i),
                              new Length(cups - 1L),
                              Length.HUNDREDTH,
                              Rounding.NEAREST))));
    }
    return along;
  }
}
