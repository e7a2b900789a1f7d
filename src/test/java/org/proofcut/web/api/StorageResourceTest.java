package org.proofcut.web.api;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.contains;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.empty;
import static org.hamcrest.Matchers.endsWith;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.hasItems;
import static org.hamcrest.Matchers.hasKey;
import static org.hamcrest.Matchers.not;
import static org.hamcrest.Matchers.startsWith;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import io.quarkus.test.junit.QuarkusTest;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

@QuarkusTest
class StorageResourceTest {

  private final List<String> made = new ArrayList<>();

  @AfterEach
  void takeOut() {
    made.forEach(address -> given().delete(address));
  }

  private static Map<String, String> typed(String... changed) {
    var typed = new LinkedHashMap<String, String>();
    typed.putAll(Api.get("/api/storage/cabinets/new").getMap("typed"));
    for (int i = 0; i < changed.length; i += 2) {
      typed.put(changed[i], changed[i + 1]);
    }
    return typed;
  }

  private String cabinet(String... changed) {
    var added = Api.post("/api/storage/cabinets", Api.typed(typed(changed)));
    var id = added.then().statusCode(201).extract().jsonPath().getString("id");
    added.then().header("Location", endsWith("/api/storage/cabinets/" + id));
    made.add("/api/storage/cabinets/" + id);
    return id;
  }

  private String thing(String cabinet) {
    return thing(cabinet, "180", "220");
  }

  private String thing(String cabinet, String wide, String high) {
    var typed =
        Map.of(
            "name", "lent muffs",
            "kept-kind", "ear-muffs",
            "kept-width", wide,
            "kept-height", high,
            "kept-depth", "70",
            "kept-weight", "300 g",
            "kept-in", cabinet,
            "opened", "2026-01-05");
    var item = Map.of("shelf", "gear", "kind", "ear-protection", "typed", typed);
    var id =
        Api.post("/api/shop/items", item)
            .then()
            .statusCode(201)
            .extract()
            .jsonPath()
            .getString("id");
    made.add("/api/shop/items/" + id);
    return id;
  }

  @Test
  void demo_cabinet_isThere_andItsPlanPutsEverythingSomewhere() {
    given()
        .get("/api/storage/cabinets")
        .then()
        .statusCode(200)
        .body("id", hasItem("demo-cabinet"))
        .body("find { it.id == 'demo-cabinet' }.problems", empty())
        .body("find { it.id == 'demo-cabinet' }", not(hasKey("job")));
    given()
        .get("/api/storage/cabinets/demo-cabinet/plan")
        .then()
        .statusCode(200)
        .body("faults", empty())
        .body("puts.name", hasItems("ear muffs", "foam extinguisher"))
        .body("places.kind", hasItems("rail", "shelf", "drawer", "box", "door-rail", "wall"))
        .body("hooks.find { it.place == 'fitting-1' }.fromSide.working", not(empty()));
    given()
        .get("/api/gear/people")
        .then()
        .body("typed.name", hasItems("Ash", "Rowan"))
        .body("find { it.typed.name == 'Rowan' }.estimated", not(empty()));
  }

  @Test
  void cabinet_keptChangedAndTakenOut_isAsTyped() {
    var address = "/api/storage/cabinets/" + cabinet("name", "by the bench");
    Api.put(address, Api.typed(typed("name", "by the window"))).then().statusCode(200);
    given().get(address).then().body("typed.name", equalTo("by the window"));
    given().delete(address).then().statusCode(204);
    given().get(address).then().statusCode(404);
    given().delete(address).then().statusCode(404);
    given().get(address + "/plan").then().statusCode(404);
  }

  @Test
  void cabinet_thatCannotBe_isRefusedAtItsFields() {
    Api.post("/api/storage/cabinets", Api.typed(typed("fitting-1-at", "901 mm")))
        .then()
        .statusCode(422)
        .contentType("application/problem+json")
        .body("problems.where", contains("fitting-1-at"));
    Api.post("/api/storage/answer", Api.typed(typed("doors", "none")))
        .then()
        .statusCode(200)
        .body("places", empty())
        .body("problems.where", contains("fitting-3-door"));
    Api.post("/api/storage/answer", Api.typed(typed()))
        .then()
        .statusCode(200)
        .body("places.name", hasItems("shelf", "hooks", "bottom"))
        .body("fields.name", hasItems("fitting-4-kind", "width"));
    Api.post("/api/storage/cabinets", Map.of("typed", Map.of("height-of-it", "1")))
        .then()
        .statusCode(422)
        .body("problems.where", contains("typed.height-of-it"));
  }

  @Test
  void plan_pinnedAndTaken_saysWhereThingsLive() {
    var cabinet = cabinet("name", "api cabinet");
    var id = thing(cabinet);
    var address = "/api/storage/cabinets/" + cabinet + "/plan";
    given().get(address).then().body("taken", equalTo(false)).body("without", empty());
    var pin = Map.of("thing", id, "cabinet", cabinet, "place", "fitting-1");
    Api.put("/api/storage/pins", pin)
        .then()
        .statusCode(200)
        .body("puts.find { it.thing == '" + id + "' }.place", equalTo("fitting-1"))
        .body("puts.find { it.thing == '" + id + "' }.pinned", equalTo(true));
    Api.put("/api/storage/pins", Map.of("thing", id, "cabinet", cabinet, "place", "cellar"))
        .then()
        .statusCode(422)
        .body("problems.where", contains("place"));
    given().delete("/api/storage/pins/" + id).then().statusCode(204);
    given().delete("/api/storage/pins/" + id).then().statusCode(204);
    given().delete("/api/storage/pins/nothing").then().statusCode(404);
    Api.post(address, Map.of("mark", "0000")).then().statusCode(409);
    var mark = Api.get(address).getString("mark");
    Api.post(address, Map.of("mark", mark)).then().statusCode(200).body("taken", equalTo(true));
    given().get("/api/gear/things/" + id).then().body("place", startsWith("Api cabinet: "));
    given().get("/api/storage/cabinets/" + cabinet + "/changed").then().body("typed", anEmpty());
    given().get("/api/storage/cabinets/" + cabinet + "/shelf-heights").then().statusCode(404);
    Api.put("/api/storage/cabinets/" + cabinet + "/shelf-heights", Map.of()).then().statusCode(404);
  }

  @Test
  void shelfHeights_ofAJobsCase_areTakenOverIntoTheJob() {
    var job = Api.newJob(Api.demo());
    var typed =
        new LinkedHashMap<String, String>(
            Api.get(job.replace("/api/jobs/", "/api/storage/cabinets/of-job/")).getMap("typed"));
    typed.put("hung", "800 mm");
    String id = Api.post("/api/storage/cabinets", Api.typed(typed)).jsonPath().getString("id");
    var address = "/api/storage/cabinets/" + id + "/shelf-heights";
    // 480 mm stand nowhere while the shelf is in the middle.
    thing(id, "300", "480");
    var before = given().get(address).jsonPath();
    assertEquals(1, before.getInt("withoutBefore"));
    assertEquals(0, before.getInt("withoutAfter"));
    var after = Api.put(address, Map.of()).then().statusCode(200).extract().jsonPath();
    assertEquals(0, after.getInt("withoutBefore"));
    assertFalse(after.getBoolean("better"));
    made.add("/api/storage/cabinets/" + id);

    given().delete(job).then().statusCode(204);
    for (var of : List.of("plan", "changed", "shelf-heights")) {
      given()
          .get("/api/storage/cabinets/" + id + "/" + of)
          .then()
          .statusCode(409)
          .body("problems.where", contains("job"));
    }
    Api.put(address, Map.of()).then().statusCode(409);
    Api.post("/api/storage/cabinets/" + id + "/plan", Map.of("mark", "0"))
        .then()
        .statusCode(409)
        .body("problems.where", contains("job"));
  }

  private static org.hamcrest.Matcher<Map<?, ?>> anEmpty() {
    return org.hamcrest.Matchers.anEmptyMap();
  }

  @Test
  void acts_areRecorded_onceEach_andRefusedOutOfTurn() {
    var id = thing("");
    var address = "/api/gear/things/" + id + "/acts";
    var out = Map.of("id", UUID.randomUUID().toString(), "act", "taken-out", "who", "Ola");
    Api.post(address, out).then().statusCode(200).body("with", equalTo("Ola"));
    Api.post(address, out).then().statusCode(200);
    Api.post(address, Map.of("id", out.get("id"), "act", "put-back"))
        .then()
        .statusCode(409)
        .body("problems.where", contains("id"));
    Api.post(address, act("act", "taken-out", "who", "Ida"))
        .then()
        .statusCode(409)
        .body("problems.what", contains("Ola has it"));
    Api.post(address, act("act", "put-back")).then().statusCode(200).body("$", not(hasKey("with")));
    Api.post(address, act("act", "looked-at", "ageing", "cushions", "result", "failed"))
        .then()
        .statusCode(200)
        .body("idle", equalTo("out of use"));
    given()
        .get("/api/gear/due")
        .then()
        .body("find { it.thing == '" + id + "' }.ageing", equalTo("failed"));
    Api.post(address, act("act", "mended", "note", "new cushions")).then().statusCode(200);
    given()
        .get(address)
        .then()
        .body("act", contains("taken-out", "put-back", "looked-at", "mended"))
        .body("result", hasItem("failed"))
        .body("[3].note", equalTo("new cushions"));
  }

  private static Map<String, String> act(String... pairs) {
    var act = new LinkedHashMap<String, String>();
    act.put("id", UUID.randomUUID().toString());
    for (int i = 0; i < pairs.length; i += 2) {
      act.put(pairs[i], pairs[i + 1]);
    }
    return act;
  }

  @Test
  void acts_thatCannotBeRead_areRefusedAtTheirFields() {
    var address = "/api/gear/things/" + thing("") + "/acts";
    Api.post(address, act("act", "eaten"))
        .then()
        .statusCode(422)
        .body("problems.where", contains("act"));
    Api.post(address, act("act", "looked-at"))
        .then()
        .statusCode(422)
        .body("problems.where", contains("ageing", "result"));
    Api.post(address, act("act", "replaced", "goodUntil", "soon"))
        .then()
        .statusCode(422)
        .body("problems.where", contains("goodUntil"));
    Api.post(address, act("act", "taken-out", "who", "Ola", "note", "lent"))
        .then()
        .statusCode(422)
        .body("problems.where", contains("note"));
    Api.post("/api/gear/things/nothing/acts", act("act", "mended")).then().statusCode(404);
  }

  /** A day that the shop's own form can't read would take the piece out of the shop. */
  @Test
  void acts_withDaysThatCannotBeKept_areRefused_andThePieceStays() {
    var id = thing("");
    var address = "/api/gear/things/" + id + "/acts";
    for (var day : List.of("2100-01-01", "9999-12-31", "+999999999-12-31", "3/11/2027")) {
      Api.post(address, act("act", "replaced", "goodUntil", day))
          .then()
          .statusCode(422)
          .body("problems.where", contains("goodUntil"));
      Api.post(address, act("act", "looked-at", "ageing", "marked", "result", "good", "next", day))
          .then()
          .statusCode(422)
          .body("problems.where", contains("next"));
    }
    Api.post(address, act("act", "replaced", "goodUntil", "2099-12-31")).then().statusCode(200);
    given().get("/api/gear/things/" + id).then().statusCode(200);
  }

  @Test
  void person_keptAndTakenOut_andRefusedWhereAHeightIsMissing() {
    var added =
        Api.post("/api/gear/people", Map.of("typed", Map.of("name", "Ida", "body", "1700")));
    var id = added.then().statusCode(201).extract().jsonPath().getString("id");
    made.add("/api/gear/people/" + id);
    added.then().body("elbow.mm", equalTo("1071"));
    Api.put("/api/gear/people/" + id, Map.of("typed", Map.of("name", "Ida")))
        .then()
        .statusCode(422)
        .body("problems.where", hasItems("elbow", "highest"));
    given().delete("/api/gear/people/" + id).then().statusCode(204);
    given().delete("/api/gear/people/" + id).then().statusCode(404);
  }

  @Test
  void pagesOfOthers_changeNothing() {
    given()
        .header("Origin", "http://elsewhere.example")
        .contentType("application/json")
        .body(Api.typed(typed()))
        .post("/api/storage/cabinets")
        .then()
        .statusCode(403);
  }

  @Test
  void calendar_isWhatIsDue() {
    var id = thing("");
    given()
        .get("/storage/due.ics")
        .then()
        .statusCode(200)
        .contentType("text/calendar;charset=UTF-8")
        .body(startsWith("BEGIN:VCALENDAR\r\n"))
        .body(containsString("UID:cushions." + id.substring(0, 8)))
        .body(containsString("DTSTART;VALUE=DATE:20260705\r\n"));
  }
}
