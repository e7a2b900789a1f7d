package org.proofcut.logbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.agroal.api.AgroalDataSource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.proofcut.core.storage.GearAct;
import org.proofcut.core.storage.GearEntry;
import org.proofcut.logbook.ShopItem.Shelf;

@QuarkusTest
class StorageLogTest {

  private static final LocalDate MONDAY = LocalDate.of(2030, 3, 4);

  @Inject StorageLog log;
  @Inject Logbook logbook;
  @Inject AgroalDataSource database;

  private String thing() {
    var id = UUID.randomUUID().toString();
    logbook.keep(new ShopItem(id, Shelf.KIT, "torch", Map.of("name", "torch")));
    return id;
  }

  private String cabinet() {
    var id = UUID.randomUUID().toString();
    log.keep(new StorageItem(id, StorageItem.Sort.CABINET, Map.of("name", "small one")));
    return id;
  }

  private List<GearEntry> acts(String thing) {
    return log.acts().stream().filter(entry -> entry.thing().equals(thing)).toList();
  }

  @Test
  void cabinetsAndPeople_areKeptAsTyped_apartFromEachOther() {
    var cabinet = cabinet();
    var person = new StorageItem("p-" + cabinet, StorageItem.Sort.PERSON, Map.of("name", "Ida"));
    log.keep(person);
    assertEquals(Optional.of(person), log.item(StorageItem.Sort.PERSON, person.id()));
    assertEquals(Optional.empty(), log.item(StorageItem.Sort.CABINET, person.id()));
    var changed = new StorageItem(cabinet, StorageItem.Sort.CABINET, Map.of("name", "tall one"));
    log.keep(changed);
    assertEquals(Optional.of(changed), log.item(StorageItem.Sort.CABINET, cabinet));
    log.remove(cabinet);
    log.remove(person.id());
    assertEquals(Optional.empty(), log.item(StorageItem.Sort.CABINET, cabinet));
  }

  @Test
  void homesAndPins_goWithTheirThing_andWithTheirCabinet() {
    var first = thing();
    var second = thing();
    var cabinet = cabinet();
    var other = cabinet();
    var home = new GearHome(first, cabinet, "rail", "Small one: hooks");
    log.settle(cabinet, List.of(home, new GearHome(second, cabinet, "shelf", "Small one: shelf")));
    var moved = new GearHome(second, other, "rail", "Other: hooks");
    log.settle(other, List.of(moved));
    assertTrue(log.homes().containsAll(List.of(home, moved)));
    assertEquals(1, log.homes().stream().filter(one -> one.thing().equals(second)).count());
    log.pin(new GearPin(first, cabinet, "rail"));
    log.pin(new GearPin(first, cabinet, "shelf"));
    assertEquals(
        List.of(new GearPin(first, cabinet, "shelf")),
        log.pins().stream().filter(pin -> pin.thing().equals(first)).toList());

    log.remove(cabinet);
    assertTrue(log.homes().stream().noneMatch(one -> one.cabinet().equals(cabinet)));
    assertTrue(log.pins().stream().noneMatch(pin -> pin.thing().equals(first)));
    logbook.remove(second);
    assertTrue(log.homes().stream().noneMatch(one -> one.thing().equals(second)));
    logbook.remove(first);
    log.remove(other);
  }

  @Test
  void acts_ofEveryKind_areReadBackInTheirOrder_andGoWithTheirThing() {
    var thing = thing();
    var all =
        List.of(
            new GearAct.TakenOut("Ida"),
            new GearAct.PutBack(""),
            new GearAct.LookedAt("light", false, "dim", Optional.empty()),
            new GearAct.Mended("new cells"),
            new GearAct.LookedAt("marked", true, "", Optional.of(MONDAY)),
            new GearAct.Replaced("lost", Optional.of(MONDAY)));
    for (var act : all) {
      var entry = new GearEntry(UUID.randomUUID().toString(), thing, MONDAY, act);
      assertTrue(log.append(entry));
      assertFalse(log.append(entry), "the same once more");
    }
    assertEquals(all, acts(thing).stream().map(GearEntry::act).toList());
    assertEquals(MONDAY, acts(thing).get(0).day());
    logbook.remove(thing);
    assertEquals(List.of(), acts(thing));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "update gear_act set act = '' where thing = '%s'",
        "delete from gear_act where thing = '%s'",
        "insert or replace into gear_act select * from gear_act where thing = '%s'",
        "update shop_item set id = 'other' where id = '%s'",
      })
  void record_neverChanges(String sql) {
    var thing = thing();
    log.append(
        new GearEntry(UUID.randomUUID().toString(), thing, MONDAY, new GearAct.TakenOut("Ida")));
    var before = acts(thing);
    var e = assertThrows(SQLException.class, () -> execute(sql.formatted(thing)));
    assertTrue(e.getMessage().contains("never") || e.getMessage().contains("only when"), "" + e);
    assertEquals(before, acts(thing));
    logbook.remove(thing);
  }

  private void execute(String sql) throws SQLException {
    try (var connection = database.getConnection();
        var statement = connection.createStatement()) {
      statement.execute(sql);
    }
  }
}
