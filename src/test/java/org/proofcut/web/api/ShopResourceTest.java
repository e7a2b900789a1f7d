package org.proofcut.web.api;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.contains;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.endsWith;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.hasItems;
import static org.hamcrest.Matchers.not;
import static org.junit.jupiter.api.Assertions.assertEquals;

import io.quarkus.test.junit.QuarkusTest;
import java.util.Map;
import org.junit.jupiter.api.Test;

@QuarkusTest
class ShopResourceTest {

  private static Map<String, Object> gear(String name) {
    return Map.of(
        "shelf",
        "gear",
        "kind",
        "gloves",
        "typed",
        Map.of("name", name, "rating", "", "place", "hook 9"));
  }

  @Test
  void shop_demo_isThere() {
    given()
        .get("/api/shop")
        .then()
        .statusCode(200)
        .body("name", equalTo("The long shed"))
        .body("unit", equalTo("mm"))
        .body("demo", equalTo(true))
        .body("items.shelf", hasItems("machine", "cutter", "gear", "aid"));
  }

  @Test
  void forms_everyKind_hasItsFields() {
    given()
        .get("/api/shop/forms")
        .then()
        .statusCode(200)
        .body("kind", hasItems("router-table", "saw-blade", "gloves", "push-stick"))
        .body("find { it.shelf == 'kit' && it.kind == 'torch' }.fields.name", hasItem("kept-in"))
        .body("find { it.kind == 'saw-blade' }.fields.name", hasItem("kerf"))
        .body(
            "find { it.kind == 'saw-blade' }.fields.find { it.name == 'kerf' }.entry",
            equalTo("length"))
        .body(
            "find { it.kind == 'router-table' }.fields.find { it.name == 'guard' }.choices.value",
            contains("yes", "no"));
  }

  @Test
  void item_addedChangedAndTakenOut_isAsTyped() {
    var added = Api.post("/api/shop/items", gear("soft gloves"));
    var id = added.then().statusCode(201).extract().jsonPath().getString("id");
    var address = "/api/shop/items/" + id;
    added.then().header("Location", endsWith(address));
    Api.put(address, gear("rough gloves")).then().statusCode(200);
    given().get(address).then().body("typed.name", equalTo("rough gloves"));
    given().delete(address).then().statusCode(204);
    given().get("/api/shop/items").then().body("id", not(hasItem(id)));
    given().delete(address).then().statusCode(404);
  }

  @Test
  void aid_putInTwice_isThereOnce() {
    var aid = Map.of("shelf", "aid", "kind", "sled", "typed", Map.of());
    Api.post("/api/shop/items", aid).then().statusCode(201);
    Api.post("/api/shop/items", aid).then().statusCode(201);
    var aids = Api.get("/api/shop/items").getList("findAll { it.shelf == 'aid' }.kind");
    assertEquals(1, aids.stream().filter("sled"::equals).count());
  }

  @Test
  void item_wrongFields_areAllNamedAndNothingIsKept() {
    var before = Api.get("/api/shop/items").getList("id");
    var typed =
        Map.of("name", "", "diameter", "1/0", "cutting-length", "30", "edges", "-1", "shank", "12");
    Api.post(
            "/api/shop/items", Map.of("shelf", "cutter", "kind", "straight-cutter", "typed", typed))
        .then()
        .statusCode(422)
        .contentType("application/problem+json")
        .body("type", equalTo("/api/problems/fields"))
        .body("instance", equalTo("/api/shop/items"))
        .body("problems.where", contains("name", "diameter", "edges"))
        .body("problems.force", hasItem("stops"))
        .body("problems[1].allowed", containsString("1.00 mm to 120.00 mm"));
    assertEquals(before, Api.get("/api/shop/items").getList("id"));
  }

  @Test
  void item_unknownKindOrField_isRefused() {
    Api.post("/api/shop/items", Map.of("shelf", "machine", "kind", "catapult", "typed", Map.of()))
        .then()
        .statusCode(422)
        .body("problems.where", contains("kind"));
    Api.post(
            "/api/shop/items",
            Map.of("shelf", "aid", "kind", "push-stick", "typed", Map.of("a", "b")))
        .then()
        .statusCode(422)
        .body("problems.where", contains("typed.a"));
    Api.post("/api/shop/items", Map.of("shelf", "shop", "kind", "x", "typed", Map.of()))
        .then()
        .statusCode(422)
        .body("problems.where", contains("shelf"));
  }

  @Test
  void item_changedToAnotherKind_isRefused() {
    Api.put("/api/shop/items/demo-1", gear("gloves"))
        .then()
        .statusCode(422)
        .body("problems.allowed", contains("machine, router-table"));
  }
}
