package org.proofcut.logbook;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;

@Entity
@Table(name = "gear_pin")
class GearPinRow extends PanacheEntityBase {

  @Id public String thing;
  public String cabinet;
  public String place;

  static GearPinRow of(GearPin pin) {
    var row = new GearPinRow();
    row.thing = pin.thing();
    row.cabinet = pin.cabinet();
    row.place = pin.place();
    return row;
  }

  GearPin asPin() {
    return new GearPin(thing, cabinet, place);
  }
}
