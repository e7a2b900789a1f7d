package org.proofcut.logbook;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.LocalDate;
import org.hibernate.annotations.Immutable;
import org.proofcut.core.storage.GearAct;
import org.proofcut.core.storage.GearEntry;

@Entity
@Immutable
@Table(name = "gear_act")
class GearActRow extends PanacheEntityBase {

  private static final Written<GearAct> WRITTEN = new Written<>(GearAct.class);

  @Id
  @GeneratedValue(strategy = GenerationType.IDENTITY)
  public Long number;

  /** Made where the act happened; there is one of it. */
  @Column(name = "id")
  public String entryId;

  public String thing;

  /** The day on which it happened, where the shop is. */
  public String happened;

  public String act;

  static GearActRow of(GearEntry entry) {
    var row = new GearActRow();
    row.entryId = entry.id();
    row.thing = entry.thing();
    row.happened = entry.day().toString();
    row.act = WRITTEN.write(entry.act());
    return row;
  }

  GearEntry asEntry() {
    return new GearEntry(
        entryId,
        thing,
        LocalDate.parse(happened),
        WRITTEN.read(act, "gear " + thing + ", act " + entryId));
  }
}
