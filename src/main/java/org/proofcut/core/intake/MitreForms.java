package org.proofcut.core.intake;

import static org.proofcut.core.intake.CutFields.BLADES;
import static org.proofcut.core.intake.CutFields.SIZES;
import static org.proofcut.core.intake.CutFields.at;
import static org.proofcut.core.intake.CutFields.piece;
import static org.proofcut.core.intake.CutFields.stock;
import static org.proofcut.core.intake.Field.angle;
import static org.proofcut.core.intake.Field.choice;
import static org.proofcut.core.intake.Field.count;
import static org.proofcut.core.intake.Field.length;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.geometry.CompoundMitre;
import org.proofcut.core.geometry.Corner;
import org.proofcut.core.geometry.FrameMitre;
import org.proofcut.core.measure.Angle;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.Rounding;
import org.proofcut.core.operation.OperationKind;
import org.proofcut.core.operation.SingleCut;
import org.proofcut.core.setup.CutAsked;
import org.proofcut.core.setup.Measure.Dimension;
import org.proofcut.core.setup.Work;
import org.proofcut.core.shop.Machine;
import org.proofcut.core.shop.MitreSaw;

/** Ends cut to meet in a corner. */
final class MitreForms {

  private static final List<Class<? extends Machine>> SAWS = List.of(MitreSaw.class);

  private static final int MOST_SIDES = 60;

  private static final Angle SHARPEST = Angle.ofDegrees(1);

  private static final Angle FLATTEST = Angle.ofDegrees(179);

  private static final String INSIDE = "inside";

  private static final Field SIDES =
      count("sides", "Sides of the frame", "all alike; leave empty if you enter a corner")
          .mayStayEmpty();

  private static final Field CORNER =
      angle("corner", "Corner", "measured on its inside; leave empty if you enter sides")
          .mayStayEmpty();

  private static final Field SIZE =
      length("size", "Length wanted", "of the finished piece, from point to point");

  private static final Field LONGEST =
      length("size", "Length wanted", "along the longest edge of the good face, point to point");

  private static final Field MEASURED =
      choice(
          "measured",
          "Measured between",
          List.of(
              new Field.Choice("outside", "the long points"),
              new Field.Choice(INSIDE, "the short points")));

  private static final Field LEAN =
      angle(
          "lean",
          "Lean of the face",
          "from upright, outward: 0° stands, 90° lies flat; of a moulding, its spring angle");

  private static final Field WIDTH =
      length("across", "Width of the piece", "across its face, at right angles to its edges");

  private MitreForms() {}

  static List<CutForm> all() {
    return List.of(mitre(), compound());
  }

  private static CutForm mitre() {
    return new CutForm(
        "mitre",
        "Mitre a flat frame",
        "Both ends at half the corner, for a frame of any number of sides.",
        List.of(new CutForm.Group("The cut", List.of(SIZE, MEASURED, SIDES, CORNER)), piece(WIDTH)),
        SAWS,
        BLADES,
        Map.of(Dimension.SIZE, 2, Dimension.RUN_ACROSS, 2),
        form -> {
          var entered = Worked.entered("length wanted", form.length(SIZE, SIZES));
          var inside = form.choice(MEASURED).equals(INSIDE);
          var corner = corner(form);
          var width = Worked.entered("width of the piece", form.length(WIDTH, SIZES));
          var frame = new FrameMitre(corner, width);
          if (!inside) {
            hasRoom(form, SIZE, entered, width, corner.mitre());
          }
          return read(
              form,
              OperationKind.MITRE,
              "Mitre a flat frame",
              inside ? frame.longPoint(entered) : entered,
              corner,
              Optional.empty(),
              width);
        });
  }

  private static CutForm compound() {
    return new CutForm(
        "compound-mitre",
        "Mitre a leaning frame",
        "Ends of sides that lean outward, as of a tray or a moulding round the top of a case.",
        List.of(new CutForm.Group("The cut", List.of(LONGEST, SIDES, CORNER, LEAN)), piece(WIDTH)),
        SAWS,
        BLADES,
        Map.of(Dimension.SIZE, 2, Dimension.RUN_ACROSS, 2, Dimension.RUN_THROUGH, 2),
        form -> {
          var size = Worked.entered("length wanted", form.length(LONGEST, SIZES));
          var corner = corner(form);
          var lean =
              Worked.entered(
                  "lean of the face", form.angle(LEAN, Angle.ofDegrees(1), Angle.ofDegrees(89)));
          var width = Worked.entered("width of the piece", form.length(WIDTH, SIZES));
          hasRoom(form, LONGEST, size, width, new CompoundMitre(corner, lean).mitre());
          return read(
              form,
              OperationKind.COMPOUND_MITRE,
              "Mitre a leaning frame",
              size,
              corner,
              Optional.of(lean),
              width);
        });
  }

  /** Sides or a corner, not both; a square corner stands in for what can't be read. */
  private static Corner corner(FormReader form) {
    var sides = form.optionalCount(SIDES, 3, MOST_SIDES);
    var angle = form.optionalAngle(CORNER, SHARPEST, FLATTEST);
    boolean noSides = form.isBlank(SIDES.name());
    if (noSides && form.isBlank(CORNER.name())) {
      form.problem(
          SIDES, "Nothing was entered, nor a corner", "3 to " + MOST_SIDES + ", or a corner");
    } else if (!noSides && !form.isBlank(CORNER.name()) && form.isSound(SIDES, CORNER)) {
      form.problem(SIDES, "Sides and a corner were entered", "one of the two, the other empty");
    }
    return angle
        .map(one -> Corner.of(Worked.entered("corner", one)))
        .orElseGet(() -> Corner.ofSides(sides.orElse(4)));
  }

  /** Both slanted ends have to find room on the long edge. */
  private static void hasRoom(
      FormReader form,
      Field field,
      Worked<Length> longest,
      Worked<Length> width,
      Worked<Angle> mitre) {
    var both = width.value().times(2).times(mitre.value().tangent(), Length.HUNDREDTH, Rounding.UP);
    if (form.isSound(field, WIDTH, SIDES, CORNER) && !longest.value().isGreaterThan(both)) {
      form.problem(
          field,
          "The mitres at both ends take " + form.shown(both),
          "more than " + form.shown(both));
    }
  }

  private static Read<SingleCut> read(
      FormReader form,
      OperationKind kind,
      String title,
      Worked<Length> size,
      Corner corner,
      Optional<Worked<Angle>> lean,
      Worked<Length> width) {
    var stock = stock(form);
    var work = new Work(at(size.value()), at(width.value()), stock.thickness().ends());
    return form.result(
        () ->
            new SingleCut(
                kind,
                title,
                new CutAsked.Mitre(size, corner, lean, width, work),
                stock,
                Optional.empty()));
  }
}
