package org.proofcut.web.api;

import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.nullValue;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.RestAssured;
import java.util.Map;
import org.junit.jupiter.api.Test;

@QuarkusTest
class NoiseResourceTest {

  @Test
  void day_typed_isAsOnThePage() {
    Api.post(
            "/api/noise",
            Api.typed(
                Map.of("other-1-level", "90", "other-1-minutes", "480", "protector", "NRR 25")))
        .then()
        .statusCode(200)
        .body("problems.size()", equalTo(0))
        .body("answer.doses[0].rule", equalTo("permitted-us"))
        .body("answer.doses[0].dose.value", equalTo("100.00"))
        .body("answer.doses[0].steadyLevel.value", equalTo("90.00"))
        .body("answer.dailyLevel.value", equalTo("90.00"))
        .body("answer.dailyLevel.working.size() > 1", equalTo(true))
        .body("answer.parts[0].seconds", equalTo(28_800))
        .body("answer.protectors.find { it.marked == 'NRR 25' }.asWorn.value", equalTo("81.00"))
        .body("answer.law", containsString("2005"));
  }

  @Test
  void day_unreadable_saysWhere_andHasNoAnswer() {
    Api.post("/api/noise", Api.typed(Map.of("other-1-level", "loud", "other-1-minutes", "5")))
        .then()
        .statusCode(200)
        .body("answer", nullValue())
        .body("problems[0].where", equalTo("other-1-level"));
  }

  @Test
  void day_onAJob_hasAllItsSheets() {
    var job = Api.newJob(Api.demo());
    try {
      var parts =
          Api.post(job + "/noise", Api.typed(Map.of("done-1", "no")))
              .then()
              .statusCode(200)
              .body("answer.parts[0].done", equalTo(false))
              .body("answer.parts[1].done", equalTo(true))
              .extract()
              .jsonPath();
      assertEquals(1, parts.getInt("answer.parts[0].sheet"));
      assertTrue(parts.getList("answer.parts").size() > 10);
      assertEquals(parts.getList("answer.parts").size() * 2 + 12, parts.getList("fields").size());
    } finally {
      RestAssured.delete(job);
    }
  }

  @Test
  void fieldThatIsNotThere_isRefused() {
    Api.post("/api/noise", Api.typed(Map.of("done-1", "no"))).then().statusCode(422);
    Api.post("/api/jobs/nowhere/noise", Api.typed(Map.of())).then().statusCode(404);
    Api.post("/api/noise", "{}").then().statusCode(422);
  }
}
