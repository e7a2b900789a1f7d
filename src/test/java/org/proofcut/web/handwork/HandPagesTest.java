package org.proofcut.web.handwork;

import static io.restassured.RestAssured.get;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.proofcut.web.Rubbish.escaped;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.proofcut.bench.HandDesk;
import org.proofcut.bench.ShopFloor;
import org.proofcut.core.intake.Field;
import org.proofcut.core.intake.HandForm;
import org.proofcut.core.intake.HandTyped;
import org.proofcut.core.intake.JobForm;
import org.proofcut.logbook.ShopItem;
import org.proofcut.logbook.ShopItem.Shelf;
import org.proofcut.web.Rubbish;

@QuarkusTest
class HandPagesTest {

  @Inject HandDesk desk;
  @Inject ShopFloor floor;

  private List<String> before;

  @BeforeEach
  void remember() {
    before = floor.items().stream().map(ShopItem::id).toList();
  }

  @AfterEach
  void putBack() {
    floor.items().stream()
        .map(ShopItem::id)
        .filter(id -> !before.contains(id))
        .forEach(floor::remove);
  }

  static List<String> kinds() {
    return List.copyOf(HandTyped.byKind().keySet());
  }

  static List<Arguments> fields() {
    var all = new ArrayList<Arguments>();
    HandTyped.byKind()
        .forEach(
            (kind, typed) -> typed.keySet().forEach(field -> all.add(Arguments.of(kind, field))));
    return all;
  }

  private static String address(String kind, Map<String, String> typed) {
    return "/hand-work/" + kind + "?" + Rubbish.query(typed);
  }

  private static String page(String kind, String... changed) {
    var answer = Rubbish.fetch(address(kind, HandTyped.with(kind, changed)));
    assertEquals(200, answer.statusCode());
    return answer.asString();
  }

  private HandForm form(String kind) {
    return desk.form(kind).orElseThrow();
  }

  private String keepLiquid(String kind, String... typed) {
    var fields = new HashMap<String, String>(Map.of("name", "blue tin"));
    for (int i = 0; i < typed.length; i += 2) {
      fields.put(typed[i], typed[i + 1]);
    }
    return floor.keep(Optional.empty(), Shelf.LIQUID, kind, fields).value().orElseThrow();
  }

  @Test
  void list_namesEveryTask_andIsFoundFromTheRules() {
    var page = get("/hand-work").asString();
    for (var form : desk.forms()) {
      assertTrue(page.contains("href=\"/hand-work/" + form.kind() + "\""), form.kind());
      assertTrue(page.contains(form.says()), form.says());
    }
    assertTrue(get("/rules").asString().contains("href=\"/hand-work\""));
  }

  @Test
  void open_noSuchTask_isNotThere() {
    assertEquals(404, get("/hand-work/juggle").statusCode());
    assertEquals(404, get("/hand-work/juggle/answer").statusCode());
  }

  @ParameterizedTest
  @MethodSource("kinds")
  void open_nothingTyped_namesWhatIsEmptyAndCallsNothingWrong(String kind) {
    var page = get("/hand-work/" + kind).asString();
    assertTrue(page.contains("still empty"), page);
    assertFalse(page.contains("field-wrong"), page);
    assertFalse(page.contains("choice-wrong"), page);
    assertFalse(page.contains("What can hurt</h3>"), page);
  }

  @ParameterizedTest
  @MethodSource("kinds")
  void open_example_saysWhatHurts_whatToDo_andWhatIsLookedAtLast(String kind) {
    var page = page(kind);
    assertTrue(page.contains("What can hurt</h3>"), page);
    assertTrue(page.contains("caution-word"), page);
    assertTrue(page.contains("How it is done</h3>"), page);
    assertTrue(page.contains("When you leave</h3>"), page);
    assertTrue(page.contains("law and codes of the place"), page);
  }

  @ParameterizedTest
  @MethodSource("fields")
  void open_rubbishInAField_isToldThereAndKept(String kind, String field) {
    var read = form(kind);
    for (var rubbish : Rubbish.ALL) {
      var answer = Rubbish.fetch(address(kind, HandTyped.with(kind, field, rubbish)));
      assertEquals(200, answer.statusCode(), rubbish);
      var page = answer.asString();
      var typed =
          JobForm.withUnit(HandTyped.with(kind, field, Rubbish.asReceived(rubbish)), floor.unit());
      boolean readable = read.read(typed, floor.shop()).value().isPresent();
      assertEquals(readable, page.contains("What can hurt</h3>"), field + " = " + rubbish);
      if (!readable && !rubbish.isBlank()) {
        assertTrue(page.contains("id=\"" + field + "-problem\""), field + " = " + rubbish);
      }
      var asked =
          read.fields(floor.shop()).stream()
              .filter(one -> one.name().equals(field))
              .findFirst()
              .orElseThrow();
      if (asked.entry() == Field.Entry.LENGTH) {
        assertTrue(
            page.contains("value=\"" + escaped(Rubbish.asReceived(rubbish)) + "\""),
            "kept: " + rubbish);
      }
      assertFalse(page.contains("<script>alert"), rubbish);
      assertFalse(page.contains("<img src=x"), rubbish);
    }
  }

  @Test
  void carry_showsItsWeightWithTheWorking() {
    var page = page("carry");
    assertTrue(page.contains("<b>40.2 kg</b>"), page);
    assertTrue(page.contains("length × width × thickness × density"), page);
    assertTrue(page.contains("density of plywood"), page);
    assertTrue(page.contains("common practice"), page);
    assertTrue(
        page("carry", "unit", "in", "length", "96", "width", "48", "thickness", "3/4")
            .contains(" lb</b>"));
  }

  @Test
  void carry_wholeSheetAloneOnStairs_isStopped() {
    var page = page("carry", "stairs", "yes");
    assertTrue(page.contains("Stopped: see why"), page);
    assertTrue(page.contains("How it is done where nothing stops it"), page);
    assertFalse(page("carry").contains("Stopped: see why"));
  }

  /** Bounds of 29 CFR 1910.106(a)(19), found in print, through form, shelf and page. */
  @ParameterizedTest
  @CsvSource({
    "73.3 °F, 95.0 °F, 'flammable, category 1', true",
    "73.3 °F, 95.1 °F, 'flammable, category 2', true",
    "73.4 °F, 95.0 °F, 'flammable, category 3', false",
    "140.1 °F, 300 °F, 'flammable, category 4', false",
    "199.5 °F, 300 °F, hard to set alight, false",
    "22.9 °C, 35.1 °C, 'flammable, category 2', true",
    "23 °C, 80 °C, 'flammable, category 3', false",
    "60 °C, 150 °C, 'flammable, category 3', false",
    "93.1 °C, 180 °C, hard to set alight, false"
  })
  void finish_tinOfTheShop_isJudgedByItsDataSheet(
      String flash, String boils, String category, boolean easily) {
    var tin = keepLiquid("solvent-lacquer", "flash", flash, "boils", boils, "data-sheet", "yes");
    var page = page("finish", "finish", tin);
    assertTrue(page.contains("<b>" + category + "</b>"), page);
    assertEquals(easily, page.contains("takes fire at room temperature"), page);
    assertTrue(page.contains("blue tin"), page);
    assertFalse(page.contains("Without its safety data sheet"), page);
  }

  @Test
  void finish_tinWithoutADataSheet_isTold() {
    var page = page("finish", "finish", keepLiquid("oil-varnish"));
    assertTrue(page.contains("Without its safety data sheet"), page);
    assertTrue(page.contains("flash point not entered"), page);
  }

  @Test
  void gear_ofTheShop_isNamedWithItsPlace_inItsOrder() {
    floor.keep(
        Optional.empty(),
        Shelf.GEAR,
        "vapour-mask",
        // Its days end before those of any other, so it is used up first.
        Map.of(
            "name",
            "grey mask",
            "class",
            "vapour",
            "place",
            "blue box 9",
            "good-until",
            LocalDate.now().plusDays(1).toString()));
    var gear = page("finish").replaceFirst("(?s).*Protective gear, in this order", "");
    int mask = gear.indexOf("blue box 9");
    int glasses = gear.indexOf("Are they on?");
    assertTrue(mask > 0 && mask < glasses, gear);
  }

  @Test
  void answer_whileTyped_followsInTheAddress() {
    var answer = get(address("sand", HandTyped.with("sand")).replace("?", "/answer?"));
    answer.then().statusCode(200);
    assertTrue(answer.header("HX-Replace-Url").startsWith("/hand-work/sand?"), "address");
    assertFalse(answer.asString().contains("<html"), "a part only");
  }
}
