package org.proofcut.logbook;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;

@Entity
@Table(name = "gear_home")
class GearHomeRow extends PanacheEntityBase {

  @Id public String thing;
  public String cabinet;
  public String place;
  public String words;

  static GearHomeRow of(GearHome home) {
    var row = new GearHomeRow();
    row.thing = home.thing();
    row.cabinet = home.cabinet();
    row.place = home.place();
    row.words = home.words();
    return row;
  }

  GearHome asHome() {
    return new GearHome(thing, cabinet, place, words);
  }
}
