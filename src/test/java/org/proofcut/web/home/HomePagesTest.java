package org.proofcut.web.home;

import static io.restassured.RestAssured.get;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.RestAssured;
import jakarta.inject.Inject;
import java.util.LinkedHashMap;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.proofcut.bench.JobDesk;
import org.proofcut.bench.WorkBench;
import org.proofcut.core.intake.Demo;
import org.proofcut.web.Rubbish;

@QuarkusTest
class HomePagesTest {

  @Inject JobDesk desk;
  @Inject WorkBench bench;

  @Test
  void home_job_hasSizeStateAndTheNextThingToDo() {
    var job = new LinkedHashMap<>(Demo.job());
    job.put("name", "Tea chest");
    var id = desk.keep(Optional.empty(), job).value().orElseThrow().id();
    try {
      var html = card("Tea chest");
      assertTrue(html.contains("620 wide × 940 high × 360 deep, mm"), html);
      assertTrue(html.contains("Not begun: 17 sheets ahead"), html);
      assertTrue(html.contains("action=\"/jobs/" + id + "/begin\""), html);

      bench.begin(id);
      html = card("Tea chest");
      assertTrue(html.contains("In work: sheet 1 of 17"), html);
      assertTrue(html.contains("href=\"/jobs/" + id + "/sheets/1\""), html);

      job.put("bottom-dado", "15");
      desk.keep(Optional.of(id), job);
      html = card("Tea chest");
      assertTrue(html.contains("Stopped: "), html);
      assertTrue(html.contains("Mend it"), html);
    } finally {
      bench.discard(id);
    }
    assertFalse(get("/").asString().contains("Tea chest"));
  }

  private static String card(String name) {
    var html = get("/").asString();
    int at = html.indexOf(name);
    assertTrue(at > 0, html);
    return html.substring(at, html.indexOf("</li>", at));
  }

  @Test
  void home_saysWhatItIsNot() {
    var html = get("/").asString();
    assertTrue(html.contains("Local codes"), html);
    assertTrue(html.contains("licensed practice"), html);
  }

  @Test
  void open_unknownAddress_isAPlainPageThatLeadsBack() {
    var answer = get("/no/such/place");
    assertEquals(404, answer.statusCode());
    assertTrue(answer.asString().contains("There is no such page"), answer.asString());
    assertTrue(answer.asString().contains("href=\"/\""), answer.asString());
  }

  @Test
  void post_whereNothingIsPosted_isRefusedPlainly() {
    var answer = RestAssured.given().contentType("text/plain").body("x").post("/jobs/new");
    assertTrue(answer.statusCode() >= 400 && answer.statusCode() < 500, answer.statusLine());
    assertTrue(answer.asString().contains("<h1>"), answer.asString());
  }

  @ParameterizedTest
  @ValueSource(strings = {"%", "ground=%zz", "=", "&"})
  void post_formThatNoBrowserSends_isNoFaultOfTheProgram(String body) {
    int status = Rubbish.postRaw("/bench", body).statusCode();
    assertTrue(status < 500, body + " answers " + status);
  }

  @Test
  void open_faultOfTheProgram_showsANumberAndNothingFromInside() {
    var answer = get("/fault-for-tests");
    assertEquals(500, answer.statusCode());
    var html = answer.asString();
    assertTrue(html.matches("(?s).*<b>[0-9a-f]{8}</b>.*"), html);
    assertFalse(html.contains("Exception"), html);
    assertFalse(html.contains(FaultyPage.SECRET), html);
  }
}
