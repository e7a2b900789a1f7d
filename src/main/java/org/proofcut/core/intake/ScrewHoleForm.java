package org.proofcut.core.intake;

import static org.proofcut.core.intake.CutFields.ACROSS;
import static org.proofcut.core.intake.CutFields.ALONG;
import static org.proofcut.core.intake.CutFields.THICKNESSES;
import static org.proofcut.core.intake.CutFields.band;
import static org.proofcut.core.intake.CutFields.piece;
import static org.proofcut.core.intake.CutFields.stock;
import static org.proofcut.core.intake.CutFields.work;
import static org.proofcut.core.intake.Field.choice;
import static org.proofcut.core.intake.Field.length;
import static org.proofcut.core.intake.HoleFields.BITS;
import static org.proofcut.core.intake.HoleFields.DRILLS;
import static org.proofcut.core.intake.HoleFields.FIRST;
import static org.proofcut.core.intake.HoleFields.FROM_EDGE;
import static org.proofcut.core.intake.HoleFields.HOLES;
import static org.proofcut.core.intake.HoleFields.PITCH;
import static org.proofcut.core.intake.HoleFields.PLACED_AND_DEEP;
import static org.proofcut.core.intake.HoleFields.PLACES;
import static org.proofcut.core.intake.HoleFields.SCREW_LENGTHS;
import static org.proofcut.core.intake.HoleFields.along;
import static org.proofcut.core.intake.HoleFields.inside;
import static org.proofcut.core.intake.HoleFields.wanted;

import java.util.List;
import java.util.Optional;
import org.proofcut.core.boring.BoringLimits;
import org.proofcut.core.boring.ScrewHoles;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.measure.Band;
import org.proofcut.core.measure.Length;
import org.proofcut.core.operation.OperationKind;
import org.proofcut.core.operation.SingleCut;
import org.proofcut.core.setup.CutAsked;
import org.proofcut.core.setup.Work;
import org.proofcut.core.stock.Material;
import org.proofcut.core.stock.Sheet;

/** Clearance hole, pilot or seat for the head of a wood screw. */
final class ScrewHoleForm {

  private static final Band SCREWS = band("1 mm", "20 mm");

  private static final String BY_CALIPER = "by-caliper";

  private static final Field SCREW =
      choice(
          "screw",
          "Screw",
          List.of(
              new Field.Choice("4", "No. 4"),
              new Field.Choice("6", "No. 6"),
              new Field.Choice("8", "No. 8"),
              new Field.Choice("10", "No. 10"),
              new Field.Choice(BY_CALIPER, "by caliper, below")));

  private static final Field SHANK =
      length("shank", "Diameter over the thread", "by caliper; empty for a screw with a number")
          .mayStayEmpty();

  private static final Field ROOT =
      length("root", "Root", "between the threads, by caliper; empty for a screw with a number")
          .mayStayEmpty();

  private static final Field BORE =
      choice(
          "bore",
          "Which of its holes",
          List.of(
              new Field.Choice("clearance", "clearance hole, through the part under the head"),
              new Field.Choice("pilot", "pilot, in the part that holds the thread"),
              new Field.Choice("countersink", "seat for the head, at the clearance hole")));

  private static final Field SCREW_LENGTH =
      length(
              "screw-length",
              "Length of the screw",
              "under its head, or over all if it is sunk; for a pilot")
          .mayStayEmpty();

  private static final Field UNDER_HEAD =
      length("under-head", "Part under the head", "its thickness; for a pilot").mayStayEmpty();

  private static final Field HEAD =
      length("head", "Head of the screw", "its diameter, by caliper; for a seat").mayStayEmpty();

  private ScrewHoleForm() {}

  static CutForm form(BoringLimits limits) {
    return new CutForm(
        "screw-hole",
        "Hole for a screw",
        "Clearance hole, pilot or seat for the head of a wood screw.",
        List.of(
            new CutForm.Group(
                "The screw", List.of(BORE, SCREW, SHANK, ROOT, SCREW_LENGTH, UNDER_HEAD, HEAD)),
            new CutForm.Group("Where it goes", List.of(FROM_EDGE, FIRST, HOLES, PITCH)),
            piece(ALONG, ACROSS)),
        DRILLS,
        BITS,
        PLACED_AND_DEEP,
        form -> {
          var bore = form.choice(BORE);
          var screw = screw(form);
          var length = form.optionalLength(SCREW_LENGTH, SCREW_LENGTHS);
          var through = form.optionalLength(UNDER_HEAD, THICKNESSES);
          var head = form.optionalLength(HEAD, SCREWS);
          var row = row(form);
          var stock = stock(form);
          var work = work(form, stock);
          inside(form, row, work, FROM_EDGE, PITCH);
          switch (bore) {
            case "pilot" -> {
              wanted(form, SCREW_LENGTH, length);
              wanted(form, UNDER_HEAD, through);
              if (length.isPresent() && through.isPresent()) {
                reaches(form, length.get(), through.get(), stock);
              }
            }
            case "countersink" -> {
              wanted(form, HEAD, head);
              head.filter(one -> one.isAtMost(screw.clearance(limits).value()))
                  .ifPresent(
                      one ->
                          form.problem(
                              HEAD,
                              "That is no wider than the clearance hole",
                              "more than " + form.shown(screw.clearance(limits).value())));
            }
            default -> {}
          }
          return form.result(
              () ->
                  new SingleCut(
                      OperationKind.SCREW_HOLES,
                      title(bore),
                      asked(
                          bore, new Screw(screw, length, through, head), row, stock, work, limits),
                      stock,
                      Optional.empty()));
        });
  }

  /** A screw by its number, or by what the caliper says of it. */
  private static ScrewHoles screw(FormReader form) {
    var chosen = form.choice(SCREW);
    var shank = form.optionalLength(SHANK, SCREWS);
    var root = form.optionalLength(ROOT, SCREWS);
    if (chosen.matches("4|6|8|10")) {
      return ScrewHoles.ofGauge(Integer.parseInt(chosen));
    }
    if (chosen.equals(BY_CALIPER)) {
      wanted(form, SHANK, shank);
      wanted(form, ROOT, root);
    }
    if (shank.isPresent() && root.isPresent()) {
      if (root.get().isLessThan(shank.get())) {
        return new ScrewHoles(
            Worked.measured("diameter of the screw", shank.get()),
            Worked.measured("root of the screw", root.get()));
      }
      form.problem(
          ROOT, "That is not less than over the thread", "less than " + form.shown(shank.get()));
    }
    return ScrewHoles.ofGauge(8);
  }

  /** A row with equal steps from the first hole. */
  private static CutAsked.Row row(FormReader form) {
    var fromEdge = Worked.entered("reference edge to the holes", form.length(FROM_EDGE, PLACES));
    var first = Worked.entered("reference end to hole 1", form.length(FIRST, PLACES));
    return new CutAsked.Row(fromEdge, along(form, first, "reference end to hole "));
  }

  private static void reaches(FormReader form, Length screw, Length through, Sheet stock) {
    var thinnest = stock.thickness().ends().least();
    if (screw.isAtMost(through)) {
      form.problem(
          SCREW_LENGTH,
          "The screw ends in the part under its head",
          "more than " + form.shown(through));
    } else if (form.isSound(CutFields.THINNEST) && screw.minus(through).isAtLeast(thinnest)) {
      form.problem(
          SCREW_LENGTH,
          "The screw would come out of the piece: it goes in " + form.shown(screw.minus(through)),
          "less than " + form.shown(through.plus(thinnest)));
    }
  }

  private static String title(String bore) {
    return switch (bore) {
      case "pilot" -> "Pilot for a screw";
      case "countersink" -> "Seat for the head of a screw";
      default -> "Clearance hole for a screw";
    };
  }

  /** The screw as typed, and what of it is asked for. */
  private record Screw(
      ScrewHoles holes, Optional<Length> length, Optional<Length> through, Optional<Length> head) {}

  private static CutAsked asked(
      String bore, Screw screw, CutAsked.Row row, Sheet stock, Work work, BoringLimits limits) {
    var holes = screw.holes();
    var material = stock.material();
    var wood = wood(material);
    return switch (bore) {
      case "pilot" ->
          new CutAsked.Holes(
              holes.pilot(wood),
              Optional.of(holes.pilotAccepted(wood, limits)),
              Optional.of(
                  ScrewHoles.pilotDepth(
                      Worked.entered("length of the screw", screw.length().orElseThrow()),
                      Worked.entered(
                          "thickness of the part under the head", screw.through().orElseThrow()))),
              false,
              row,
              material,
              work);
      case "countersink" ->
          new CutAsked.Countersink(
              Worked.entered("head of the screw", screw.head().orElseThrow()),
              holes.clearance(limits),
              limits.headUnderFace(),
              row,
              material,
              work);
      default ->
          new CutAsked.Holes(
              holes.clearance(limits),
              Optional.of(holes.clearanceAccepted(limits)),
              Optional.empty(),
              false,
              row,
              material,
              work);
    };
  }

  private static ScrewHoles.Wood wood(Material material) {
    return switch (material) {
      case SOFTWOOD -> ScrewHoles.Wood.SOFTWOOD;
      case HARDWOOD -> ScrewHoles.Wood.HARDWOOD;
      case PLYWOOD, MDF, PARTICLEBOARD, HARDBOARD -> ScrewHoles.Wood.PANEL;
    };
  }
}
