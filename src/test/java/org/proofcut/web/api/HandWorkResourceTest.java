package org.proofcut.web.api;

import static org.hamcrest.Matchers.contains;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.nullValue;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.proofcut.core.intake.HandTyped;

@QuarkusTest
class HandWorkResourceTest {

  static List<String> kinds() {
    return List.copyOf(HandTyped.byKind().keySet());
  }

  private static Response answer(String kind, Map<String, String> typed) {
    return Api.post("/api/hand-work/" + kind, Api.typed(typed));
  }

  @Test
  void kinds_everyOne_listsItsFields() {
    var listed = Api.get("/api/hand-work");
    assertEquals(kinds(), listed.getList("kind", String.class));
    for (var kind : kinds()) {
      var names = listed.getList("find { it.kind == '" + kind + "' }.fields.name", String.class);
      assertTrue(names.containsAll(HandTyped.with(kind).keySet()), kind + ": " + names);
    }
  }

  @ParameterizedTest
  @MethodSource("kinds")
  void answer_example_isSoundWithCautionsAndSteps(String kind) {
    answer(kind, HandTyped.with(kind))
        .then()
        .statusCode(200)
        .body("sound", equalTo(true))
        .body("sheet.kind", equalTo(kind))
        .body("sheet.findings.size() > 0", equalTo(true))
        .body("sheet.steps.size() > 0", equalTo(true))
        .body("problems.size()", equalTo(0));
  }

  @Test
  void answer_carry_hasTheWeightWithItsWorking() {
    answer("carry", HandTyped.with("carry"))
        .then()
        .body("figures[0].value", equalTo("40.2 kg"))
        .body("figures[0].working.name", hasItem("density of plywood"));
  }

  @Test
  void answer_stopped_isNotSound() {
    answer("carry", HandTyped.with("carry", "stairs", "yes"))
        .then()
        .statusCode(200)
        .body("sound", equalTo(false))
        .body("sheet.findings[0].effect", equalTo("stop"));
  }

  @Test
  void answer_somethingUnreadable_saysWhereAndHasNoSheet() {
    answer("carry", HandTyped.with("carry", "length", "long"))
        .then()
        .statusCode(200)
        .body("sound", equalTo(false))
        .body("sheet", nullValue())
        .body("problems.where", contains("length"));
  }

  @Test
  void answer_unknownTaskOrField_isRefused() {
    answer("juggle", Map.of()).then().statusCode(404);
    answer("sand", HandTyped.with("sand", "grit", "80"))
        .then()
        .statusCode(422)
        .body("problems.where", contains("typed.grit"));
  }
}
