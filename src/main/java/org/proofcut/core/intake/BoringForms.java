package org.proofcut.core.intake;

import java.util.List;

/** Holes: where each goes, and what goes in. */
final class BoringForms {

  private BoringForms() {}

  static List<CutForm> all() {
    return List.of(
        ScrewHoleForm.form(),
        HingeCupForm.form(),
        ShelfPinsForm.form(),
        DowelForm.form(),
        PocketHoleForm.form());
  }
}
