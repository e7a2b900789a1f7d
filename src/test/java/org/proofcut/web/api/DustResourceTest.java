package org.proofcut.web.api;

import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.hasItems;
import static org.hamcrest.Matchers.nullValue;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.proofcut.content.Content;

@QuarkusTest
class DustResourceTest {

  private static io.restassured.response.ValidatableResponse answer(String... fieldsAndTexts) {
    var typed =
        new java.util.LinkedHashMap<>(
            Map.of("wood-1", "pine", "machine", "table-saw", "extraction", "extractor"));
    for (int i = 0; i < fieldsAndTexts.length; i += 2) {
      typed.put(fieldsAndTexts[i], fieldsAndTexts[i + 1]);
    }
    return Api.post("/api/dust", Api.typed(typed)).then();
  }

  @Test
  void form_listsItsFields() {
    var names = Api.get("/api/dust").getList("name", String.class);
    assertTrue(names.contains("wood-1") && names.contains("airflow"), names::toString);
  }

  @Test
  void woods_areAllThere() {
    var woods = Api.get("/api/dust/woods");
    assertEquals(
        java.util.List.copyOf(Content.bundled().dust().woods().keySet()), woods.getList("id"));
    assertEquals("softwood", woods.getString("find { it.id == 'pine' }.countsAs"));
    assertEquals("hardwood", woods.getString("find { it.id == 'mdf' }.countsAs"));
  }

  @Test
  void answer_isThatOfThePage() {
    answer("wood-2", "oak", "diameter", "100", "airflow", "566", "level", "30.01")
        .statusCode(200)
        .body("problems.size()", equalTo(0))
        .body("found.countsAs", equalTo("hardwood dust"))
        .body("found.effects", hasItems("sensitiser", "carcinogen"))
        .body("found.here.most", hasItem("3 mg/m³"))
        .body("found.heldTo", equalTo("gb-hardwood"))
        .body("found.air.needed.value", equalTo("566 m³/h"))
        .body("found.air.enough", equalTo(true))
        .body("found.mask.need", equalTo("least"))
        .body("found.mask.mask", containsString("FFP3"))
        .body("found.formaldehyde.size()", equalTo(0));
  }

  @Test
  void answer_somethingUnreadable_saysWhere() {
    answer("level", "much")
        .statusCode(200)
        .body("found", nullValue())
        .body("problems[0].where", equalTo("level"));
  }

  @Test
  void answer_jobThatOnlyLooksLikeNone_isToldAsUnknown() {
    answer("job", "none").statusCode(200).body("problems.size()", equalTo(0));
    answer("job", "nonenone").statusCode(200).body("problems[0].where", equalTo("job"));
  }

  @Test
  void answer_unknownField_isRefused() {
    answer("wood-9", "oak").statusCode(422);
  }
}
