package org.proofcut.logbook;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

@Entity
@Table(name = "shop_item")
class ShopItemRow extends PanacheEntityBase {

  @Id
  @GeneratedValue(strategy = GenerationType.IDENTITY)
  public Long position;

  @Column(name = "id")
  public String itemId;

  public String shelf;
  public String kind;
  public String typed;

  /** Those that are there, by id. */
  static Map<String, ShopItemRow> withIds(List<String> ids) {
    var rows = new HashMap<String, ShopItemRow>();
    ShopItemRow.<ShopItemRow>list("itemId in ?1", ids).forEach(row -> rows.put(row.itemId, row));
    return rows;
  }

  void take(ShopItem item) {
    itemId = item.id();
    shelf = item.shelf().name();
    kind = item.kind();
    typed = Typed.write(item.typed());
  }

  ShopItem asItem() {
    return new ShopItem(
        itemId, ShopItem.Shelf.valueOf(shelf), kind, Typed.read(typed, "shop, " + itemId));
  }
}
