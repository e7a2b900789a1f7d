package org.proofcut.core.intake;

import java.util.List;
import org.proofcut.core.boring.BoringLimits;

/** Holes: where each goes, and what goes in. */
final class BoringForms {

  private BoringForms() {}

  static List<CutForm> all(BoringLimits limits) {
    return List.of(
        ScrewHoleForm.form(limits),
        HingeCupForm.form(limits),
        ShelfPinsForm.form(),
        DowelForm.form(limits),
        PocketHoleForm.form());
  }
}
