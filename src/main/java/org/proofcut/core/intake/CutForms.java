package org.proofcut.core.intake;

import static org.proofcut.core.intake.Field.choice;
import static org.proofcut.core.intake.Field.length;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
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
import org.proofcut.core.setup.Measure.Dimension;
import org.proofcut.core.setup.Work;
import org.proofcut.core.shop.Cutter;
import org.proofcut.core.shop.HandRouter;
import org.proofcut.core.shop.Machine;
import org.proofcut.core.shop.RouterTable;
import org.proofcut.core.shop.SawBlade;
import org.proofcut.core.shop.StackedCutter;
import org.proofcut.core.shop.StraightCutter;
import org.proofcut.core.shop.TableSaw;
import org.proofcut.core.shop.TrackSaw;
import org.proofcut.core.stock.Material;
import org.proofcut.core.stock.Sheet;

/** All forms of single cuts. */
public final class CutForms {

  private static final Band SIZES = band("1 mm", "4000 mm");
  private static final Band DISTANCES = band("0 mm", "4000 mm");
  private static final Band THICKNESSES = band("2 mm", "120 mm");
  private static final Band DEPTHS = band("0.5 mm", "100 mm");

  private static final List<Class<? extends Machine>> ROUTERS =
      List.of(RouterTable.class, HandRouter.class);
  private static final List<Class<? extends Cutter>> STRAIGHT = List.of(StraightCutter.class);
  private static final List<Class<? extends Machine>> ROUTERS_AND_SAW =
      List.of(RouterTable.class, HandRouter.class, TableSaw.class);
  private static final List<Class<? extends Cutter>> SLOTTING =
      List.of(StraightCutter.class, StackedCutter.class, SawBlade.class);
  private static final List<Class<? extends Machine>> SAWS =
      List.of(TableSaw.class, TrackSaw.class);
  private static final List<Class<? extends Cutter>> BLADES = List.of(SawBlade.class);

  private static final Field MATERIAL =
      choice(
          "material",
          "Made of",
          Arrays.stream(Material.values())
              .map(one -> new Field.Choice(one.id(), one.words()))
              .toList());
  private static final Field THINNEST =
      length("thinnest", "Thinnest reading", "by caliper, where it is cut");
  private static final Field THICKEST =
      length("thickest", "Thickest reading", "by caliper, where it is cut");
  private static final Field ENTERING_THINNEST =
      length("entering-thinnest", "Thinnest reading", "by caliper, at the edge that goes in");
  private static final Field ENTERING_THICKEST =
      length("entering-thickest", "Thickest reading", "by caliper, at the edge that goes in");
  private static final Field DEPTH = length("depth", "Depth", "into the thickness");
  private static final Field DISTANCE =
      length("distance", "Distance", "from the reference edge to the near wall");
  private static final Field ALONG =
      length("along", "Reference edge", "how long it is: it rides fence or straightedge");
  private static final Field ACROSS =
      length("across", "Reach", "how far the piece goes out from that edge");
  private static final Field WIDTH = length("size", "Width wanted", "of the piece that is kept");
  private static final Field LENGTH = length("size", "Length wanted", "of the piece that is kept");
  private static final Field RIP_LENGTH =
      length("along", "Length of the piece", "along the edge that rides the guide");
  private static final Field CROSSCUT_WIDTH =
      length("across", "Width of the piece", "across which the blade cuts");

  private static final CutForm.Group ENTERING =
      new CutForm.Group("What goes in", List.of(ENTERING_THINNEST, ENTERING_THICKEST));

  private CutForms() {}

  /** One form for each kind of cut, judged by these limits of fit. */
  public static List<CutForm> all(FitLimits fit) {
    return List.of(dado(fit), rabbet(fit), rip(), crosscut());
  }

  private static CutForm dado(FitLimits fit) {
    return new CutForm(
        "dado",
        "Dado or groove",
        "A slot with wood on both sides, made to fit what goes in.",
        List.of(
            ENTERING,
            new CutForm.Group("The slot", List.of(DEPTH, DISTANCE)),
            piece(ALONG, ACROSS)),
        ROUTERS_AND_SAW,
        SLOTTING,
        Map.of(Dimension.WIDTH, 3, Dimension.DEPTH, 3, Dimension.DISTANCE, 2),
        form -> {
          var entering = entering(form);
          var depth = Worked.entered("depth of the slot", form.length(DEPTH, DEPTHS));
          var distance =
              Worked.entered("distance from the reference edge", form.length(DISTANCE, DISTANCES));
          var stock = stock(form);
          var work = work(form, stock);
          var slot = SlotFit.of(entering, fit);
          evenEnough(form, entering, SlotFit.mostSpread(fit));
          leavesWood(form, depth, stock);
          withinReach(form, DISTANCE, distance.value().plus(slot.target().value()), work);
          return form.result(
              () ->
                  new SingleCut(
                      OperationKind.DADO,
                      "Dado or groove",
                      new CutAsked.Slot(
                          slot.target(), slot.accepted().orElseThrow(), depth, distance, work),
                      stock,
                      Optional.of(goesIn(stock, entering))));
        });
  }

  private static CutForm rabbet(FitLimits fit) {
    return new CutForm(
        "rabbet",
        "Rabbet",
        "A step along an edge or an end, as wide as what lies in it.",
        List.of(ENTERING, new CutForm.Group("The rabbet", List.of(DEPTH)), piece(ALONG, ACROSS)),
        ROUTERS,
        STRAIGHT,
        Map.of(Dimension.WIDTH, 3, Dimension.DEPTH, 3),
        form -> {
          var covering = entering(form);
          var depth = Worked.entered("depth of the rabbet", form.length(DEPTH, DEPTHS));
          var stock = stock(form);
          var work = work(form, stock);
          var flush = FlushFit.of(covering, Worked.entered("set-in", Length.ZERO), fit);
          evenEnough(form, covering, fit.mostProud().value());
          leavesWood(form, depth, stock);
          withinReach(form, ACROSS, flush.target().value(), work);
          return form.result(
              () ->
                  new SingleCut(
                      OperationKind.RABBET,
                      "Rabbet",
                      new CutAsked.Rabbet(
                          flush.target(), flush.accepted().orElseThrow(), depth, work),
                      stock,
                      Optional.of(goesIn(stock, covering))));
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
          return parting(form, OperationKind.RIP, "Rip to width", size, along, size.value());
        });
  }

  private static CutForm crosscut() {
    return new CutForm(
        "crosscut",
        "Crosscut to length",
        "A cut across the piece, square to its reference edge.",
        List.of(new CutForm.Group("The cut", List.of(LENGTH)), piece(CROSSCUT_WIDTH)),
        SAWS,
        BLADES,
        Map.of(Dimension.SIZE, 2),
        form -> {
          var size = Worked.entered("length wanted", form.length(LENGTH, SIZES));
          var across = form.length(CROSSCUT_WIDTH, SIZES);
          return parting(
              form, OperationKind.CROSSCUT, "Crosscut to length", size, size.value(), across);
        });
  }

  private static Read<SingleCut> parting(
      FormReader form,
      OperationKind kind,
      String title,
      Worked<Length> size,
      Length along,
      Length across) {
    var stock = stock(form);
    var work = new Work(at(along), at(across), stock.thickness().ends());
    boolean isRip = kind == OperationKind.RIP;
    return form.result(
        () ->
            new SingleCut(
                kind,
                title,
                new CutAsked.Parting(size, true, isRip, work),
                stock,
                Optional.empty()));
  }

  private static CutForm.Group piece(Field... sizes) {
    var fields = new java.util.ArrayList<>(List.of(THINNEST, THICKEST));
    fields.addAll(List.of(sizes));
    fields.add(MATERIAL);
    return new CutForm.Group("The piece that is cut", fields);
  }

  private static Sheet stock(FormReader form) {
    var thickness = readings(form, "the piece", THINNEST, THICKEST);
    var chosen = form.choice(MATERIAL);
    var material =
        Arrays.stream(Material.values())
            .filter(one -> one.id().equals(chosen))
            .findFirst()
            .orElse(Material.PLYWOOD);
    return sheet("stock", "the piece", material, thickness);
  }

  private static Work work(FormReader form, Sheet stock) {
    return new Work(
        at(form.length(ALONG, SIZES)), at(form.length(ACROSS, SIZES)), stock.thickness().ends());
  }

  private static Readings entering(FormReader form) {
    return readings(form, "what goes in", ENTERING_THINNEST, ENTERING_THICKEST);
  }

  /** Two readings: those between them would change no figure here. */
  private static Readings readings(FormReader form, String of, Field least, Field most) {
    var thinnest = form.length(least, THICKNESSES);
    var thickest = form.length(most, THICKNESSES);
    if (form.isSound(least, most) && thinnest.isGreaterThan(thickest)) {
      form.problem(
          most, "That is thinner than the thinnest reading", form.shown(thinnest) + " or more");
    }
    return new Readings(of, List.of(thinnest, thickest));
  }

  private static void evenEnough(FormReader form, Readings readings, Length most) {
    if (form.isSound(ENTERING_THINNEST, ENTERING_THICKEST)
        && readings.spread().value().isGreaterThan(most)) {
      form.problem(
          ENTERING_THICKEST,
          "It varies by "
              + form.shown(readings.spread().value())
              + ", and no one width serves both ends",
          "at most " + form.shown(most) + " from thinnest to thickest: sort the parts");
    }
  }

  private static void leavesWood(FormReader form, Worked<Length> depth, Sheet stock) {
    var thinnest = stock.thickness().ends().least();
    if (form.isSound(DEPTH, THINNEST) && depth.value().isAtLeast(thinnest)) {
      form.problem(DEPTH, "That goes through the piece", "less than " + form.shown(thinnest));
    }
  }

  private static void withinReach(FormReader form, Field field, Length farWall, Work work) {
    var reach = work.acrossGuide().least();
    if (form.isSound(field, ACROSS, ENTERING_THINNEST, ENTERING_THICKEST)
        && farWall.isAtLeast(reach)) {
      form.problem(
          field,
          "The far wall would lie "
              + form.shown(farWall)
              + " from the reference edge, and the piece reaches out "
              + form.shown(reach),
          "a far wall within the piece");
    }
  }

  private static Sheet goesIn(Sheet stock, Readings entering) {
    return sheet("entering", "what goes in", stock.material(), entering);
  }

  private static Sheet sheet(String id, String name, Material material, Readings thickness) {
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
