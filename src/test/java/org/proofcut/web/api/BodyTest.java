package org.proofcut.web.api;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.contains;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.matchesPattern;
import static org.hamcrest.Matchers.startsWith;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.path.json.JsonPath;
import java.io.IOException;
import java.net.URI;
import java.net.URL;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.proofcut.core.intake.Field;
import org.proofcut.core.intake.JobForm;
import org.proofcut.core.measure.Length;

/** Whatever is sent, the answer is one that a program can act on. */
@QuarkusTest
class BodyTest {

  private static final ObjectMapper JSON = new ObjectMapper();
  private static final HttpClient CLIENT =
      HttpClient.newBuilder().version(HttpClient.Version.HTTP_1_1).build();
  private static final String TEN_KB = "9".repeat(10_000);

  private static final List<String> RUBBISH =
      List.of(
          "null",
          "true",
          "7",
          "-0",
          "1e9",
          "1e999999999",
          "9".repeat(39),
          TEN_KB,
          "\"\"",
          "\" \"",
          "\"abc\"",
          "\"<script>alert(1)</script>\"",
          "\"" + TEN_KB + "\"",
          "\"\\ud800\"",
          "\"\\udc00\\ud800\"",
          "\"\\u0000\"",
          "\"\\n\\r\\t\"",
          "\"\ud83e\udeb5\"",
          "\"-1\"",
          "\"0\"",
          "\"1e9\"",
          "\"1/0\"",
          "\"99999999999999999999/3 in\"",
          "\"0.00000000000000000001 mm\"",
          "[]",
          "{}",
          "[[[[[[[[[[[[1]]]]]]]]]]]]",
          "{\"a\":{\"a\":{\"a\":{\"a\":{}}}}}",
          "[".repeat(5_000),
          "{\"a\":".repeat(5_000));

  private static final List<String> ADDRESSES =
      List.of(
          "/api/answer",
          "/api/jobs",
          "/api/shop/items",
          "/api/jobs/demo/acts",
          "/api/jobs/demo/begin");

  @TestHTTPResource URL here;

  static List<String> bodies() {
    var bodies = new ArrayList<>(RUBBISH);
    bodies.add("");
    bodies.add("{");
    bodies.add("{}{}");
    bodies.add("{\"typed\":{},\"typed\":{}}");
    bodies.add("{'typed':{}}");
    bodies.add("{\"typed\":{\"width\":1,}}");
    for (var one : RUBBISH) {
      bodies.add("{\"typed\":" + one + "}");
      bodies.add("{\"typed\":{\"width\":" + one + "}}");
      bodies.add("{\"typed\":{\"unit\":" + one + ",\"name\":" + one + "}}");
      bodies.add("{\"shelf\":" + one + ",\"kind\":\"gloves\",\"typed\":{}}");
      bodies.add("{\"shelf\":\"cutter\",\"kind\":" + one + ",\"typed\":{}}");
      bodies.add(
          "{\"shelf\":\"machine\",\"kind\":\"table-saw\",\"typed\":{\"speeds\":" + one + "}}");
      bodies.add("{\"entryId\":" + one + ",\"act\":" + one + "}");
      if (one.startsWith("\"")) {
        bodies.add("{" + one + ":1}");
        bodies.add("{\"typed\":{" + one + ":\"1\"}}");
      }
    }
    return bodies;
  }

  @ParameterizedTest
  @MethodSource("bodies")
  void rubbish_anywhere_isAnswered(String body) {
    for (var address : ADDRESSES) {
      assertAnswered(send("POST", address, body), body);
    }
    assertAnswered(send("PUT", "/api/shop/items/demo-1", body), body);
  }

  static List<String> actsWithAHole() {
    return List.of(
        "'type':'confirmed','item':?,'answer':'yes'",
        "'type':'confirmed','item':'figure:fence','answer':?",
        "'type':'went-without','item':?,'reason':'none here'",
        "'type':'went-without','item':'figure:fence','reason':?",
        "'type':'reading-taken','attempt':?,'dimension':'width','found':'6'",
        "'type':'reading-taken','attempt':1,'dimension':?,'found':'6'",
        "'type':'reading-taken','attempt':1,'dimension':'width','found':?",
        "'type':'readings-dropped','attempt':1,'dimension':?",
        "'type':'corrected','corrections':?",
        "'type':'overridden','reason':?",
        "'type':'read-again','found':?",
        "'type':'part-cut','part':?",
        "'type':'part-not-cut','part':?",
        "'type':'signed-off','more':?",
        "'type':?");
  }

  @ParameterizedTest
  @MethodSource("actsWithAHole")
  void rubbish_inAnActOfAJobInWork_isRefusedAndNotRecorded(String act) {
    var job = Api.newJob(Api.demo());
    given().contentType("application/json").post(job + "/begin").then().statusCode(200);
    var sheet = Api.get(job + "/plan").getMap("sheets[0]");
    for (var one : RUBBISH) {
      var body =
          "{'entryId':'e','device':'d','operation':'%s','fingerprint':'%s','act':{%s}}"
              .formatted(sheet.get("id"), sheet.get("fingerprint"), act)
              .replace('\'', '"')
              .replace("?", one);
      var answer = send("POST", job + "/acts", body);
      assertTrue(answer.statusCode() >= 400, body + " was taken");
      assertAnswered(answer, body);
    }
    assertEquals(List.of(), Api.get(job + "/record").getList("id"));
    given().delete(job).then().statusCode(204);
  }

  /** Whole jobs with one to five fields typed wrongly or strangely: the engine is behind this. */
  @Test
  void draft_strangeFields_isAlwaysWorkedOutOrRefused() throws JsonProcessingException {
    var random = new Random(20_260_302);
    var fields = JobForm.fields();
    var strange =
        List.of(
            "",
            " ",
            "abc",
            "-1",
            "0",
            "0.1",
            "0.3",
            "1e9",
            "1",
            "5",
            "7",
            "8.9",
            "17.7",
            "25",
            "99",
            "100",
            "350",
            "2000",
            "5999.99",
            "6000",
            "1/3 in",
            "23/32 in",
            "1/128 in",
            "3' 6 1/2\"",
            "59cm",
            "1,234.5",
            TEN_KB,
            "<script>",
            "in",
            "mm",
            "plywood",
            "2",
            "6",
            "\ud800",
            "\u0000",
            "½",
            "NaN",
            "0x10",
            "١٢");
    for (int i = 0; i < 1_500; i++) {
      var typed = new LinkedHashMap<>(Api.demo());
      for (int j = random.nextInt(5); j >= 0; j--) {
        var field = fields.get(random.nextInt(fields.size()));
        typed.put(field.name(), strange.get(random.nextInt(strange.size())));
      }
      var body = JSON.writeValueAsString(Api.typed(typed));
      var answer = send("POST", "/api/answer", body);
      assertAnswered(answer, body);
    }
  }

  @Test
  void draft_lengthsOfEverySize_isAlwaysWorkedOut() throws JsonProcessingException {
    var random = new Random(20_260_303);
    var lengths =
        JobForm.fields().stream()
            .filter(field -> field.entry() == Field.Entry.LENGTH)
            .map(Field::name)
            .filter(Api.demo()::containsKey)
            .toList();
    for (int i = 0; i < 500; i++) {
      var typed = new LinkedHashMap<>(Api.demo());
      for (int j = random.nextInt(6); j >= 0; j--) {
        long mostMicrometres = List.of(10_000L, 100_000L, 1_000_000L, 6_000_000L).get(j % 4);
        var length = Length.ofMicrometres(random.nextLong(1, mostMicrometres));
        typed.put(lengths.get(random.nextInt(lengths.size())), length.toString());
      }
      var body = JSON.writeValueAsString(Api.typed(typed));
      assertEquals(200, send("POST", "/api/answer", body).statusCode(), body);
    }
  }

  @Test
  void notJson_saysWhere() {
    given()
        .contentType("application/json")
        .body("{\n  \"typed\": {\"width\": 6 20}}")
        .post("/api/answer")
        .then()
        .statusCode(400)
        .contentType("application/problem+json")
        .body("type", equalTo("/api/problems/not-json"))
        .body("problems[0].where", startsWith("line 2, column 2"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "text/plain",
        "application/x-www-form-urlencoded",
        "multipart/form-data",
        "application/xml"
      })
  void otherContent_isRefused(String type) {
    var answer = send("POST", "/api/answer", type, "{\"typed\":{}}");
    assertEquals(415, answer.statusCode());
    assertEquals("/api/problems/not-as-json", JsonPath.from(answer.body()).getString("type"));
  }

  @Test
  void largeBody_isRefused() {
    for (int bytes : List.of(Body.MOST_BYTES + 1, 9_000_000)) {
      var answer = send("POST", "/api/answer", " ".repeat(bytes - 2) + "{}");
      assertEquals(413, answer.statusCode());
      assertEquals("/api/problems/too-large", JsonPath.from(answer.body()).getString("type"));
    }
    var answer = send("POST", "/api/answer", " ".repeat(Body.MOST_BYTES - 2) + "{}");
    assertEquals(422, answer.statusCode(), "the largest that is read");
  }

  @Test
  void unknownAddress_andMethod_areProblemDetails() {
    for (var address :
        List.of(
            "/api",
            "/api/",
            "/api/nothing",
            "/api/jobs/nothing/here/at/all",
            "/api/jobs/%00",
            "/api/jobs/%ff",
            "/api/jobs/" + "x".repeat(3_000))) {
      given()
          .urlEncodingEnabled(false)
          .get(address)
          .then()
          .statusCode(404)
          .contentType("application/problem+json")
          .body("title", equalTo("Not there"))
          .body("instance", equalTo(address));
    }
    given()
        .delete("/api/rules")
        .then()
        .statusCode(405)
        .contentType("application/problem+json")
        .body("type", equalTo("/api/problems/no-such-method"));
    given()
        .accept("text/html")
        .get("/api/rules")
        .then()
        .statusCode(406)
        .contentType("application/problem+json");
  }

  @Test
  void everyWrongField_isToldAtOnce() {
    Api.post("/api/shop/items", Map.of("shelf", "x", "kind", 3, "more", true))
        .then()
        .statusCode(422)
        .body("problems.where", contains("more", "shelf", "kind"))
        .body("problems[0].allowed", matchesPattern("shelf, kind, typed"));
  }

  /** By a plain client: there are thousands of these. */
  private HttpResponse<String> send(String method, String address, String body) {
    return send(method, address, "application/json", body);
  }

  private HttpResponse<String> send(String method, String address, String type, String body) {
    try {
      return CLIENT.send(
          HttpRequest.newBuilder(URI.create(here + address.substring(1)))
              .header("Content-Type", type)
              .method(method, HttpRequest.BodyPublishers.ofString(body))
              .build(),
          HttpResponse.BodyHandlers.ofString());
    } catch (IOException | InterruptedException e) {
      throw new AssertionError("no answer to " + shown(body), e);
    }
  }

  private static void assertAnswered(HttpResponse<String> answer, String body) {
    var text = answer.body();
    var shown = shown(body) + " → " + answer.statusCode() + " " + text;
    assertTrue(answer.statusCode() < 500, shown);
    if (answer.statusCode() >= 400) {
      var type = answer.headers().firstValue("Content-Type").orElse("");
      assertTrue(type.startsWith("application/problem+json"), shown);
      assertEquals(answer.statusCode(), JsonPath.from(text).getInt("status"), shown);
      assertFalse(
          text.contains("xception") || text.contains("java") || text.contains("org."), shown);
    }
  }

  private static String shown(String body) {
    return body.substring(0, Math.min(300, body.length()));
  }
}
