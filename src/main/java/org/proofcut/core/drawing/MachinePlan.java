package org.proofcut.core.drawing;

import org.proofcut.core.measure.LengthUnit;
import org.proofcut.core.operation.Operation;
import org.proofcut.core.setup.CutAsked;
import org.proofcut.core.setup.Guide;
import org.proofcut.core.setup.Setup;
import org.proofcut.core.shop.DrillPress;
import org.proofcut.core.shop.HandDrill;
import org.proofcut.core.shop.HandRouter;
import org.proofcut.core.shop.KnifeMachine;
import org.proofcut.core.shop.MitreSaw;
import org.proofcut.core.shop.TableSaw;
import org.proofcut.core.shop.TrackSaw;

/**
 * A cut as seen from above by the person at the machine: guide, cutter, work, what turns, what
 * moves where, and the figure that decides most.
 */
public final class MachinePlan {

  private MachinePlan() {}

  /**
   * The plan of one set-up, to scale; a long part is broken rather than shrunk.
   *
   * @param operation the parts and how they lie
   * @param setup the set-up of that operation
   * @param unit in which figures are written
   * @param widthPx width at which the page shows it, at least 300
   */
  public static Picture of(Operation operation, Setup setup, LengthUnit unit, int widthPx) {
    if (setup.guide() == Guide.BEARING || setup.guide() == Guide.BEARING_WITH_PIN) {
      return BearingPlan.of(operation, setup, unit, widthPx);
    }
    if (setup.asked() instanceof CutAsked.TemplateRecess recess) {
      return TemplatePlan.of(operation, setup, recess, unit, widthPx);
    }
    if (setup.asked() instanceof CutAsked.Tapered tapered
        && setup.machine() instanceof TableSaw saw) {
      return TaperPlan.of(operation, setup, tapered, saw, unit, widthPx);
    }
    if (setup.machine() instanceof TableSaw saw) {
      return SawPlan.of(operation, setup, saw, unit, widthPx);
    }
    if (setup.machine() instanceof TrackSaw) {
      return TrackPlan.of(operation, setup, unit, widthPx);
    }
    if (setup.machine() instanceof HandRouter router) {
      return HandRouterPlan.of(operation, setup, router, unit, widthPx);
    }
    if (setup.machine() instanceof DrillPress || setup.machine() instanceof HandDrill) {
      return DrillPlan.of(operation, setup, unit, widthPx);
    }
    if (setup.machine() instanceof MitreSaw) {
      return MitreSawPlan.of(operation, setup, unit, widthPx);
    }
    if (setup.machine() instanceof KnifeMachine) {
      return KnifePlan.fromAbove(operation, setup, unit, widthPx);
    }
    return RouterTablePlan.of(operation, setup, unit, widthPx);
  }
}
