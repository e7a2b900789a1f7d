package org.proofcut.web.api;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.contains;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.proofcut.bench.ShopFloor;
import org.proofcut.bench.Taught;
import org.proofcut.logbook.Logbook;
import org.proofcut.web.Rubbish;

@QuarkusTest
class HabitResourceTest {

  private static final String RULINGS = "/api/habits/rulings";

  @Inject ShopFloor floor;
  @Inject Logbook logbook;

  private Taught taught;
  private String fence;

  @BeforeEach
  void teach() {
    taught = new Taught(logbook, floor);
    fence = taught.fence().id();
  }

  @AfterEach
  void forget() {
    taught.forget();
  }

  private Map<String, Object> habit() {
    return Api.get("/api/habits").getMap("find { it.trait == '" + fence + "' }");
  }

  @SuppressWarnings("unchecked") // JSON objects and lists, as described.
  private static <T> T at(Object json, String... path) {
    for (var step : path) {
      json = ((Map<String, Object>) json).get(step);
    }
    return (T) json;
  }

  @Test
  void habits_giveEstimateAdviceAndEachProof() {
    var told = taught.fenceOff("0.2 mm", "0.3 mm", "0.4 mm", "0.3 mm", "0.2 mm", "0.4 mm");
    var habit = habit();
    assertEquals("scale-offset", at(habit, "kind"));
    assertEquals("fence-to-nearest-edge", at(habit, "datum"));
    assertEquals(true, at(habit, "used"));
    assertEquals("-0.295", at(habit, "use", "mm"));
    assertEquals(6, (int) at(habit, "estimate", "proofs"));
    assertEquals("0.3", at(habit, "estimate", "mean", "mm"));
    assertEquals("0.089", at(habit, "estimate", "deviation", "mm"));
    // 0.3 ± 2.571 × 0.0894 ÷ √6, outward to 0.001.
    assertEquals("0.206", at(habit, "estimate", "ofMean", "least", "mm"));
    assertEquals("0.394", at(habit, "estimate", "ofMean", "most", "mm"));
    List<Map<String, Object>> observations = at(habit, "observations");
    assertEquals(6, observations.size());
    assertEquals(told.get(2).proof(), at(observations.get(2), "proof"));
    assertEquals("100.4", at(observations.get(2), "found", "mm"));
    assertEquals("counts", at(observations.get(2), "state"));
    assertNull(at(observations.get(2), "words"));
    assertTrue(at(habit, "words").toString().contains("6 proofs, ±0.10 mm"));
  }

  @Test
  void question_isAsked_andAnswered() {
    var far = taught.fenceOff("0.3 mm", "1.2 mm").get(1).proof();
    List<Map<String, Object>> observations = at(habit(), "observations");
    assertEquals("asked", at(observations.get(1), "state"));
    assertTrue(at(observations.get(1), "words").toString().startsWith("This proof found 1.20 mm"));
    var find = "find { it.trait == '" + fence + "' }.";
    Api.post(
            RULINGS,
            Map.of(
                "ruling",
                "leave-out",
                "trait",
                fence,
                "proof",
                far,
                "because",
                "chip at the fence"))
        .then()
        .statusCode(200)
        .body(find + "observations.state", contains("counts", "left-out"))
        .body(find + "observations.words", hasItem("chip at the fence"));
    Api.post(RULINGS, Map.of("ruling", "count", "trait", fence, "proof", far))
        .then()
        .statusCode(200)
        .body(find + "observations.state", contains("counts", "counts"))
        .body(find + "estimate.proofs", equalTo(2));
  }

  @Test
  void setAsideTakenUpAndStartedAfresh_areAsSaid() {
    taught.fenceOff("0.5 mm");
    var find = "find { it.trait == '" + fence + "' }.";
    Api.post(RULINGS, Map.of("ruling", "set-aside", "trait", fence, "because", "under repair"))
        .then()
        .statusCode(200)
        .body(find + "aside", equalTo("under repair"))
        .body(find + "used", equalTo(false));
    Api.post(RULINGS, Map.of("ruling", "take-up", "trait", fence))
        .then()
        .statusCode(200)
        .body(find + "used", equalTo(true));
    Api.post(RULINGS, Map.of("ruling", "start-afresh", "trait", fence, "changed", "scale"))
        .then()
        .statusCode(200)
        .body(find + "used", equalTo(false))
        .body(find + "since.because", equalTo("scale set anew"))
        .body(find + "observations", equalTo(List.of()));
  }

  @Test
  void ruling_thatCannotBeTaken_namesItsField() {
    taught.fenceOff("0.5 mm");
    refused("ruling", Map.of("ruling", "guess", "trait", fence));
    refused("trait", Map.of("ruling", "take-up", "trait", "scale~x~y~stop"));
    refused("proof", Map.of("ruling", "count", "trait", fence));
    refused("proof", Map.of("ruling", "leave-out", "trait", fence, "proof", "p"));
    refused("because", Map.of("ruling", "set-aside", "trait", fence));
    refused("because", Map.of("ruling", "start-afresh", "trait", fence, "changed", "other"));
    refused("changed", Map.of("ruling", "start-afresh", "trait", fence));
    refused("changed", Map.of("ruling", "start-afresh", "trait", fence, "changed", "weather"));
    refused("why", Map.of("ruling", "take-up", "trait", fence, "why", "x"));
  }

  private void refused(String where, Map<String, Object> body) {
    var before = logbook.rulings();
    Api.post(RULINGS, body)
        .then()
        .statusCode(422)
        .contentType("application/problem+json")
        .body("type", equalTo("/api/problems/fields"))
        .body("problems.where", contains(where));
    assertEquals(before, logbook.rulings());
  }

  @ParameterizedTest
  @ValueSource(strings = {"ruling", "trait", "proof", "changed", "because"})
  void ruling_rubbishInAField_isRefusedOrKeptWhole(String field) {
    var proof = taught.fenceOff("0.5 mm").get(0).proof();
    var ruling = field.equals("proof") ? "leave-out" : "start-afresh";
    var right =
        Map.of(
            "ruling", ruling, "trait", fence, "proof", proof, "changed", "other", "because", "x");
    for (var rubbish : Rubbish.ALL) {
      var before = logbook.rulings().size();
      var answer = Api.post(RULINGS, Rubbish.with(right, field, rubbish));
      var status = answer.statusCode();
      assertTrue(
          status == 422 || status == 200 && field.equals("because"), status + ": " + rubbish);
      assertEquals(before + (status == 200 ? 1 : 0), logbook.rulings().size());
    }
  }

  @Test
  void ruling_notAsJson_isRefused() {
    given().contentType("text/plain").body("count").post(RULINGS).then().statusCode(415);
    given().contentType("application/json").body("[]").post(RULINGS).then().statusCode(400);
  }
}
