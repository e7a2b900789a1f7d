package org.proofcut.web.api;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.empty;
import static org.hamcrest.Matchers.emptyOrNullString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.everyItem;
import static org.hamcrest.Matchers.is;
import static org.hamcrest.Matchers.not;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.proofcut.content.Content;
import org.proofcut.core.safety.Harm;

@QuarkusTest
class ContentResourceTest {

  @Test
  void rules_all_haveHazardControlsAndSource() {
    var ids = Content.bundled().rulebook().rules().stream().map(rule -> rule.id()).toList();
    var answer = given().get("/api/rules").then().statusCode(200);
    assertEquals(ids, answer.extract().jsonPath().getList("id"));
    answer
        .body("hazard", everyItem(not(emptyOrNullString())))
        .body("controls", everyItem(not(empty())))
        .body("because.source", everyItem(not(emptyOrNullString())))
        .body("findAll { it.when }.when.source", everyItem(containsString("fact.")))
        .body("findAll { it.when }.when.facts.flatten().says", everyItem(not(emptyOrNullString())))
        .body(
            "findAll { it.when }.when.limits.flatten().value.text",
            everyItem(is(not(emptyOrNullString()))));
  }

  @Test
  void rules_all_haveTheirHarm_andEveryGround() {
    var rules = Content.bundled().rulebook().rules();
    var json = given().get("/api/rules").then().statusCode(200).extract().jsonPath();
    assertEquals(
        rules.stream().map(rule -> ShopJson.word(rule.harm())).toList(), json.getList("harm"));
    assertEquals(
        rules.stream().map(rule -> rule.grounds().size()).toList(),
        json.getList("grounds.collect { it.size() }"));
    var guard = "find { it.id == 'saw-without-guard' }.grounds";
    assertEquals(List.of("us", "us-washington"), json.getList(guard + "[0].lawIn"));
    assertEquals(List.of("gb"), json.getList(guard + "[1].lawIn"));
    assertTrue(json.getString(guard + "[1].known").startsWith("From memory"));
  }

  @Test
  void rulesByHarm_areThoseOfTheMatrix() {
    var matrix = Content.bundled().matrix();
    var json = given().get("/api/rules/by-harm").then().statusCode(200).extract().jsonPath();
    assertEquals(Harm.values().length, json.getList("harms").size());
    assertEquals(matrix.rows().size(), json.getList("cuts").size());
    var dado = "cuts.find { it.machine == 'router-table' && it.operation == 'dado' }.cells";
    for (var harm : Harm.values()) {
      assertEquals(
          matrix.row("dado", "router-table").orElseThrow().cell(harm).rules(),
          json.getList(dado + ".find { it.harm == '" + ShopJson.word(harm) + "' }.rules"));
    }
    var mitre = "cuts.find { it.machine == 'mitre-saw' && it.operation == 'mitre' }.cells";
    assertEquals(
        matrix.row("mitre", "mitre-saw").orElseThrow().cell(Harm.STRAIN).why().orElseThrow(),
        json.getString(mitre + ".find { it.harm == 'strain' }.why"));
  }

  @Test
  void trouble_all_hasSteps() {
    given()
        .get("/api/content/trouble")
        .then()
        .statusCode(200)
        .body("size()", equalTo(Content.bundled().trouble().size()))
        .body("steps", everyItem(not(empty())));
  }

  @ParameterizedTest
  @EnumSource
  void problem_everyKind_isExplainedAtItsAddress(ProblemKind kind) {
    given()
        .get(kind.type())
        .then()
        .statusCode(200)
        .body("type", equalTo(kind.type()))
        .body("meaning", equalTo(kind.meaning()));
  }
}
