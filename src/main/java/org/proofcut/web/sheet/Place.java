package org.proofcut.web.sheet;

import org.proofcut.core.run.SheetProgress;
import org.proofcut.core.safety.Check.Pause;

/** Where in its pause a sheet stands, such as "item 3 of 6"; empty where there is none. */
final class Place {

  private Place() {}

  static String of(SheetProgress progress) {
    return switch (progress.stage()) {
      case SET -> item(progress, Pause.SET);
      case MACHINE -> item(progress, Pause.MACHINE);
      case BEFORE_POWER -> item(progress, Pause.BEFORE_POWER);
      case PROOF -> reading(progress);
      case CUT -> part(progress);
      case LEAVE_SAFE -> item(progress, Pause.LEAVE_SAFE);
      case LOCKED, DONE -> "";
    };
  }

  /** The pause that a stage belongs to: proof and cut are one stretch of work. */
  static Pause pause(SheetProgress progress) {
    return switch (progress.stage()) {
      case LOCKED, SET -> Pause.SET;
      case MACHINE -> Pause.MACHINE;
      case BEFORE_POWER -> Pause.BEFORE_POWER;
      case PROOF, CUT -> Pause.PROOF;
      case LEAVE_SAFE, DONE -> Pause.LEAVE_SAFE;
    };
  }

  private static String item(SheetProgress progress, Pause pause) {
    var items = progress.sheet().checklist().at(pause);
    for (int i = 0; i < items.size(); i++) {
      if (!progress.isConfirmed(items.get(i))) {
        return "item " + (i + 1) + " of " + items.size();
      }
    }
    return "the sign-off";
  }

  private static String reading(SheetProgress progress) {
    int taken = progress.verdicts().stream().mapToInt(one -> one.found().size()).sum();
    int asked = progress.verdicts().stream().mapToInt(one -> one.measure().readings()).sum();
    return taken < asked ? "reading " + (taken + 1) + " of " + asked : "the verdict";
  }

  private static String part(SheetProgress progress) {
    int all = progress.sheet().operation().parts().size();
    return "part " + Math.min(progress.cut().size() + 1, all) + " of " + all;
  }
}
