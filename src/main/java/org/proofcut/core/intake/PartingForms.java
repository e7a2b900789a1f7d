package org.proofcut.core.intake;

import static org.proofcut.core.intake.CutFields.BLADES;
import static org.proofcut.core.intake.CutFields.SIZES;
import static org.proofcut.core.intake.CutFields.at;
import static org.proofcut.core.intake.CutFields.piece;
import static org.proofcut.core.intake.CutFields.stock;
import static org.proofcut.core.intake.Field.length;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.measure.Length;
import org.proofcut.core.operation.OperationKind;
import org.proofcut.core.operation.SingleCut;
import org.proofcut.core.setup.CutAsked;
import org.proofcut.core.setup.Measure.Dimension;
import org.proofcut.core.setup.Work;
import org.proofcut.core.shop.Machine;
import org.proofcut.core.shop.MitreSaw;
import org.proofcut.core.shop.TableSaw;
import org.proofcut.core.shop.TrackSaw;

/** Cuts that part the stock, square to its faces. */
final class PartingForms {

  private static final List<Class<? extends Machine>> SAWS =
      List.of(TableSaw.class, TrackSaw.class);

  private static final List<Class<? extends Machine>> CROSSCUT_SAWS =
      List.of(TableSaw.class, TrackSaw.class, MitreSaw.class);

  private static final Field WIDTH = length("size", "Width wanted", "of the piece that is kept");

  private static final Field LENGTH = length("size", "Length wanted", "of the piece that is kept");

  private static final Field STRIP =
      length("size", "Strip wanted", "as wide as the part, and what is trimmed off later");
  private static final Field SHEET_LENGTH =
      length("along", "Length of the sheet", "the cut runs along it");
  private static final Field SHEET_WIDTH = length("across", "Width of the sheet", "");
  private static final Field RIP_LENGTH =
      length("along", "Length of the piece", "along the edge that rides the guide");

  private static final Field CROSSCUT_WIDTH =
      length("across", "Width of the piece", "across which the blade cuts");

  private PartingForms() {}

  static List<CutForm> all() {
    return List.of(breakDown(), rip(), crosscut(), StripForms.strips());
  }

  private static CutForm breakDown() {
    return new CutForm(
        "break-down",
        "Break down a sheet",
        "A rough cut along a whole sheet, where it lies; trimmed to size later.",
        List.of(new CutForm.Group("The cut", List.of(STRIP)), piece(SHEET_LENGTH, SHEET_WIDTH)),
        SAWS,
        BLADES,
        Map.of(),
        form -> {
          var size = Worked.entered("width of the strip", form.length(STRIP, SIZES));
          var along = form.length(SHEET_LENGTH, SIZES);
          var across = form.length(SHEET_WIDTH, SIZES);
          if (form.isSound(STRIP, SHEET_WIDTH) && size.value().isAtLeast(across)) {
            form.problem(
                STRIP, "That is no narrower than the sheet", "less than " + form.shown(across));
          }
          return parting(
              form,
              OperationKind.ROUGH_STRIPS,
              "Break down a sheet",
              new Sizes(size, along, across),
              false);
        });
  }

  private static CutForm rip() {
    return new CutForm(
        "rip",
        "Rip to width",
        "A cut along the piece, parallel to its reference edge.",
        List.of(new CutForm.Group("The cut", List.of(WIDTH)), piece(RIP_LENGTH)),
        SAWS,
        BLADES,
        Map.of(Dimension.SIZE, 2),
        form -> {
          var size = Worked.entered("width wanted", form.length(WIDTH, SIZES));
          var along = form.length(RIP_LENGTH, SIZES);
          return parting(
              form, OperationKind.RIP, "Rip to width", new Sizes(size, along, size.value()), true);
        });
  }

  private static CutForm crosscut() {
    return new CutForm(
        "crosscut",
        "Crosscut to length",
        "A cut across the piece, square to its reference edge.",
        List.of(new CutForm.Group("The cut", List.of(LENGTH)), piece(CROSSCUT_WIDTH)),
        CROSSCUT_SAWS,
        BLADES,
        Map.of(Dimension.SIZE, 2),
        form -> {
          var size = Worked.entered("length wanted", form.length(LENGTH, SIZES));
          var across = form.length(CROSSCUT_WIDTH, SIZES);
          return parting(
              form,
              OperationKind.CROSSCUT,
              "Crosscut to length",
              new Sizes(size, size.value(), across),
              true);
        });
  }

  /** What the cut leaves, and how large the piece is along and across the guide. */
  private record Sizes(Worked<Length> size, Length along, Length across) {}

  private static Read<SingleCut> parting(
      FormReader form, OperationKind kind, String title, Sizes sizes, boolean toSize) {
    var stock = stock(form);
    var work = new Work(at(sizes.along), at(sizes.across), stock.thickness().ends());
    boolean along = kind != OperationKind.CROSSCUT;
    return form.result(
        () ->
            new SingleCut(
                kind,
                title,
                new CutAsked.Parting(sizes.size, toSize, along, work),
                stock,
                Optional.empty()));
  }
}
