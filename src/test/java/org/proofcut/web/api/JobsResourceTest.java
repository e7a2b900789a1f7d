package org.proofcut.web.api;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.contains;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.empty;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.hasItems;
import static org.hamcrest.Matchers.not;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.math.BigDecimal;
import java.sql.SQLException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javax.sql.DataSource;
import org.junit.jupiter.api.Test;
import org.proofcut.core.intake.JobForm;

@QuarkusTest
class JobsResourceTest {

  @Inject DataSource database;

  private static final List<String> EXACT =
      List.of("length.mm", "length.in", "width.mm", "width.in");

  @Test
  void answer_demo_hasExactPartsWithWorking() {
    Api.post("/api/answer", Api.typed(Api.demo()))
        .then()
        .statusCode(200)
        .body("sound", equalTo(true))
        .body("problems", empty())
        .body("parts.id", hasItems("left-side", "back"))
        .body("parts.find { it.id == 'left-side' }.length.mm", equalTo("940"))
        .body("parts.find { it.id == 'left-side' }.width.shown", equalTo("360.00 mm"))
        // 620 − 2 · 17.73 (mean of the readings, 17.725 to the nearest 0.01) + 2 · 6.
        .body("parts.find { it.id == 'bottom' }.length.mm", equalTo("596.54"))
        .body(
            "parts.find { it.id == 'bottom' }.length.working.name",
            hasItem("mean thickness of the left side"))
        .body("parts.find { it.id == 'bottom' }.length.inIsExact", equalTo(false));
  }

  @Test
  void answer_keepsNothing() {
    var before = Api.get("/api/jobs").getList("id");
    Api.post("/api/answer", Api.typed(Api.demo("name", "kept nowhere")));
    assertEquals(before, Api.get("/api/jobs").getList("id"));
  }

  @Test
  void answer_sameSizesInInches_givesTheSameExactParts() {
    var inMillimetres = new LinkedHashMap<>(Api.demo());
    var inInches = new LinkedHashMap<String, String>();
    inInches.put("unit", "in");
    for (var field : JobForm.fields()) {
      var text = inMillimetres.get(field.name());
      if (text == null || field.name().equals("unit")) {
        continue;
      }
      if (field.entry() == org.proofcut.core.intake.Field.Entry.LENGTH) {
        // A multiple of 127/128 mm is a whole number of 5/128 in: both can be written out.
        var steps =
            new BigDecimal(text)
                .multiply(BigDecimal.valueOf(128))
                .divideToIntegralValue(BigDecimal.valueOf(127));
        inMillimetres.put(
            field.name(), steps.multiply(new BigDecimal("0.9921875")).toPlainString() + " mm");
        inInches.put(field.name(), steps.multiply(new BigDecimal("0.0390625")).toPlainString());
      } else {
        inInches.put(field.name(), text);
      }
    }
    var one =
        Api.post("/api/answer", Api.typed(inMillimetres))
            .then()
            .statusCode(200)
            .extract()
            .jsonPath();
    var other =
        Api.post("/api/answer", Api.typed(inInches)).then().statusCode(200).extract().jsonPath();
    assertFalse(one.getList("parts").isEmpty());
    for (var exact : EXACT) {
      assertEquals(one.getList("parts." + exact), other.getList("parts." + exact), exact);
    }
    assertEquals("in", other.getString("parts[0].length.unit"));
  }

  @Test
  void answer_whatComesOut_goesInAgainUnchanged() {
    var parts = Api.post("/api/answer", Api.typed(Api.demo("width", "24 13/32 in"))).jsonPath();
    assertEquals(
        "619.91875",
        parts
            .getString(
                "parts.find { it.id == 'top' }.length.working.flatten().find { it.name == 'width of the case' }.result")
            .replaceAll(".*exactly ([0-9.]+) mm.*", "$1"));
    var typedBack =
        Api.post("/api/answer", Api.typed(Api.demo("width", "619.91875 mm"))).jsonPath();
    assertEquals(parts.getList("parts.length.mm"), typedBack.getList("parts.length.mm"));
  }

  @Test
  void answer_wrongFields_saysEachAtItsField() {
    Api.post(
            "/api/answer",
            Api.typed(
                Api.demo("width", "wide", "depth", "1,234.5", "sheet-1-reading-2", "<script>")))
        .then()
        .statusCode(200)
        .body("sound", equalTo(false))
        .body("parts", empty())
        .body("problems.where", hasItems("width", "depth", "sheet-1-reading-2"));
  }

  @Test
  void job_addedChangedAndDiscarded() {
    var job = Api.newJob(Api.demo("name", "first name"));
    given().get("/api/jobs").then().body("name", hasItem("first name"));
    Api.put(job, Api.typed(Api.demo("name", "second name", "width", "25 in")))
        .then()
        .statusCode(200)
        .body("typed.name", equalTo("second name"))
        .body("begun", equalTo(false))
        .body("draft.sound", equalTo(true));
    given().get(job).then().statusCode(200).body("typed.width", equalTo("25 in"));
    given().delete(job).then().statusCode(204);
    given().get(job).then().statusCode(404).body("problems.where", contains("address"));
    given().get("/api/jobs").then().body("name", not(hasItem("second name")));
  }

  @Test
  void job_unreadableField_isNotKept() {
    var before = Api.get("/api/jobs").getList("id");
    Api.post("/api/jobs", Api.typed(Api.demo("height", "")))
        .then()
        .statusCode(422)
        .body("problems.where", contains("height"));
    var job = Api.newJob(Api.demo());
    Api.put(job, Api.typed(Api.demo("height", "-3"))).then().statusCode(422);
    given().get(job).then().body("typed.height", equalTo("940"));
    given().delete(job).then().statusCode(204);
    assertEquals(before, Api.get("/api/jobs").getList("id"));
  }

  @Test
  void job_fieldThatIsNone_isRefused() {
    Api.post("/api/jobs", Api.typed(Map.of("widht", "620")))
        .then()
        .statusCode(422)
        .body("problems.where", contains("typed.widht"));
  }

  @Test
  void job_thatCannotBeReadBack_saysSoAndGivesNothingAway() throws SQLException {
    sql("insert into job values ('damaged', 'no JSON', '2026-01-01', '2026-01-01', 0)");
    try {
      given()
          .get("/api/jobs/damaged")
          .then()
          .statusCode(500)
          .contentType("application/problem+json")
          .body("type", equalTo("/api/problems/unreadable"))
          .body("instance", equalTo("/api/jobs/damaged"))
          .body("problems.where", contains(containsString("damaged")))
          .body(not(containsString("xception")));
    } finally {
      sql("delete from job where id = 'damaged'");
    }
  }

  private void sql(String statement) throws SQLException {
    try (var connection = database.getConnection();
        var prepared = connection.prepareStatement(statement)) {
      prepared.executeUpdate();
    }
  }

  @Test
  void form_everyFieldOfTheDemo_isListed() {
    var names = Api.get("/api/jobs/form").getList("name", String.class);
    assertEquals(
        List.of(), Api.demo().keySet().stream().filter(name -> !names.contains(name)).toList());
  }
}
