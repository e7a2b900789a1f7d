package org.proofcut.core.intake;

import static org.proofcut.core.intake.Field.choice;
import static org.proofcut.core.intake.Field.length;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.fit.FitLimits;
import org.proofcut.core.fit.FlushFit;
import org.proofcut.core.fit.SlotFit;
import org.proofcut.core.measure.Band;
import org.proofcut.core.measure.Length;
import org.proofcut.core.operation.OperationKind;
import org.proofcut.core.operation.SingleCut;
import org.proofcut.core.readings.Readings;
import org.proofcut.core.setup.CutAsked;
import org.proofcut.core.setup.Work;
import org.proofcut.core.stock.Material;
import org.proofcut.core.stock.Sheet;

/** The forms of single cuts, for when there is no job at all. */
public final class CutForms {

  private static final Band SIZES = band("1 mm", "4000 mm");
  private static final Band DISTANCES = band("0 mm", "4000 mm");
  private static final Band THICKNESSES = band("2 mm", "120 mm");
  private static final Band DEPTHS = band("0.5 mm", "100 mm");

  private static final Field MATERIAL =
      choice(
          "material",
          "Made of",
          Arrays.stream(Material.values())
              .map(one -> new Field.Choice(one.id(), one.words()))
              .toList());
  private static final Field THINNEST =
      length("thinnest", "Piece: thinnest reading", "by caliper, where it is cut");
  private static final Field THICKEST =
      length("thickest", "Piece: thickest reading", "by caliper, where it is cut");
  private static final Field ENTERING_THINNEST =
      length("entering-thinnest", "What goes in: thinnest reading", "by caliper, at its edge");
  private static final Field ENTERING_THICKEST =
      length("entering-thickest", "What goes in: thickest reading", "by caliper, at its edge");
  private static final Field DEPTH = length("depth", "Depth", "into the thickness");
  private static final Field DISTANCE =
      length("distance", "Distance", "from the reference edge to the near wall");
  private static final Field ALONG =
      length("along", "Edge on the guide", "length of the edge that rides fence or straightedge");
  private static final Field ACROSS =
      length("across", "Reach", "how far the piece reaches out from that edge");
  private static final Field WIDTH = length("size", "Width wanted", "of the piece that is kept");
  private static final Field LENGTH = length("size", "Length wanted", "of the piece that is kept");
  private static final Field PIECE_LENGTH = length("along", "Length of the piece", "along the cut");
  private static final Field PIECE_WIDTH = length("across", "Width of the piece", "along the cut");

  private CutForms() {}

  /** One form for each kind of cut, judged by these limits of fit. */
  public static List<ItemForm<SingleCut>> all(FitLimits fit) {
    return List.of(dado(fit), rabbet(fit), rip(), crosscut());
  }

  private static ItemForm<SingleCut> dado(FitLimits fit) {
    return new ItemForm<>(
        "dado",
        "Dado or groove",
        List.of(
            ENTERING_THINNEST,
            ENTERING_THICKEST,
            DEPTH,
            DISTANCE,
            THINNEST,
            THICKEST,
            ALONG,
            ACROSS,
            MATERIAL),
        (id, form) -> {
          var entering = readings(form, "what goes in", ENTERING_THINNEST, ENTERING_THICKEST);
          var depth = Worked.entered("depth of the slot", form.length(DEPTH, DEPTHS));
          var distance =
              Worked.entered("distance from the reference edge", form.length(DISTANCE, DISTANCES));
          var stock = stock(form);
          var work = work(form, ALONG, ACROSS, stock);
          var slot = SlotFit.of(entering, fit);
          if (slot.accepted().isEmpty()) {
            tooUneven(form, entering, SlotFit.mostSpread(fit));
          }
          return form.result(
              () ->
                  new SingleCut(
                      OperationKind.DADO,
                      "Dado or groove",
                      new CutAsked.Slot(
                          slot.target(), slot.accepted().orElseThrow(), depth, distance, work),
                      stock,
                      Optional.of(piece("entering", "what goes in", stock.material(), entering))));
        });
  }

  private static ItemForm<SingleCut> rabbet(FitLimits fit) {
    return new ItemForm<>(
        "rabbet",
        "Rabbet",
        List.of(
            ENTERING_THINNEST,
            ENTERING_THICKEST,
            DEPTH,
            THINNEST,
            THICKEST,
            ALONG,
            ACROSS,
            MATERIAL),
        (id, form) -> {
          var covering = readings(form, "what goes in", ENTERING_THINNEST, ENTERING_THICKEST);
          var depth = Worked.entered("depth of the rabbet", form.length(DEPTH, DEPTHS));
          var stock = stock(form);
          var work = work(form, ALONG, ACROSS, stock);
          var flush = FlushFit.of(covering, Worked.entered("set-in", Length.ZERO), fit);
          if (flush.accepted().isEmpty()) {
            tooUneven(form, covering, fit.mostProud().value());
          }
          return form.result(
              () ->
                  new SingleCut(
                      OperationKind.RABBET,
                      "Rabbet",
                      new CutAsked.Rabbet(
                          flush.target(), flush.accepted().orElseThrow(), depth, work),
                      stock,
                      Optional.of(piece("entering", "what goes in", stock.material(), covering))));
        });
  }

  private static ItemForm<SingleCut> rip() {
    return new ItemForm<>(
        "rip",
        "Rip to width",
        List.of(WIDTH, PIECE_LENGTH, THINNEST, THICKEST, MATERIAL),
        (id, form) -> {
          var size = Worked.entered("width wanted", form.length(WIDTH, SIZES));
          var along = form.length(PIECE_LENGTH, SIZES);
          return parting(form, OperationKind.RIP, "Rip to width", true, size, along, size.value());
        });
  }

  private static ItemForm<SingleCut> crosscut() {
    return new ItemForm<>(
        "crosscut",
        "Crosscut to length",
        List.of(LENGTH, PIECE_WIDTH, THINNEST, THICKEST, MATERIAL),
        (id, form) -> {
          var size = Worked.entered("length wanted", form.length(LENGTH, SIZES));
          var across = form.length(PIECE_WIDTH, SIZES);
          return parting(
              form,
              OperationKind.CROSSCUT,
              "Crosscut to length",
              false,
              size,
              size.value(),
              across);
        });
  }

  private static Read<SingleCut> parting(
      FormReader form,
      OperationKind kind,
      String title,
      boolean isRip,
      Worked<Length> size,
      Length along,
      Length across) {
    var stock = stock(form);
    var work = new Work(at(along), at(across), stock.thickness().ends());
    return form.result(
        () ->
            new SingleCut(
                kind,
                title,
                new CutAsked.Parting(size, true, isRip, work),
                stock,
                Optional.empty()));
  }

  private static Sheet stock(FormReader form) {
    var thickness = readings(form, "the piece", THINNEST, THICKEST);
    var chosen = form.choice(MATERIAL);
    var material =
        Arrays.stream(Material.values())
            .filter(one -> one.id().equals(chosen))
            .findFirst()
            .orElse(Material.PLYWOOD);
    return piece("stock", "the piece", material, thickness);
  }

  private static Work work(FormReader form, Field along, Field across, Sheet stock) {
    return new Work(
        at(form.length(along, SIZES)), at(form.length(across, SIZES)), stock.thickness().ends());
  }

  /** Two readings: more of them would say no more here than the ends. */
  private static Readings readings(FormReader form, String of, Field least, Field most) {
    var thinnest = form.length(least, THICKNESSES);
    var thickest = form.length(most, THICKNESSES);
    if (thinnest.isGreaterThan(thickest)) {
      form.problem(most, "That is thinner than the thinnest", "the thickest reading of the two");
    }
    return new Readings(of, List.of(thinnest, thickest));
  }

  private static void tooUneven(FormReader form, Readings readings, Length most) {
    form.problem(
        ENTERING_THICKEST,
        "It varies by "
            + form.shown(readings.spread().value())
            + ", and no one width fits both ends",
        "at most " + form.shown(most) + " between thinnest and thickest: sort by thickness");
  }

  private static Sheet piece(String id, String name, Material material, Readings thickness) {
    // How large the sheet was matters to no single cut.
    return new Sheet(id, name, material, Length.ZERO, Length.ZERO, thickness);
  }

  private static Band at(Length length) {
    return new Band(length, length);
  }

  private static Band band(String least, String most) {
    return new Band(Length.of(least), Length.of(most));
  }
}
