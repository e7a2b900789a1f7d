package org.proofcut.web.api;

import static io.restassured.RestAssured.given;

import io.restassured.path.json.JsonPath;
import io.restassured.response.Response;
import java.util.LinkedHashMap;
import java.util.Map;
import org.proofcut.core.intake.Demo;

/** Calls that several tests of the API make. */
final class Api {

  private Api() {}

  static Response post(String address, Object body) {
    return given().contentType("application/json").body(body).post(address);
  }

  static Response put(String address, Object body) {
    return given().contentType("application/json").body(body).put(address);
  }

  static JsonPath get(String address) {
    return given().get(address).then().statusCode(200).extract().jsonPath();
  }

  /** The demo job as typed, with some fields typed otherwise. */
  static Map<String, String> demo(String... fieldsAndTexts) {
    var typed = new LinkedHashMap<>(Demo.job());
    for (int i = 0; i < fieldsAndTexts.length; i += 2) {
      typed.put(fieldsAndTexts[i], fieldsAndTexts[i + 1]);
    }
    return typed;
  }

  static Map<String, Object> typed(Map<String, String> fields) {
    return Map.of("typed", fields);
  }

  /** Keeps a job; gives its address. */
  static String newJob(Map<String, String> fields) {
    var answer = post("/api/jobs", typed(fields)).then().statusCode(201).extract();
    return "/api/jobs/" + answer.jsonPath().getString("id");
  }
}
