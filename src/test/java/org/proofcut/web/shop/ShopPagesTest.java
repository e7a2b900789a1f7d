package org.proofcut.web.shop;

import static io.restassured.RestAssured.get;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.proofcut.web.Rubbish.escaped;
import static org.proofcut.web.Rubbish.post;
import static org.proofcut.web.Rubbish.with;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.proofcut.bench.ShopFloor;
import org.proofcut.content.Content;
import org.proofcut.core.intake.Demo;
import org.proofcut.core.intake.Demo.Thing.Group;
import org.proofcut.core.intake.Field.Entry;
import org.proofcut.core.intake.ItemForm;
import org.proofcut.core.intake.ShopForms;
import org.proofcut.core.measure.LengthUnit;
import org.proofcut.logbook.Logbook;
import org.proofcut.logbook.ShopItem;
import org.proofcut.logbook.ShopItem.Shelf;
import org.proofcut.web.Rubbish;

@QuarkusTest
class ShopPagesTest {

  @Inject ShopFloor floor;
  @Inject Logbook logbook;

  private List<ShopItem> before;
  private Map<String, String> about;

  @BeforeEach
  void remember() {
    before = floor.items();
    about = floor.about();
  }

  @AfterEach
  void putBack() {
    removeWhatWasAdded();
    floor.keepAbout(floor.readAbout(about).value().orElseThrow());
  }

  private void removeWhatWasAdded() {
    var known = before.stream().map(ShopItem::id).toList();
    floor.items().stream()
        .map(ShopItem::id)
        .filter(id -> !known.contains(id))
        .forEach(floor::remove);
  }

  /** Each kind of thing that has a form, as the demo has it, and each of its fields. */
  static List<Arguments> fields() {
    var all = new ArrayList<Arguments>();
    for (var kind : kinds()) {
      for (var field : form(kind).fields()) {
        all.add(Arguments.of(kind.kind(), field.name()));
      }
    }
    return all;
  }

  /** The demo shop has none. */
  private static final Demo.Thing STACK =
      new Demo.Thing(
          Group.CUTTER,
          "stacked-cutter",
          Map.of(
              "name", "stacked cutter",
              "diameter", "200",
              "outer-kerf", "3.2",
              "edges", "24",
              "chippers", "3.2 x 3, 1.6 x 1",
              "shims", "0.1 x 4",
              "top-speed", "6000"));

  private static List<Demo.Thing> kinds() {
    var byKind = new ArrayList<Demo.Thing>();
    for (var thing : Stream.concat(Demo.things().stream(), Stream.of(STACK)).toList()) {
      boolean known = byKind.stream().anyMatch(it -> it.kind().equals(thing.kind()));
      if (!known && thing.group() != Group.AID && thing.group() != Group.KIT) {
        byKind.add(thing);
      }
    }
    return byKind;
  }

  private static Demo.Thing thing(String kind) {
    return kinds().stream().filter(it -> it.kind().equals(kind)).findFirst().orElseThrow();
  }

  private static ItemForm<?> form(Demo.Thing thing) {
    return thing.group() == Group.LIQUID
        ? ShopForms.liquid(Content.bundled().liquids().get(thing.kind()))
        : ShopForms.of(thing.kind())
            .orElseGet(() -> ShopForms.gear(Content.bundled().wording().gear().get(thing.kind())));
  }

  private static String address(Demo.Thing thing) {
    var shelf =
        switch (thing.group()) {
          case MACHINE -> "machines";
          case CUTTER -> "cutters";
          case GEAR -> "gear";
          case LIQUID -> "liquids";
          case AID, KIT -> throw new IllegalArgumentException("an aid has no form");
        };
    return "/shop/" + shelf + "/new?kind=" + thing.kind();
  }

  @Test
  void kinds_coverEveryFormOfMachinesAndCutters() {
    var covered = kinds().stream().map(Demo.Thing::kind).toList();
    ShopForms.MACHINES.forEach(form -> assertTrue(covered.contains(form.kind()), form.kind()));
    ShopForms.CUTTER_KINDS.forEach(form -> assertTrue(covered.contains(form.kind()), form.kind()));
  }

  @ParameterizedTest
  @MethodSource("fields")
  void keep_rubbishInAField_isToldThereAndNothingIsKept(String kind, String field) {
    var thing = thing(kind);
    for (var rubbish : Rubbish.ALL) {
      var read =
          form(thing)
              .read(
                  "any",
                  with(thing.typed(), field, Rubbish.asReceived(rubbish)),
                  LengthUnit.MILLIMETRE);
      var answer = post(address(thing), with(thing.typed(), field, rubbish));
      var html = answer.asString();
      if (read.value().isPresent()) {
        assertEquals(303, answer.statusCode(), kind + " " + field + ": " + rubbish);
        removeWhatWasAdded();
        continue;
      }
      assertEquals(422, answer.statusCode(), kind + " " + field + ": " + rubbish);
      for (var problem : read.problems()) {
        assertTrue(html.contains("href=\"#" + problem.where() + "\""), problem.toString());
        assertTrue(html.contains("id=\"" + problem.where() + "\""), problem.toString());
        assertTrue(html.contains("id=\"" + problem.where() + "-problem\""), problem.toString());
      }
      assertFalse(html.contains("<script>alert"), field);
      assertFalse(html.contains("<img src=x"), field);
      boolean isTyped =
          form(thing).fields().stream()
              .anyMatch(
                  it ->
                      it.name().equals(field)
                          && it.entry() != Entry.YES_NO
                          && it.entry() != Entry.CHOICE);
      if (isTyped) {
        var value = escaped(Rubbish.asReceived(rubbish));
        assertTrue(html.contains("name=\"" + field + "\" value=\"" + value + "\""), field);
      }
      assertEquals(before, floor.items());
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"name", "unit", "region", "beard"})
  void keepAbout_rubbish_isToldThereOrKeptWhole(String field) {
    for (var rubbish : Rubbish.ALL) {
      var typed = with(Demo.shop(), field, rubbish);
      var read = floor.readAbout(with(Demo.shop(), field, Rubbish.asReceived(rubbish)));
      var answer = post("/shop", typed);
      if (read.value().isPresent()) {
        assertEquals(303, answer.statusCode(), rubbish);
        var kept = field.equals("beard") ? "no" : Rubbish.asReceived(rubbish);
        assertEquals(kept, floor.about().get(field));
        putBack();
      } else {
        assertEquals(422, answer.statusCode(), rubbish);
        assertTrue(answer.asString().contains("id=\"" + field + "-problem\""), rubbish);
        assertEquals(about, floor.about());
      }
    }
  }

  @Test
  void shop_everyThing_isShownByItsKind() {
    var html = get("/shop").asString();
    for (var item : floor.items()) {
      if (item.shelf() != Shelf.AID) {
        assertTrue(html.contains("href=\"/shop/items/" + item.id() + "\""), item.toString());
        assertTrue(html.contains(escaped(item.typed().get("name"))), item.toString());
      }
    }
  }

  @Test
  void liquids_everyKind_hasItsForm_andShowsHowEasilyItTakesFire() {
    for (var kind : Content.bundled().liquids().values()) {
      var address = "/shop/liquids/new?kind=" + kind.id();
      assertTrue(get(address).asString().contains("Flash point"), kind.id());
      post(address, Map.of("name", "tin of " + kind.id(), "flash", "10 °C", "boils", "80 °C"));
    }
    var page = get("/shop").asString();
    for (var kind : Content.bundled().liquids().keySet()) {
      var shown = page.substring(page.indexOf("tin of " + kind));
      assertTrue(shown.substring(0, 400).contains("category 2"), kind);
    }
    assertEquals(404, get("/shop/liquids/new?kind=lava").statusCode());
  }

  @Test
  void keep_everyKind_roundTrips() {
    for (var thing : kinds()) {
      assertEquals(303, post(address(thing), thing.typed()).statusCode(), thing.kind());
      var added = floor.items().get(floor.items().size() - 1);
      assertEquals(thing.kind(), added.kind());
      thing.typed().forEach((field, text) -> assertEquals(text, added.typed().get(field)));
      var changed = with(thing.typed(), "name", "renamed");
      assertEquals(303, post("/shop/items/" + added.id(), changed).statusCode());
      assertEquals("renamed", floor.item(added.id()).orElseThrow().typed().get("name"));
      var asked = get("/shop/items/" + added.id() + "/remove");
      assertTrue(asked.asString().contains("Take \"renamed\" out of the shop?"), thing.kind());
      assertTrue(floor.item(added.id()).isPresent(), "asked only");
      assertEquals(303, post("/shop/items/" + added.id() + "/remove", Map.of()).statusCode());
      assertEquals(before, floor.items());
    }
  }

  @Test
  void shop_kindWithNothing_saysSo() {
    var gloves = thing("gloves");
    var owned = floor.items().stream().filter(it -> it.kind().equals("gloves")).toList();
    int nothing = count(get("/shop").asString());
    owned.forEach(it -> floor.remove(it.id()));
    try {
      assertEquals(nothing + 1, count(get("/shop").asString()));
    } finally {
      post(address(gloves), gloves.typed());
      before = floor.items();
    }
  }

  private static int count(String html) {
    return html.split("None at hand", -1).length - 1;
  }

  /** Read in another unit, a fence step of 0.1 would be 2.54 mm. */
  @Test
  void keep_afterTheShopChangedItsUnit_leavesTheThingInItsOwn() {
    var table = thing("router-table");
    post(address(table), table.typed());
    var id = floor.items().get(floor.items().size() - 1).id();
    assertEquals(
        303, post("/shop", Map.of("name", "Inch shop", "unit", "in", "region", "us")).statusCode());
    assertTrue(get("/shop/items/" + id).asString().contains("= 0.1 mm"));
    assertEquals(303, post("/shop/items/" + id, table.typed()).statusCode());
    assertEquals("mm", floor.item(id).orElseThrow().typed().get("unit"));
    assertTrue(get(address(table)).asString().contains("without a unit is in inches"));
  }

  /** Two tablets may say at once that it is there: taken away, it is gone all the same. */
  @Test
  void keepAid_keptTwice_isTakenAwayWhole() {
    logbook.keep(new ShopItem("a-second-sled", Shelf.AID, "sled", Map.of()));
    post("/shop/aids/sled", Map.of("at-hand", "no"));
    assertFalse(floor.shop().aids().contains("sled"));
    post("/shop/aids/sled", Map.of("at-hand", "yes"));
    assertTrue(floor.shop().aids().contains("sled"));
  }

  @Test
  void keepAid_takenAwayAndPutBack_isAsSaid() {
    var had = floor.shop().hasAid("sled");
    post("/shop/aids/sled", Map.of("at-hand", "no"));
    assertFalse(floor.shop().hasAid("sled"));
    post("/shop/aids/sled", Map.of("at-hand", "maybe"));
    assertFalse(floor.shop().hasAid("sled"));
    post("/shop/aids/sled", Map.of("at-hand", "yes"));
    post("/shop/aids/sled", Map.of("at-hand", "yes"));
    assertTrue(floor.shop().hasAid("sled"));
    assertEquals(1, floor.shop().aids().stream().filter("sled"::equals).count());
    if (!had) {
      floor.keepAid("sled", false);
    }
    before = floor.items();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "/shop/items/none",
        "/shop/items/shop",
        "/shop/items/none/remove",
        "/shop/machines/new",
        "/shop/machines/new?kind=lathe",
        "/shop/cutters/new?kind=router-table",
        "/shop/pets/new?kind=cat"
      })
  void open_whatIsNotThere_saysWhatToDo(String address) {
    var answer = get(address);
    assertEquals(404, answer.statusCode());
    assertTrue(answer.asString().contains("There is no such page"), answer.asString());
    assertEquals(404, post(address, Map.of("name", "x")).statusCode());
    assertEquals(before, floor.items());
  }
}
