package org.proofcut.web.part;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.allOf;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.endsWith;
import static org.hamcrest.Matchers.not;
import static org.hamcrest.Matchers.nullValue;
import static org.hamcrest.Matchers.startsWith;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.specification.RequestSpecification;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@QuarkusTest
class BenchPagesTest {

  private static RequestSpecification form() {
    return given().redirects().follow(false);
  }

  @Test
  void choose_darkGround_keepsItAndComesBack() {
    form()
        .formParam("ground", "dark")
        .formParam("back", "/gallery/sheet?part=2")
        .post("/bench")
        .then()
        .statusCode(303)
        .header("Location", endsWith("/gallery/sheet?part=2"))
        .header("Set-Cookie", allOf(startsWith("ground=dark;"), not(containsString("hand"))));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "https://elsewhere.example/",
        "//elsewhere.example",
        "/\\elsewhere.example",
        "",
        "/ x",
        "/%zz",
        "javascript:alert(1)"
      })
  void choose_addressElsewhere_goesToTheFirstPage(String back) {
    form()
        .formParam("hand", "left")
        .formParam("back", back)
        .post("/bench")
        .then()
        .statusCode(303)
        .header("Location", not(containsString("elsewhere")))
        .header("Location", endsWith("/"));
  }

  @Test
  void choose_unknownGround_keepsNothing() {
    form()
        .formParam("ground", "\"><script>")
        .formParam("back", "/")
        .post("/bench")
        .then()
        .statusCode(303)
        .header("Set-Cookie", nullValue());
  }

  @Test
  void shell_forgedCookie_showsTheLightGround() {
    given()
        .cookie("ground", "x\"onload=alert(1)")
        .get("/gallery/proof")
        .then()
        .statusCode(200)
        .body(containsString("data-ground=\"light\""), not(containsString("onload")));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "/proofcut.css",
        "/proofcut.js",
        "/proofcut.svg",
        "/webjars/htmx.org/dist/htmx.min.js",
        "/fonts/atkinson-hyperlegible-next-latin-400-normal.woff2",
        "/fonts/atkinson-hyperlegible-next-latin-700-normal.woff2",
        "/fonts/atkinson-hyperlegible-next-latin-ext-400-normal.woff2",
        "/fonts/atkinson-hyperlegible-next-latin-ext-700-normal.woff2"
      })
  void get_whatEveryPageNeeds_isServedByUs(String address) {
    given().get(address).then().statusCode(200).header("X-Content-Type-Options", "nosniff");
  }

  @Test
  void get_page_mayLoadNothingFromElsewhere() {
    given()
        .get("/gallery/proof")
        .then()
        .header("Content-Security-Policy", containsString("default-src 'self'"));
  }
}
