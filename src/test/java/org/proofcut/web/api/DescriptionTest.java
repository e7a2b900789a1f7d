package org.proofcut.web.api;

import static io.restassured.RestAssured.given;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.ws.rs.HttpMethod;
import jakarta.ws.rs.Path;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The description of the API, held against the resources. */
@QuarkusTest
class DescriptionTest {

  private static final List<Class<?>> RESOURCES =
      List.of(
          ShopResource.class,
          JobsResource.class,
          WorkResource.class,
          SetUpResource.class,
          HandWorkResource.class,
          LoadResource.class,
          StorageResource.class,
          ThingsResource.class,
          HabitResource.class,
          NoiseResource.class,
          DustResource.class,
          ContentResource.class);

  private JsonNode description;

  @BeforeEach
  void read() throws IOException {
    var text =
        given()
            .queryParam("format", "json")
            .get("/q/openapi")
            .then()
            .statusCode(200)
            .extract()
            .asString();
    description = new ObjectMapper().readTree(text);
  }

  @Test
  void description_isOpenApiThree() {
    assertTrue(description.path("openapi").asText().startsWith("3."));
    assertEquals("Proofcut", description.path("info").path("title").asText());
  }

  @Test
  void paths_areExactlyThoseOfTheResources() {
    var described = new TreeSet<String>();
    description
        .path("paths")
        .properties()
        .forEach(
            path ->
                path.getValue()
                    .fieldNames()
                    .forEachRemaining(method -> described.add(method + " " + path.getKey())));
    var there = new TreeSet<String>();
    for (var resource : RESOURCES) {
      for (var method : resource.getDeclaredMethods()) {
        Stream.of(method.getAnnotations())
            .map(annotation -> annotation.annotationType().getAnnotation(HttpMethod.class))
            .filter(java.util.Objects::nonNull)
            .forEach(
                verb ->
                    there.add(
                        verb.value().toLowerCase(java.util.Locale.ROOT)
                            + " "
                            + resource.getAnnotation(Path.class).value()
                            + (method.isAnnotationPresent(Path.class)
                                ? method.getAnnotation(Path.class).value()
                                : "")));
      }
    }
    assertEquals(there, described);
  }

  @Test
  void answers_haveSchemasAndRefusals() {
    for (var path : description.path("paths").properties()) {
      for (var operation : path.getValue().properties()) {
        var name = operation.getKey() + " " + path.getKey();
        var answers = operation.getValue().path("responses");
        assertFalse(operation.getValue().path("summary").asText().isEmpty(), name);
        for (var answer : answers.properties()) {
          var content = answer.getValue().path("content");
          if (answer.getKey().startsWith("2") && !answer.getKey().equals("204")) {
            assertTrue(content.path("application/json").has("schema"), name + " " + answer);
          } else if (!answer.getKey().startsWith("2")) {
            assertTrue(content.path("application/problem+json").has("schema"), name + " " + answer);
          }
        }
        assertTrue(answers.has("403"), name);
        assertEquals(path.getKey().contains("{"), answers.has("404"), name);
        if (operation.getValue().has("requestBody")) {
          assertTrue(
              operation
                  .getValue()
                  .path("requestBody")
                  .path("content")
                  .path("application/json")
                  .path("schema")
                  .has("$ref"),
              name);
          for (var status : Set.of("400", "413", "415", "422")) {
            assertTrue(answers.has(status), name + " " + status);
          }
        }
      }
    }
  }

  @Test
  void references_allPointSomewhere() {
    var references = new ArrayList<String>();
    description.findValues("$ref").forEach(reference -> references.add(reference.asText()));
    assertFalse(references.isEmpty());
    for (var reference : references) {
      var at = description.at(reference.substring(1));
      assertFalse(at.isMissingNode(), reference);
    }
  }

  @Test
  void schemas_holdNoFloatingNumberForALength() {
    var length = description.at("/components/schemas/Length/properties");
    assertNotNull(length.get("mm"));
    for (var field : List.of("mm", "in", "shown", "leftover")) {
      assertEquals("string", length.path(field).path("type").asText(), field);
    }
    assertEquals(
        List.of(),
        description.findValuesAsText("format").stream()
            .filter(format -> format.equals("double") || format.equals("float"))
            .toList());
  }
}
