package org.proofcut.web.api;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.junit.jupiter.api.Assertions.assertEquals;

import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import java.io.IOException;
import java.net.Socket;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@QuarkusTest
class OwnPagesOnlyTest {

  @TestHTTPResource URL here;

  @ParameterizedTest
  @ValueSource(
      strings = {"http://elsewhere.example", "http://localhost:1", "null", "https://localhost"})
  void origin_ofAnotherPage_changesNothing(String origin) {
    given()
        .header("Origin", origin)
        .contentType("application/json")
        .body(Api.typed(Api.demo()))
        .post("/api/jobs")
        .then()
        .statusCode(403)
        .contentType("application/problem+json")
        .body("type", equalTo("/api/problems/elsewhere"));
    given()
        .header("Origin", origin)
        .formParam("ground", "dark")
        .post("/bench")
        .then()
        .statusCode(403)
        .contentType("text/plain")
        .body(containsString("Another page sent this"));
  }

  @Test
  void origin_ofOurOwnPage_isLetThrough() {
    given()
        .header("Origin", "http://" + here.getAuthority())
        .redirects()
        .follow(false)
        .formParam("ground", "dark")
        .post("/bench")
        .then()
        .statusCode(303);
  }

  @Test
  void origin_ofAnotherPage_mayStillRead() {
    given().header("Origin", "http://elsewhere.example").get("/api/jobs").then().statusCode(200);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "elsewhere.example",
        "elsewhere.example:8080",
        "127.0.0.1.elsewhere.example",
        "",
        "x.local.example"
      })
  void host_thatAnybodyCanOwn_mayNotEvenRead(String host) throws IOException {
    assertEquals(403, statusFor(host));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "localhost:8080",
        "127.0.0.1",
        "192.168.1.20:8080",
        "[::1]:8080",
        "shop.local",
        "BENCH:80"
      })
  void host_thatIsOurs_isLetThrough(String host) throws IOException {
    assertEquals(200, statusFor(host));
  }

  /** By hand: a client would put the name it connects to. */
  private int statusFor(String host) throws IOException {
    try (var socket = new Socket(here.getHost(), here.getPort())) {
      var request = "GET /api/jobs HTTP/1.1\r\nHost: " + host + "\r\nConnection: close\r\n\r\n";
      socket.getOutputStream().write(request.getBytes(StandardCharsets.US_ASCII));
      var answer = new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
      return Integer.parseInt(answer.split(" ")[1]);
    }
  }
}
