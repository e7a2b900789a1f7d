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

  void take(GearHome home) {
    thing = home.thing();
    cabinet = home.cabinet();
    place = home.place();
    words = home.words();
  }

  GearHome asHome() {
    return new GearHome(thing, cabinet, place, words);
  }
}
