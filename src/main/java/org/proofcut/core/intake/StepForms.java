package org.proofcut.core.intake;

import static org.proofcut.core.intake.CutFields.ACROSS;
import static org.proofcut.core.intake.CutFields.ALONG;
import static org.proofcut.core.intake.CutFields.BLADES;
import static org.proofcut.core.intake.CutFields.DEPTHS;
import static org.proofcut.core.intake.CutFields.THICKNESSES;
import static org.proofcut.core.intake.CutFields.THINNEST;
import static org.proofcut.core.intake.CutFields.band;
import static org.proofcut.core.intake.CutFields.piece;
import static org.proofcut.core.intake.CutFields.stock;
import static org.proofcut.core.intake.CutFields.work;
import static org.proofcut.core.intake.Field.length;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.fit.FitLimits;
import org.proofcut.core.measure.Band;
import org.proofcut.core.measure.Length;
import org.proofcut.core.operation.OperationKind;
import org.proofcut.core.operation.SingleCut;
import org.proofcut.core.setup.CutAsked;
import org.proofcut.core.setup.Measure.Dimension;
import org.proofcut.core.shop.TableSaw;
import org.proofcut.core.stock.Sheet;

/**
 * Rabbets and tongues in two cuts of a saw blade. Each cut has a form of its own, with the same
 * fields: what is typed for one serves the other.
 */
final class StepForms {

  private static final Field WIDTH =
      length("width", "Width of the rabbet", "from the edge to the wall");

  private static final Field DEPTH = length("depth", "Depth of the rabbet", "into the thickness");

  static final Field SLOT =
      length("slot", "Narrowest reading of the slot", "by caliper, in the slot as cut");

  static final Field TONGUE =
      length("width", "Length of the tongue", "a little less than the slot is deep");

  private static final Field CARRIER =
      length(
          "carrier",
          "Carrier between fence and work",
          "how thick it is there, by caliper; 0 if the work itself rides the fence");

  private StepForms() {}

  static List<CutForm> all(FitLimits fit) {
    return List.of(rabbet(false), rabbet(true), tongue(false, fit), tongue(true, fit));
  }

  private static CutForm rabbet(boolean onEdge) {
    return form(
        onEdge ? "rabbet-on-edge" : "rabbet-flat",
        onEdge ? "Rabbet at the saw, second cut" : "Rabbet at the saw, first cut",
        onEdge
            ? "On edge: cuts the waste free, after the first cut."
            : "Flat: the wall of the rabbet. The second cut, on edge, frees the waste.",
        new CutForm.Group("The rabbet", List.of(WIDTH, DEPTH)),
        onEdge,
        (form, stock) -> {
          var depth = Worked.entered("depth of the rabbet", form.length(DEPTH, DEPTHS));
          var thinnest = stock.thickness().ends().least();
          if (form.isSound(DEPTH, THINNEST) && depth.value().isAtLeast(thinnest)) {
            form.problem(DEPTH, "That goes through the piece", "less than " + form.shown(thinnest));
          }
          var middle = Worked.measured("middle of the readings", stock.thickness().ends().middle());
          var stays =
              Worked.called("what stays beside the rabbet")
                  .by("middle of the readings − depth")
                  .with("middle of the readings", middle)
                  .with("depth", depth)
                  .is(middle.value().minus(depth.value()));
          return new Stays(stays, Optional.empty());
        });
  }

  private static CutForm tongue(boolean onEdge, FitLimits fit) {
    return form(
        onEdge ? "tongue-on-edge" : "tongue-flat",
        onEdge ? "Tongue at the saw, second cut" : "Tongue at the saw, first cut",
        onEdge
            ? "On edge in a carrier: the tongue is set from the face that stays, the same in every"
                + " piece."
            : "Flat: the shoulder of the tongue. The second cut, on edge, makes its thickness.",
        new CutForm.Group("The tongue", List.of(SLOT, TONGUE)),
        onEdge,
        (form, stock) -> {
          var tongue = fitted(form, stock, fit);
          return new Stays(tongue.thickness(), Optional.of(tongue.accepted()));
        });
  }

  /**
   * A tongue made for a slot.
   *
   * @param thickness aimed at
   * @param accepted thicknesses that leave the room a fit may have
   */
  record Fitted(Worked<Length> thickness, Band accepted) {}

  /** The tongue for the slot that was measured, from this stock. */
  static Fitted fitted(FormReader form, Sheet stock, FitLimits fit) {
    var slot = Worked.measured("narrowest reading of the slot", form.length(SLOT, THICKNESSES));
    var accepted =
        new Band(
            slot.value().minus(fit.mostRoom().value()),
            slot.value().minus(fit.leastRoom().value()));
    var thinnest = stock.thickness().ends().least();
    if (form.isSound(SLOT, THINNEST) && accepted.most().isAtLeast(thinnest)) {
      form.problem(
          SLOT,
          "The piece is " + form.shown(thinnest) + ": no tongue is cut from it",
          "a slot narrower than the piece is thick");
    }
    var thickness =
        Worked.called("thickness of the tongue")
            .by("slot − room aimed at")
            .with("slot", slot)
            .with("room aimed at", fit.targetRoom())
            .is(slot.value().minus(fit.targetRoom().value()));
    return new Fitted(thickness, accepted);
  }

  /** What of the thickness stays, and what a proof may show of it. */
  private record Stays(Worked<Length> thickness, Optional<Band> accepted) {}

  private static CutForm form(
      String kind,
      String title,
      String says,
      CutForm.Group joint,
      boolean onEdge,
      BiFunction<FormReader, Sheet, Stays> staying) {
    var width = joint.fields().contains(WIDTH) ? WIDTH : TONGUE;
    return new CutForm(
        kind,
        title,
        says,
        List.of(joint, piece(ALONG, ACROSS, CARRIER)),
        List.of(TableSaw.class),
        BLADES,
        Map.of(Dimension.WIDTH, 3, onEdge ? Dimension.SIZE : Dimension.DEPTH, 3),
        form -> {
          var wide = Worked.entered(lower(width.label()), form.length(width, DEPTHS));
          var stock = stock(form);
          var stays = staying.apply(form, stock);
          var work = work(form, stock);
          var between = form.length(CARRIER, band("0 mm", "60 mm"));
          return form.result(
              () ->
                  new SingleCut(
                      onEdge ? OperationKind.STEP_ON_EDGE : OperationKind.STEP_FLAT,
                      title,
                      new CutAsked.Step(
                          wide,
                          stays.thickness(),
                          stays.accepted(),
                          between.isZero()
                              ? Optional.empty()
                              : Optional.of(Worked.measured("carrier", between)),
                          onEdge,
                          work),
                      stock,
                      Optional.empty()));
        });
  }

  private static String lower(String label) {
    return label.substring(0, 1).toLowerCase(java.util.Locale.ROOT) + label.substring(1);
  }
}
