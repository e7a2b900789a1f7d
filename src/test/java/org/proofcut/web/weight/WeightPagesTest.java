package org.proofcut.web.weight;

import static io.restassured.RestAssured.get;
import static io.restassured.RestAssured.given;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;
import org.proofcut.bench.JobDesk;
import org.proofcut.bench.WorkBench;
import org.proofcut.core.intake.Demo;
import org.proofcut.core.intake.Field;
import org.proofcut.core.intake.LiftForm;
import org.proofcut.core.intake.LoadsTyped;
import org.proofcut.web.Rubbish;

@QuarkusTest
class WeightPagesTest {

  static final List<String> RUBBISH = Rubbish.ALL;

  @Inject JobDesk desk;
  @Inject WorkBench bench;

  private String job;

  @BeforeEach
  void keep() {
    job = desk.keepDemo().id();
  }

  @AfterEach
  void discard() {
    bench.discard(job);
  }

  private static String lifting(Map<String, String> typed) {
    var answer = Rubbish.fetch("/lifting?" + Rubbish.query(typed));
    assertEquals(200, answer.statusCode());
    return answer.asString();
  }

  private static String lifting(String field, String text) {
    return lifting(Rubbish.with(LoadsTyped.lift(), field, text));
  }

  private String standing(Map<String, String> typed) {
    var answer = Rubbish.fetch("/jobs/" + job + "/standing?" + Rubbish.query(typed));
    assertEquals(200, answer.statusCode());
    return answer.asString();
  }

  @Test
  void lift_nothingTyped_saysWhatIsEmptyAndGivesNoFigure() {
    var page = lifting(Map.of());
    assertTrue(page.contains("20 fields still empty"), page);
    assertFalse(page.contains("figure-number"), page);
  }

  /** Example 4 of the manual: 15.2 lb printed where it is put down, index 1.7; 34.9 lb before. */
  @Test
  void lift_example4_asPrinted() {
    var typed = LoadsTyped.lift();
    typed.putAll(
        Map.of(
            "unit", "in", "weight", "26 lb", "out", "10", "from", "22", "turn", "0", "to", "59",
            "end-out", "20", "often", "3", "grip", "fair"));
    typed.put("long", "24");
    typed.put("deep", "16");
    var page = lifting(typed);
    assertTrue(page.contains("<span class=\"figure-number\">34.8 lb</span>"), page);
    assertTrue(page.contains("<span class=\"figure-number\">15.2 lb</span>"), page);
    for (var multiplier :
        List.of(
            "nearness 1.00",
            "height 0.94",
            "way 0.87",
            "turning 1.00",
            "how often 0.88",
            "grip 0.95",
            "nearness 0.50",
            "height 0.78",
            "grip 1.00")) {
      assertTrue(
          page.contains("multiplier of the " + multiplier)
              || page.contains("multiplier of " + multiplier),
          multiplier + " in " + page);
    }
    assertTrue(page.contains("11.8 kg (26.0 lb): lifting index 1.72"), page);
    assertTrue(page.contains("More than is recommended"), page);
    assertTrue(page.contains("The multiplier of nearness takes away most."), page);
    assertTrue(page.contains("Nearer: hold it close"), page);
    assertTrue(page.contains("NIOSH 94-110"), page);
  }

  @ParameterizedTest
  @org.junit.jupiter.params.provider.EnumSource(org.proofcut.core.exposure.Lift.NotCovered.class)
  void lift_notCovered_hasNoFigureButARule(org.proofcut.core.exposure.Lift.NotCovered one) {
    var page = lifting(one.name().toLowerCase(java.util.Locale.ROOT).replace('_', '-'), "yes");
    assertTrue(page.contains("No figure for this"), page);
    assertTrue(page.contains(one.words()), page);
    assertTrue(page.contains("Do this instead, for 18.0 kg"), page);
    assertFalse(page.contains("figure-number"), page);
    assertFalse(page.contains("lifting index"), page);
  }

  @Test
  void lift_wholeSheet_hasNoFigureWhateverIsSaidOfIt() {
    var page = lifting("long", "2440");
    assertTrue(page.contains("too large for one person to hold steady"), page);
    assertTrue(page.contains("Break it down where it lies"), page);
    assertFalse(page.contains("figure-number"), page);
  }

  @Test
  void lift_handsNotMeasured_areEstimatedAndNotTakenForMeasured() {
    var typed = LoadsTyped.lift();
    typed.put("out", "");
    var page = lifting(typed);
    assertTrue(page.contains("Enter 450 mm"), page);
    assertTrue(page.contains("1 field still empty"), page);
    assertFalse(page.contains("figure-number"), page);
  }

  @Test
  void lift_part_beginsWithItsWeight() {
    var page = Rubbish.fetch("/lifting?job=" + job + "&part=left-side").asString();
    assertTrue(page.contains("The left side, at most: 4.5 kg"), page);
    assertTrue(page.contains("value=\"4.5 kg\""), page);
    assertTrue(page.contains("9 fields still empty"), page);
    var unknown = Rubbish.fetch("/lifting?job=" + job + "&part=roof").asString();
    assertTrue(unknown.contains("20 fields still empty"), unknown);
  }

  @Test
  void lift_whileTyping_comesAloneAndMovesTheAddress() {
    var query = Rubbish.query(LoadsTyped.lift());
    var answer = given().urlEncodingEnabled(false).get("/lifting/answer?" + query);
    assertEquals(200, answer.statusCode());
    assertFalse(answer.asString().contains("<html"), answer.asString());
    assertTrue(answer.asString().contains("id=\"out-echo\""), answer.asString());
    assertEquals("/lifting?" + query, answer.getHeader("HX-Replace-Url"));
  }

  @ParameterizedTest
  @FieldSource("RUBBISH")
  void lift_rubbishInAnyField_isAnsweredAndShownAgain(String rubbish) {
    var fields = LiftForm.fields().stream().map(Field::name).toList();
    for (var field : fields) {
      assertAnswered(lifting(field, rubbish), field, rubbish);
    }
    lifting("job", rubbish);
    lifting("part", rubbish);
  }

  @ParameterizedTest
  @FieldSource("RUBBISH")
  void stand_rubbishInAnyField_isAnsweredAndShownAgain(String rubbish) {
    for (var field : LoadsTyped.stand().keySet()) {
      assertAnswered(standing(Rubbish.with(LoadsTyped.stand(), field, rubbish)), field, rubbish);
    }
  }

  private static void assertAnswered(String page, String field, String rubbish) {
    assertFalse(page.contains("<script>alert"), field + ": " + rubbish);
    assertFalse(page.contains("<img src=x"), field + ": " + rubbish);
    if (page.contains("type=\"text\" id=\"" + field + "\"") && rubbish.length() < 100) {
      assertTrue(
          page.contains("value=\"" + Rubbish.escaped(Rubbish.asReceived(rubbish)) + "\""),
          field + ": " + rubbish);
    }
  }

  /** 940 × 360 × 17.73 mm at 750 kg/m³ are 4.4999… kg. */
  @Test
  void weights_demo_heaviestFirst_sheetsWithoutAFigure() {
    var page = get("/jobs/" + job + "/weights").asString();
    assertTrue(page.contains("left side: 4.5 kg"), page);
    assertTrue(page.indexOf("left side: ") < page.indexOf("plinth: "), page);
    assertTrue(page.contains("No figure for a whole sheet"), page);
    assertTrue(page.contains("Within what is recommended (lifting index 0.41)"), page);
    assertTrue(page.contains("/lifting?job=" + job + "&amp;part=left-side"), page);
  }

  @Test
  void weights_partLongerThanOneHolds_hasNoFigure() {
    var typed = new LinkedHashMap<>(Demo.job());
    typed.put("width", "1220 mm");
    var other = kept(typed);
    var page = get("/jobs/" + other + "/weights").asString();
    assertTrue(page.contains("Too large for one person to hold steady: no figure"), page);
    bench.discard(other);
  }

  /** Sides of 23.5 by 43 in, 3 in thick: as heavy as no one should lay on a saw table alone. */
  @Test
  void weights_heavyPartOfAnInchJob_isMarkedAndSaidInPounds() {
    var typed = new LinkedHashMap<>(Demo.job());
    typed.put("unit", "in");
    for (var length :
        List.of(
            "width",
            "height",
            "depth",
            "top-rabbet",
            "bottom-dado",
            "shelf-dado",
            "back-rabbet",
            "back-set-in",
            "plinth-height",
            "plinth-set-back",
            "shelf-1",
            "sheet-1-length",
            "sheet-1-width",
            "sheet-2-length",
            "sheet-2-width")) {
      typed.computeIfPresent(length, (name, text) -> inMillimetres(text));
    }
    for (int i = 1; i <= 4; i++) {
      typed.put("sheet-1-reading-" + i, "60 mm");
      typed.computeIfPresent("sheet-2-reading-" + i, (name, text) -> inMillimetres(text));
    }
    typed.put("top-rabbet", "20 mm");
    typed.put("bottom-dado", "20 mm");
    typed.put("shelf-dado", "20 mm");
    typed.put("back-rabbet", "20 mm");
    typed.put("depth", "580 mm");
    var other = kept(typed);
    var page = get("/jobs/" + other + "/weights").asString();
    // 940 × 580 × 60 mm at 750 kg/m³.
    assertTrue(page.contains("left side: 24.6 kg (54.1 lb)"), page);
    assertTrue(page.contains("More than is recommended"), page);
    bench.discard(other);
  }

  private static String inMillimetres(String text) {
    return text.matches("[0-9.,]+") ? text + " mm" : text;
  }

  @Test
  void weights_designThatCannotBeBuilt_areNotGiven() {
    var typed = new LinkedHashMap<>(Demo.job());
    typed.put("bottom-dado", "17 mm");
    var other = kept(typed);
    for (var page : List.of("/weights", "/standing")) {
      var answer = get("/jobs/" + other + page);
      assertEquals(200, answer.statusCode());
      assertTrue(answer.asString().contains("There is nothing to weigh yet"), page);
    }
    assertEquals(404, get("/jobs/" + other + "/standing/answer").statusCode());
    bench.discard(other);
  }

  private String kept(Map<String, String> typed) {
    return desk.keep(Optional.empty(), typed).value().orElseThrow().id();
  }

  @Test
  void unknownJob_isNotThere() {
    assertEquals(404, get("/jobs/none/weights").statusCode());
    assertEquals(404, get("/jobs/none/standing").statusCode());
    assertEquals(404, get("/jobs/none/standing/answer").statusCode());
  }

  @Test
  void stand_usual_tipsWhenHungOn_andIsAlwaysToBeFastened() {
    var page = standing(Map.of());
    assertTrue(page.contains("href=\"/jobs/" + job + "/weights\""), page);
    assertTrue(page.contains("It tips: empty, shut, hung on and pulled"), page);
    assertTrue(page.contains("Fasten it to the building"), page);
    assertTrue(page.contains("ASTM F2057-23"), page);
    assertTrue(page.contains("Middle of gravity of the empty case"), page);
  }

  /** Left alone and level it stands, and still is to be fastened; no page calls it safe. */
  @Test
  void stand_withoutAnyPull_standsAndIsToBeFastenedAllTheSame() {
    var page = standing(Map.of("hung", "0", "pull", "0"));
    assertTrue(page.contains("It stands in every way reckoned with here. Fasten it all the same"));
    assertTrue(page.contains("a further pull of"), page);
    assertFalse(page.toLowerCase(java.util.Locale.ROOT).contains("is safe"), page);
  }

  @Test
  void stand_whileTyping_comesAloneAndMovesTheAddress() {
    var query = Rubbish.query(LoadsTyped.stand());
    var address = "/jobs/" + job + "/standing";
    var answer = given().urlEncodingEnabled(false).get(address + "/answer?" + query);
    assertFalse(answer.asString().contains("<html"), answer.asString());
    assertEquals(address + "?" + query, answer.getHeader("HX-Replace-Url"));
    assertTrue(answer.asString().contains("doors and drawers open"), answer.asString());
  }

  @Test
  void pages_areLinkedFromRulesAndFromTheJob() {
    assertTrue(get("/rules").asString().contains("href=\"/lifting\""));
    var page = get("/jobs/" + job).asString();
    assertTrue(page.contains("href=\"/jobs/" + job + "/weights\""));
    assertTrue(page.contains("href=\"/jobs/" + job + "/standing\""));
  }
}
