package org.proofcut.web.api;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.contains;
import static org.hamcrest.Matchers.empty;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.everyItem;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.hasItems;
import static org.hamcrest.Matchers.hasSize;
import static org.hamcrest.Matchers.matchesPattern;
import static org.hamcrest.Matchers.not;
import static org.hamcrest.Matchers.notNullValue;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.proofcut.bench.ShopFloor;
import org.proofcut.bench.Taught;
import org.proofcut.logbook.Logbook;

/** The demo job in work, as a program would do it. */
@QuarkusTest
class WorkResourceTest {

  @Inject Logbook logbook;
  @Inject ShopFloor floor;

  private String job;

  @BeforeEach
  void keepJob() {
    job = Api.newJob(Api.demo());
  }

  /** Its proofs are of nobody's wood, and the job is no demo: what they taught is forgotten. */
  @AfterEach
  void discardJob() {
    given().delete(job);
    new Taught(logbook, floor);
  }

  @Test
  void plan_beforeWork_hasAllThatASheetShows() {
    given()
        .get(job + "/plan")
        .then()
        .statusCode(200)
        .body("sound", equalTo(true))
        .body("sheets.id", hasItems("rabbet:top", "dado:bottom", "dry-fit"))
        .body("sheets.number[0]", equalTo(1))
        .rootPath("sheets.find { it.id == 'dado:bottom' }")
        .body("setup.machine.kind", equalTo("router-table"))
        .body("setup.figures.role", hasItems("fence", "height"))
        .body("setup.figures.set.mm", everyItem(matchesPattern("-?[0-9]+(\\.[0-9]+)?")))
        .body("setup.figures.set.working", everyItem(not(empty())))
        .body("setup.passes", not(empty()))
        .body("setup.speed.turnsPerMinute", matchesPattern("[0-9]+"))
        .body("setup.speed.rim.unit", equalTo("m/s"))
        .body("setup.feed.why", notNullValue())
        .body("setup.measures.dimension", hasItems("width", "depth", "distance"))
        .body("setup.cutterChange.steps", not(empty()))
        .body("parts.handling.leads", everyItem(notNullValue()))
        .body("findings.rule", not(empty()))
        .body("findings.because.kind", everyItem(notNullValue()))
        .body("checklist.type", hasItems("figure", "look", "gear"))
        .body("proofPieces", not(empty()))
        .body("marks.what", hasItem("cutter"))
        .body("fingerprint", matchesPattern("[0-9a-f]{16}"));
  }

  @Test
  void progress_beforeWork_saysSo() {
    given().get(job + "/progress").then().statusCode(200).body("begun", equalTo(false));
    act("x", "dado:bottom", "0", Map.of("type", "held"))
        .then()
        .statusCode(409)
        .body("type", equalTo("/api/problems/not-now"));
  }

  @Test
  void begin_unsoundJob_saysWhatToMend() {
    Api.put(job, Api.typed(Api.demo("bottom-dado", "17"))).then().statusCode(200);
    given()
        .contentType("application/json")
        .post(job + "/begin")
        .then()
        .statusCode(409)
        .contentType("application/problem+json")
        .body("problems", not(empty()));
  }

  @Test
  void firstSheet_byActsAlone_isProvenCutAndSignedOff() {
    begin();
    var first = provenSheet();
    while (!current().equals(first)) {
      finish(current());
    }
    assertEquals("not-yet", sheet(first).get("proof.type"));
    confirm(first, "set");
    confirm(first, "machine");
    confirm(first, "before-power");
    assertEquals("proof", sheet(first).get("stage"));
    prove(first);
    assertEquals("proven", sheet(first).get("proof.type"));
    assertEquals("cut", sheet(first).get("stage"));
    cutAll(first);
    confirm(first, "leave-safe");
    take(first, Map.of("type", "signed-off"));
    assertEquals("done", sheet(first).get("stage"));
    given()
        .get(job + "/record")
        .then()
        .statusCode(200)
        .body("act.type", hasItems("confirmed", "reading-taken", "part-cut", "signed-off"))
        .body(
            "act.findAll { it.type == 'reading-taken' }.found",
            everyItem(matchesPattern("[0-9.]+ mm")));
  }

  @Test
  void act_sameEntryTwice_isDoneOnce() {
    begin();
    var sheet = current();
    var fingerprint = fingerprint(sheet);
    var held = Map.<String, Object>of("type", "held");
    act("once", sheet, fingerprint, held).then().statusCode(200).body("held", equalTo(true));
    act("once", sheet, fingerprint, held).then().statusCode(200);
    given().get(job + "/record").then().body("", hasSize(1)).body("id", contains("once"));
  }

  @Test
  void act_withAnotherFingerprint_isRefusedAndNotRecorded() {
    begin();
    act("stale", current(), "0123456789abcdef", Map.of("type", "held"))
        .then()
        .statusCode(409)
        .body("type", equalTo("/api/problems/changed"))
        .body("problems.where", contains("sheet"));
    given().get(job + "/record").then().body("", empty());
  }

  @Test
  void act_outOfOrder_isRefused() {
    begin();
    var sheet = current();
    take(sheet, Map.of("type", "signed-off"), 409)
        .then()
        .body("type", equalTo("/api/problems/not-now"));
    take(sheet, Map.of("type", "part-cut", "part", "no-such-part"), 409);
    take(sheet, Map.of("type", "confirmed", "item", "no-such-item", "answer", "yes"), 409);
    given().get(job + "/record").then().body("", empty());
  }

  @Test
  void act_wrongShape_saysEveryFieldAtOnce() {
    begin();
    Api.post(
            job + "/acts",
            Map.of(
                "entryId",
                7,
                "device",
                "",
                "operation",
                "dado:bottom",
                "fingerprint",
                "x",
                "colour",
                "red",
                "act",
                Map.of(
                    "type",
                    "reading-taken",
                    "attempt",
                    0,
                    "dimension",
                    "weight",
                    "found",
                    "12 kg")))
        .then()
        .statusCode(422)
        .body(
            "problems.where",
            contains("colour", "entryId", "device", "act.attempt", "act.dimension", "act.found"));
    act("y", "no-such-sheet", "x", Map.of("type", "held"))
        .then()
        .statusCode(422)
        .body("problems.where", contains("operation"));
  }

  @Test
  void correction_asTheVerdictSays_movesTheFigureByIt() {
    begin();
    var sheet = provenSheet();
    while (!current().equals(sheet)) {
      finish(current());
    }
    confirm(sheet, "set");
    confirm(sheet, "machine");
    confirm(sheet, "before-power");
    Map<String, Object> measure = measures(sheet).get(0);
    Map<String, Object> target = map(measure.get("target"));
    var off =
        new java.math.BigDecimal((String) target.get("mm")).add(java.math.BigDecimal.ONE) + " mm";
    for (var each : measures(sheet)) {
      var found = each.equals(measure) ? off : map(each.get("target")).get("mm") + " mm";
      read(sheet, each, found);
    }
    var progress = Api.get(job + "/progress");
    var verdict = "sheets.find { it.id == '" + sheet + "' }.verdicts[0]";
    assertEquals("change", progress.getString(verdict + ".outcome"));
    assertEquals("-1", progress.getString(verdict + ".correction.by.mm"));
    take(sheet, Map.of("type", "corrected"));
    assertEquals(
        2,
        (int) Api.get(job + "/progress").get("sheets.find { it.id == '" + sheet + "' }.attempt"));
    given()
        .get(job + "/record")
        .then()
        .body("act.find { it.type == 'corrected' }.corrections.by.mm", contains("-1"));
  }

  private void begin() {
    given()
        .contentType("application/json")
        .post(job + "/begin")
        .then()
        .statusCode(200)
        .body("begun", equalTo(true))
        .body("revision", equalTo(1));
  }

  private String current() {
    return Api.get(job + "/progress").getString("current");
  }

  private String provenSheet() {
    return Api.get(job + "/plan").getString("sheets.find { it.needsProof }.id");
  }

  private String fingerprint(String sheet) {
    return Api.get(job + "/plan").getString("sheets.find { it.id == '" + sheet + "' }.fingerprint");
  }

  private Map<String, Object> sheet(String id) {
    var progress = Api.get(job + "/progress");
    var path = "sheets.find { it.id == '" + id + "' }";
    var flat = new HashMap<String, Object>(progress.getMap(path));
    flat.put("proof.type", progress.getString(path + ".proof.type"));
    return flat;
  }

  private Response act(String entry, String sheet, String fingerprint, Map<String, Object> act) {
    return Api.post(
        job + "/acts",
        Map.of(
            "entryId", entry,
            "device", "test tablet",
            "operation", sheet,
            "fingerprint", fingerprint,
            "act", act));
  }

  private void take(String sheet, Map<String, Object> act) {
    take(sheet, act, 200);
  }

  private Response take(String sheet, Map<String, Object> act, int status) {
    var answer = act(UUID.randomUUID().toString(), sheet, fingerprint(sheet), act);
    assertEquals(status, answer.statusCode(), act + ": " + answer.asString());
    return answer;
  }

  /** Every item of a pause; a figure is answered with what it has to be set to. */
  private void confirm(String sheet, String pause) {
    var plan = Api.get(job + "/plan");
    var path = "sheets.find { it.id == '" + sheet + "' }";
    List<Map<String, Object>> items = plan.getList(path + ".checklist");
    for (var item : items) {
      if (item.get("pause").equals(pause)) {
        var answer =
            item.get("type").equals("figure")
                ? plan.getString(
                        path
                            + ".setup.figures.find { it.role == '"
                            + item.get("role")
                            + "' }.set.mm")
                    + " mm"
                : (String) item.get("answer");
        take(sheet, Map.of("type", "confirmed", "item", item.get("id"), "answer", answer));
      }
    }
  }

  private List<Map<String, Object>> measures(String sheet) {
    return Api.get(job + "/plan")
        .getList("sheets.find { it.id == '" + sheet + "' }.setup.measures");
  }

  private void prove(String sheet) {
    for (var measure : measures(sheet)) {
      read(sheet, measure, map(measure.get("target")).get("mm") + " mm");
    }
    confirm(sheet, "proof");
  }

  private void read(String sheet, Map<String, Object> measure, String found) {
    for (int i = 0; i < (int) measure.get("readings"); i++) {
      take(
          sheet,
          Map.of(
              "type",
              "reading-taken",
              "attempt",
              1,
              "dimension",
              measure.get("dimension"),
              "found",
              found));
    }
  }

  private void cutAll(String sheet) {
    var parts = Api.get(job + "/plan").getList("sheets.find { it.id == '" + sheet + "' }.parts.id");
    assertTrue(!parts.isEmpty());
    parts.forEach(part -> take(sheet, Map.of("type", "part-cut", "part", part)));
  }

  private void finish(String sheet) {
    confirm(sheet, "set");
    confirm(sheet, "machine");
    confirm(sheet, "before-power");
    prove(sheet);
    cutAll(sheet);
    confirm(sheet, "leave-safe");
    take(sheet, Map.of("type", "signed-off"));
  }

  @SuppressWarnings("unchecked") // JSON objects are maps of their names.
  private static Map<String, Object> map(Object json) {
    return (Map<String, Object>) json;
  }
}
