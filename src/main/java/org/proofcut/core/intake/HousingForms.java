package org.proofcut.core.intake;

import static org.proofcut.core.intake.CutFields.ACROSS;
import static org.proofcut.core.intake.CutFields.ALONG;
import static org.proofcut.core.intake.CutFields.DEPTHS;
import static org.proofcut.core.intake.CutFields.DISTANCES;
import static org.proofcut.core.intake.CutFields.STRAIGHT;
import static org.proofcut.core.intake.CutFields.THINNEST;
import static org.proofcut.core.intake.CutFields.piece;
import static org.proofcut.core.intake.CutFields.readings;
import static org.proofcut.core.intake.CutFields.sheet;
import static org.proofcut.core.intake.CutFields.stock;
import static org.proofcut.core.intake.CutFields.work;
import static org.proofcut.core.intake.Field.length;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.fit.FitLimits;
import org.proofcut.core.fit.FlushFit;
import org.proofcut.core.fit.SlotFit;
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
import org.proofcut.core.stock.Sheet;

/** Cuts that take another part: dado, groove, rabbet. */
final class HousingForms {

  private static final List<Class<? extends Machine>> ROUTERS =
      List.of(RouterTable.class, HandRouter.class);

  private static final List<Class<? extends Machine>> ROUTERS_AND_SAW =
      List.of(RouterTable.class, HandRouter.class, TableSaw.class);

  private static final List<Class<? extends Cutter>> SLOTTING =
      List.of(StraightCutter.class, StackedCutter.class, SawBlade.class);

  static final Field ENTERING_THINNEST =
      length("entering-thinnest", "Thinnest reading", "by caliper, at the edge that goes in");

  static final Field ENTERING_THICKEST =
      length("entering-thickest", "Thickest reading", "by caliper, at the edge that goes in");

  private static final Field DEPTH = length("depth", "Depth", "into the thickness");

  private static final Field DISTANCE =
      length("distance", "Distance", "from the reference edge to the near wall");

  static final CutForm.Group ENTERING =
      new CutForm.Group("What goes in", List.of(ENTERING_THINNEST, ENTERING_THICKEST));

  private HousingForms() {}

  static List<CutForm> all(FitLimits fit) {
    return List.of(dado(fit), rabbet(fit));
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

  static Readings entering(FormReader form) {
    return readings(form, "what goes in", ENTERING_THINNEST, ENTERING_THICKEST);
  }

  static void evenEnough(FormReader form, Readings readings, Length most) {
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

  static Sheet goesIn(Sheet stock, Readings entering) {
    return sheet("entering", "what goes in", stock.material(), entering);
  }
}
