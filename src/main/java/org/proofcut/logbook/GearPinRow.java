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

  void take(GearPin pin) {
    thing = pin.thing();
    cabinet = pin.cabinet();
    place = pin.place();
  }

  GearPin asPin() {
    return new GearPin(thing, cabinet, place);
  }
}
