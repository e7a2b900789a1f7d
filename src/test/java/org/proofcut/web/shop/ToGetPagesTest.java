package org.proofcut.web.shop;

import static io.restassured.RestAssured.get;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.not;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.proofcut.bench.ShopFloor;
import org.proofcut.logbook.Logbook;
import org.proofcut.logbook.ShopItem;
import org.proofcut.logbook.ShopItem.Shelf;
import org.proofcut.web.Rubbish;

/** The list of what to get, its ways in, and what the shop's page says of each piece. */
@QuarkusTest
class ToGetPagesTest {

  @Inject ShopFloor floor;
  @Inject Logbook logbook;

  private List<ShopItem> before;

  @BeforeEach
  void remember() {
    before = floor.items();
  }

  @AfterEach
  void putBack() {
    floor.items().stream().filter(it -> !before.contains(it)).forEach(it -> floor.remove(it.id()));
    logbook.keep(before);
  }

  @Test
  void nothingMissing_isSaid_andTheFirstPageIsSilent() {
    get("/shop/to-get")
        .then()
        .statusCode(200)
        .body(containsString("Nothing is missing, and nothing ends within 30 days."));
    get("/").then().body(not(containsString("/shop/to-get")));
    assertEquals(List.of(), get("/api/shop/to-get").jsonPath().getList(""));
  }

  @Test
  void outOfDateAndMissing_standByKindAndMarks_withNoNameOfAMaker() {
    removeAll("dust-mask");
    removeAll("eye-protection");
    keep("dust-mask", Map.of("name", "dated mask", "class", "ffp3", "good-until", "2024-05-03"));
    get("/shop/to-get")
        .then()
        .statusCode(200)
        .body(containsString(">Dust mask, FFP3, P3 or P100</h2>"))
        .body(containsString("None in the shop that will do"))
        .body(containsString("dated mask: was good until 3 May 2024"))
        .body(containsString(">Safety glasses, Z87+ or EN 166 F</h2>"))
        .body(containsString("None in the shop</p>"))
        .body(containsString("Good for: chips that a turning cutter throws"))
        .body(containsString("local codes"));
    get("/").then().body(containsString("href=\"/shop/to-get\""));
    get("/shop").then().body(containsString("Not to be worn: was good until 3 May 2024"));
    get("/api/shop/to-get")
        .then()
        .statusCode(200)
        .body("kind", hasItem("dust-mask"))
        .body("needed", hasItem("Z87+ or EN 166 F"));
  }

  @Test
  void namesAsTyped_areShownAsText() {
    removeAll("dust-mask");
    var name = "<script>alert(1)</script>";
    keep("dust-mask", Map.of("name", name, "class", "ffp1"));
    var html = get("/shop/to-get").asString();
    assertTrue(html.contains(Rubbish.escaped(name) + ": FFP1"), html);
    assertTrue(!html.contains(name), html);
  }

  @Test
  void failedPiece_isSaidOnTheShopsPage() {
    keep("gloves", Map.of("name", "torn gloves", "class", "handling", "out-of-use", "yes"));
    get("/shop").then().body(containsString("Not to be worn: out of use"));
  }

  @Test
  void formOfMuffs_asksForAFigure_thatOfMasksForAClass() {
    get("/shop/gear/new?kind=ear-protection")
        .then()
        .body(containsString("name=\"decibels\""))
        .body(not(containsString("name=\"class\"")));
    get("/shop/gear/new?kind=dust-mask")
        .then()
        .body(containsString("<option value=\"ffp3\">"))
        .body(not(containsString("name=\"decibels\"")));
  }

  private void removeAll(String kind) {
    floor.items().stream()
        .filter(item -> item.shelf() == Shelf.GEAR && item.kind().equals(kind))
        .forEach(item -> floor.remove(item.id()));
  }

  private void keep(String kind, Map<String, String> typed) {
    var address = "/shop/gear/new?kind=" + kind;
    assertEquals(303, Rubbish.post(address, typed).statusCode(), typed.toString());
  }
}
