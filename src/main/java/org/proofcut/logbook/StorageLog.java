package org.proofcut.logbook;

import io.quarkus.panache.common.Sort;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import org.proofcut.core.storage.GearEntry;

/**
 * What is kept of where gear lives. Every method is one transaction, or part of the caller's. What
 * belongs to a thing of the shop goes when the thing is taken out of it.
 */
@ApplicationScoped
@Transactional
public class StorageLog {

  /** All cabinets, or all people, in the order first kept. */
  public List<StorageItem> all(StorageItem.Sort sort) {
    return StorageItemRow.<StorageItemRow>list("sort", Sort.by("position"), sort.name()).stream()
        .map(StorageItemRow::asItem)
        .toList();
  }

  /** The cabinet, or the person, with this id. */
  public Optional<StorageItem> item(StorageItem.Sort sort, String id) {
    return all(sort).stream().filter(item -> item.id().equals(id)).findFirst();
  }

  /** Adds a cabinet or a person, or replaces what was typed of the one with this id. */
  public void keep(StorageItem item) {
    var row = Objects.requireNonNullElseGet(StorageItemRow.withId(item.id()), StorageItemRow::new);
    row.take(item);
    row.persist();
  }

  /** Takes a cabinet out with all that lives or is pinned there, or a person. */
  public void remove(String id) {
    // The database deletes homes and pins with it, in the same statement.
    StorageItemRow.delete("itemId", id);
  }

  /** Where everything lives. */
  public List<GearHome> homes() {
    return GearHomeRow.<GearHomeRow>listAll(Sort.by("thing")).stream()
        .map(GearHomeRow::asHome)
        .toList();
  }

  /** Has these things, and nothing else, live in a cabinet; they live nowhere else any more. */
  public void settle(String cabinet, List<GearHome> homes) {
    var things = homes.stream().map(GearHome::thing).collect(Collectors.toSet());
    GearHomeRow.<GearHomeRow>list("cabinet", cabinet).stream()
        .filter(row -> !things.contains(row.thing))
        .forEach(GearHomeRow::delete);
    for (var home : homes) {
      GearHomeRow known = GearHomeRow.findById(home.thing());
      var row = Objects.requireNonNullElseGet(known, GearHomeRow::new);
      row.take(home);
      row.persist();
    }
  }

  /** Where everything that is pinned is to stay. */
  public List<GearPin> pins() {
    return GearPinRow.<GearPinRow>listAll(Sort.by("thing")).stream()
        .map(GearPinRow::asPin)
        .toList();
  }

  /** Has a thing stay in a place, and in no other. */
  public void pin(GearPin pin) {
    GearPinRow known = GearPinRow.findById(pin.thing());
    var row = Objects.requireNonNullElseGet(known, GearPinRow::new);
    row.take(pin);
    row.persist();
  }

  /** Lets a thing go wherever is best. */
  public void unpin(String thing) {
    GearPinRow.deleteById(thing);
  }

  /**
   * Adds an act to the record of a thing.
   *
   * @return false if there is an act with this id already; that one stays as it is
   */
  public boolean append(GearEntry entry) {
    if (GearActRow.count("entryId", entry.id()) > 0) {
      return false;
    }
    GearActRow.of(entry).persist();
    return true;
  }

  /**
   * All that was done with things, in the order recorded.
   *
   * @throws UnreadableException if an act can't be read back
   */
  public List<GearEntry> acts() {
    return GearActRow.<GearActRow>listAll(Sort.by("number")).stream()
        .map(GearActRow::asEntry)
        .toList();
  }
}
