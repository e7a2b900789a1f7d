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

import io.quarkus.test.junit.QuarkusTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.proofcut.content.Content;

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
