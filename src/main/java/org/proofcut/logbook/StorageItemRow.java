package org.proofcut.logbook;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;

@Entity
@Table(name = "storage_item")
class StorageItemRow extends PanacheEntityBase {

  @Id
  @GeneratedValue(strategy = GenerationType.IDENTITY)
  public Long position;

  @Column(name = "id")
  public String itemId;

  public String sort;
  public String typed;

  static StorageItemRow withId(String id) {
    return find("itemId", id).firstResult();
  }

  void take(StorageItem item) {
    itemId = item.id();
    sort = item.sort().name();
    typed = Typed.write(item.typed());
  }

  StorageItem asItem() {
    return new StorageItem(
        itemId, StorageItem.Sort.valueOf(sort), Typed.read(typed, "storage, " + itemId));
  }
}
