package org.proofcut.web.api;

import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.nullValue;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.RestAssured;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.proofcut.core.intake.LoadsTyped;
import org.proofcut.web.Rubbish;

@QuarkusTest
class LoadResourceTest {

  @Test
  void liftForm_listsWhatIsAsked() {
    var names = Api.get("/api/lifting").getList("name", String.class);
    assertTrue(names.containsAll(LoadsTyped.lift().keySet()), names::toString);
  }

  @Test
  void lift_example_isJudgedAtBothEnds() {
    Api.post("/api/lifting", Api.typed(LoadsTyped.lift()))
        .then()
        .statusCode(200)
        .body("ends.end", equalTo(List.of("start", "finish")))
        .body("ends[0].multipliers.size()", equalTo(6))
        .body("ends[0].index.working.size() > 6", equalTo(true))
        .body("ends[0].strain", equalTo("raised"))
        .body("better.size() > 0", equalTo(true))
        .body("problems.size()", equalTo(0));
  }

  @Test
  void lift_carried_hasNoFigureAndARule() {
    Api.post("/api/lifting", Api.typed(Rubbish.with(LoadsTyped.lift(), "carried", "yes")))
        .then()
        .body("ends.size()", equalTo(0))
        .body("decides", nullValue())
        .body("notCovered", hasItem("carried, pushed or pulled"))
        .body("instead.size() > 1", equalTo(true));
  }

  @Test
  void lift_unreadable_saysWhere() {
    Api.post("/api/lifting", Api.typed(Rubbish.with(LoadsTyped.lift(), "weight", "heavy")))
        .then()
        .body("problems[0].where", equalTo("weight"))
        .body("ends.size()", equalTo(0));
    Api.post("/api/lifting", Api.typed(Map.of("colour", "red"))).then().statusCode(422);
  }

  @Test
  void weights_areHeaviestFirst() {
    var job = Api.newJob(Api.demo());
    var weights = Api.get(job + "/weights");
    assertEquals("left-side", weights.getString("parts[0].part"));
    assertEquals("4.500 kg", weights.getString("parts[0].weight.most.value"));
    assertEquals(2, weights.getList("sheets").size());
    assertTrue(weights.getString("body.behind.mm").startsWith("1"), "behind the front edges");
    RestAssured.delete(job);
  }

  @Test
  void standing_asksAndAnswers() {
    var job = Api.newJob(Api.demo());
    var names = Api.get(job + "/standing").getList("name", String.class);
    assertTrue(names.containsAll(LoadsTyped.stand().keySet()), names::toString);
    Api.post(job + "/standing", Api.typed(LoadsTyped.stand()))
        .then()
        .statusCode(200)
        .body("states.size()", equalTo(8))
        .body("worst.tips", equalTo(true))
        .body("worst.margin.value", containsString("kg mm"))
        .body("compared.standard", containsString("F2057-23"))
        .body("always", containsString("Fasten"));
    RestAssured.delete(job);
  }

  @Test
  void designThatCannotBeBuilt_isRefused() {
    var job = Api.newJob(Api.demo("bottom-dado", "17 mm"));
    RestAssured.get(job + "/weights").then().statusCode(409);
    RestAssured.get(job + "/standing").then().statusCode(409);
    RestAssured.delete(job);
    RestAssured.get("/api/jobs/none/weights").then().statusCode(404);
  }
}
