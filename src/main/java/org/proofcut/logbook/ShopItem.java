package org.proofcut.logbook;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;

/**
 * One thing in the shop, as typed.
 *
 * @param id stable within the shop
 * @param shelf what sort of thing it is
 * @param kind which of its sort, such as {@code router-table}; empty where there is one kind only
 * @param typed what was typed, by name of the field
 */
public record ShopItem(String id, Shelf shelf, String kind, Map<String, String> typed) {

  /** The sorts of things that a shop has. */
  public enum Shelf {
    /** The shop itself, one row: its name, its unit. */
    SHOP,
    MACHINE,
    CUTTER,
    GEAR,
    /** Safety kit that nobody wears. */
    KIT,
    AID,
    LIQUID
  }

  public ShopItem {
    Objects.requireNonNull(id);
    Objects.requireNonNull(shelf);
    Objects.requireNonNull(kind);
    typed = Collections.unmodifiableMap(new LinkedHashMap<>(typed));
  }
}
