package org.proofcut.web.noise;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.proofcut.web.Rubbish.escaped;
import static org.proofcut.web.Rubbish.fetch;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.proofcut.bench.JobDesk;
import org.proofcut.bench.ShopFloor;
import org.proofcut.bench.WorkBench;
import org.proofcut.core.evidence.Problem;
import org.proofcut.core.intake.Field;
import org.proofcut.core.intake.NoiseForm;
import org.proofcut.core.intake.ShopForms;
import org.proofcut.core.measure.LengthUnit;
import org.proofcut.logbook.ShopItem.Shelf;
import org.proofcut.web.Rubbish;

@QuarkusTest
class NoisePagesTest {

  private static final Map<String, String> HOUR =
      Map.of("other-1-what", "sanding", "other-1-level", "95", "other-1-minutes", "60");

  @Inject JobDesk desk;
  @Inject ShopFloor floor;
  @Inject WorkBench bench;

  private String job;

  @BeforeEach
  void begin() {
    job = desk.keepDemo().id();
    assertEquals(List.of(), bench.begin(job));
  }

  @AfterEach
  void discard() {
    bench.discard(job);
    inRegion("gb");
  }

  static List<String> fields() {
    return NoiseForm.fields(2).stream().map(Field::name).toList();
  }

  @ParameterizedTest
  @MethodSource("fields")
  void rubbish_inAnyField_isShownAgain_withWhatIsWrong(String field) {
    for (var rubbish : Rubbish.ALL) {
      var typed = Rubbish.with(HOUR, field, rubbish);
      var received = Rubbish.with(HOUR, field, Rubbish.asReceived(rubbish));
      var answer = fetch("/jobs/" + job + "/noise?" + Rubbish.query(shortened(typed)));
      assertEquals(200, answer.statusCode(), field + " " + rubbish);
      var page = answer.asString();
      var problems = NoiseForm.read(shortened(received), sheets()).problems();
      for (var problem : problems) {
        assertTrue(page.contains(escaped(problem.what())), problem.what());
      }
      assertEquals(problems.isEmpty(), page.contains("What it comes to, without"), field);
      assertFalse(page.contains("<script>alert"), field);
      assertFalse(page.contains("onerror=alert(1)>"), field);
    }
  }

  /** An address can't be as long as a form. */
  private static Map<String, String> shortened(Map<String, String> typed) {
    var shorter = new HashMap<String, String>();
    typed.forEach(
        (name, text) -> shorter.put(name, text.length() > 500 ? text.substring(0, 500) : text));
    return shorter;
  }

  private int sheets() {
    return bench.work(job).orElseThrow().plan().sheets().size();
  }

  @Test
  void demo_day_showsAllItsSheets_doses_lawAndMuffs() {
    var page = page("/jobs/" + job + "/noise", Map.of());
    var plan = bench.work(job).orElseThrow().plan();
    for (var sheet : plan.sheets()) {
      assertTrue(
          page.contains(
              "<li class=\"line\"><b>Sheet "
                  + sheet.number()
                  + ": "
                  + escaped(sheet.operation().title())),
          sheet.id());
    }
    assertTrue(page.contains("90 dBA for 8 h, halved each 5 dB"));
    assertTrue(page.contains("85 dBA for 8 h, halved each 3 dB"));
    assertTrue(page.contains("Control of Noise at Work Regulations 2005"));
    assertTrue(page.contains("SNR 30"));
    assertTrue(page.contains("usual for its kind, extractor on"));
    assertTrue(page.contains("by hand, nothing counted"));
    assertTrue(page.contains("aria-label=\"The day&#39;s dose, to scale"), page);
  }

  @Test
  void links_leadHereFromTheSheetsAndFromTheRules() {
    assertTrue(page("/jobs/" + job + "/sheets", Map.of()).contains("/jobs/" + job + "/noise"));
    assertTrue(page("/rules", Map.of()).contains("href=\"/noise\""));
  }

  @Test
  void sheet_leftOut_isTold_andMinutesCount() {
    var page = page("/jobs/" + job + "/noise", Map.of("done-1", "no", "minutes-2", "77.5"));
    assertTrue(page.contains("not done that day"));
    assertTrue(page.contains("77.5 min"));
  }

  @Test
  void day_withoutAJob_isEmpty_andTakesWhatIsTyped() {
    var empty = page("/noise", Map.of());
    assertTrue(empty.contains("Nothing loud is entered yet"));
    assertFalse(empty.contains("0.00 %"), "not known is not nothing");
    assertFalse(empty.contains("stays below"), "nor is it quiet");
    assertFalse(empty.contains("field-wrong"));
    // 1 h at 95 dBA: a quarter of the first rule's dose; 100 × 2^(10/3) ÷ 8 of the other's.
    var page = page("/noise", HOUR);
    assertTrue(page.contains("25.00 %"));
    assertTrue(page.contains("125.99 %"));
    assertTrue(page.contains("sanding"));
  }

  @Test
  void protector_thatIsTyped_isJudged_aloneAndWithASecond() {
    var typed = new HashMap<>(HOUR);
    typed.put("protector", "NRR 25");
    typed.put("second", "NRR 29");
    var page = page("/noise", typed);
    assertTrue(page.contains("another protector"));
    assertTrue(page.contains("NRR 25 and NRR 29"));
  }

  @Test
  void region_decidesWhatHolds() {
    var eightyFive = Map.of("other-1-level", "90", "other-1-minutes", "240");
    inRegion("us-washington");
    assertTrue(page("/noise", eightyFive).contains("Action level, 50 % of the dose"));
    inRegion("eu");
    assertTrue(page("/noise", eightyFive).contains("Directive 2003/10/EC"));
    inRegion("elsewhere");
    assertTrue(page("/noise", eightyFive).contains("what is recommended where no law is known"));
    inRegion("gb");
    assertTrue(page("/noise", eightyFive).contains("Upper exposure action value"));
  }

  private void inRegion(String region) {
    floor.keepAbout(new ShopForms.About("The long shed", LengthUnit.MILLIMETRE, region, false));
  }

  @Test
  void meter_countsBeforeWhatIsUsual() {
    var saw =
        floor.items().stream()
            .filter(item -> item.kind().equals("table-saw"))
            .findFirst()
            .orElseThrow();
    var typed = new HashMap<>(saw.typed());
    typed.put("level", "88.5");
    try {
      assertEquals(
          List.<Problem>of(),
          floor.keep(Optional.of(saw.id()), Shelf.MACHINE, saw.kind(), typed).problems());
      var page = page("/jobs/" + job + "/noise", Map.of());
      assertTrue(page.contains("88.5 dBA"));
      assertTrue(page.contains("your meter"));
    } finally {
      floor.keep(Optional.of(saw.id()), Shelf.MACHINE, saw.kind(), saw.typed());
    }
    assertFalse(page("/jobs/" + job + "/noise", Map.of()).contains("88.5 dBA"));
  }

  @Test
  void ratingThatCantBeRead_isTold() {
    var id =
        floor
            .keep(
                Optional.empty(),
                Shelf.GEAR,
                "ear-protection",
                Map.of("name", "old muffs", "rating", "quite good", "place", ""))
            .value()
            .orElseThrow();
    try {
      assertTrue(page("/noise", HOUR).contains("its rating can&#39;t be read"));
    } finally {
      floor.remove(id);
    }
  }

  @Test
  void answer_isTheSame_andTheAddressFollows() {
    var query = Rubbish.query(HOUR);
    assertTrue(fetch("/noise/answer?" + query).asString().contains("25.00 %"));
    assertTrue(fetch("/jobs/" + job + "/noise/answer").asString().contains("What it comes to"));
    assertEquals(
        "/noise?" + query,
        io.restassured.RestAssured.given()
            .urlEncodingEnabled(false)
            .get("/noise/answer?" + query)
            .header("HX-Replace-Url"));
  }

  @Test
  void job_thatIsNotThere_isNotFound() {
    assertEquals(404, fetch("/jobs/nowhere/noise").statusCode());
    assertEquals(404, fetch("/jobs/nowhere/noise/answer").statusCode());
  }

  @Test
  void job_notBegun_hasItsDay() {
    var other = desk.keepDemo().id();
    try {
      assertTrue(page("/jobs/" + other + "/noise", Map.of()).contains("Rip to width"));
    } finally {
      bench.discard(other);
    }
  }

  private static String page(String address, Map<String, String> typed) {
    var answer = fetch(address + (typed.isEmpty() ? "" : "?" + Rubbish.query(typed)));
    assertEquals(200, answer.statusCode(), answer.asString());
    return answer.asString();
  }
}
