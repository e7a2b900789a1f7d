package org.proofcut.web.api;

import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.nullValue;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.proofcut.core.intake.CutsTyped;

@QuarkusTest
class SetUpResourceTest {

  static List<String> kinds() {
    return List.copyOf(CutsTyped.byKind().keySet());
  }

  private static io.restassured.response.Response answer(String kind, Map<String, String> typed) {
    return Api.post("/api/setups/" + kind, Api.typed(typed));
  }

  @Test
  void kinds_everyOne_listsItsFields() {
    var listed = Api.get("/api/setups");
    var all = listed.getList("kind", String.class);
    assertEquals(kinds().stream().sorted().toList(), all.stream().sorted().toList());
    for (var kind : kinds()) {
      var names = listed.getList("find { it.kind == '" + kind + "' }.fields.name", String.class);
      assertTrue(names.containsAll(CutsTyped.with(kind).keySet()), kind + ": " + names);
      assertTrue(names.containsAll(List.of("machine", "unit")), kind + ": " + names);
    }
  }

  @ParameterizedTest
  @MethodSource("kinds")
  void answer_example_isSoundWithFiguresAndCautions(String kind) {
    answer(kind, CutsTyped.with(kind))
        .then()
        .statusCode(200)
        .body("sound", equalTo(true))
        .body("sheet.setup.figures.role.size() > 0", equalTo(true))
        .body("sheet.setup.figures[0].set.working.size() > 0", equalTo(true))
        .body("sheet.findings.size() > 0", equalTo(true))
        .body("problems.size()", equalTo(0));
  }

  @Test
  void answer_somethingUnreadable_saysWhereAndHasNoSheet() {
    answer("rip", CutsTyped.with("rip", "size", "wide"))
        .then()
        .statusCode(200)
        .body("sound", equalTo(false))
        .body("sheet", nullValue())
        .body("problems[0].where", equalTo("size"))
        .body("problems[0].what", containsString("wide"));
  }

  @Test
  void answer_stoppedByARule_isNotSound() {
    answer("dado", CutsTyped.with("dado", "depth", "13 mm"))
        .then()
        .statusCode(200)
        .body("sound", equalTo(false))
        .body("sheet.findings.effect", hasItem("stop"));
  }

  @Test
  void answer_inchesAndMillimetres_setTheSame() {
    var inMillimetres =
        answer("dado", CutsTyped.with("dado", "depth", "6.35 mm")).jsonPath().getList(EXACT);
    var inInches =
        answer("dado", CutsTyped.with("dado", "depth", "1/4 in")).jsonPath().getList(EXACT);
    assertEquals(inMillimetres, inInches);
    assertEquals(3, inInches.size());
  }

  private static final String EXACT = "sheet.setup.figures.set.mm";

  @Test
  void answer_proofMeasured_isJudged() {
    answer("rip", CutsTyped.with("rip", "found-size-1", "300.4", "found-size-2", "300.4"))
        .then()
        .body("verdicts[0].outcome", equalTo("change"))
        .body("verdicts[0].correction.by.mm", equalTo("-0.4"));
  }

  @Test
  void learn_notMeasured_isRefused() {
    Api.post(
            "/api/setups/rip/proofs",
            Map.of("typed", CutsTyped.with("rip"), "proof", "p", "fingerprint", "f"))
        .then()
        .statusCode(422)
        .body("problems[0].what", containsString("not wholly measured"));
    Api.post("/api/setups/rip/proofs", Api.typed(CutsTyped.with("rip")))
        .then()
        .statusCode(422)
        .body("problems.where", hasItem("proof"));
  }

  @Test
  void answer_fieldOfAnotherCut_isRefused() {
    answer("rip", CutsTyped.with("rip", "depth", "6"))
        .then()
        .statusCode(422)
        .body("problems[0].where", equalTo("typed.depth"));
  }

  @Test
  void answer_unknownCut_isNotThere() {
    answer("no-such-cut", Map.of())
        .then()
        .statusCode(404)
        .body("type", containsString("not-there"));
  }
}
