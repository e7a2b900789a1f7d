package org.proofcut.core.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.proofcut.core.storage.OwnedKit;
import org.proofcut.core.storage.ThingKind;

/**
 * The form of a thing that keeps people whole and that nobody wears. All but its name is optional.
 */
final class KitForm {

  private static final Field NAME = MachineFields.name("first aid kit, large");

  private KitForm() {}

  /**
   * @param kept how it is kept; empty where that is not asked
   */
  static ItemForm<OwnedKit> of(ThingKind kind, Optional<KeptForm> kept) {
    var fields = new ArrayList<Field>();
    fields.add(NAME);
    fields.addAll(
        List.of(GearForm.GOOD_UNTIL, GearForm.INSPECT_BY, GearForm.OPENED, GearForm.OUT_OF_USE));
    kept.ifPresent(form -> fields.addAll(form.fields()));
    return new ItemForm<>(
        kind.id(),
        kind.name(),
        fields,
        (id, form) -> {
          var name = form.text(NAME);
          var opened = form.optionalDate(GearForm.OPENED);
          var life = GearForm.life(form, opened);
          boolean outOfUse = form.yes(GearForm.OUT_OF_USE);
          kept.ifPresent(asked -> asked.read(form));
          return form.result(() -> new OwnedKit(id, kind.id(), name, opened, life, outOfUse));
        });
  }
}
